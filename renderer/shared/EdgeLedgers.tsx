import type { UnitSystem } from '../../core/yard.ts';
import { edgeName, type FramedRings, frameWords, type TracedWorking } from '../../core/zones/index.ts';
import { CurveLines } from './CurveLines.tsx';
import { RingLedgers } from './RingLedgers.tsx';
import { MOST_CORNERS_SHOWN, MOST_CURVE_CORNERS_SHOWN } from './shownCorners.ts';

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
      <RingLedgers
        ring={ring}
        units={units}
        name={edgeName(i)}
        most={ring.curve === null ? MOST_CORNERS_SHOWN : MOST_CURVE_CORNERS_SHOWN}
      />
    </div>
  ));
}

/** The formula the numbers go through, and where they are. */
export function FormulaLines({ working }: { readonly working: FramedRings }) {
  return (
    <>
      <p className="said">
        A = ½ Σ (xᵢ yᵢ₊₁ − xᵢ₊₁ yᵢ). Digits are for checking the sums, not a claim of accuracy.
      </p>
      <p className="said">x east and y north of the frame’s origin: {frameWords(working)}.</p>
    </>
  );
}
