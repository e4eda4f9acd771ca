import { expect, test } from 'vitest';
import { CHECK_LINE_MM, drawMapFoot, MAP_FOOT_MM, scaleBarLength } from '../../../core/sheet/mapFoot.ts';
import { draftingScales } from '../../../core/sheet/scale.ts';
import { expectNear } from '../../support/expectNear.ts';
import { textsOf } from '../../support/sheetPages.ts';

const BOX = { xMm: 12, yMm: 200, widthMm: 186, heightMm: MAP_FOOT_MM };

test('the check line is exactly 100 mm', () => {
  const lengths = drawMapFoot(BOX, 100, 'metric', 'N').flatMap((mark) =>
    mark.kind === 'path'
      ? mark.subpaths.map(({ points }) => (points.at(-1)?.xMm ?? 0) - (points[0]?.xMm ?? 0))
      : [],
  );
  expect(Math.max(...lengths)).toBeCloseTo(CHECK_LINE_MM, 9);
  expect(CHECK_LINE_MM).toBe(100); // what the words beside it promise
});

test('the scale bar is as long on paper as it says, at every scale', () => {
  for (const scale of draftingScales('metric')) {
    const { steps, lengthMm } = scaleBarLength(scale, 'metric');
    expectNear(lengthMm, (steps * 1000) / scale, 1e-9, 'mm'); // metres to paper millimetres
    expect(lengthMm).toBeLessThanOrEqual(62); // the room left of the north arrow
  }
  for (const scale of draftingScales('us')) {
    const { steps, lengthMm } = scaleBarLength(scale, 'us');
    expectNear(lengthMm, (steps * 304.8) / scale, 1e-9, 'mm'); // a foot is 304.8 mm
  }
});

test('ten feet to the inch shows a bar of twenty feet', () => {
  expectNear(scaleBarLength(120, 'us').lengthMm, 50.8, 1e-9, 'mm'); // two inches
  expect(textsOf(drawMapFoot(BOX, 120, 'us', 'N'))).toEqual(
    expect.arrayContaining(['0', '10', '20 ft', 'N']),
  );
});

test('the foot of a map stays in its strip', () => {
  for (const mark of drawMapFoot(BOX, 250, 'metric', 'plan N')) {
    if (mark.kind !== 'path') continue;
    for (const { xMm, yMm } of mark.subpaths.flatMap((subpath) => subpath.points)) {
      expect(xMm >= BOX.xMm && xMm <= BOX.xMm + BOX.widthMm + 1e-9).toBe(true);
      expect(yMm >= BOX.yMm && yMm <= BOX.yMm + BOX.heightMm).toBe(true);
    }
  }
});
