import { expect, test } from 'vitest';
import { drawMap } from '../../../core/sheet/drawMap.ts';
import { viewOf } from '../../../core/sheet/mapView.ts';
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
