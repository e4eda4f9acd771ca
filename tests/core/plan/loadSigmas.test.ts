import { expect, test } from 'vitest';
import { loadSigmas, sectionSigmas } from '../../../core/plan/index.ts';
import type { CutLine, Section } from '../../../core/sections/index.ts';
import { groundOf, outline, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';
import { resolvedOf } from '../../support/randomGround.ts';

const sectionAt = (id: string, xM: number, widthM: number): Section => ({
  id,
  zoneId: 'lawn',
  zoneName: 'lawn',
  region: region(rect(xM, 0, widthM, 20)),
  areaM2: widthM * 20,
});
const sections = [sectionAt('A1', 0, 10), sectionAt('A2', 10, 20)];
const cutLines: CutLine[] = [
  { from: { xM: 10, yM: 0 }, to: { xM: 10, yM: 20 }, between: ['A2', 'A1'], cut: 0 },
];
const resolved = resolvedOf({ lawn: [region(rect(0, 0, 30, 20))] });
const GROUND = groundOf([outline('zone', 'lawn', rect(0, 0, 30, 20))], 0.1);

function load(number: number, ...sectionIds: string[]) {
  return { number, sectionIds, areaM2: 0 };
}

test('a load of one section is as sure as that section, on a slope by as much more', () => {
  const loads = [load(1, 'A1'), load(2, 'A2')];
  const bySection = sectionSigmas(GROUND, { sections, cutLines });
  const level = loadSigmas(GROUND, { sections, cutLines, loads, resolved });
  expect([...level.values()]).toEqual([...bySection.values()]);
  const sloping = { ...resolved, zones: resolved.zones.map((zone) => ({ ...zone, amountFactor: 1.1 })) };
  const steep = loadSigmas(GROUND, { sections, cutLines, loads, resolved: sloping });
  expectNear((steep.get(1) ?? 0) / (level.get(1) ?? 1), 1.1, 1e-12, 'times'); // a factor on the area
});

test('where both sides of a cut go in one load, it does not matter where its flags are set', () => {
  const both = loadSigmas(GROUND, { sections, cutLines, loads: [load(1, 'A1', 'A2')], resolved });
  // By hand, a rectangle of 30 x 20 m: each of four corners moves half of either side, 15 and 10 m.
  expectNear(both.get(1) ?? Number.NaN, 0.1 * Math.sqrt(4 * (15 ** 2 + 10 ** 2)), 1e-9, 'm²');
});

test('nothing stated makes nothing sure', () => {
  const unstated = groundOf([outline('zone', 'lawn', rect(0, 0, 30, 20))]);
  expect(loadSigmas(unstated, { sections, cutLines, loads: [load(1, 'A1')], resolved }).get(1)).toBeNull();
});
