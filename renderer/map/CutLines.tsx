import { memo } from 'react';
import { distanceM } from '../../core/kernel/index.ts';
import type { CutLine } from '../../core/sections/index.ts';
import { findFlagTapes } from '../../core/sheet/index.ts';
import { formatLength } from '../../core/units/index.ts';
import type { UnitSystem, Yard } from '../../core/yard.ts';
import type { Xy } from '../drawing/index.ts';
import { type LabelAsk, LETTER_PX, LINE_PX } from './labels.ts';
import type { Lens } from './lens.ts';
import { readableDeg } from './readableDeg.ts';

/** A cut line shorter than this on the screen has no room for its length. */
const LENGTH_FROM_PX = 90;
const FLAG_PX = 30;

interface CutLinesProps {
  readonly cutLines: readonly CutLine[];
  readonly lens: Lens;
  readonly units: UnitSystem;
}

/** The borders between sections: dashed, a flag at each end. */
export const CutLines = memo(function CutLines({ cutLines, lens, units }: CutLinesProps) {
  return (
    <g>
      {cutLines.map((cut) => (
        <g key={`${cut.between.join()} ${cut.from.xM} ${cut.from.yM}`}>
          <path d={lens.path([cut.from, cut.to], false)} className="cut-line" />
          <FlagMark at={lens.toLayer(cut.from)} />
          <FlagMark at={lens.toLayer(cut.to)} />
          <CutLength cut={cut} lens={lens} units={units} />
        </g>
      ))}
    </g>
  );
});

/** Over each flag, how far a tape runs to it from the nearer corner of the edge it stands on. */
export function tapeAsks(
  cutLines: readonly CutLine[],
  yard: Yard,
  lens: Lens,
): readonly { readonly ask: LabelAsk; readonly text: string }[] {
  const tapes = cutLines.flatMap((cut) => findFlagTapes(yard, cut, cutLines));
  return tapes.flatMap((tape, i) => {
    // A flag on another cut line has no edge to measure along; the columns say how it is found.
    if (tape === undefined || tape.outline === null) return [];
    const text = formatLength(tape.alongM, yard.details.unitSystem);
    const { x, y } = lens.toLayer(tape.flag);
    const widthPx = text.length * LETTER_PX;
    const places = [
      { x: x + widthPx / 2 - 2, y: y - FLAG_PX - LINE_PX / 2 },
      { x: x - widthPx / 2 - 6, y: y - FLAG_PX + LINE_PX / 2 },
      { x: x + widthPx / 2 + 22, y: y - FLAG_PX + LINE_PX / 2 },
    ];
    return [{ ask: { key: `tape ${i}`, widthPx, heightPx: LINE_PX, places }, text }];
  });
}

/** How long the line between two flags is, so that a tape shows whether they stand right. */
function CutLength({ cut, lens, units }: { cut: CutLine; lens: Lens; units: UnitSystem }) {
  const a = lens.toLayer(cut.from);
  const b = lens.toLayer(cut.to);
  const lengthM = distanceM(cut.from, cut.to);
  if (lengthM / lens.metresPerPx < LENGTH_FROM_PX) return null;
  const turnDeg = (Math.atan2(b.y - a.y, b.x - a.x) * 180) / Math.PI;
  return (
    <text
      className="cut-length"
      textAnchor="middle"
      transform={`translate(${((a.x + b.x) / 2).toFixed(1)} ${((a.y + b.y) / 2).toFixed(1)}) rotate(${readableDeg(turnDeg).toFixed(2)}) translate(0 -7)`}
    >
      {formatLength(lengthM, units)}
    </text>
  );
}

/** A flag on a short pole, its foot on the ground. */
function FlagMark({ at }: { readonly at: Xy }) {
  return (
    <g transform={`translate(${at.x.toFixed(1)} ${at.y.toFixed(1)})`} className="flag">
      <path d={`M0 0V${-FLAG_PX}`} className="flag-pole" />
      <path d={`M0 ${-FLAG_PX}L20 ${6 - FLAG_PX}L0 ${13 - FLAG_PX}Z`} className="flag-cloth" />
    </g>
  );
}
