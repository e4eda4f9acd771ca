import { memo } from 'react';
import { printedFlag, pointsUsed, shortName, type Staking } from '../../core/staking/index.ts';
import { formatTape } from '../../core/units/index.ts';
import type { UnitSystem } from '../../core/yard.ts';
import type { Selection, Xy } from '../drawing/index.ts';
import { type LabelAsk, LETTER_PX, LINE_PX, type TakenBox } from './labels.ts';
import type { Lens } from './lens.ts';
import { readableDeg } from './readableDeg.ts';

/** A cut line shorter than this on the screen has no room for its length. */
const LENGTH_FROM_PX = 90;
const FLAG_PX = 30;
/** Where flags have less of the lawn each than this on the screen, their tapes are left to the columns. */
const TAPES_FROM_PX2 = 15_000;

interface CutLinesProps {
  readonly staking: Staking;
  readonly lens: Lens;
  readonly selection: Selection;
}

/** The borders between sections: dashed, a lettered flag at each end. */
export const CutLines = memo(function CutLines({ staking, lens, selection }: CutLinesProps) {
  return (
    <g>
      {staking.lines.map(({ cutLine, flags }) => (
        <path
          key={`${flags[0].letter} ${flags[1].letter} ${cutLine.between.join()}`}
          d={lens.path([cutLine.from, cutLine.to], false)}
          className="cut-line"
        />
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

/** Words that stand by flags and lines, and where they may. */
export interface FlagWord {
  readonly ask: LabelAsk;
  readonly text: string;
  readonly className: string;
  readonly turnDeg: number;
}

/** What the cloths of the flags stand on; words keep off them. */
export function flagBoxes({ flags }: Staking, lens: Lens): readonly TakenBox[] {
  return flags.map(({ at }) => {
    const { x, y } = lens.toLayer(at);
    return { at: { x: x + 9, y: y - FLAG_PX + 6.5 }, widthPx: 20, heightPx: 13 };
  });
}

/** The letters of the flags: the columns are read by them. */
export function letterAsks(staking: Staking, lens: Lens): readonly FlagWord[] {
  return staking.flags.map(({ letter, at }) => ({
    ask: askBeside(`flag ${letter}`, lens.toLayer(at), letter),
    text: letter,
    className: 'flag-letter',
    turnDeg: 0,
  }));
}

/**
 * What else stands by the flags: the lengths of their lines, the tapes along edges, the corners that are told apart by a
 * number. The first find room first.
 *
 * @param treatedM2 the ground the flags stand on: where they are crowded, tapes are shown for the one in hand alone
 */
export function flagAsks(
  staking: Staking,
  units: UnitSystem,
  lens: Lens,
  treatedM2: number,
  selection: Selection,
): readonly FlagWord[] {
  const isCrowded = treatedM2 / lens.metresPerPx ** 2 < TAPES_FROM_PX2 * staking.flags.length;
  const tapes = staking.flags.flatMap((flag) => {
    if (isCrowded && !(selection?.kind === 'flag' && selection.id === flag.letter)) return [];
    const printed = printedFlag(flag, units);
    // Only a tape along the edge itself is read beside its flag; the columns say how the others are laid.
    if (printed.kind !== 'edge' || printed.off !== null) return [];
    const ask = askBeside(`tape ${flag.letter}`, lens.toLayer(flag.at), printed.along);
    return [{ ask, text: printed.along, className: 'flag-text', turnDeg: 0 }];
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
    return [{ ask, text, className: 'corner-name', turnDeg: 0 }];
  });
  return [...lengthWords(staking, units, lens), ...tapes, ...corners];
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

/** How far along a line its length may stand, and how far beside it, in pixels. */
const LENGTH_SHARES = [0.5, 0.38, 0.62, 0.27, 0.73];
const LENGTH_OFF_PX = 11;

/** How long the line between two flags is, so that a tape shows whether they stand right. */
function lengthWords({ lines }: Staking, units: UnitSystem, lens: Lens): readonly FlagWord[] {
  return lines.flatMap(({ cutLine, lengthM }, i): readonly FlagWord[] => {
    const [a, b] = [lens.toLayer(cutLine.from), lens.toLayer(cutLine.to)];
    const [x, y] = [b.x - a.x, b.y - a.y];
    const linePx = Math.hypot(x, y);
    if (linePx < LENGTH_FROM_PX) return [];
    const text = formatTape(lengthM, units);
    const turnDeg = readableDeg((Math.atan2(y, x) * 180) / Math.PI);
    const turnRad = (turnDeg * Math.PI) / 180;
    const [cos, sin] = [Math.abs(Math.cos(turnRad)), Math.abs(Math.sin(turnRad))];
    const textPx = text.length * LETTER_PX;
    // Above the line as it is read, or under it.
    const [offX, offY] = [Math.sin(turnRad) * LENGTH_OFF_PX, -Math.cos(turnRad) * LENGTH_OFF_PX];
    const places = [1, -1].flatMap((hand) =>
      LENGTH_SHARES.map((share) => ({ x: a.x + x * share + hand * offX, y: a.y + y * share + hand * offY })),
    );
    const ask = {
      key: `length ${i}`,
      widthPx: textPx * cos + LINE_PX * sin,
      heightPx: textPx * sin + LINE_PX * cos,
      places,
    };
    return [{ ask, text, className: 'cut-length', turnDeg }];
  });
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
