import { tracedRing } from '../curves/index.ts';
import type { UnitSystem } from '../units/index.ts';
import type { Outline, Traced } from '../yard.ts';
import { curveText } from './curveText.ts';
import { type CurveWorking, curveWorking } from './curveWorking.ts';
import { ringText } from './ringText.ts';
import { type RingWorking, ringWorking } from './ringWorking.ts';

/** A traced edge worked as the ring it is computed with, and where it is a curve by its formula too. */
export interface TracedWorking extends RingWorking {
  /** null = straight edges only. */
  readonly curve: CurveWorking | null;
}

export function tracedWorking(traced: Traced, units: UnitSystem): TracedWorking {
  return { ...ringWorking(tracedRing(traced), units), curve: curveWorking(traced, units) };
}

/** All edges of an outline, the outer one first. */
export function outlineEdges(
  { outer, holes }: Pick<Outline, 'outer' | 'holes'>,
  units: UnitSystem,
): readonly TracedWorking[] {
  return [outer, ...holes].map((traced) => tracedWorking(traced, units));
}

/** "edge", "hole 1": how the edges of an outline are told apart. */
export function edgeName(at: number): string {
  return at === 0 ? 'edge' : `hole ${at}`;
}

/** The edges for a copy in plain text, each under its name. */
export function edgesText(edges: readonly TracedWorking[], units: UnitSystem): readonly string[] {
  return edges.flatMap((edge, i) => {
    const name = edgeName(i);
    const curve = edge.curve === null ? [] : curveText(edge.curve, edge.corners.length, units);
    return ['', `${name.charAt(0).toUpperCase()}${name.slice(1)}`, ...curve, ...ringText(edge, units)];
  });
}
