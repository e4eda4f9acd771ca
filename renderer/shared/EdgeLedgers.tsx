import type { UnitSystem } from '../../core/yard.ts';
import { edgeName, type TracedWorking } from '../../core/zones/index.ts';
import { CurveLines } from './CurveLines.tsx';
import { RingLedgers } from './RingLedgers.tsx';

interface EdgesProps {
  readonly rings: readonly TracedWorking[];
  readonly units: UnitSystem;
}

/** The edges of an outline, each by its formula if it is a curve and corner by corner. */
export function EdgeLedgers({ rings, units }: EdgesProps) {
  return rings.map((ring, i) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: rings have no name but their place
    <div key={i}>
      {ring.curve !== null && <CurveLines curve={ring.curve} corners={ring.corners.length} units={units} />}
      <RingLedgers ring={ring} units={units} name={edgeName(i)} />
    </div>
  ));
}

/** Where the numbers are and the formula they go through. */
export const FORMULA_WORDS =
  'A = ½ Σ (xᵢ yᵢ₊₁ − xᵢ₊₁ yᵢ), x east, y north. Digits are for checking the sums, not a claim of accuracy.';
