import { expect, test } from 'vitest';
import { findFlagTapes } from '../../../core/sheet/flagTape.ts';
import { handMadePlan } from '../../support/handMadePlan.ts';
import { NINE_SECTIONS, THREE_ZONES } from '../../support/handMadeYards.ts';
import { expectNear } from '../../support/expectNear.ts';

const { yard, plan } = handMadePlan(THREE_ZONES);

test('a flag is taped along its edge from the nearer corner', () => {
  const cut = plan.ground.cutLines[0];
  if (cut === undefined) throw new Error('no cut line');
  const [south, north] = findFlagTapes(yard, cut);
  expectNear(south?.alongM ?? Number.NaN, 13.2, 1e-9, 'm'); // the fixture cuts at x = 13.2 m from a corner at x = 0
  expect(north?.corner).toEqual({ xM: 0, yM: 30 }); // the north-west corner of the back lawn in the fixture
  expect([south?.cornerName, north?.cornerName]).toEqual(['SW corner', 'NW corner']);
});

test('past the middle of the edge the other corner is nearer', () => {
  const cut = plan.ground.cutLines[1];
  if (cut === undefined) throw new Error('no cut line');
  expectNear(findFlagTapes(yard, cut)[0]?.alongM ?? Number.NaN, 13.6, 1e-9, 'm'); // 40 - 26.4
});

test('an end that lies on no straight edge has no tape', () => {
  const [from] = findFlagTapes(yard, {
    from: { xM: 6, yM: 6.7 },
    to: { xM: 6, yM: 20 },
    between: ['B1', 'B2'],
  });
  expect(from).toBeUndefined(); // on the round crown of the maple, drawn in steps under a metre
});

test('every flag of an L-shaped lawn stands where its tape says', () => {
  const made = handMadePlan(NINE_SECTIONS);
  let checked = 0;
  for (const cut of made.plan.ground.cutLines) {
    for (const tape of findFlagTapes(made.yard, cut)) {
      if (tape === undefined) continue;
      const apart = Math.hypot(tape.flag.xM - tape.corner.xM, tape.flag.yM - tape.corner.yM);
      expectNear(apart, tape.alongM, 1e-9, 'm'); // straight-line distance along a straight edge
      checked++;
    }
  }
  expect(checked).toBe(16); // 8 cut lines with two ends each, all on straight edges
});
