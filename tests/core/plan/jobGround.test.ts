import { expect, test } from 'vitest';
import { newJob } from '../../../core/edits/index.ts';
import { jobGround } from '../../../core/plan/jobGround.ts';
import type { Job } from '../../../core/yard.ts';
import { outline, rect } from '../../support/builders.ts';
import { yardOf } from '../../support/drawing.ts';
import { applicatorWith, productWith } from '../../support/products.ts';

function groundOf(job: Partial<Job>) {
  const outlines = [outline('zone', 'front', rect(0, 0, 20, 9)), outline('zone', 'side', rect(15, 0, 10, 9))];
  return jobGround(
    {
      ...yardOf({ outlines }),
      products: [productWith()],
      applicators: [applicatorWith()],
      jobs: [newJob({ id: 'j', name: 'June', productId: 'p1', applicatorId: 'a1', ...job })],
    },
    'j',
  );
}

test('a job has its own zones only, less what a zone outside it owns', () => {
  const ground = groundOf({ zoneIds: ['side'] });
  const zones = ground.ok ? ground.value.resolved.zones : [];
  expect(zones.map(({ zoneId, treatedAreaM2 }) => [zoneId, Math.round(treatedAreaM2)])).toEqual([
    ['side', 45], // 10 x 9 m less the 5 x 9 m the front was drawn with first
  ]);
});

test('what is missing is named', () => {
  const none = groundOf({ productId: 'nothing' });
  expect(none.ok ? null : none.problems[0]).toMatchObject({
    kind: 'value/missing',
    where: { field: 'product of June' },
  });
});
