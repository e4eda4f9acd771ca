import { expect, test } from 'vitest';
import { planGround } from '../../../core/plan/index.ts';
import { hoseGround } from '../../../core/hose/index.ts';
import { resolveZones } from '../../../core/zones/index.ts';
import { groundOf, outline, rect } from '../../support/builders.ts';
import { yardOf } from '../../support/drawing.ts';
import { planRequest } from '../../support/planRequest.ts';
import { between, seededRandom } from '../../support/randomYards.ts';

test('on simple yards with one spigot and a load for each section the hose never lies on wet turf', () => {
  let laid = 0;
  for (let seed = 1; seed <= 12; seed++) {
    const random = seededRandom(seed);
    const house = outline('building', 'house', rect(between(random, 6, 14), between(random, 6, 10), 9, 6));
    const outlines = [outline('zone', 'lawn', rect(0, 0, 30, 22)), house];
    const resolved = resolveZones(groundOf(outlines));
    if (!resolved.ok) throw new Error('a lawn round a house resolves');
    const corners = house.outer.kind === 'corners' ? house.outer.corners : [];
    const [a, b] = [corners[seed % 4], corners[(seed + 1) % 4]];
    if (a === undefined || b === undefined) throw new Error('a house has four walls');
    const share = between(random, 0.1, 0.9);
    const spigot = { xM: a.xM + share * (b.xM - a.xM), yM: a.yM + share * (b.yM - a.yM) };
    const marks = [{ id: 's', kind: 'spigot' as const, name: 'tap', at: spigot }];
    const hose = hoseGround(yardOf({ outlines, marks }), { lengthM: 40, spigotIds: null, clearanceM: 0.15 });
    const plan = planGround(resolved.value, planRequest({ loadAreaM2: 110, swathM: 2, hose }));
    if (!plan.ok) throw new Error(`yard ${seed} is planned`);
    const { sections, loads } = plan.value;
    expect(loads).toHaveLength(sections.length); // even sections of one zone, a load each
    laid += sections.length;
    // Found to a millimetre, see farthestAlong: a way may end this far inside the section beside.
    expect(plan.value.hose?.overWetM, `yard ${seed}`).toBeLessThan(0.01);
  }
  expect(laid).toBeGreaterThan(50);
});
