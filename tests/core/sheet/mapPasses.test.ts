import { expect, test } from 'vitest';
import { at, boxesOverlap } from '../../../core/sheet/drawing.ts';
import { emptyRoom } from '../../../core/sheet/labelRoom.ts';
import { drawRoutes, numberRoutes, type PageRoute } from '../../../core/sheet/mapPasses.ts';
import { textMarksOf, textsOf } from '../../support/sheetPages.ts';

const FRAME = { xMm: 0, yMm: 0, widthMm: 100, heightMm: 100 };
const STYLE = { weightMm: 0.3, arrowMm: 2.4 };

function lane(order: number, yMm: number, fromMm = 20, toMm = 80): PageRoute {
  const line = [
    { xM: 0, yM: 0 },
    { xM: 1, yM: 0 },
  ];
  return {
    pass: { sectionId: 'A1', order, kind: 'lane', round: 1, line, lengthM: 1 },
    points: [at(fromMm, yMm), at(toMm, yMm)],
  };
}

test('a lane ends in an arrow head whose tip is its last point', () => {
  const [, head] = drawRoutes([lane(1, 50)], STYLE);
  expect(head?.kind === 'path' ? head.subpaths[0]?.points[1] : null).toEqual(at(80, 50)); // the lane's end
});

test('an arrow head lies behind its tip, whichever way the lane is walked', () => {
  const [, head] = drawRoutes([lane(1, 50, 80, 20)], STYLE);
  const points = head?.kind === 'path' ? (head.subpaths[0]?.points ?? []) : [];
  expect(points[1]).toEqual(at(20, 50)); // walked to the west now
  for (const back of [points[0], points[2]]) expect(back?.xMm).toBeGreaterThan(20);
});

test('a pass too short for an arrow head has none', () => {
  expect(drawRoutes([lane(1, 50, 20, 22)], STYLE)).toHaveLength(1); // 2 mm, less than one and a half heads
});

test('every pass has its number, and no two circles touch', () => {
  const room = emptyRoom(FRAME);
  const { marks, unnumbered } = numberRoutes(room, [lane(1, 20), lane(2, 23), lane(3, 26), lane(117, 29)]);
  expect(textsOf(marks)).toEqual(['1', '2', '3', '117']);
  expect(unnumbered).toEqual([]);
  room.taken.forEach((box, i) => {
    for (const other of room.taken.slice(i + 1)) expect(boxesOverlap(box, other)).toBe(false);
  });
});

test('a number gives way to a section id that stands there first', () => {
  const room = emptyRoom(FRAME);
  const id = { xMm: 15, yMm: 45, widthMm: 20, heightMm: 10 };
  room.taken.push(id);
  const [number] = textMarksOf(numberRoutes(room, [lane(1, 50)]).marks);
  expect(number?.at.xMm).toBeGreaterThan(35); // past the id
});

test('a pass with no room at all is reported, not drawn over another', () => {
  const room = emptyRoom(FRAME);
  room.taken.push({ xMm: 0, yMm: 0, widthMm: 100, heightMm: 100 });
  expect(numberRoutes(room, [lane(7, 50)])).toEqual({ marks: [], unnumbered: [7] });
});
