import { expect, test } from 'vitest';
import { bufferLine, regionsAreaM2, subtractRegions } from '../../../core/kernel/index.ts';
import { lanesAcross } from '../../../core/passes/lanes.ts';
import { points, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';
import { between, randomStar, seededRandom } from '../../support/randomYards.ts';

test('a rectangle takes its width in swaths, rounded up, evenly spaced', () => {
  const lanes = lanesAcross([region(rect(0, 0, 40, 11))], 0, 2);
  expect(lanes.length).toBe(6); // closed form: 11 m / 2 m rounded up
  lanes.forEach(([from, to], i) => {
    expectNear(from.yM, (11 / 6) * (i + 0.5), 1e-9, 'm'); // the middles of six even strips
    expectNear(to.xM - from.xM, 40, 1e-9, 'm'); // from end to end
  });
});

test('a width of whole swaths takes no lane more', () => {
  expect(lanesAcross([region(rect(0, 0, 40, 12))], 0, 2).length).toBe(6); // 12 m / 2 m
  expect(lanesAcross([region(rect(0, 0, 40, 12.00002))], 0, 2).length).toBe(6); // and so with grid rounding
});

test('where ground tapers, the strip that is over is a short one', () => {
  const lanes = lanesAcross([region(points([0, 0], [40, 0], [20, 11]))], 0, 2);
  expect(lanes.length).toBe(6); // closed form: 11 m / 2 m rounded up
  const lengths = lanes.map(([from, to]) => to.xM - from.xM);
  // Closed form: whole swaths from the base, each as long as the triangle is wide at its strip's lower side.
  for (const [i, lengthM] of lengths.entries()) expectNear(lengthM, 40 * (1 - (2 * i) / 11), 0.01, 'm');
});

test('over an open rim no swath of a strip hangs', () => {
  const ground = [region(points([0, 0], [40, 0], [20, 11]))];
  const turned = [region(points([0, 0], [20, -11], [40, 0]))];
  for (const rims of [
    { lowM: null, highM: 0 },
    { lowM: -11, highM: 0 },
  ]) {
    const lanes = lanesAcross(turned, 0, 2, rims);
    expect(Math.max(...lanes.map(([from]) => from.yM))).toBeLessThan(-1 + 1e-9); // half a swath from the rim at 0
  }
  const low = lanesAcross(ground, 0, 2, { lowM: 0, highM: null });
  expectNear(Math.min(...low.map(([from]) => from.yM)), 1, 1e-9, 'm'); // half a swath from the rim at 0
});

test('a bed in the way parts the lanes that meet it', () => {
  const lanes = lanesAcross([region(rect(0, 0, 40, 12), rect(10, 4, 5, 4))], 0, 2);
  expect(lanes.length).toBe(8); // worked by hand: six, two of them in two
});

test('lanes over any ground leave none of it out, whatever the heading', () => {
  const random = seededRandom(5);
  for (let i = 0; i < 40; i++) {
    const ground = region(randomStar(random, 15, { xM: 50, yM: -20 }, 20, 0.6));
    const lanes = lanesAcross([ground], between(random, 0, Math.PI), 1.5);
    const swaths = lanes.flatMap((lane) => bufferLine([...lane], 0.75, 'flat'));
    // The law of the method; a tip shorter along the lane than 0.05 of a swath may be left: 0.05 x 1.5 x 1.5 m² a tip.
    expect(regionsAreaM2(subtractRegions([ground], swaths))).toBeLessThan(0.25);
  }
});

test('ground that is nothing takes no lanes', () => {
  expect(lanesAcross([], 0, 2)).toEqual([]); // no region
  expect(lanesAcross([region(points([0, 0], [0.01, 0], [0, 0.01]))], 0, 2)).toEqual([]); // a tip below 0.05 swath
});

test('a sliver at the end of a strip is walked along its own middle, not in the swath of the pass beside it', () => {
  // Two strips of 2 m cover what is 4 m wide on the left; on the right the upper one holds only 0.4 m of ground.
  const ground = region(points([0, 0], [20, 0], [20, 2.4], [8, 2.4], [8, 0.5], [7, 0.5], [7, 4], [0, 4]));
  const lanes = lanesAcross([ground], 0, 2);
  expect(lanes.length).toBe(3); // one below all along, and above it one on the left and one on the sliver
  const sliver = lanes.find(([from]) => from.xM > 7.5 && from.yM > 1.5);
  expectNear(sliver?.[0].yM ?? Number.NaN, 2.2, 1e-3, 'm'); // half-way from the strip's side at 2 m to the edge at 2.4 m
  const left = subtractRegions(
    [ground],
    lanes.flatMap((lane) => bufferLine([...lane], 1, 'flat')),
  );
  expect(regionsAreaM2(left)).toBeLessThan(1e-3); // and all of it is covered
});
