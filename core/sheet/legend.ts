import type { PagePoint } from '../spaces.ts';
import type { OutlineKind, Yard } from '../yard.ts';
import type { ResolvedYard } from '../zones/index.ts';
import { at, boxOutline, INK, line, type PageBox, pen, SOFT_INK, shape, text, TURF_TINT } from './drawing.ts';
import { findHatchOf, type GroundInk, GROUND_INK, OVERLAP_INK } from './hatch.ts';
import { heldLine, plannedLine } from './mapFlags.ts';
import { hoseLine } from './mapHose.ts';
import { drawFlag, drawMark, drawWalkEnd } from './mapSymbols.ts';
import { textWidthMm } from './measureText.ts';
import type { PageMark } from './page.ts';

const WORDS: Readonly<Record<OutlineKind, string>> = {
  zone: 'treated turf',
  bed: 'bed',
  hardscape: 'hardscape',
  building: 'building',
  water: 'water',
  tree: 'tree',
  'keep-off': 'keep-off strip',
  'check-plot': 'check plot',
};

interface LegendEntry {
  readonly words: string;
  readonly draw: (swatch: PageBox) => PageMark[];
}

const SWATCH = { widthMm: 7, heightMm: 4 } as const;
const ROW_MM = 5.6;
const SIZE_MM = 2.7;

/** What is on the map besides the outlines and marks themselves. */
export interface LegendGround extends Pick<ResolvedYard, 'overlaps' | 'strips'> {
  /** Whether there are cut lines the plan placed, and whether there are some the person holds. */
  readonly hasPlannedCuts: boolean;
  readonly hasHeldCuts: boolean;
  readonly hasStart: boolean;
  readonly hasFinish: boolean;
  readonly hasHose: boolean;
}

function entriesFor(yard: Yard, ground: LegendGround): LegendEntry[] {
  const { overlaps, strips, hasPlannedCuts, hasHeldCuts, hasHose } = ground;
  const kinds = (Object.keys(WORDS) as OutlineKind[]).filter(
    (kind) =>
      yard.outlines.some((outline) => outline.kind === kind) || (kind === 'keep-off' && strips.length > 0),
  );
  const entries: LegendEntry[] = kinds.map((kind) => ({
    words: WORDS[kind],
    draw: (box) => swatch(GROUND_INK[kind], box, kind === 'zone'),
  }));
  if (overlaps.length > 0) {
    entries.push({ words: 'in two zones', draw: (box) => swatch(OVERLAP_INK, box, true) });
  }
  entries.push({ words: 'pass, walked this way', draw: passSwatch });
  if (hasPlannedCuts) entries.push({ words: 'cut line, flag at each end', draw: cutSwatch(plannedSwatch) });
  if (hasHeldCuts) entries.push({ words: 'cut line you hold in place', draw: cutSwatch(heldLine) });
  if (ground.hasStart) entries.push({ words: 'start', draw: endSwatch('start') });
  if (ground.hasFinish) entries.push({ words: 'finish', draw: endSwatch('finish') });
  if (hasHose) entries.push({ words: 'hose, on the section pages', draw: hoseSwatch });
  for (const kind of ['spigot', 'landmark'] as const) {
    if (yard.marks.some((mark) => mark.kind === kind)) {
      entries.push({
        words: kind,
        draw: (box) => drawMark(kind, at(box.xMm + box.widthMm / 2, box.yMm + box.heightMm / 2)),
      });
    }
  }
  return entries;
}

function swatch(ink: GroundInk, box: PageBox, isTurf: boolean): PageMark[] {
  const outline = [boxOutline(box)];
  const hatch = findHatchOf(ink, outline, box);
  const tint = isTurf ? [shape(outline, TURF_TINT, null)] : [];
  return [...tint, ...(hatch === undefined ? [] : [hatch]), shape(outline, null, ink.edge)];
}

function passSwatch(box: PageBox): PageMark[] {
  const y = box.yMm + box.heightMm / 2;
  const tip = at(box.xMm + box.widthMm, y);
  const back = tip.xMm - 1.8;
  return [
    line([at(box.xMm, y), tip], pen(INK, 0.3)),
    line([at(back, y - 0.75), tip, at(back, y + 0.75)], pen(INK, 0.3)),
  ];
}

function cutSwatch(drawn: (ends: readonly [PagePoint, PagePoint]) => PageMark[]) {
  return (box: PageBox): PageMark[] => {
    const y = box.yMm + box.heightMm;
    const left = at(box.xMm + 0.5, y);
    // The dot of a held line keeps off the words.
    return [...drawn([left, at(box.xMm + box.widthMm - 1, y)]), ...drawFlag(left)];
  };
}

function plannedSwatch(ends: readonly [PagePoint, PagePoint]): PageMark[] {
  return [plannedLine(ends)];
}

function endSwatch(end: 'start' | 'finish') {
  return (box: PageBox) => drawWalkEnd(end, at(box.xMm + box.widthMm / 2, box.yMm + box.heightMm / 2));
}

function hoseSwatch(box: PageBox): PageMark[] {
  const y = box.yMm + box.heightMm / 2;
  return hoseLine([at(box.xMm, y), at(box.xMm + box.widthMm, y)]);
}

/** The rows of a legend as wide as a page body; only what this yard has on it, and a note where its last row has room. */
export function drawLegend(
  xMm: number,
  yMm: number,
  widthMm: number,
  yard: Yard,
  ground: LegendGround,
  note: string,
): { readonly marks: PageMark[]; readonly heightMm: number } {
  const marks: PageMark[] = [];
  let left = xMm;
  let top = yMm;
  for (const entry of entriesFor(yard, ground)) {
    const entryMm = SWATCH.widthMm + 1.6 + textWidthMm(entry.words, SIZE_MM, 'condensed');
    if (left > xMm && left + entryMm > xMm + widthMm) {
      left = xMm;
      top += ROW_MM;
    }
    marks.push(...entry.draw({ xMm: left, yMm: top, ...SWATCH }));
    marks.push(
      text(left + SWATCH.widthMm + 1.6, top + SWATCH.heightMm / 2 + 0.95, entry.words, {
        sizeMm: SIZE_MM,
        face: 'condensed',
      }),
    );
    left += entryMm + 4.6;
  }
  const noteMm = textWidthMm(note, SIZE_MM, 'condensed');
  if (note !== '' && left + noteMm <= xMm + widthMm) {
    marks.push(
      text(xMm + widthMm, top + SWATCH.heightMm / 2 + 0.95, note, {
        sizeMm: SIZE_MM,
        face: 'condensed',
        align: 'right',
        colour: SOFT_INK,
      }),
    );
  }
  return { marks, heightMm: top + ROW_MM - yMm };
}
