import { expect, test } from 'vitest';
import { type AreaError, type AreaSpread, contributions, tightener } from '../../../core/area/index.ts';
import { expectNear } from '../../support/expectNear.ts';

const point = (outlineId: string, own: number, eastM2: number): AreaError => ({
  cause: { at: { xM: own, yM: 0 }, outlineId, ring: 0, own, from: null },
  sigma: 0.1,
  eastM2,
  northM2: 0,
});
const scale = (eastM2: number): AreaError => ({ cause: 'plan', sigma: 0.01, eastM2, northM2: 0 });
const spread = (...errors: readonly AreaError[]): AreaSpread => ({
  errors,
  unstated: [],
  unstatedScales: [],
});

test('shares are of the variance: the points and scales make it up, outlines again by themselves', () => {
  const rows = contributions(spread(point('lawn', 0, 3), point('lawn', 1, 4), point('bed', 0, 5), scale(7)));
  const of = (kind: string) => rows.filter((row) => row.of.kind === kind);
  const total = [...of('point'), ...of('scale')].reduce((sum, { share }) => sum + share, 0);
  expectNear(total, 1, 1e-12, 'of the variance'); // 9 + 16 + 25 + 49 of 99
  const [lawn] = of('outline');
  expectNear(lawn?.share ?? -1, 25 / 99, 1e-12, 'of the variance'); // 3² + 4²
  const [worst] = of('scale');
  expectNear(worst?.sigmaWithoutM2 ?? -1, Math.sqrt(50), 1e-12, 'm²'); // 99 - 49
});

test('what would tighten it most is a scale, else a corner that stands out, else an outline', () => {
  const kind = (...errors: readonly AreaError[]) => tightener(spread(...errors))?.of.kind;
  const even = Array.from({ length: 12 }, (_, i) => point('lawn', i, 1));
  expect(kind(...even, scale(4))).toBe('scale'); // 16 of 28, over the lawn's 12
  expect(kind(...even, scale(3))).toBe('outline'); // 9 of 21, under the lawn's 12; no corner has a fifth
  expect(kind(...even, point('lawn', 12, 2), scale(3))).toBe('outline'); // 4 of 25 is no fifth
  expect(kind(...even, point('lawn', 12, 3), scale(3))).toBe('point'); // 9 of 30, as much as the scale's
  expect(kind(...even, point('lawn', 12, 3), scale(4))).toBe('scale'); // 16 of 37, under the lawn's 21, over the corner's 9
});

test('of what is not known nothing can be said', () => {
  expect(contributions({ errors: [point('lawn', 0, 3)], unstated: ['bed'], unstatedScales: [] })).toEqual([]);
  expect(tightener(spread())).toBeUndefined();
});
