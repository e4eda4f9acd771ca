import { expect, test } from 'vitest';
import { sheetFigures } from '../../../core/sheet/index.ts';
import { loadsOfZone } from '../../../renderer/mix/loadsOfZone.ts';
import { handMadePlan } from '../../support/handMadePlan.ts';
import { THREE_ZONES } from '../../support/handMadeYards.ts';
import { inOneLoad } from '../../support/sheetContexts.ts';

test('a zone has the loads that go on it, each once, and all of its product', () => {
  const { plan } = handMadePlan(THREE_ZONES);
  const figures = sheetFigures(inOneLoad(plan, 'A1', 'A3'), 'us');
  const [back] = figures.zones;
  const own = loadsOfZone(figures, back?.zoneId ?? '');
  expect(own.loads).toBe(2); // three sections, the first and the last from one load
  const productL = figures.loads.slice(0, 3).reduce((sum, load) => sum + load.productL, 0);
  expect(own.productL).toBe(productL);
});
