import { expect, test } from 'vitest';
import { regionAreaM2 } from '../../../core/kernel/index.ts';
import { partRegion } from '../../../core/sections/partRegion.ts';
import { points, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

const SEARCH = { fan: 12, partings: 8, runs: false, hasty: false };
const work = () => ({ left: 1e9 });
const LAY = { laneRad: 0, swathM: 1, markM: null, loadAreaM2: 1e9 };

test('the shortest parting comes first and halves a long rectangle across', () => {
  const [best] = partRegion({ region: region(rect(0, 0, 20, 5)), loads: 2, rests: [] }, LAY, SEARCH, work());
  expectNear(best?.costM ?? Number.NaN, 5, 1e-9, 'm'); // closed form: straight across
  for (const share of best?.shares ?? []) expectNear(regionAreaM2(share.region), 50, 1e-9, 'm²'); // half of 100
});

test('what fills up the load before and what begins one each go to one side whole', () => {
  const rests = [
    { end: 'head' as const, areaM2: 12, mostM2: 12 },
    { end: 'tail' as const, areaM2: 8, mostM2: 40 },
  ];
  const partings = partRegion({ region: region(rect(0, 0, 20, 5)), loads: 2, rests }, LAY, SEARCH, work());
  for (const { shares } of partings) {
    for (const share of shares) {
      const restsM2 = share.rests.reduce((sum, rest) => sum + rest.areaM2, 0);
      expectNear(regionAreaM2(share.region), share.loads * 40 + restsM2, 1e-9, 'm²'); // (100 - 20) / 2 a load
    }
    expect(shares.flatMap((share) => share.rests.map((rest) => rest.end)).sort()).toEqual(['head', 'tail']);
  }
  expect(partings.length).toBeGreaterThan(0);
});

test('ground that whole lines fall to pieces on is parted along single chords', () => {
  // A comb of five teeth, each 2 m x 10 m, on a bar 1 m high: any level line but those in the bar leaves pieces.
  const teeth = [0, 4, 8, 12, 16].toReversed();
  const ring = points(
    [0, 0],
    [18, 0],
    ...teeth.flatMap((x): [number, number][] => [
      [x + 2, 11],
      [x, 11],
      ...(x > 0
        ? ([
            [x, 1],
            [x - 2, 1],
          ] as [number, number][])
        : []),
    ]),
  );
  const partings = partRegion(
    { region: region(ring), loads: 7, rests: [] },
    { ...LAY, laneRad: Math.PI / 2 },
    SEARCH,
    work(),
  );
  expect(partings.length).toBeGreaterThan(0);
  const wholeM2 = regionAreaM2(region(ring));
  for (const { shares } of partings) {
    const sumM2 = regionAreaM2(shares[0].region) + regionAreaM2(shares[1].region);
    expectNear(sumM2, wholeM2, 1e-9 * wholeM2, 'm²'); // the law: nothing lost
  }
});
