import { expect, test } from 'vitest';
import { boxesOverlap } from '../../../core/sheet/drawing.ts';
import { emptyRoom } from '../../../core/sheet/labelRoom.ts';
import { drawCornerNames, drawCutLines, drawTapes } from '../../../core/sheet/mapFlags.ts';
import { viewOf, yardToPage } from '../../../core/sheet/mapView.ts';
import { boundsOf } from '../../../core/sheet/pageGeometry.ts';
import { stakeCuts } from '../../../core/staking/index.ts';
import { handMadePlan } from '../../support/handMadePlan.ts';
import { THREE_ZONES } from '../../support/handMadeYards.ts';
import { textsOf } from '../../support/sheetPages.ts';

const { yard, plan } = handMadePlan(THREE_ZONES);
// Of the lawns alone: the corners of the things in them are nearer to some flags.
const lawns = { outlines: yard.outlines.filter(({ kind }) => kind === 'zone'), marks: [] };
const { flags, lines } = stakeCuts(lawns, plan.ground, 'us');
const BOX = { xMm: 10, yMm: 10, widthMm: 190, heightMm: 200 };
const VIEW = viewOf({ minXM: 0, minYM: 0, maxXM: 40, maxYM: 30 }, BOX, 240);

test('a cut line is dashed from end to end with a flag at each', () => {
  const room = emptyRoom(BOX);
  const cut = lines.slice(0, 1);
  const marks = drawCutLines(VIEW, room, cut, plan.ground.cuts);
  const [line] = marks;
  const ends = cut.flatMap(({ cutLine: { from, to } }) => [yardToPage(VIEW, from), yardToPage(VIEW, to)]);
  expect(line?.kind === 'path' ? [line.subpaths[0]?.points, line.stroke?.dashMm === null] : null).toEqual([
    ends,
    false,
  ]);
  expect(textsOf(marks).toSorted()).toEqual(
    cut.flatMap((each) => each.flags.map(({ letter }) => letter)).toSorted(),
  );
  expect(room.taken).toHaveLength(4); // one flag at each end, and its letter
});

test('a cut the person holds is drawn whole, with a dot at both ends', () => {
  const held = plan.ground.cuts.map((each) => ({ ...each, heldId: 'mine' }));
  const cut = lines.slice(0, 1);
  const [line, ...dots] = drawCutLines(VIEW, emptyRoom(BOX), cut, held);
  expect(line?.kind === 'path' ? line.stroke?.dashMm : undefined).toBeNull();
  const ends = cut.flatMap(({ cutLine: { from, to } }) => [yardToPage(VIEW, from), yardToPage(VIEW, to)]);
  for (const [i, end] of ends.entries()) {
    const dot = dots[i];
    if (dot?.kind !== 'path') throw new Error('a held cut has no dot');
    const box = boundsOf(dot.subpaths);
    expect(box.xMm + box.widthMm / 2).toBeCloseTo(end.xMm, 9); // centred on the end
    expect(box.yMm + box.heightMm / 2).toBeCloseTo(end.yMm, 9);
  }
});

test('tape readings are what the tape shows, and touch neither flags nor each other', () => {
  const room = emptyRoom(BOX);
  drawCutLines(VIEW, room, lines, plan.ground.cuts);
  const readings = textsOf(drawTapes(VIEW, room, lines, 'us'));
  // 13.2 m is 43.307 ft, 43 ft 4 in; 40 - 26.4 = 13.6 m is 44.619 ft, 44 ft 7 in: to the inch, each at both ends
  expect(readings.sort()).toEqual(['43 ft 4 in', '43 ft 4 in', '44 ft 7 in', '44 ft 7 in']);
  room.taken.forEach((box, i) => {
    for (const other of room.taken.slice(i + 1)) expect(boxesOverlap(box, other)).toBe(false);
  });
});

test('a reading with no room is left to the table', () => {
  const room = emptyRoom(BOX);
  room.taken.push(BOX);
  expect(drawTapes(VIEW, room, lines, 'us')).toEqual([]);
});

test('cut lines that share a flag share it, its letter and its tape', () => {
  const twice = [lines[0], lines[0]].flatMap((line) => line ?? []);
  const room = emptyRoom(BOX);
  expect(textsOf(drawCutLines(VIEW, room, twice, plan.ground.cuts))).toHaveLength(2); // its two ends, once each
  expect(textsOf(drawTapes(VIEW, room, twice, 'us'))).toHaveLength(2);
});

test('every flag has its letter, on no flag and on no other letter', () => {
  const room = emptyRoom(BOX);
  const letters = textsOf(drawCutLines(VIEW, room, lines, plan.ground.cuts));
  expect(letters.toSorted()).toEqual(flags.map(({ letter }) => letter).toSorted());
  room.taken.forEach((box, i) => {
    for (const other of room.taken.slice(i + 1)) expect(boxesOverlap(box, other)).toBe(false);
  });
});

test('a corner that is not alone on its side has its number on the map, as the table has it', () => {
  const stepped = handMadePlan({
    ...THREE_ZONES,
    zones: [
      {
        name: 'lawn',
        // Two corners on the south-east: a step 2 m from the edge.
        ring: [
          [0, 0],
          [36, 0],
          [36, 2],
          [40, 2],
          [40, 30],
          [0, 30],
        ],
        cutsAtXM: [30],
      },
    ],
    things: [],
    marks: [],
  });
  const staking = stakeCuts(stepped.yard, stepped.plan.ground, 'us');
  const names = textsOf(drawCornerNames(VIEW, emptyRoom(BOX), staking.lines));
  expect(names.length).toBeGreaterThan(0);
  for (const name of names) expect(name).toMatch(/^SE [123]$/);
});
