import { memo } from 'react';
import { printedFlag, pointsUsed, shortName, type Staking } from '../../core/staking/index.ts';
import { formatTape } from '../../core/units/index.ts';
import type { UnitSystem } from '../../core/yard.ts';
import type { Selection, Xy } from '../drawing/index.ts';
import { type LabelAsk, LETTER_PX, LINE_PX } from './labels.ts';
import type { Lens } from './lens.ts';
import { readableDeg } from './readableDeg.ts';

/** A cut line shorter than this on the screen has no room for its length. */
const LENGTH_FROM_PX = 90;
const FLAG_PX = 30;

interface CutLinesProps {
  readonly staking: Staking;
  readonly lens: Lens;
  readonly units: UnitSystem;
  readonly selection: Selection;
}

/** The borders between sections: dashed, a lettered flag at each end. */
export const CutLines = memo(function CutLines({ staking, lens, units, selection }: CutLinesProps) {
  return (
    <g>
      {staking.lines.map(({ cutLine, flags, lengthM }) => (
        <g key={`${flags[0].letter} ${flags[1].letter} ${cutLine.between.join()}`}>
          <path d={lens.path([cutLine.from, cutLine.to], false)} className="cut-line" />
          <CutLength
            ends={[lens.toLayer(cutLine.from), lens.toLayer(cutLine.to)]}
            words={formatTape(lengthM, units)}
          />
        </g>
      ))}
      {staking.flags.map(({ letter, at }) => (
        <FlagMark
          key={letter}
          at={lens.toLayer(at)}
          isSelected={selection?.kind === 'flag' && selection.id === letter}
        />
      ))}
    </g>
  );
});

/** What stands by the flags: their letters, the tapes along edges, the corners that are told apart by a number. */
export function flagAsks(
  staking: Staking,
  units: UnitSystem,
  lens: Lens,
): readonly { readonly ask: LabelAsk; readonly text: string; readonly className: string }[] {
  const letters = staking.flags.map(({ letter, at }) => ({
    ask: askBeside(`flag ${letter}`, lens.toLayer(at), letter),
    text: letter,
    className: 'flag-letter',
  }));
  const tapes = staking.flags.flatMap((flag) => {
    const printed = printedFlag(flag, units);
    // Only a tape along the edge itself is read beside its flag; the columns say how the others are laid.
    if (printed.kind !== 'edge' || printed.off !== null) return [];
    const ask = askBeside(`tape ${flag.letter}`, lens.toLayer(flag.at), printed.along);
    return [{ ask, text: printed.along, className: 'flag-text' }];
  });
  const corners = pointsUsed(staking.flags, staking.lines).flatMap((point, i) => {
    const text = shortName(point);
    if (text === null) return [];
    const { x, y } = lens.toLayer(point.at);
    const widthPx = text.length * LETTER_PX;
    const places = [
      { x: x + widthPx / 2 + 4, y: y - LINE_PX / 2 },
      { x: x - widthPx / 2 - 4, y: y - LINE_PX / 2 },
      { x: x + widthPx / 2 + 4, y: y + LINE_PX / 2 },
      { x: x - widthPx / 2 - 4, y: y + LINE_PX / 2 },
    ];
    const ask = { key: `corner ${i}`, widthPx, heightPx: LINE_PX, places };
    return [{ ask, text, className: 'corner-name' }];
  });
  return [...letters, ...tapes, ...corners];
}

function askBeside(key: string, { x, y }: Xy, text: string): LabelAsk {
  const widthPx = text.length * LETTER_PX;
  const places = [
    { x: x + widthPx / 2 + 22, y: y - FLAG_PX + LINE_PX / 2 },
    { x: x - widthPx / 2 - 6, y: y - FLAG_PX + LINE_PX / 2 },
    { x: x + widthPx / 2 - 2, y: y - FLAG_PX - LINE_PX / 2 },
    { x: x - widthPx / 2 - 6, y: y - LINE_PX / 2 },
    { x: x + widthPx / 2 + 6, y: y - LINE_PX / 2 },
  ];
  return { key, widthPx, heightPx: LINE_PX, places };
}

/** How long the line between two flags is, so that a tape shows whether they stand right. */
function CutLength({ ends: [a, b], words }: { readonly ends: readonly [Xy, Xy]; readonly words: string }) {
  if (Math.hypot(b.x - a.x, b.y - a.y) < LENGTH_FROM_PX) return null;
  const turnDeg = (Math.atan2(b.y - a.y, b.x - a.x) * 180) / Math.PI;
  return (
    <text
      className="cut-length"
      textAnchor="middle"
      transform={`translate(${((a.x + b.x) / 2).toFixed(1)} ${((a.y + b.y) / 2).toFixed(1)}) rotate(${readableDeg(turnDeg).toFixed(2)}) translate(0 -7)`}
    >
      {words}
    </text>
  );
}

/** A flag on a short pole, its foot on the ground; the one in hand stands in a ring. */
function FlagMark({ at, isSelected }: { readonly at: Xy; readonly isSelected: boolean }) {
  return (
    <g transform={`translate(${at.x.toFixed(1)} ${at.y.toFixed(1)})`} className="flag">
      {isSelected && <circle r={13} className="flag-ring" />}
      <path d={`M0 0V${-FLAG_PX}`} className="flag-pole" />
      <path d={`M0 ${-FLAG_PX}L20 ${6 - FLAG_PX}L0 ${13 - FLAG_PX}Z`} className="flag-cloth" />
    </g>
  );
}
