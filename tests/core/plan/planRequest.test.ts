import { expect, test } from 'vitest';
import { newJob } from '../../../core/edits/index.ts';
import { planRequestOf } from '../../../core/plan/index.ts';
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
