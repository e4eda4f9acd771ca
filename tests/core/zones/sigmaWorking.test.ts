import { describe, expect, test } from 'vitest';
import type { Outline, Picture, PictureCorners, Yard } from '../../../core/yard.ts';
import {
  resolveZones,
  sigmaTable,
  sigmaWords,
  sigmaWorking,
  tightenWords,
} from '../../../core/zones/index.ts';
import { outline, points, rect } from '../../support/builders.ts';
import { yardOf } from '../../support/drawing.ts';
import { expectNear } from '../../support/expectNear.ts';

function work(outlines: readonly Outline[], cornerSigmaM: number | null, pictures: readonly Picture[] = []) {
  const drawn = yardOf({ outlines, pictures });
  const yard: Yard = { ...drawn, details: { ...drawn.details, unitSystem: 'metric', cornerSigmaM } };
  const resolved = resolveZones(yard);
  const [zone] = resolved.ok ? resolved.value.zones : [];
  if (zone === undefined) throw new Error('no zone');
  return sigmaWorking(zone, yard);
}

const taped = { by: 'tape', pictureId: null, sigmaM: 0.05 } as const;
const lawn = outline('zone', 'lawn', rect(0, 0, 30, 40));
const bed = { ...outline('bed', 'bed', rect(10, 10, 6, 8)), placing: taped };

describe('the working of a ± says', () => {
  test('which outlines make it, by what they are held to be sure, and how much of it', () => {
    const { parts, sigmaM2 } = work([lawn, bed], 0.1);
    expectNear(sigmaM2 ?? -1, Math.hypot(5, 0.5), 1e-9, 'm²'); // 0.1 × 50 m, 0.05 × 10 m of diagonal
    const [first, second] = sigmaTable(work([lawn, bed], 0.1), 'metric').slice(1);
    expect(first).toEqual(['lawn, as the yard says', '4', '0.1 m', '5.00', '99%']); // 25 of 25.25
    expect(second).toEqual(['bed, as stated for it', '4', '0.05 m', '0.50', '1%']); // 0.25 of 25.25
    expect(parts.length).toBe(2);
  });

  test('what is not stated, and that it is no exact area', () => {
    const sigma = work([lawn, { ...bed, placing: { ...taped, sigmaM: null } }], null);
    expect(sigma.sigmaM2).toBeNull();
    expect(sigmaTable(sigma, 'metric')).toEqual([]);
    expect(sigmaWords(sigma, 'metric')).toEqual([
      '± not stated: nothing says how well the corners of lawn, bed were placed',
    ]);
  });

  test('how many points stand on several outlines', () => {
    const side = outline('hardscape', 'walk', points([30, 0], [33, 0], [33, 40], [30, 40]));
    const words = sigmaWords(work([lawn, side], 0.1), 'metric');
    expect(words.some((line) => line.startsWith('2 points stand on more than one outline'))).toBe(true); // (30, 0), (30, 40)
  });
});

describe('what would tighten it is said in one line', () => {
  const wordsOf = (outlines: readonly Outline[]): string => {
    const { tightener } = work(outlines, 0.1);
    return tightener === null ? '' : tightenWords(tightener, 'metric');
  };

  test('with a corner that stands out by its number', () => {
    // A needle: its tip's gradient is half its foot (0.5 m), those of the foot half the needle's sides (20 m).
    const needle = outline('zone', 'needle', points([0, 0], [1, 0], [0.5, 40]));
    // Variances: feet ¼ (40² + 0.5²) each, tip ¼; corner 1 makes 400.06 of 800.4, so a half.
    expect(wordsOf([needle])).toBe(
      'Corner 1 of needle makes 50% of this ±: measured exactly it would be ± 2.0 m².',
    ); // 0.1 √400.3
  });

  test('with an outline where no corner stands out', () => {
    const round = Array.from({ length: 24 }, (_, i) => {
      return { xM: 10 * Math.cos((i * Math.PI) / 12), yM: 10 * Math.sin((i * Math.PI) / 12) };
    });
    const words = wordsOf([
      outline('zone', 'round', round),
      { ...bed, outer: { kind: 'corners', corners: rect(-1, -1, 6, 4) } },
    ]);
    expect(words).toMatch(/^No corner stands out\. The 24 of round together make \d+% of this ±/); // 24 equal corners
  });

  test('with the scale of the picture where that is the most, and whether a longer length would help', () => {
    const corners = points([-30, 20], [30, 20], [30, -20], [-30, -20]) as unknown as PictureCorners;
    const length = { fromPx: { xPx: 0, yPx: 0 }, toPx: { xPx: 100, yPx: 0 }, lengthM: 10 };
    const picture: Picture = {
      id: 'p',
      name: 'plan.png',
      imageHash: '',
      mediaType: 'image/png',
      widthPx: 600,
      heightPx: 400,
      placement: { kind: 'scaled', lengths: [length], corners },
      attribution: '',
      cornerSigmaM: null,
      scaleSigma: null,
    };
    const over = { ...lawn, placing: { by: 'picture', pictureId: 'p', sigmaM: null } } as const;
    const lineOf = (part: Partial<Picture>) => {
      const { tightener } = work([over], null, [{ ...picture, ...part }]);
      return tightener === null ? '' : tightenWords(tightener, 'metric');
    };
    // A length of 10 m pointed at to 0.1 m at both ends and taped to 0.01 m: 1.418 %, twice that of 1,200 m² is 34 m²;
    // corners of one pixel make 0.1 × 50 m = 5 m², 2 % of the square.
    expect(lineOf({})).toBe(
      'The scale of plan.png makes 98% of this ±: longer known lengths that agree would help. Known exactly it would be ± 5.0 m².',
    );
    expect(lineOf({ scaleSigma: 0.01 })).toContain(
      'The scale of plan.png makes 96% of this ±: known exactly',
    ); // 24² of 24² + 5²
  });
});
