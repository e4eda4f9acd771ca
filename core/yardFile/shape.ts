/**
 * Checks on plain data of unknown origin. A check answers null when the value is as it should be, and
 * otherwise what is wrong in a few words ("name is not text").
 */
export type Check = (value: unknown) => string | null;

/** Half of a surrogate pair: UTF-8 has no way to write it, so it would come back as another character. */
const LONE_SURROGATE = /\p{Surrogate}/u;

export const text: Check = (value) => {
  if (typeof value !== 'string') return 'is not text';
  return LONE_SURROGATE.test(value) ? 'holds half a character' : null;
};

export const finite: Check = (value) => (Number.isFinite(value) ? null : 'is not a finite number');

export const whole: Check = (value) => (Number.isSafeInteger(value) ? null : 'is not a whole number');

export function orNull(check: Check): Check {
  return (value) => (value === null ? null : check(value));
}

export function oneOf(allowed: readonly unknown[]): Check {
  return (value) => (allowed.includes(value) ? null : `is none of ${allowed.join(', ')}`);
}

export function matching(pattern: RegExp, called: string): Check {
  return (value) => (typeof value === 'string' && pattern.test(value) ? null : `is not ${called}`);
}

export function listOf(check: Check, length?: number): Check {
  return (value) => {
    if (!Array.isArray(value)) return 'is not a list';
    if (length !== undefined && value.length !== length) return `does not have ${length} entries`;
    for (const [i, item] of value.entries()) {
      const wrong = check(item);
      if (wrong !== null) return `entry ${i + 1} ${wrong}`;
    }
    return null;
  };
}

/** An object with exactly these members. */
export function record(members: Readonly<Record<string, Check>>): Check {
  const names = Object.keys(members);
  return (value) => {
    if (typeof value !== 'object' || value === null || Array.isArray(value)) return 'is not a record';
    for (const name of names) {
      if (!Object.hasOwn(value, name)) return `has no ${name}`;
      const wrong = members[name]?.((value as Record<string, unknown>)[name]) ?? null;
      if (wrong !== null) return `${name} ${wrong}`;
    }
    const extra = Object.keys(value).find((name) => !Object.hasOwn(members, name));
    return extra === undefined ? null : `has an unknown ${extra}`;
  };
}

/** An object with the members of `record`, and any of some others. */
export function recordWith(
  members: Readonly<Record<string, Check>>,
  maybe: Readonly<Record<string, Check>>,
): Check {
  return (value) => {
    if (typeof value !== 'object' || value === null || Array.isArray(value)) return 'is not a record';
    const there = Object.keys(maybe).filter((name) => Object.hasOwn(value, name));
    const asked = Object.fromEntries(there.map((name) => [name, maybe[name] as Check]));
    return record({ ...members, ...asked })(value);
  };
}

/** One of several records, told apart by their member `kind`. */
export function byKind(kinds: Readonly<Record<string, Check>>): Check {
  return (value) => {
    const kind = typeof value === 'object' && value !== null && 'kind' in value ? value.kind : undefined;
    const check = typeof kind === 'string' && Object.hasOwn(kinds, kind) ? kinds[kind] : undefined;
    return check === undefined ? `is none of ${Object.keys(kinds).join(', ')}` : check(value);
  };
}
