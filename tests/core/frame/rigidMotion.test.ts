import { describe, expect, test } from 'vitest';
import { fitRigid, movePoint, type PointPair, type RigidFit } from '../../../core/frame/index.ts';
import { points, rect } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';
import { between, seededRandom } from '../../support/randomYards.ts';

function fitOf(pairs: readonly PointPair[]): RigidFit {
  const fit = fitRigid(pairs);
  if (!fit.ok) throw new Error(JSON.stringify(fit.problems));
  return fit.value;
}

const paired = (from: ReturnType<typeof points>, to: ReturnType<typeof points>): PointPair[] =>
  from.map((at, i) => ({ from: at, to: to[i] ?? at }));

test('a turn of 90° is clockwise, as bearings are: what was north of the middle is east of it', () => {
  const motion = { about: { xM: 10, yM: 10 }, to: { xM: 100, yM: 200 }, turnDeg: 90 };
  const { xM, yM } = movePoint(motion, { xM: 10, yM: 15 });
  expectNear(xM, 105, 1e-12, 'm'); // 5 m north of the middle, worked by hand
  expectNear(yM, 200, 1e-12, 'm');
});

describe('points brought to their places by least squares', () => {
  test('lie on them when nothing was measured wrongly, however far and turned', () => {
    const random = seededRandom(5);
    for (let i = 0; i < 200; i++) {
      const about = { xM: between(random, -1e3, 1e3), yM: between(random, -1e3, 1e3) };
      const to = { xM: between(random, -1e6, 1e6), yM: between(random, -1e6, 1e6) };
      const motion = { about, to, turnDeg: between(random, -180, 180) };
      const from = points(
        ...Array.from({ length: 2 + (i % 5) }, () => [random() * 90, random() * 90] as const),
      );
      const {
        motion: found,
        residualsM,
        ratio,
      } = fitOf(from.map((at) => ({ from: at, to: movePoint(motion, at) })));
      for (const left of residualsM) expectNear(left, 0, 1e-8, 'm'); // coordinates of 1e6 m hold 1e-10 m
      expectNear(ratio, 1, 1e-6, ''); // no length was changed; two points may lie a few millimetres apart
      const at = movePoint(found, { xM: 50, yM: 50 });
      const expected = movePoint(motion, { xM: 50, yM: 50 });
      expectNear(Math.hypot(at.xM - expected.xM, at.yM - expected.yM), 0, 1e-5, 'm'); // the motion itself
    }
  });

  test('are never scaled: the misfit is said, and shared out at the ends', () => {
    const square = rect(0, 0, 10, 10);
    const larger = square.map(({ xM, yM }) => ({ xM: 1.018 * xM, yM: 1.018 * yM }));
    const { ratio, residualsM, motion } = fitOf(paired(square, larger));
    expectNear(ratio, 1.018, 1e-12, ''); // 1.8 % farther apart, as made
    expectNear(motion.turnDeg, 0, 1e-12, '°');
    for (const left of residualsM) expectNear(left, 0.018 * Math.hypot(5, 5), 1e-12, 'm'); // 1.8 % of half a diagonal
  });

  test('are where no other turn or shift brings them nearer together', () => {
    const random = seededRandom(6);
    for (let i = 0; i < 50; i++) {
      const from = points(...Array.from({ length: 5 }, () => [random() * 40, random() * 40] as const));
      const to = points(...from.map(({ xM, yM }) => [yM + random(), -xM + random()] as const));
      const pairs = paired(from, to);
      const { motion } = fitOf(pairs);
      const sum = (turnDeg: number, eastM: number) =>
        pairs.reduce((total, pair) => {
          const moved = movePoint(
            { ...motion, turnDeg: motion.turnDeg + turnDeg, to: { ...motion.to, xM: motion.to.xM + eastM } },
            pair.from,
          );
          return total + (moved.xM - pair.to.xM) ** 2 + (moved.yM - pair.to.yM) ** 2;
        }, 0);
      const least = sum(0, 0);
      for (const [turnDeg, eastM] of [
        [0.01, 0],
        [-0.01, 0],
        [0, 0.01],
        [0, -0.01],
        [0.01, 0.01],
      ] as const) {
        expect(sum(turnDeg, eastM)).toBeGreaterThan(least);
      }
    }
  });

  test('ask for two pairs that are not one place', () => {
    const at = { xM: 1, yM: 2 };
    expect(fitRigid([{ from: at, to: at }])).toMatchObject({
      problems: [{ kind: 'value/too-few', facts: { found: 1, least: 2 } }],
    });
    for (const pairs of [
      [
        { from: at, to: at },
        { from: at, to: { xM: 5, yM: 5 } },
      ],
      [
        { from: at, to: at },
        { from: { xM: 5, yM: 5 }, to: at },
      ],
    ]) {
      expect(fitRigid(pairs)).toMatchObject({ problems: [{ kind: 'value/places-coincide' }] });
    }
  });
});
