import type { NamedPoint } from './namedPoints.ts';
import type { Setting } from './setting.ts';
import type { Flag, StakedLine } from './stakeCuts.ts';

/** The named points flags are set and lines are checked from, each once: a map names them as the table does. */
export function pointsUsed(flags: readonly Flag[], lines: readonly StakedLine[]): readonly NamedPoint[] {
  const points = [
    ...flags.flatMap(({ setting }) => pointsOf(setting)),
    ...lines.flatMap(({ checks }) => checks.map(({ to }) => to)),
  ];
  return [...new Set(points)].filter(({ kind }) => kind !== 'flag');
}

/** What a flag's setting is measured from. */
export function pointsOf(setting: Setting): readonly NamedPoint[] {
  if (setting.kind === 'edge') return [setting.corner, setting.towards];
  if (setting.kind === 'line') return [setting.from, setting.towards];
  return [setting.first.point, setting.second.point];
}

/**
 * A corner's name for a map: "NE 2" for NE corner 2, "NE" for a bend; null where the place needs none, being the only
 * corner on its side, or named on the map already.
 */
export function shortName({ kind, own }: NamedPoint): string | null {
  const [wind = '', word = '', number] = own.split(' ');
  if (kind === 'corner') return number === undefined || word !== 'corner' ? null : `${wind} ${number}`;
  return kind === 'bend' && word === 'bend' ? [wind, number].filter(Boolean).join(' ') : null;
}
