import type { GroundPlan } from '../../core/plan/index.ts';
import type { NamedCut } from '../drawing/index.ts';

/** The pairs of sections a cut lies between, each once, along the cut. */
export function pairsAlong(
  { runs }: Pick<NamedCut, 'runs'>,
  { cutLines }: Pick<GroundPlan, 'cutLines'>,
): readonly (readonly [string, string])[] {
  const pairs = new Map<string, readonly [string, string]>();
  for (const { cut, between } of cutLines) {
    if (!runs.includes(cut)) continue;
    const [one, other] = [...between].sort();
    if (one !== undefined && other !== undefined) pairs.set(`${one} ${other}`, [one, other]);
  }
  return [...pairs.values()];
}

/** "A1, A2 | A3": the sections on its left, and those on its right. A cut the plan has not made, or that parts nothing, lies between none. */
export function sectionsAlong(
  { runs }: Pick<NamedCut, 'runs'>,
  { cutLines }: Pick<GroundPlan, 'cutLines'>,
): string {
  const own = cutLines.filter(({ cut }) => runs.includes(cut));
  if (own.length === 0) return 'nothing';
  const side = (hand: 0 | 1): string =>
    [...new Set(own.map(({ between }) => between[hand]))].sort().join(', ');
  // A bar that a line of the ledger may not break before, whatever stands beside it.
  return `${side(0)}\u00a0|\u2060\u00a0${side(1)}`;
}
