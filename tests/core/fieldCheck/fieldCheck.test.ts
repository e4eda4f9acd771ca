import { describe, expect, test } from 'vitest';
import { fieldCheck, tapeSigmaM } from '../../../core/fieldCheck/index.ts';
import type { FieldCheck, Outline, Picture } from '../../../core/yard.ts';
import { outline, rect } from '../../support/builders.ts';
import { yardOf } from '../../support/drawing.ts';
import { expectNear } from '../../support/expectNear.ts';
import { normalFrom, standardDeviation } from '../../support/normal.ts';
import { seededRandom } from '../../support/randomYards.ts';

/** The diagonal of a lawn of 30 m by 40 m: 50 m, from the 3-4-5 triangle. */
const DIAGONAL = { id: 'd', name: 'Diagonal', from: { xM: 0, yM: 0 }, to: { xM: 30, yM: 40 } };
const taped = (tapedM: number): FieldCheck => ({ ...DIAGONAL, tapedM });

function lawnPlaced(placing: Partial<Outline['placing']>): Outline {
  const lawn = outline('zone', 'Lawn', rect(0, 0, 30, 40));
  return { ...lawn, placing: { ...lawn.placing, ...placing } };
}

function pictureOf(id: string, part: Partial<Picture>): Picture {
  return {
    id,
    name: id,
    imageHash: '0'.repeat(64),
    mediaType: 'image/png',
    widthPx: 1000,
    heightPx: 1000,
    placement: { kind: 'georeferenced', crs: 'EPSG:32613', corners: square(100) },
    attribution: '',
    cornerSigmaM: null,
    scaleSigma: 0,
    ...part,
  };
}

function square(sideM: number) {
  const [a, b, c, d] = [0, sideM, 0, sideM];
  return [
    { xM: a, yM: d },
    { xM: b, yM: d },
    { xM: b, yM: c },
    { xM: a, yM: c },
  ] as const;
}

describe('a taped distance against the map', () => {
  test('gives the difference, and no verdict while nobody stated an accuracy', () => {
    const checked = fieldCheck(yardOf({ outlines: [lawnPlaced({})] }), taped(50.4));
    expectNear(checked.mapM, 50, 1e-12, 'm'); // 30-40-50 triangle
    expectNear(checked.differenceM, 0.4, 1e-12, 'm'); // by hand: 50.4 − 50
    expect(checked).toMatchObject({ sigmaM: null, verdict: 'not-stated', endsFound: true, pictureId: null });
  });

  test('is inside up to two standard deviations of both corners and the tape', () => {
    const yard = yardOf({ outlines: [lawnPlaced({ by: 'tape', sigmaM: 0.1 })] });
    // by hand: √(0.1² + 0.1² + (0.010 + 50 × 0.0001)²) = √0.020225
    expectNear(fieldCheck(yard, taped(50)).sigmaM ?? Number.NaN, Math.sqrt(0.020225), 1e-12, 'm');
    expect(fieldCheck(yard, taped(50.28)).verdict).toBe('inside'); // 2 × 0.1422 = 0.2844
    expect(fieldCheck(yard, taped(49.72)).verdict).toBe('inside');
    expect(fieldCheck(yard, taped(50.29)).verdict).toBe('outside');
  });

  test('a scale error common to both ends counts with the whole distance', () => {
    const lawn = lawnPlaced({ by: 'picture', pictureId: 'p' });
    const picture = pictureOf('p', { cornerSigmaM: 0.1, scaleSigma: 0.02 });
    const { sigmaM, pointingSigmaM, pictureId } = fieldCheck(
      yardOf({ outlines: [lawn], pictures: [picture] }),
      taped(50),
    );
    expect(pictureId).toBe('p');
    // by hand: √(0.020225 + (0.02 × 50)²)
    expectNear(sigmaM ?? Number.NaN, Math.sqrt(1.020225), 1e-12, 'm');
    expectNear(pointingSigmaM ?? Number.NaN, Math.sqrt(0.020225), 1e-12, 'm'); // the same without the scale
  });

  test('a scale error of one end’s picture alone counts along the line, from that picture’s middle', () => {
    const lawn = lawnPlaced({ by: 'picture', pictureId: 'p', sigmaM: 0.1 });
    const picture = pictureOf('p', { scaleSigma: 0.02 });
    const pole = { id: 'm', kind: 'landmark', name: 'Pole', at: { xM: 300, yM: 0 } } as const;
    const yard = yardOf({ outlines: [lawn], marks: [pole], pictures: [picture] });
    const stated = { ...yard, details: { ...yard.details, cornerSigmaM: 0.1 } };
    const check = { id: 'c', name: 'c', from: { xM: 30, yM: 0 }, to: pole.at, tapedM: 270 };
    const { sigmaM, pointingSigmaM } = fieldCheck(stated, check);
    // by hand: the picture's middle is at (50, 50), so 20 m along the line: 0.02 × 20
    expectNear((sigmaM ?? Number.NaN) ** 2 - (pointingSigmaM ?? Number.NaN) ** 2, 0.16, 1e-9, 'm²');
  });

  test('what no outline and no picture says is as the yard says', () => {
    const yard = yardOf({ outlines: [lawnPlaced({})] });
    const stated = { ...yard, details: { ...yard.details, cornerSigmaM: 0.3 } };
    // by hand: √(0.09 + 0.09 + 0.015²)
    expectNear(fieldCheck(stated, taped(50)).sigmaM ?? Number.NaN, Math.sqrt(0.180225), 1e-12, 'm');
  });

  test('its ± is what errors played out at random come to', () => {
    const lawn = lawnPlaced({ by: 'picture', pictureId: 'p' });
    const picture = pictureOf('p', { cornerSigmaM: 0.2, scaleSigma: 0.01 });
    const { sigmaM } = fieldCheck(yardOf({ outlines: [lawn], pictures: [picture] }), taped(50));
    const normal = normalFrom(seededRandom(11));
    const differences = Array.from({ length: 20_000 }, () => {
      const scale = 1 + 0.01 * normal();
      const eastM = 30 * scale + 0.2 * (normal() - normal());
      const northM = 40 * scale + 0.2 * (normal() - normal());
      return 50 + tapeSigmaM(50) * normal() - Math.hypot(eastM, northM);
    });
    // simulation, 20,000 rounds: a standard deviation is known to one part in √40,000; four times that allowed
    expectNear(standardDeviation(differences) / (sigmaM ?? Number.NaN), 1, 0.02, 'of the stated ±');
  });

  test('an end whose corner was moved away is said to lie on nothing', () => {
    const moved = outline('zone', 'Lawn', rect(0, 0, 29, 40));
    const checked = fieldCheck(yardOf({ outlines: [moved] }), taped(50));
    expect(checked.endsFound).toBe(false);
    expect(checked.to.on).toBe('nothing');
  });
});
