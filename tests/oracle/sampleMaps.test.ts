import { tracedRing } from '../../core/curves/index.ts';
import { readFileSync } from 'node:fs';
import geodesic from 'geographiclib-geodesic';
import { describe, expect, test } from 'vitest';
import { resolveZones } from '../../core/zones/index.ts';
import { draftYard } from '../../electron/host/importers/index.ts';
import { expectNear } from '../support/expectNear.ts';

/** True areas as stated and worked in sample-maps/README.md, in square metres. */
const STATED = [
  { file: 'larkfield-lane', net: [326.6631, 454.013, 84], treated: [296.8879, 454.013, 80] }, // README: Planimeter
  { file: 'rectangle', net: [562], treated: [513] }, // 600 − 38; 562 − 45 − 4
  { file: 'l-shape', net: [355.7711], treated: [355.7711] }, // 384 − ½ × 64 × 3² × sin(2π/64)
] as const;

interface Feature {
  readonly properties: { readonly name: string };
  readonly geometry: { readonly type: string; readonly coordinates: [number, number][][] };
}

function bytesOf(file: string): Uint8Array {
  return readFileSync(new URL(`../../sample-maps/${file}.geojson`, import.meta.url));
}

describe('the sample maps', () => {
  test.each(STATED)('$file has the areas stated for it', async ({ file, net, treated }) => {
    const drafted = await draftYard({ fileName: `${file}.geojson`, bytes: bytesOf(file) }, '2026-05-12');
    if (!drafted.ok) throw new Error(JSON.stringify(drafted.problems));
    const resolved = resolveZones(drafted.value.document);
    if (!resolved.ok) throw new Error(JSON.stringify(resolved.problems));
    const { zones, warnings } = resolved.value;
    expect(warnings).toEqual([]);
    expect(zones).toHaveLength(net.length);
    for (const [at, zone] of zones.entries()) {
      expectNear(zone.turfAreaM2, net[at] ?? Number.NaN, 5e-4, 'm²'); // four decimals are stated
      expectNear(zone.treatedAreaM2, treated[at] ?? Number.NaN, 5e-4, 'm²');
    }
  });

  test.each(STATED)(
    '$file: every outline agrees with the geodesic polygon of its positions',
    async ({ file }) => {
      const bytes = bytesOf(file);
      const { features } = JSON.parse(new TextDecoder().decode(bytes)) as { features: Feature[] };
      const drafted = await draftYard({ fileName: file, bytes }, '2026-05-12');
      if (!drafted.ok) throw new Error(JSON.stringify(drafted.problems));
      const polygons = features.filter((feature) => feature.geometry.type === 'Polygon');
      for (const [at, feature] of polygons.entries()) {
        const outline = drafted.value.document.outlines[at];
        const polygon = geodesic.Geodesic.WGS84.Polygon(false);
        for (const [lonDeg, latDeg] of feature.geometry.coordinates[0]?.slice(0, -1) ?? []) {
          polygon.AddPoint(latDeg, lonDeg);
        }
        // geographiclib-geodesic 2.2.0: area on the ellipsoid, positive counter-clockwise
        const trueM2 = polygon.Compute(false, true).area ?? Number.NaN;
        const ring = outline ? tracedRing(outline.outer) : [];
        const oursM2 = ring.reduce((sum, { xM, yM }, corner) => {
          const next = ring[(corner + 1) % ring.length] ?? { xM, yM };
          return sum + (xM * next.yM - next.xM * yM) / 2;
        }, 0);
        expect(outline?.name).toBe(feature.properties.name);
        expectNear(oursM2, trueM2, Math.max(1e-7 * trueM2, 1e-4), 'm²'); // 1e-7 promised; the oracle itself: 0.0013 m² (man Planimeter)
      }
    },
  );
});
