import { describe, expect, test } from 'vitest';
import { signedAreaM2 } from '../../../core/kernel/index.ts';
import { raysFromStake } from '../../../core/tape/index.ts';
import { expectNear } from '../../support/expectNear.ts';
import { AWAY, EAST, kindsOf, given } from '../../support/taped.ts';

/** Sixteen rays, 22.5° apart: trade installation sheet, deploy.abcdocz.com/doc/187946. */
const RAYS = [7.1, 8.9, 9.7, 10.9, 12.4, 11.7, 11.8, 9.9, 6.8, 8.2, 9.7, 10.4, 12, 11.4, 8.9, 8];

describe('ground by rays from a stake', () => {
  test('gives the three areas side by side', () => {
    const ground = given(raysFromStake(RAYS, AWAY));
    expectNear(ground.meanRadiusAreaM2, 305.58, 0.01, 'm²'); // π × (157.8 / 16)²; the sheet prints 305.27 with 3.14 and 9.86
    expectNear(ground.sectorAreaM2, 314.81, 0.01, 'm²'); // π × mean of the squares, computed from the sheet's rays
    expectNear(ground.chordAreaM2, 303.263, 0.001, 'm²'); // closed form ½ sin 22.5° × Σ of neighbours' products, 1584.93 by hand
    expectNear(signedAreaM2(ground.ring), ground.chordAreaM2, 1e-9, 'm²'); // it is what is drawn
  });

  test('of one length gives the same circle twice', () => {
    const { sectorAreaM2, meanRadiusAreaM2 } = given(raysFromStake(new Array(36).fill(15), EAST));
    // WestOne training toolbox, unit fn27: mean r = 15 m, 706.86 m² with π in full
    expectNear(meanRadiusAreaM2, 706.86, 0.005, 'm²');
    expectNear(sectorAreaM2, meanRadiusAreaM2, 1e-9, 'm²'); // no variance
  });

  test('runs clockwise from the bearing as it was walked, and is stored counter-clockwise', () => {
    const { ring } = given(raysFromStake([1, 2, 3, 4], { at: { xM: 0, yM: 0 }, bearingDeg: 0 }));
    // by hand: north 1, east 2, south 3, west 4, turned about the first
    expectNear(ring[0]?.yM ?? Number.NaN, 1, 1e-12, 'm');
    expectNear(ring[1]?.xM ?? Number.NaN, -4, 1e-12, 'm');
    expectNear(ring[3]?.xM ?? Number.NaN, 2, 1e-12, 'm');
  });

  test('is refused with two rays or a ray of nothing', () => {
    expect(kindsOf(raysFromStake([3, 4], EAST))).toEqual(['value/too-few']);
    expect(kindsOf(raysFromStake([3, 0, 4], EAST))).toEqual(['value/not-positive']);
  });
});
