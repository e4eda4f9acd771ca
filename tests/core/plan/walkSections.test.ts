import { expect, test } from 'vitest';
import { walkSections } from '../../../core/plan/walkSections.ts';
import type { Section } from '../../../core/sections/index.ts';
import { rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';
import { planRequest } from '../../support/planRequest.ts';
import { resolvedOf } from '../../support/randomGround.ts';

const LEFT = region(rect(0, 0, 10, 9));
const RIGHT = region(rect(30, 0, 10, 9));
const RESOLVED = resolvedOf({ Left: [LEFT], Right: [RIGHT] });
const SECTIONS: Section[] = [
  { id: 'A1', zoneId: 'Left', zoneName: 'Left', region: LEFT, areaM2: 90 },
  { id: 'B1', zoneId: 'Right', zoneName: 'Right', region: RIGHT, areaM2: 90 },
];
const REQUEST = planRequest({
  loadAreaM2: 100,
  swathM: 1.8,
  paceMPerS: 0.5,
  heading: { kind: 'picked', deg: 0 },
});

test('the way from one zone to the next is straight and counts as the next one’s', () => {
  const told: number[] = [];
  const walked = walkSections(
    RESOLVED,
    SECTIONS,
    REQUEST,
    () => false,
    (part) => told.push(part),
  );
  expect(told).toEqual([0.5, 1]); // one of two, two of two
  const [first, second] = walked?.sectionFigures ?? [];
  const passes = walked?.passes ?? [];
  const last = passes.findLast((pass) => pass.sectionId === 'A1')?.line.at(-1);
  const next = passes.find((pass) => pass.sectionId === 'B1')?.line[0];
  const betweenM = Math.hypot((next?.xM ?? 0) - (last?.xM ?? 0), (next?.yM ?? 0) - (last?.yM ?? 0));
  expect(betweenM).toBeGreaterThan(20 - 1e-9); // the gap between the zones
  // Alike but for the way there and how the first is entered.
  expect((second?.offLengthM ?? 0) - betweenM).toBeLessThanOrEqual((first?.offLengthM ?? 0) + 3.6); // two swaths
  expectNear(second?.timeS ?? 0, ((second?.onLengthM ?? 0) + (second?.offLengthM ?? 0)) / 0.5, 1e-9, 's'); // at 0.5 m/s
});

test('a stop is heeded before each section', () => {
  expect(
    walkSections(
      RESOLVED,
      SECTIONS,
      REQUEST,
      () => true,
      () => undefined,
    ),
  ).toBeUndefined();
});
