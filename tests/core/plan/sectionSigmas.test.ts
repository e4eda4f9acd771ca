import { expect, test } from 'vitest';
import { sectionSigmas } from '../../../core/plan/index.ts';
import type { Section } from '../../../core/sections/index.ts';
import { groundOf, outline, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

const section = (id: string, xM: number, widthM: number): Section => {
  const part = region(rect(xM, 0, widthM, 20));
  return { id, zoneId: 'lawn', zoneName: 'lawn', region: part, areaM2: widthM * 20 };
};

const sections = [section('A1', 0, 10), section('A2', 10, 20)];
const cutLines = [
  { from: { xM: 10, yM: 0 }, to: { xM: 10, yM: 20 }, between: ['A1', 'A2'] as const, cut: 0 },
];

test('a section is as sure as the corners of its ground and the flags of its cut line', () => {
  const ground = groundOf([outline('zone', 'lawn', rect(0, 0, 30, 20))], 0.1);
  const sigmas = sectionSigmas(ground, { sections, cutLines });
  // By hand, A1: west edge 20 m, 10 to each end; the cut line alike; south edge 10 of 30 m about its middle at 5 m:
  // 10 × 25/30 to the west corner, 10 × 5/30 to the east one; north alike. Σ = 2 (10² + (25/3)²) + 2 (5/3)² + 2 (10²)
  const first = 2 * (100 + (25 / 3) ** 2) + 2 * (5 / 3) ** 2 + 2 * 100;
  expectNear(sigmas.get('A1') ?? Number.NaN, 0.1 * Math.sqrt(first), 1e-9, 'm²'); // σ √Σ
  // A2: 20 of 30 m about its middle at 20 m: 20 × 1/3 to the west corner, 20 × 2/3 to the east one.
  const second = 2 * (100 + (40 / 3) ** 2) + 2 * (20 / 3) ** 2 + 2 * 100;
  expectNear(sigmas.get('A2') ?? Number.NaN, 0.1 * Math.sqrt(second), 1e-9, 'm²'); // σ √Σ
});

test('flags are as sure as the zone’s own corners where the yard says nothing', () => {
  const lawn = outline('zone', 'lawn', rect(0, 0, 30, 20));
  const taped = { ...lawn, placing: { by: 'tape' as const, pictureId: null, sigmaM: 0.1 } };
  const byYard = sectionSigmas(groundOf([lawn], 0.1), { sections, cutLines });
  const byZone = sectionSigmas(groundOf([taped]), { sections, cutLines });
  expect(byZone).toEqual(byYard); // 0.1 m for every point either way
  expect(sectionSigmas(groundOf([lawn]), { sections, cutLines }).get('A1')).toBeNull(); // nothing stated anywhere
});
