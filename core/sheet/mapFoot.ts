import { formatNumber, lengthUnitM } from '../units/index.ts';
import type { UnitSystem } from '../yard.ts';
import { at, boxOutline, INK, line, type PageBox, pen, shape, SOFT_INK, text, WHITE } from './drawing.ts';
import { drawNorthArrow } from './mapSymbols.ts';
import type { PageMark } from './page.ts';

export const MAP_FOOT_MM = 13;

/** The line a ruler is laid to, to see whether the printer kept the scale. */
export const CHECK_LINE_MM = 100;

const BAR_MOST_MM = 62;

/** Scale bar left, check line right, north between: the strip under a map. `north` is the letter on the arrow. */
export function drawMapFoot(box: PageBox, scale: number, units: UnitSystem, north: string): PageMark[] {
  const right = box.xMm + box.widthMm;
  const lineLeft = right - CHECK_LINE_MM;
  const arrowX = (box.xMm + BAR_MOST_MM + 8 + lineLeft) / 2;
  return [
    ...drawScaleBar(box.xMm + 1, box.yMm + 4, scale, units),
    ...drawNorthArrow(at(arrowX, box.yMm + box.heightMm - 0.6), 12.2, north),
    ...drawCheckLine(lineLeft, box.yMm + 5.5),
  ];
}

/** The longest bar of 1, 2 or 4 times a power of ten in the yard's unit that fits, in four blocks. */
export function scaleBarLength(
  scale: number,
  units: UnitSystem,
): { readonly steps: number; readonly lengthMm: number } {
  const unitMm = (1000 * lengthUnitM(units)) / scale;
  let best = 0.1;
  for (const power of [0.1, 1, 10, 100, 1000]) {
    for (const digit of [1, 2, 4]) {
      if (digit * power * unitMm <= BAR_MOST_MM) best = Math.max(best, digit * power);
    }
  }
  return { steps: best, lengthMm: best * unitMm };
}

function drawScaleBar(xMm: number, yMm: number, scale: number, units: UnitSystem): PageMark[] {
  const { steps, lengthMm } = scaleBarLength(scale, units);
  const heightMm = 1.5;
  const block = lengthMm / 4;
  const marks: PageMark[] = [0, 1, 2, 3].map((i) =>
    shape(
      [boxOutline({ xMm: xMm + i * block, yMm, widthMm: block, heightMm })],
      i % 2 === 0 ? INK : WHITE,
      pen(INK, 0.2),
    ),
  );
  const style = { sizeMm: 2.6, face: 'condensed', align: 'centre' } as const;
  const decimals = Number.isInteger(steps / 2) ? 0 : steps < 1 ? 2 : 1;
  const unit = units === 'us' ? 'ft' : 'm';
  marks.push(text(xMm, yMm + 4.6, '0', { ...style, align: 'left' }));
  marks.push(text(xMm + lengthMm / 2, yMm + 4.6, formatNumber(steps / 2, decimals), style));
  const whole = formatNumber(steps, Number.isInteger(steps) ? 0 : 1);
  marks.push(text(xMm + lengthMm, yMm + 4.6, `${whole} ${unit}`, { ...style, align: 'right' }));
  return marks;
}

function drawCheckLine(xMm: number, yMm: number): PageMark[] {
  const right = xMm + CHECK_LINE_MM;
  const thin = pen(INK, 0.2);
  const ticks = [0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100].map((way) => {
    const height = way % 50 === 0 ? 2 : 1;
    return line([at(xMm + way, yMm - height), at(xMm + way, yMm)], thin);
  });
  return [
    line([at(xMm, yMm), at(right, yMm)], thin),
    ...ticks,
    text(right, yMm + 3.1, 'This line is 100 mm long when printed at actual size (100 %).', {
      sizeMm: 2.6,
      face: 'condensed',
      align: 'right',
      colour: SOFT_INK,
    }),
  ];
}
