import type { UnitSystem } from '../../core/yard.ts';
import {
  type CurveWorking,
  curveWords,
  drawnWords,
  ringSumWords,
  segmentTable,
} from '../../core/zones/index.ts';
import { TextLedger } from './TextLedger.tsx';

interface CurveLinesProps {
  readonly curve: CurveWorking;
  /** Of the ring it is computed with. */
  readonly corners: number;
  readonly units: UnitSystem;
}

/** A curve's formula, the segments of its arcs, and the ring it is computed with. */
export function CurveLines({ curve, corners, units }: CurveLinesProps) {
  return (
    <>
      {curveWords(curve, units).map((words) => (
        <p key={words} className="said">
          {words}
        </p>
      ))}
      {curve.kind === 'arcs' && <p className="said">Polygon: {ringSumWords(curve.chords, units)}</p>}
      <TextLedger caption="Segments of the arcs" table={segmentTable(curve, units)} />
      <p className="said">{drawnWords(corners)}.</p>
    </>
  );
}
