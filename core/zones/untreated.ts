import type { Region } from '../spaces.ts';
import type { Shape } from './shape.ts';

/** In the order in which spray on them matters: ground of two kinds is told as the first. */
export const UNTREATED_KINDS = [
  'water',
  'hardscape',
  'building',
  'bed',
  'tree',
  'keep-off',
  'check-plot',
] as const;
/** 'keep-off' is what was drawn as one, and every strip kept off along an edge. */
export type UntreatedKind = (typeof UNTREATED_KINDS)[number];

/** All ground of one kind that is drawn to stay untreated. */
export interface UntreatedGround {
  readonly kind: UntreatedKind;
  readonly regions: readonly Region[];
}

/**
 * @param shapes cut-outs, keep-offs and check plots
 * @param strips kept off along edges
 * @returns kinds of which there is none are left out
 */
export function untreatedOf(shapes: readonly Shape[], strips: readonly Shape[]): readonly UntreatedGround[] {
  return UNTREATED_KINDS.flatMap((kind) => {
    const drawn = shapes.filter(({ outline }) => outline.kind === kind);
    const own = kind === 'keep-off' ? [...drawn, ...strips] : drawn;
    return own.length === 0 ? [] : [{ kind, regions: own.flatMap(({ regions }) => regions) }];
  });
}
