import { describe, expect, test } from 'vitest';
import { planJob } from '../../../core/plan/index.ts';
import { resolveZones } from '../../../core/zones/index.ts';
import { sampleYard } from '../../../electron/host/sample.ts';
import { expectNear } from '../../support/expectNear.ts';

const yard = sampleYard();

describe('the sample yard', () => {
  test('has the net and treated areas its README states', () => {
    const resolved = resolveZones(yard);
    if (!resolved.ok) throw new Error(JSON.stringify(resolved.problems));
    // Closed forms and GeographicLib Planimeter 2.1.2, as worked in sample-maps/README.md; Planimeter prints 1e-4 m².
    const stated = [
      { name: 'back lawn', netM2: 326.6631, treatedM2: 296.8879 },
      { name: 'front lawn', netM2: 454.013, treatedM2: 454.013 },
      { name: 'west side', netM2: 84, treatedM2: 80 },
    ];
    expect(resolved.value.zones.map((zone) => zone.name)).toEqual(stated.map((zone) => zone.name));
    for (const [at, { netM2, treatedM2 }] of stated.entries()) {
      expectNear(resolved.value.zones[at]?.turfAreaM2 ?? Number.NaN, netM2, 5e-4, 'm²');
      expectNear(resolved.value.zones[at]?.treatedAreaM2 ?? Number.NaN, treatedM2, 5e-4, 'm²');
    }
  });

  test('shows nothing to mend: no overlap, no warning', () => {
    const resolved = resolveZones(yard);
    expect(resolved).toMatchObject({ ok: true, value: { overlaps: [], warnings: [] } });
  });

  test('is already planned: its job goes through and fills a load a section', () => {
    const planned = planJob(yard, yard.jobs[0]?.id ?? '');
    if (!planned.ok) throw new Error(JSON.stringify(planned.problems));
    const { ground, mixes } = planned.value;
    expect(new Set(ground.sections.map((section) => section.zoneName))).toEqual(
      new Set(['back lawn', 'front lawn', 'west side']),
    );
    expect(mixes).toHaveLength(ground.sections.length);
    // 16 fl oz in the bottle; a load never needs more than it holds
    for (const mix of mixes) expect(mix.productL).toBeLessThanOrEqual(16 * 0.0295735295625 + 1e-12); // US fl oz, NIST HB 44
  });

  test('is the same every time, so that two first starts make the same file', () => {
    expect(sampleYard()).toEqual(yard);
    const ids = [...yard.outlines, ...yard.marks].map((row) => row.id);
    expect(new Set(ids).size).toBe(ids.length);
  });
});
