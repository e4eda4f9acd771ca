import geographic from 'geographiclib-geodesic';
import { describe, expect, test } from 'vitest';
import { compareYards } from '../../../core/compare/index.ts';
import { carrierBetween } from '../../../core/compare/carryAcross.ts';
import { emptyYard } from '../../../core/edits/index.ts';
import { lonLatToYard, yardToLonLat } from '../../../core/earth/index.ts';
import type { LonLat, YardPoint } from '../../../core/spaces.ts';
import type { Outline, Yard } from '../../../core/yard.ts';
import { mapRing, outline, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

const ORIGIN: LonLat = { lonDeg: -104.9, latDeg: 39.7 };
/** A place so far east and north of the origin by a geodesic (geographiclib-geodesic 2.2.0). */
function away(from: LonLat, bearingDeg: number, lengthM: number): LonLat {
  const { lat2, lon2 } = geographic.Geodesic.WGS84.Direct(from.latDeg, from.lonDeg, bearingDeg, lengthM);
  return { lonDeg: lon2 ?? Number.NaN, latDeg: lat2 ?? Number.NaN };
}

function placed(origin: LonLat, outlines: readonly Outline[]): Yard {
  return { ...emptyYard('Yard', { kind: 'placed', origin }, 'metric', '2026-05-01'), outlines };
}

const LAWN = outline('zone', 'Lawn', rect(-40, -20, 80, 40));

describe('two frames', () => {
  test('one lawn drawn in frames up to 3 km apart has changed by nothing to be seen', () => {
    for (const [bearingDeg, lengthM] of [
      [90, 25],
      [200, 400],
      [315, 3000],
    ] as const) {
      const origin = away(ORIGIN, bearingDeg, lengthM);
      const move = (point: YardPoint): YardPoint => lonLatToYard(origin, yardToLonLat(ORIGIN, point));
      const later = outline('zone', 'Lawn', mapRing(rect(-40, -20, 80, 40), move));
      const comparison = compareYards(placed(ORIGIN, [LAWN]), placed(origin, [later]));
      if (!comparison.ok) throw new Error('not compared');
      expectNear(comparison.value.framesApartM ?? Number.NaN, lengthM, lengthM * 0.006, 'm'); // a sphere, no ellipsoid
      const { lostM2, gainedM2 } = comparison.value.all.gross;
      expectNear(lostM2 + gainedM2, 0, 1e-3, 'm²'); // 240 m of edge, a micrometre each: 2.4e-4
    }
  });

  test('a corner keeps its geodesic distance and bearing from a corner of the other yard', () => {
    const origin = away(ORIGIN, 60, 800);
    const carrier = carrierBetween(placed(ORIGIN, [LAWN]), placed(origin, []));
    if (!carrier.ok) throw new Error('not carried');
    const [carried] = carrier.value.carry([region(rect(10, 20, 5, 5))]);
    const corner = carried?.outer[0] as YardPoint;
    const { lat2, lon2 } = geographic.Geodesic.WGS84.Direct(
      ORIGIN.latDeg,
      ORIGIN.lonDeg,
      (Math.atan2(10, 20) * 180) / Math.PI,
      Math.hypot(10, 20),
    ); // from 0, 0 to 10, 20
    const { s12, azi1 } = geographic.Geodesic.WGS84.Inverse(
      origin.latDeg,
      origin.lonDeg,
      lat2 ?? 0,
      lon2 ?? 0,
    );
    expectNear(Math.hypot(corner.xM, corner.yM), s12 ?? Number.NaN, 1e-5, 'm'); // scale 800 m from the middle: 8e-9
    const bearingDeg = (Math.atan2(corner.xM, corner.yM) * 180) / Math.PI;
    expectNear(bearingDeg, azi1 ?? Number.NaN, 1e-4, '°'); // north of the frame is north at its origin
  });

  test('there and back, a corner is where it was to 1e-8 m', () => {
    const origin = away(ORIGIN, 250, 3000);
    const [there, back] = [
      carrierBetween(placed(ORIGIN, []), placed(origin, [])),
      carrierBetween(placed(origin, []), placed(ORIGIN, [])),
    ];
    if (!there.ok || !back.ok) throw new Error('not carried');
    const corners = rect(-120, 80, 300, 45);
    const [home] = back.value.carry(there.value.carry([region(corners)]));
    corners.forEach(({ xM, yM }, i) => {
      const again = home?.outer[i] ?? { xM: Number.NaN, yM: Number.NaN };
      expectNear(Math.hypot(again.xM - xM, again.yM - yM), 0, 1e-8, 'm'); // as the doc comment says
    });
  });

  test('the middle of a long edge stays on the edge to a micrometre, 3 km away', () => {
    const origin = away(ORIGIN, 45, 3000);
    const carrier = carrierBetween(placed(ORIGIN, [LAWN]), placed(origin, []));
    if (!carrier.ok) throw new Error('not carried');
    const edge = [
      { xM: 0, yM: -50 },
      { xM: 0, yM: 0 },
      { xM: 0, yM: 50 },
    ];
    const [carried] = carrier.value.carry([{ outer: edge, holes: [] }]);
    const [a, middle, b] = (carried?.outer ?? []) as unknown as [YardPoint, YardPoint, YardPoint];
    const offM = Math.hypot(middle.xM - (a.xM + b.xM) / 2, middle.yM - (a.yM + b.yM) / 2);
    expectNear(offM, 0, 1e-6, 'm'); // as the doc comment says
    expect(offM).toBeGreaterThan(0); // the frames do bend against each other
  });

  test('yards too far apart are not two states of one ground', () => {
    for (const lengthM of [11_000, 5_000_000, 20_000_000]) {
      const origin = away(ORIGIN, 30, lengthM);
      const problems = [{ kind: 'compare/too-far-apart' }];
      expect(compareYards(placed(ORIGIN, [LAWN]), placed(origin, [LAWN]))).toMatchObject({ problems });
    }
    // The origins are near enough, but a lawn at the far side of its frame would leave the other's.
    const far = outline('zone', 'Far', rect(-6000, 0, 10, 10));
    const comparison = compareYards(placed(ORIGIN, [far]), placed(away(ORIGIN, 90, 5000), []));
    expect(comparison).toMatchObject({ ok: false, problems: [{ kind: 'compare/too-far-apart' }] });
  });

  test('two loose yards are laid over each other as they are drawn', () => {
    const loose = (outlines: readonly Outline[]): Yard => ({
      ...placed(ORIGIN, outlines),
      details: { ...placed(ORIGIN, []).details, frame: { kind: 'loose' } },
    });
    const comparison = compareYards(loose([LAWN]), loose([LAWN]));
    expect(comparison).toMatchObject({
      ok: true,
      value: { framesApartM: null, all: { gross: { lostM2: 0 } } },
    });
  });
});
