import { memo } from 'react';
import { fineLengthFigure } from '../../core/units/index.ts';
import type { FieldCheck, UnitSystem } from '../../core/yard.ts';
import type { Selection } from '../drawing/index.ts';
import type { Lens } from './lens.ts';
import { readableDeg } from './readableDeg.ts';

/** A taped line shorter than this on the screen has no room for what the tape read. */
const LENGTH_FROM_PX = 60;
const TICK_PX = 6;
/** Along the line from its middle: the middle of an outline is where its name stands. */
const READ_AT = -0.4;

interface CheckLinesProps {
  readonly checks: readonly FieldCheck[];
  readonly lens: Lens;
  readonly units: UnitSystem;
  readonly selection: Selection;
}

/** Distances taped on the ground: thin, a tick at each end, what the tape read along them. */
export const CheckLines = memo(function CheckLines({ checks, lens, units, selection }: CheckLinesProps) {
  return (
    <g className="checks">
      {checks.map((check) => (
        <CheckLine
          key={check.id}
          check={check}
          lens={lens}
          units={units}
          selected={selection?.kind === 'check' && selection.id === check.id}
        />
      ))}
    </g>
  );
});

interface CheckLineProps {
  readonly check: FieldCheck;
  readonly lens: Lens;
  readonly units: UnitSystem;
  readonly selected: boolean;
}

function CheckLine({ check, lens, units, selected }: CheckLineProps) {
  const [a, b] = [lens.toLayer(check.from), lens.toLayer(check.to)];
  const half = Math.hypot(b.x - a.x, b.y - a.y) / 2;
  const turnDeg = readableDeg((Math.atan2(b.y - a.y, b.x - a.x) * 180) / Math.PI);
  const { text, unit } = fineLengthFigure(check.tapedM, units);
  return (
    <g
      className={selected ? 'check selected' : 'check'}
      transform={`translate(${((a.x + b.x) / 2).toFixed(1)} ${((a.y + b.y) / 2).toFixed(1)}) rotate(${turnDeg.toFixed(2)})`}
    >
      <path d={`M${-half} 0H${half}M${-half} ${-TICK_PX}V${TICK_PX}M${half} ${-TICK_PX}V${TICK_PX}`} />
      {2 * half >= LENGTH_FROM_PX && (
        <text
          className={selected ? 'check-read check-read-selected' : 'check-read'}
          textAnchor="middle"
          x={READ_AT * half}
          y="-7"
        >
          {text} {unit}
        </text>
      )}
    </g>
  );
}
