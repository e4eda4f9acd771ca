import { describe, expect, test } from 'vitest';
import { type CheckedDistance, fieldCheck, scaleHint } from '../../../core/fieldCheck/index.ts';
import type { YardPoint } from '../../../core/spaces.ts';
import { outline, rect } from '../../support/builders.ts';
import { yardOf } from '../../support/drawing.ts';
import { expectNear } from '../../support/expectNear.ts';
import { normalFrom, standardDeviation } from '../../support/normal.ts';
import { seededRandom } from '../../support/randomYards.ts';

const CORNERS = rect(0, 0, 30, 40);

/** Sides of 30, 40, 30 and a diagonal of 50 m, taped as so many times the map's length. */
function checkedAt(times: readonly number[], sigmaM: number | null): CheckedDistance[] {
  const lawn = outline('zone', 'Lawn', CORNERS);
  const yard = yardOf({ outlines: [{ ...lawn, placing: { ...lawn.placing, sigmaM } }] });
  const ends = [
    [0, 1],
    [1, 2],
    [2, 3],
    [0, 2],
  ] as const;
  return times.map((factor, i) => {
    const [a, b] = ends[i] ?? [0, 1];
    const [from, to] = [CORNERS[a] as YardPoint, CORNERS[b] as YardPoint];
    const tapedM = factor * Math.hypot(to.xM - from.xM, to.yM - from.yM);
    return fieldCheck(yard, { id: `${i}`, name: `${i}`, from, to, tapedM });
  });
}

describe('what all taped distances say of the scale', () => {
  test('all 1.8 % longer: the scale is off and the areas are 3.6 % too small', () => {
    const hint = scaleHint(checkedAt([1.018, 1.018, 1.018, 1.018], 0.05));
    expectNear(hint?.ratio ?? Number.NaN, 1.018, 1e-12, 'times'); // as put in
    expectNear(hint?.areaShare ?? Number.NaN, 0.036324, 1e-12, 'of the area'); // 1.018² − 1
    expect(hint).toMatchObject({ checks: 4, oneWay: true, isOff: true, fits: true });
  });

  test('the ratio leans on the sure and long ones, as least squares does', () => {
    const hint = scaleHint(checkedAt([1.01, 1], null));
    // by hand, equal weights: (30.3 × 30 + 40 × 40) / (30² + 40²)
    expectNear(hint?.ratio ?? Number.NaN, 2509 / 2500, 1e-12, 'times');
    expect(hint).toMatchObject({ ratioSigma: null, isOff: null, fits: null, oneWay: false });
  });

  test('within the corners’ own accuracy nothing is called off', () => {
    expect(scaleHint(checkedAt([1.002, 0.999, 1.001, 1.003], 0.1))?.isOff).toBe(false);
  });

  test('a misread tape among good ones is no scale, and widens the ± of the ratio', () => {
    const good = scaleHint(checkedAt([1, 1, 1, 1], 0.05));
    const misread = scaleHint(checkedAt([1, 1.1, 1, 1], 0.05)); // 44 m read for 40 m
    expect(good?.fits).toBe(true);
    expect(misread).toMatchObject({ fits: false, isOff: false });
    expect(misread?.ratioSigma).toBeGreaterThan(5 * (good?.ratioSigma ?? Infinity));
  });

  test('its own ± is what errors played out at random come to', () => {
    const normal = normalFrom(seededRandom(5));
    const plain = checkedAt([1, 1, 1, 1], 0.2);
    const stated = scaleHint(plain)?.ratioSigma ?? Number.NaN;
    const ratios = Array.from({ length: 20_000 }, () => {
      const noisy = plain.map((each) => {
        const tapedM = each.mapM + (each.pointingSigmaM ?? Number.NaN) * normal();
        return { ...each, check: { ...each.check, tapedM } };
      });
      return scaleHint(noisy)?.ratio ?? Number.NaN;
    });
    // simulation, 20,000 rounds: known to one part in √40,000; four times that allowed
    expectNear(standardDeviation(ratios) / stated, 1, 0.02, 'of the stated ±');
  });

  test('one check, or one whose end lies on nothing, says nothing of the scale', () => {
    expect(scaleHint(checkedAt([1.02], 0.1))).toBeUndefined();
    const [first, second] = checkedAt([1.02, 1.02], 0.1) as [CheckedDistance, CheckedDistance];
    expect(scaleHint([first, { ...second, endsFound: false }])).toBeUndefined();
  });
});
