import { expect, test } from 'vitest';
import { boxesOverlap } from '../../../core/sheet/drawing.ts';
import { emptyRoom } from '../../../core/sheet/labelRoom.ts';
import { drawCutLines, drawTapes } from '../../../core/sheet/mapFlags.ts';
import { viewOf, yardToPage } from '../../../core/sheet/mapView.ts';
import { handMadePlan } from '../../support/handMadePlan.ts';
import { THREE_ZONES } from '../../support/handMadeYards.ts';
import { textsOf } from '../../support/sheetPages.ts';

const { yard, plan } = handMadePlan(THREE_ZONES);
const BOX = { xMm: 10, yMm: 10, widthMm: 190, heightMm: 200 };
const VIEW = viewOf({ minXM: 0, minYM: 0, maxXM: 40, maxYM: 30 }, BOX, 240);

test('a cut line is dashed from end to end with a flag at each', () => {
  const room = emptyRoom(BOX);
  const cut = plan.ground.cutLines.slice(0, 1);
  const [line] = drawCutLines(VIEW, room, cut);
  const ends = cut.flatMap(({ from, to }) => [yardToPage(VIEW, from), yardToPage(VIEW, to)]);
  expect(line?.kind === 'path' ? [line.subpaths[0]?.points, line.stroke?.dashMm === null] : null).toEqual([
    ends,
    false,
  ]);
  expect(room.taken).toHaveLength(2); // one flag at each end
});

test('tape readings are what the tape shows, and touch neither flags nor each other', () => {
  const room = emptyRoom(BOX);
  drawCutLines(VIEW, room, plan.ground.cutLines);
  const readings = textsOf(drawTapes(VIEW, room, yard, plan.ground.cutLines, plan.ground.cutLines));
  // 13.2 m is 43.307 ft, 43 ft 4 in; 40 - 26.4 = 13.6 m is 44.619 ft, 44 ft 7 in: to the inch, each at both ends
  expect(readings.sort()).toEqual(['43 ft 4 in', '43 ft 4 in', '44 ft 7 in', '44 ft 7 in']);
  room.taken.forEach((box, i) => {
    for (const other of room.taken.slice(i + 1)) expect(boxesOverlap(box, other)).toBe(false);
  });
});

test('a reading with no room is left to the table', () => {
  const room = emptyRoom(BOX);
  room.taken.push(BOX);
  expect(drawTapes(VIEW, room, yard, plan.ground.cutLines, plan.ground.cutLines)).toEqual([]);
});

test('cut lines that share a flag share its tape', () => {
  const room = emptyRoom(BOX);
  const [cut] = plan.ground.cutLines;
  if (cut === undefined) throw new Error('no cut line');
  const twice = [cut, { ...cut, between: ['A2', 'A1'] as const }];
  expect(textsOf(drawTapes(VIEW, room, yard, twice, twice))).toHaveLength(2); // its two ends, once each
});
