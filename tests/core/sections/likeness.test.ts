import { expect, test } from 'vitest';
import { planSections, type ZoneSections } from '../../../core/sections/index.ts';
import { regionsAreaM2 } from '../../../core/kernel/index.ts';
import type { Region, YardPoint } from '../../../core/spaces.ts';
import { randomGround } from '../../support/randomGround.ts';

const SEEDS = [301, 302, 303, 304, 305, 306];
/** A search that meets its directions in another order may choose another of two trees of cuts nearly as short. */
const TOLERANCE = 0.02;

/** Each keeps shape: the turn is an odd one, the mirror turns rings round, the scale takes swath and marks with it. */
const LIKENESSES = [
  { name: 'turned', scale: 1, to: turned(0.7) },
  { name: 'mirrored', scale: 1, to: ({ xM, yM }: YardPoint) => ({ xM: -xM, yM }) },
  { name: 'moved', scale: 1, to: ({ xM, yM }: YardPoint) => ({ xM: xM + 512, yM: yM - 256 }) },
  { name: 'twice as large', scale: 2, to: ({ xM, yM }: YardPoint) => ({ xM: 2 * xM, yM: 2 * yM }) },
];

test.each(LIKENESSES)('$name, ground takes as much cutting for its size', ({ name, scale, to }) => {
  for (const seed of SEEDS) {
    const ground = randomGround(seed, 14, 4);
    const like = ground.map((region) => likeness(region, to, name === 'mirrored'));
    const isRatio = cutRatio(like, scale);
    const wasRatio = cutRatio(ground, 1);
    expect(Math.abs(isRatio / wasRatio - 1), `yard ${seed}: ${wasRatio} is ${isRatio}`).toBeLessThan(
      TOLERANCE,
    );
  }
});

test('the same ground gets the same cuts to the last bit', () => {
  for (const seed of SEEDS) {
    const once = JSON.stringify(cut(randomGround(seed, 14, 4), 1));
    expect(JSON.stringify(cut(randomGround(seed, 14, 4), 1))).toBe(once);
  }
});

function cut(ground: readonly Region[], scale: number): ZoneSections {
  const loadAreaM2 = regionsAreaM2(ground) / 6.5;
  const swathM = 0.5 * scale;
  const planned = planSections(
    { zoneId: 'z', zoneName: 'Lawn', letter: 'A', treated: ground },
    { loadAreaM2, policy: 'even', headingDeg: null, swathM, markM: 0.1 * scale },
  );
  if (!planned.ok) throw new Error(planned.problems[0].kind);
  return planned.value;
}

/** Cut length by the square root of the area. */
function cutRatio(ground: readonly Region[], scale: number): number {
  const cutM = cut(ground, scale).cutLines.reduce((sumM, { from, to }) => {
    return sumM + Math.hypot(to.xM - from.xM, to.yM - from.yM);
  }, 0);
  return cutM / Math.sqrt(regionsAreaM2(ground));
}

function likeness(
  { outer, holes }: Region,
  to: (at: YardPoint) => YardPoint,
  isTurnedRound: boolean,
): Region {
  const ring = (points: Region['outer']): Region['outer'] => {
    const moved = points.map(to);
    return isTurnedRound ? moved.toReversed() : moved;
  };
  return { outer: ring(outer), holes: holes.map(ring) };
}

function turned(rad: number): (at: YardPoint) => YardPoint {
  const [cos, sin] = [Math.cos(rad), Math.sin(rad)];
  return ({ xM, yM }) => ({ xM: xM * cos - yM * sin, yM: xM * sin + yM * cos });
}
