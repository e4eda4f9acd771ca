import { afterEach, describe, expect, test, vi } from 'vitest';
import type { GridPaths, Overlay } from '../../../core/kernel/clipper.ts';
import { intersectRegions, regionsAreaM2, subtractRegions } from '../../../core/kernel/index.ts';
import { Defect } from '../../../core/result.ts';
import type { Region } from '../../../core/spaces.ts';
import { rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

/** How each library is made to go wrong in the test at hand; null = it works as it is. */
const spoil = vi.hoisted(() => ({
  first: null as ((overlay: string, paths: unknown[]) => unknown[]) | null,
  second: null as (() => unknown[]) | null,
  secondRuns: 0,
}));

vi.mock('../../../core/kernel/clipper.ts', async (original) => {
  const real = await original<typeof import('../../../core/kernel/clipper.ts')>();
  const overlayGrid = (overlay: Overlay, subject: GridPaths, clip: GridPaths): GridPaths => {
    const paths = real.overlayGrid(overlay, subject, clip);
    return spoil.first === null ? paths : (spoil.first(overlay, paths) as GridPaths);
  };
  return { ...real, overlayGrid };
});

vi.mock('../../../core/kernel/secondKernel.ts', async (original) => {
  const real = await original<typeof import('../../../core/kernel/secondKernel.ts')>();
  const overlayBySecondKernel: typeof real.overlayBySecondKernel = (...asked) => {
    spoil.secondRuns++;
    return spoil.second === null ? real.overlayBySecondKernel(...asked) : (spoil.second() as Region[]);
  };
  return { ...real, overlayBySecondKernel };
});

const lawn = [region(rect(0, 0, 10, 10))];
// The first two touch, so that no bed is simply a hole and all are overlaid.
const beds = [region(rect(2, 2, 3, 1)), region(rect(2, 3, 3, 2)), region(rect(8, 8, 4, 4))];

afterEach(() => {
  spoil.first = null;
  spoil.second = null;
  spoil.secondRuns = 0;
});

describe('an overlay that loses ground', () => {
  test('is not asked for again when nothing is lost', () => {
    expectNear(regionsAreaM2(subtractRegions(lawn, beds)), 87, 1e-9, 'm²'); // 100 - 9 - 2 * 2
    expect(spoil.secondRuns).toBe(0);
  });

  test.each([
    ['a hole that is dropped', 'subtract', (paths: unknown[]) => paths.slice(0, 1)],
    ['everything dropped', 'subtract', () => []],
    ['a piece that comes twice', 'intersect', (paths: unknown[]) => [...paths, ...paths.slice(0, 1)]],
    ['a piece that is missing', 'intersect', (paths: unknown[]) => paths.slice(1)],
  ])('is made again by the second kernel: %s', (_name, which, wrong) => {
    spoil.first = (overlay, paths) => (overlay === which ? wrong(paths) : paths);
    expectNear(regionsAreaM2(subtractRegions(lawn, beds)), 87, 1e-9, 'm²'); // 100 - 9 - 2 * 2
    expectNear(regionsAreaM2(intersectRegions(lawn, beds)), 13, 1e-9, 'm²'); // 9 + 2 * 2
    expect(spoil.secondRuns).toBe(4); // two overlays of two parts each
  });

  test('is our fault when the second loses ground too, or gives up', () => {
    spoil.first = (overlay, paths) => (overlay === 'subtract' ? [] : paths);
    spoil.second = () => [];
    expect(() => subtractRegions(lawn, beds)).toThrow(Defect);
    spoil.second = () => {
      throw new Error('unable to complete output ring');
    };
    expect(() => subtractRegions(lawn, beds)).toThrow(Defect);
  });
});
