import { describe, expect, test } from 'vitest';
import {
  fitScale,
  lengthsDisagree,
  pictureScaleSigma,
  pixelSizeM,
  type ScaleFit,
} from '../../../core/frame/index.ts';
import type { KnownLength, Picture } from '../../../core/yard.ts';
import { expectNear } from '../../support/expectNear.ts';
import { between, seededRandom } from '../../support/randomYards.ts';

/** A length along a row of pixels. */
function across(px: number, lengthM: number): KnownLength {
  return { fromPx: { xPx: 10, yPx: 20 }, toPx: { xPx: 10 + px, yPx: 20 }, lengthM };
}

function fitOf(lengths: readonly KnownLength[], pointingM: number | null = null): ScaleFit {
  const fit = fitScale(lengths, pointingM);
  if (!fit.ok) throw new Error(JSON.stringify(fit.problems));
  return fit.value;
}

const picture: Picture = {
  id: 'plan',
  name: 'Plan',
  imageHash: '00',
  mediaType: 'image/png',
  widthPx: 800,
  heightPx: 600,
  attribution: '',
  cornerSigmaM: null,
  scaleSigma: null,
  placement: {
    kind: 'scaled',
    lengths: [across(400, 20)],
    corners: [
      { xM: -20, yM: 15 },
      { xM: 20, yM: 15 },
      { xM: 20, yM: -15 },
      { xM: -20, yM: -15 },
    ],
  },
};

describe('one known length', () => {
  const slanted = { fromPx: { xPx: 100, yPx: 500 }, toPx: { xPx: 400, yPx: 100 }, lengthM: 25 };

  test('is true on the picture, whichever way it runs', () => {
    const fit = fitOf([slanted]);
    expectNear(fit.metresPerPx, 0.05, 1e-15, 'm'); // 300 across and 400 down are 500 px; 25 m / 500
    expectNear(fit.lengths[0]?.residualM ?? Number.NaN, 0, 1e-12, 'm'); // one length has nothing to disagree with
    expect(fit).toMatchObject({ worst: null, lengths: [{ byOthersM: null }] });
  });

  test('is as sure as two ends pointed at to a pixel each, and the tape to a centimetre', () => {
    // √(2 × 0.05² + 0.01²) / 25, worked by hand: √0.0051 = 0.0714143, / 25
    expectNear(fitOf([slanted]).sigma, 0.002_856_571, 1e-9, '');
    // With corners pointed at to 0.2 m: √(2 × 0.04 + 0.0001) / 25 = 0.2830194 / 25
    expectNear(fitOf([slanted], 0.2).sigma, 0.011_320_777, 1e-9, '');
  });
});

describe('several known lengths', () => {
  test('give the scale of least squares, and what each is off by', () => {
    const fit = fitOf([across(100, 10), across(200, 21)]);
    expectNear(fit.metresPerPx, 0.104, 1e-15, 'm'); // (10 × 100 + 21 × 200) / (100² + 200²) = 5200 / 50000
    expectNear(fit.lengths[0]?.residualM ?? 0, 0.4, 1e-12, 'm'); // 10.4 - 10
    expectNear(fit.lengths[1]?.residualM ?? 0, -0.2, 1e-12, 'm'); // 20.8 - 21
    expectNear(fit.lengths[0]?.relative ?? 0, 0.04, 1e-12, ''); // 0.4 / 10
    expect(fit.worst).toBeNull(); // of two, either may be wrong
    expectNear(fit.lengths[0]?.byOthersM ?? 0, 10.5, 1e-12, 'm'); // by the second: 100 px × 21 / 200
  });

  test('that disagree by more than pointing and tape explain make the scale less sure', () => {
    const { sigma } = fitOf([across(1000, 10), across(2000, 21)]);
    // Residuals 0.4 and -0.2 as above, one left over: s = √(0.16 + 0.04) = 0.4472136, / √(10.4² + 20.8²) = 23.25511
    expectNear(sigma, 0.4472136 / 23.25511, 1e-8, '');
  });

  test('that agree are surer than any one of them alone', () => {
    const alone = fitOf([across(400, 20)]).sigma;
    const four = fitOf([across(400, 20), across(400, 20), across(400, 20), across(400, 20)]).sigma;
    expectNear(four, alone / 2, 1e-12, ''); // the mean of four equal ones
  });

  test('name the one the others speak against, even a long one that draws the scale to itself', () => {
    const fit = fitOf([across(100, 5), across(120, 6), across(90, 4.5), across(600, 36)]);
    expect(fit.worst).toBe(3); // all others are 0.05 m a pixel, this one 0.06
    expectNear(fit.lengths[3]?.byOthersM ?? 0, 30, 1e-12, 'm'); // 600 px × 0.05
    expect(fitOf([across(100, 5), across(200, 12), across(300, 15)]).worst).toBe(1); // the same, a short one
  });

  test('have their stated standard deviation in simulation', () => {
    const random = seededRandom(3);
    const gauss = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
    const [metresPerPx, draws] = [0.05, 20_000];
    const pixels = [300, 450, 700];
    let squares = 0;
    for (let draw = 0; draw < draws; draw++) {
      const lengths = pixels.map((px) =>
        across(px + Math.SQRT2 * gauss(), px * metresPerPx + 0.01 * gauss()),
      );
      squares += (fitOf(lengths).metresPerPx / metresPerPx - 1) ** 2;
    }
    // Without the disagreement of one draw: √(2 × 0.05² + 0.01²) / √(15² + 22.5² + 35²), worked by hand
    const stated = 0.071_414_3 / 44.229_514;
    // The root mean square of 20,000 draws is sure to 1/√40,000 = 0.5 %; four of these are allowed.
    expectNear(Math.sqrt(squares / draws) / stated, 1, 0.02, '');
  });
});

describe('what cannot be scaled is said', () => {
  test.each([0, -25, Number.NaN, Infinity])('a length of %s', (lengthM) => {
    expect(fitScale([across(100, 5), across(100, lengthM)], null)).toMatchObject({
      ok: false,
      problems: [{ kind: 'value/not-positive', where: { field: 'known length' } }],
    });
  });

  test('both ends on one pixel, and no length at all', () => {
    expect(fitScale([across(0, 5)], null)).toMatchObject({ problems: [{ kind: 'value/no-scale' }] });
    expect(fitScale([], null)).toMatchObject({ problems: [{ kind: 'value/missing' }] });
  });
});

describe('a length that disagrees wildly', () => {
  const scaledBy = (...lengths: readonly KnownLength[]): Picture =>
    ({ ...picture, placement: { ...picture.placement, lengths } }) as Picture;

  test('is named with what the others make it', () => {
    const found = lengthsDisagree(scaledBy(across(100, 5), across(600, 36), across(200, 10)));
    expect(found).toMatchObject({ kind: 'value/lengths-disagree', where: { field: 'Plan' } });
    expect(found?.facts).toMatchObject({ lengthM: 36 }); // 0.06 m a pixel where the others have 0.05
  });

  test('is, of two, the one given last', () => {
    const found = lengthsDisagree(scaledBy(across(100, 5), across(200, 12)));
    expect(found?.facts).toEqual({ lengthM: 12, byOthersM: 10 }); // 200 px × 0.05 m
  });

  test('is not spoken of below a tenth, for one alone, or where there is no scale', () => {
    expect(lengthsDisagree(scaledBy(across(100, 5), across(200, 10.5)))).toBeUndefined();
    expect(lengthsDisagree(scaledBy(across(100, 5)))).toBeUndefined();
    expect(lengthsDisagree({ ...picture, placement: { kind: 'unscaled' } })).toBeUndefined();
  });
});

describe('how sure a picture’s scale is', () => {
  const corners = picture.placement.kind === 'unscaled' ? undefined : picture.placement.corners;
  if (corners === undefined) throw new Error('the picture above is scaled');

  test('follows from its known lengths', () => {
    expectNear(pictureScaleSigma(picture) ?? 0, Math.sqrt(0.0051) / 20, 1e-12, ''); // √(2 × 0.05² + 0.01²) / 20 m
  });

  test('and from how well corners are pointed at on it, where that is stated', () => {
    const blurred = { ...picture, cornerSigmaM: 0.2 };
    expectNear(pictureScaleSigma(blurred) ?? 0, Math.sqrt(0.0801) / 20, 1e-12, ''); // √(2 × 0.2² + 0.01²) / 20 m
  });

  test('is what the person states, where they do', () => {
    expect(pictureScaleSigma({ ...picture, scaleSigma: 0.03 })).toBe(0.03); // as stated
    const placed: Picture = { ...picture, placement: { kind: 'georeferenced', crs: 'EPSG:32616', corners } };
    expect(pictureScaleSigma({ ...placed, scaleSigma: 0.001 })).toBe(0.001); // as stated
    expect(pictureScaleSigma(placed)).toBeNull();
  });

  test('is nothing without a scale', () => {
    expect(pictureScaleSigma({ ...picture, placement: { kind: 'unscaled' }, scaleSigma: 0.03 })).toBeNull();
  });
});

describe('the size of a pixel on the ground', () => {
  test('is the width over the pixels across', () => {
    expectNear(pixelSizeM(picture) ?? 0, 0.05, 1e-15, 'm'); // 40 m / 800
  });

  test('is the same however the picture is turned and moved', () => {
    const random = seededRandom(8);
    for (let i = 0; i < 50; i++) {
      const [turn, east, north] = [
        between(random, 0, 7),
        between(random, -1e3, 1e3),
        between(random, -1e3, 1e3),
      ];
      const at = (xM: number, yM: number) => ({
        xM: east + xM * Math.cos(turn) - yM * Math.sin(turn),
        yM: north + xM * Math.sin(turn) + yM * Math.cos(turn),
      });
      const corners = [at(0, 30), at(40, 30), at(40, 0), at(0, 0)] as const;
      const turned: Picture = { ...picture, placement: { kind: 'georeferenced', crs: 'EPSG:1', corners } };
      expectNear(pixelSizeM(turned) ?? 0, 0.05, 1e-12, 'm'); // 40 m / 800, 30 m / 600
    }
  });

  test('is not known without a scale', () => {
    expect(pixelSizeM({ ...picture, placement: { kind: 'unscaled' } })).toBeNull();
  });
});
