import { expect, test } from 'vitest';
import { drawMap } from '../../../core/sheet/drawMap.ts';
import { boxesOverlap } from '../../../core/sheet/drawing.ts';
import { SYMBOL_RADIUS_MM } from '../../../core/sheet/mapSymbols.ts';
import { viewOf } from '../../../core/sheet/mapView.ts';
import { boundsOf } from '../../../core/sheet/pageGeometry.ts';
import { stakeCuts } from '../../../core/staking/index.ts';
import { handMadePlan } from '../../support/handMadePlan.ts';
import { THREE_ZONES } from '../../support/handMadeYards.ts';
import { marksOf, textsOf } from '../../support/sheetPages.ts';

const { yard, plan } = handMadePlan(THREE_ZONES);
const BOX = { xMm: 10, yMm: 10, widthMm: 190, heightMm: 200 };
const BOUNDS = { minXM: 0, minYM: 0, maxXM: 40, maxYM: 30 };
const staking = stakeCuts(yard, plan.ground, 'us');
const subject = { yard, plan, staking, focus: null, pictureOpacity: 0 };

test('all of a map but its frame is cut off at the frame', () => {
  const [clip, frame, ...more] = drawMap(viewOf(BOUNDS, BOX, 240), subject).marks;
  expect([clip?.kind, frame?.kind, more.length]).toEqual(['clip', 'path', 0]);
});

test('an overview numbers every pass it has room for and reports the rest', () => {
  const map = drawMap(viewOf(BOUNDS, BOX, 240), subject);
  const numbers = textsOf(map.marks)
    .filter((word) => /^\d+$/.test(word))
    .map(Number);
  const orders = plan.ground.passes.map((pass) => pass.order);
  expect([...numbers, ...map.unnumbered].sort((a, b) => a - b)).toEqual(orders);
});

test("a section's map shows its own passes alone, every one numbered", () => {
  const view = viewOf({ minXM: 13.2, minYM: 20, maxXM: 26.4, maxYM: 30 }, BOX, 120);
  const map = drawMap(view, { ...subject, focus: ['A2'] });
  const own = plan.ground.passes.filter((pass) => pass.sectionId === 'A2').map((pass) => String(pass.order));
  expect(
    textsOf(map.marks)
      .filter((word) => /^\d+$/.test(word))
      .sort(),
  ).toEqual(own.sort());
  expect(map.unnumbered).toEqual([]);
});

test('lanes that would run into one grey at a small scale are left out', () => {
  // 1.8 m at 1:5000 is 0.36 mm: two pens wide
  const few = drawMap(viewOf(BOUNDS, BOX, 5000), subject);
  const many = drawMap(viewOf(BOUNDS, BOX, 240), subject);
  const lines = (map: typeof few) => marksOf(map.marks).filter((mark) => mark.kind === 'path').length;
  expect(lines(many) - lines(few)).toBeGreaterThan(2 * plan.ground.passes.length - 10); // a line and a head for each pass
});

test('where the walk starts and finishes stands on the map, side by side where it is one place', () => {
  const place = { xM: 20, yM: 15 };
  const signsWith = (startAt: typeof place | null, finishAt: typeof place | null) => {
    const ground = { ...plan.ground, passes: [], request: { ...plan.ground.request, startAt, finishAt } };
    const bare = {
      ...subject,
      yard: { ...yard, outlines: [], marks: [] },
      staking: { ...staking, lines: [] },
    };
    return marksOf(drawMap(viewOf(BOUNDS, BOX, 240), { ...bare, plan: { ...plan, ground } }).marks);
  };
  const none = signsWith(null, null).length;
  expect(signsWith(place, null).length - none).toBe(2); // a ring and a wedge
  const boxes = signsWith(place, place).flatMap((mark) =>
    mark.kind === 'path' ? [boundsOf(mark.subpaths)] : [],
  );
  // Nothing else on this map is as wide and as high as a sign.
  const rings = boxes.filter(({ widthMm, heightMm }) =>
    [widthMm, heightMm].every((mm) => Math.abs(mm - 2 * SYMBOL_RADIUS_MM) < 0.05),
  );
  const [first, second] = rings;
  expect(rings).toHaveLength(2);
  if (first === undefined || second === undefined) throw new Error('a ring is missing');
  expect(boxesOverlap(first, second)).toBe(false);
});
