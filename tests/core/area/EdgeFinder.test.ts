import { expect, test } from 'vitest';
import { outlineSources } from '../../../core/area/index.ts';
import { EdgeFinder } from '../../../core/area/EdgeFinder.ts';
import { outline, rect } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

const sourceOf = (name: string, ring: ReturnType<typeof rect>, keepOffM: number | null = null) =>
  outlineSources({ ...outline('zone', name, ring), keepOffM }, [ring])[0] as NonNullable<
    ReturnType<typeof outlineSources>[0]
  >;

const lawn = sourceOf('lawn', rect(0, 0, 20, 10));
const bed = sourceOf('bed', rect(5, 0, 4, 4));

test('a piece is found on the edge it was cut from, as far along as its middle', () => {
  const found = new EdgeFinder([lawn, bed]).find({ xM: 9, yM: 4.000001 }, { xM: 7, yM: 4 });
  expect(found?.source).toBe(bed);
  expect([found?.from, found?.to]).toEqual([2, 3]); // its north edge, from east to west
  expectNear(found?.t ?? -1, 0.25, 1e-6, 'of the edge'); // 8 is 1 of 4 m from the corner at 9
});

test('where two lie on one line, the one given first holds', () => {
  const [from, to] = [
    { xM: 5, yM: 0 },
    { xM: 9, yM: 0 },
  ];
  expect(new EdgeFinder([lawn, bed]).find(from, to)?.source).toBe(lawn);
  expect(new EdgeFinder([bed, lawn]).find(from, to)?.source).toBe(bed);
});

test('the far edge of a strip is on the edge it is kept off, its round corner on the corner', () => {
  const stripped = sourceOf('pond', rect(30, 0, 6, 6), 3);
  const finder = new EdgeFinder([lawn, stripped]);
  const beside = finder.find({ xM: 31, yM: -3 }, { xM: 34, yM: -3 });
  expect([beside?.source, beside?.from, beside?.to]).toEqual([stripped, 0, 1]); // three metres south of it
  expectNear(beside?.t ?? -1, 2.5 / 6, 1e-9, 'of the edge'); // 32.5 is 2.5 m along
  const [a, b] = [0.2, 0.25].map((turn) => ({ xM: 36 + 3 * Math.cos(turn), yM: 6 + 3 * Math.sin(turn) }));
  const round = finder.find(a ?? { xM: 0, yM: 0 }, b ?? { xM: 0, yM: 0 });
  const corner = round && (round.t === 0 ? round.from : round.t === 1 ? round.to : -1);
  expect(corner).toBe(2); // the corner at (36, 6)
});

test('an edge that lies on nothing goes with the nearest', () => {
  const found = new EdgeFinder([lawn, bed]).find({ xM: 19, yM: 10.5 }, { xM: 17, yM: 10.5 });
  expect([found?.source, found?.from]).toEqual([lawn, 2]); // half a metre north of the lawn's north edge
  expect(new EdgeFinder([]).find({ xM: 0, yM: 0 }, { xM: 1, yM: 0 })).toBeUndefined();
});
