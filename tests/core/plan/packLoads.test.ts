import { describe, expect, test } from 'vitest';
import { packLoads } from '../../../core/plan/packLoads.ts';
import type { Section } from '../../../core/sections/index.ts';
import { rect, region } from '../../support/builders.ts';

function section(id: string, atXM: number, areaM2: number): Section {
  const zoneName = id.slice(0, 1);
  return {
    id,
    zoneId: zoneName,
    zoneName,
    region: region(rect(atXM, 0, areaM2 / 10, 10)),
    areaM2,
  };
}

const ZONES = [
  { zoneId: 'A', amountFactor: 1 },
  { zoneId: 'B', amountFactor: 1.2 },
];

function packed(sections: readonly Section[], loadAreaM2: number) {
  return packLoads({ sections, filling: sections.map(({ id }) => id) }, ZONES, {
    policy: 'even',
    loadAreaM2,
  });
}

describe('loads', () => {
  test('hold ground as amounts are worked out from it', () => {
    const sections = [section('A1', 0, 40), section('B1', 20, 50)];
    expect(packed(sections, 100)).toEqual([{ number: 1, sectionIds: ['A1', 'B1'], areaM2: 100 }]); // 40 + 50 x 1.2
    expect(packed(sections, 99).map(({ areaM2 }) => areaM2)).toEqual([40, 60]); // 100 m² are too much
  });

  test('are numbered by their first section, and list theirs in its order', () => {
    const sections = [
      section('A1', 0, 90),
      section('A2', 30, 30),
      section('A3', 60, 80),
      section('B1', 90, 50),
    ];
    const loads = packed(sections, 100);
    expect(loads.map(({ number, sectionIds }) => [number, ...sectionIds])).toEqual([
      [1, 'A1'],
      [2, 'A2', 'B1'], // 30 + 60 m²; with A3 alone there would be as many, but 90 and 80 m² leave room for none
      [3, 'A3'],
    ]);
  });
});
