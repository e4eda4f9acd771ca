import { writeFileSync } from 'node:fs';
import { straight } from '../core/curves/index.ts';
import { emptyYard, newOutline } from '../core/edits/index.ts';
import type { LonLat, YardPoint } from '../core/spaces.ts';
import type { Mark, Outline, OutlineKind, UnitSystem, Yard } from '../core/yard.ts';
import { geoJsonText, yardToGeoJson } from '../electron/host/exporters/geoJson.ts';
import { sampleYard } from '../electron/host/sample.ts';

/**
 * Writes the sample maps beside this file: `node sample-maps/build.ts`. The yards are invented; their true areas,
 * and where those come from, are in README.md.
 */
type Taped = readonly (readonly [eastM: number, northM: number])[];

const ROUND_BED_CORNERS = 64;

const larkfield = sampleYard();

const rectangle = yardOf(
  'Fennimore Court, rectangle by numbers',
  'metric',
  { lonDeg: 5.4, latDeg: 52.1 },
  [
    outline('zone', 'lawn', box(0, 0, 30, 20)),
    outline('bed', 'rose bed', box(12, 9, 17, 13)),
    outline('hardscape', 'terrace', box(20, 0, 26, 3)),
    outline('keep-off', 'ditch strip', box(0, 18.5, 30, 20)),
    outline('check-plot', 'check plot', box(3, 3, 5, 5)),
  ],
  [{ id: 'spigot-1', kind: 'spigot', name: 'tap by the terrace', at: { xM: 20, yM: 0 } }],
);

const lShape = yardOf(
  'Tallow Bend, L-shape with a round bed',
  'metric',
  { lonDeg: 174.9, latDeg: -41.2 },
  [
    outline('zone', 'lawn', [
      [0, 0],
      [24, 0],
      [24, 10],
      [12, 10],
      [12, 22],
      [0, 22],
    ]),
    outline('bed', 'round bed', circle(6, 6, 3)),
  ],
  [{ id: 'landmark-1', kind: 'landmark', name: 'inner corner', at: { xM: 12, yM: 10 } }],
);

for (const [name, yard] of [
  ['larkfield-lane', larkfield],
  ['rectangle', rectangle],
  ['l-shape', lShape],
] as const) {
  const made = yardToGeoJson(yard, name);
  if (!made.ok) throw new Error(JSON.stringify(made.problems));
  writeFileSync(new URL(`./${name}.geojson`, import.meta.url), geoJsonText(made.value));
}

function yardOf(
  name: string,
  unitSystem: UnitSystem,
  origin: LonLat,
  outlines: readonly Outline[],
  marks: readonly Mark[],
): Yard {
  const empty = emptyYard(name, { kind: 'placed', origin }, unitSystem, '2026-05-12');
  return { ...empty, outlines, marks };
}

function outline(kind: OutlineKind, name: string, taped: Taped): Outline {
  const outer = taped.map(([xM, yM]): YardPoint => ({ xM, yM }));
  return newOutline({ id: `${kind}-${name}`, kind, name, outer: straight(outer) });
}

function box(west: number, south: number, east: number, north: number): Taped {
  return [
    [west, south],
    [east, south],
    [east, north],
    [west, north],
  ];
}

function circle(eastM: number, northM: number, radiusM: number): Taped {
  return Array.from({ length: ROUND_BED_CORNERS }, (_, corner) => {
    const turn = (2 * Math.PI * corner) / ROUND_BED_CORNERS;
    return [eastM + radiusM * Math.cos(turn), northM + radiusM * Math.sin(turn)] as const;
  });
}
