import { areaFigure, counted, dialFigure, type Figure, volumeFigure } from '../units/index.ts';
import { at, boxOutline, INK, line, type PageBox, pen, RULE, shape, SOFT_INK, text } from './drawing.ts';
import { sectionsOfFill, zonesOfFill } from './fillWords.ts';
import { shortenText, textWidthMm } from './measureText.ts';
import type { PageMark } from './page.ts';
import type { SheetContext } from './sheetContext.ts';
import type { FillFigures } from './sheetFigures.ts';

const CARD_MM = 33;
/** Each section of a load that several share has a line of its own. */
const PART_MM = 4;
/** More are counted: the table of sections lists them all. */
const MOST_PARTS = 24;

const SMALL = { sizeMm: 2.6, face: 'condensed', colour: SOFT_INK } as const;

export function cardHeightMm({ parts }: FillFigures): number {
  return CARD_MM + (parts.length < 2 ? 0 : (Math.min(parts.length, MOST_PARTS + 1) + 0.4) * PART_MM);
}

/** What is poured for one load, large enough to read at the tap, and what of it goes where. */
export function drawCard(context: SheetContext, fill: FillFigures, box: PageBox): PageMark[] {
  const left = box.xMm + 3;
  const right = box.xMm + box.widthMm - 3;
  const head = `Load ${fill.number}`;
  const headMm = textWidthMm(head, 4.4, 'condensed-bold');
  const ids = sectionsOfFill(fill);
  const words = fill.parts.length > 1 ? ids : `${ids}, ${zonesOfFill(fill)}`;
  const place = shortenText(words, 3.3, 'condensed', right - left - headMm - 6);
  const footY = box.yMm + box.heightMm - 4;
  return [
    shape([boxOutline(box)], null, pen(INK, 0.3)),
    text(left, box.yMm + 6.3, head, { sizeMm: 4.4, face: 'condensed-bold' }),
    text(right, box.yMm + 6.3, place, { sizeMm: 3.3, face: 'condensed', align: 'right' }),
    line([at(left, box.yMm + 8.6), at(right, box.yMm + 8.6)], pen(INK, 0.25)),
    ...drawAmounts(context, fill, left, right, box.yMm),
    ...(fill.parts.length > 1 ? drawParts(context, fill, left, right, box.yMm + 24.5) : []),
    line([at(left, footY - 5.6), at(right, footY - 5.6)], pen(RULE, 0.25)),
    ...tick(left, footY, 'mixed'),
    ...tick(left + 17, footY, 'done'),
    text(left + 34, footY, 'left over', SMALL),
    line([at(left + 45, footY + 0.6), at(right, footY + 0.6)], pen(SOFT_INK, 0.2)),
  ];
}

function drawAmounts(
  { units, figures, applicator }: SheetContext,
  fill: FillFigures,
  left: number,
  right: number,
  topMm: number,
): PageMark[] {
  const hoseEnd = applicator.kind === 'hose-end';
  const entries: readonly (readonly [string, Figure<string>])[] = [
    [hoseEnd ? 'in the bottle' : 'product', volumeFigure(fill.productL, units, figures.productUnit)],
    [hoseEnd ? 'water' : 'carrier', volumeFigure(fill.carrierL, units, figures.carrierUnit)],
    hoseEnd
      ? ['dial', dialFigure(fill.dialRatio ?? 0, units)]
      : ['fill to', volumeFigure(fill.productL + fill.carrierL, units, figures.carrierUnit)],
    [figures.isMixedBySurface ? 'surface' : 'treats', areaFigure(fill.mixedM2, units)],
  ];
  const columnMm = (right - left) / entries.length;
  return entries.flatMap(([words, amount], i) => {
    const x = left + i * columnMm;
    const amountMm = textWidthMm(amount.text, 4.6, 'condensed-bold');
    const unit = shortenText(amount.unit, 2.8, 'condensed', columnMm - amountMm - 2);
    return [
      text(x, topMm + 13, words, SMALL),
      text(x, topMm + 19, amount.text, { sizeMm: 4.6, face: 'condensed-bold' }),
      ...(unit === '' ? [] : [text(x + amountMm + 1, topMm + 19, unit, { ...SMALL, sizeMm: 2.8 })]),
    ];
  });
}

/** Section for section, so that one sees how far the load has to reach. */
function drawParts(
  { units, figures }: SheetContext,
  { parts }: FillFigures,
  left: number,
  right: number,
  firstMm: number,
): PageMark[] {
  const [size, amountX, areaX] = [2.9, right - 24, right] as const;
  const listed = parts.slice(0, MOST_PARTS);
  const marks = listed.flatMap(({ section, productL, mixedM2 }, i): PageMark[] => {
    const y = firstMm + i * PART_MM;
    const product = volumeFigure(productL, units, figures.productUnit);
    const area = areaFigure(mixedM2, units);
    const name = `${section.id}  ${section.zoneName}`;
    return [
      text(left, y, shortenText(name, size, 'condensed', amountX - left - 22), {
        sizeMm: size,
        face: 'condensed',
      }),
      text(amountX, y, `${product.text} ${product.unit}`, {
        sizeMm: size,
        face: 'condensed',
        align: 'right',
      }),
      text(areaX, y, `${area.text} ${area.unit}`, { sizeMm: size, face: 'condensed', align: 'right' }),
    ];
  });
  const more = parts.length - listed.length;
  const moreY = firstMm + MOST_PARTS * PART_MM;
  return more === 0 ? marks : [...marks, text(left, moreY, `and ${counted(more, 'section')} more`, SMALL)];
}

function tick(xMm: number, footMm: number, words: string): PageMark[] {
  return [
    shape([boxOutline({ xMm, yMm: footMm - 2.7, widthMm: 3.2, heightMm: 3.2 })], null, pen(INK, 0.25)),
    text(xMm + 4.4, footMm, words, { sizeMm: 2.9, face: 'condensed' }),
  ];
}
