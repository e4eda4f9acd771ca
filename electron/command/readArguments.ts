/** What a flag takes: nothing, a value, or a path that may be left out (then standard output is meant). */
export type FlagKind = 'alone' | 'value' | 'path' | 'joined-path';

export type FlagTable = Readonly<Record<string, FlagKind>>;

export interface ReadArguments {
  readonly files: readonly string[];
  /** Values by flag name without dashes; '' for a flag that stands alone or leaves its path out. */
  readonly flags: ReadonlyMap<string, string>;
}

/** The arguments told apart, or one sentence on what is wrong with them. */
export type Arguments =
  | ({ readonly ok: true } & ReadArguments)
  | { readonly ok: false; readonly wrong: string };

/**
 * Splits a command line into files and flags. `--flag value` and `--flag=value` mean the same, except for
 * `joined-path` flags, whose path has to be joined on, so that a file behind them is not taken for it.
 * Everything after `--` is a file. A flag not in the table, or given twice, is wrong.
 */
export function readArguments(words: readonly string[], table: FlagTable): Arguments {
  const files: string[] = [];
  const flags = new Map<string, string>();
  let filesOnly = false;
  for (let at = 0; at < words.length; at++) {
    const word = words[at] ?? '';
    if (filesOnly || !word.startsWith('-') || word === '-') {
      files.push(word);
      continue;
    }
    if (word === '--') {
      filesOnly = true;
      continue;
    }
    const [, name = '', joined] = /^--?([^=]*)(?:=(.*))?$/s.exec(word) ?? [];
    const kind = Object.hasOwn(table, name) && word.startsWith('--') ? table[name] : undefined;
    if (kind === undefined) return wrong(`there is no flag ${word.split('=')[0]}`);
    if (flags.has(name)) return wrong(`--${name} is given twice`);
    const next = words[at + 1];
    const nextIsValue = next !== undefined && !next.startsWith('--');
    if (kind === 'alone') {
      if (joined !== undefined) return wrong(`--${name} takes no value`);
      flags.set(name, '');
    } else if (joined !== undefined) {
      if (joined === '' && kind === 'value') return wrong(`--${name} needs a value`);
      flags.set(name, joined);
    } else if (kind === 'joined-path') flags.set(name, '');
    else if (nextIsValue) {
      flags.set(name, next);
      at++;
    } else if (kind === 'value') return wrong(`--${name} needs a value`);
    else flags.set(name, '');
  }
  return { ok: true, files, flags };
}

function wrong(text: string): Arguments {
  return { ok: false, wrong: text };
}
