import { expect, test } from 'vitest';
import { cutZones } from '../../../core/plan/cutZones.ts';
import { rect, region } from '../../support/builders.ts';
import { planRequest } from '../../support/planRequest.ts';
import { resolvedOf } from '../../support/randomGround.ts';

const YARD = resolvedOf({ Left: [region(rect(0, 0, 20, 9))], Right: [region(rect(30, 0, 30, 9))] });
const REQUEST = planRequest({ loadAreaM2: 100, swathM: 1.8 });

test('a cut line points at the cut it is a part of, in its own zone', () => {
  const told: number[] = [];
  const cut = cutZones(
    YARD,
    REQUEST,
    () => false,
    (part) => told.push(part),
  );
  if (!cut.ok) throw new Error(JSON.stringify(cut.problems));
  const { sections, cuts, cutLines } = cut.value;
  expect(sections.map(({ id }) => id)).toEqual(['A1', 'A2', 'B1', 'B2', 'B3']); // 180 and 270 m² by 100
  expect(cuts.map(({ zoneId }) => zoneId)).toEqual(['Left', 'Right', 'Right']);
  for (const line of cutLines) {
    const zone = line.between[0].startsWith('A') ? 'Left' : 'Right';
    expect(cuts[line.cut]?.zoneId).toBe(zone);
  }
  expect(told.at(-1)).toBe(1);
});

test('a stop is heeded before each zone', () => {
  const cut = cutZones(
    YARD,
    REQUEST,
    () => true,
    () => undefined,
  );
  expect(cut.ok ? null : cut.problems[0].kind).toBe('plan/cancelled');
});
