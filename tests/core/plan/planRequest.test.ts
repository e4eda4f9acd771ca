import { expect, test } from 'vitest';
import { newJob } from '../../../core/edits/index.ts';
import { planRequestOf } from '../../../core/plan/index.ts';
import type { HeldCut, Job } from '../../../core/yard.ts';
import { outline, rect } from '../../support/builders.ts';
import { yardOf } from '../../support/drawing.ts';
import { applicatorWith } from '../../support/products.ts';

const SAID = { id: 'j', name: 'May', productId: 'p', applicatorId: 'a' };
const TAP = { id: 'tap', kind: 'spigot', name: 'Tap', at: { xM: 1, yM: 2 } } as const;

test('a job asks for its own lanes, cuts and hose, and its applicator for swath, pace and step', () => {
  const job = newJob({
    ...SAID,
    policy: 'fewest',
    rounds: 2,
    hose: { lengthM: 15, spigotIds: ['tap'], clearanceM: 0.1 },
  });
  const applicator = applicatorWith({ swathM: 1.5, paceMPerS: 0.8, stepM: 0.6 });
  const request = planRequestOf(yardOf({ marks: [TAP] }), job, applicator, 90);
  expect(request).toMatchObject({ loadAreaM2: 90, swathM: 1.5, paceMPerS: 0.8, stepM: 0.6 });
  expect(request).toMatchObject({ policy: 'fewest', rounds: 2 });
  expect(request.hose?.spigots.map(({ id }) => id)).toEqual(['tap']);
});

test('a cut held in a zone that is left out of the job waits for it; one of a zone that is gone is asked for', () => {
  const front = outline('zone', 'front', rect(0, 0, 9, 9));
  const back = outline('zone', 'back', rect(20, 0, 9, 9));
  const held = (zoneId: string): HeldCut => ({
    id: zoneId,
    zoneId,
    from: { xM: 3, yM: 0 },
    to: { xM: 3, yM: 9 },
  });
  const heldCuts = ['front', 'back', 'gone'].map(held);
  const yard = yardOf({ outlines: [front, back] });
  const askedFor = (zoneIds: Job['zoneIds']): string[] =>
    planRequestOf(yard, newJob({ ...SAID, zoneIds, heldCuts }), applicatorWith({}), 90).heldCuts.map(
      ({ zoneId }) => zoneId,
    );
  expect(askedFor(['front'])).toEqual(['front', 'gone']);
  expect(askedFor(null)).toEqual(['front', 'back', 'gone']);
});
