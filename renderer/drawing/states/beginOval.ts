import type { OutlineKind } from '../../../core/yard.ts';
import type { OvalShape, OvalState, SetAside } from '../drawing.ts';

/** A circle or an ellipse to be drawn, no point placed yet. */
export function beginOval(outlineKind: OutlineKind, shape: OvalShape, setAside: SetAside | null): OvalState {
  return { kind: 'oval', outlineKind, shape, points: [], aim: null, setAside, problem: null };
}
