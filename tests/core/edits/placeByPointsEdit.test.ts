import { expect, test } from 'vitest';
import { applyEdit, moveYardEdit, placeByPointsEdit, placeYardEdit } from '../../../core/edits/index.ts';
import { type KnownPlace, yardToLonLat } from '../../../core/earth/index.ts';
import { distanceM } from '../../../core/kernel/index.ts';
import type { YardPoint } from '../../../core/spaces.ts';
import type { Picture, Yard } from '../../../core/yard.ts';
import { outline, points, rect } from '../../support/builders.ts';
import { ringAt, yardOf } from '../../support/drawing.ts';
import { expectNear } from '../../support/expectNear.ts';

const origin = { latDeg: 39.9, lonDeg: -86.2 };
const loose = yardOf({ outlines: [outline('zone', 'lawn', rect(0, 0, 60, 40))] });

/** Where the corners of the lawn lie once the yard is placed there, and where they were drawn. */
function knownPlaces(drawn: Yard, placed: Yard): KnownPlace[] {
  if (placed.details.frame.kind !== 'placed') throw new Error('not placed');
  const { origin: from } = placed.details.frame;
  const there = ringAt(placed, 0);
  return ringAt(drawn, 0).map((at, i) => ({ at, place: yardToLonLat(from, there[i] as YardPoint) }));
}

function made(yard: Yard, known: readonly KnownPlace[]) {
  const placed = placeByPointsEdit(yard, known);
  if (!placed.ok) throw new Error(JSON.stringify(placed.problems));
  return { ...placed.value, yard: applyEdit(yard, placed.value.edit) };
}

test('a loose yard laid down by points has every corner at the place it was measured', () => {
  const truth = applyEdit(loose, placeYardEdit(loose, { origin, turnDeg: 33 }));
  const { yard } = made(loose, knownPlaces(loose, truth).slice(0, 2));
  const again = knownPlaces(loose, yard);
  for (const [i, { place }] of knownPlaces(loose, truth).entries()) {
    expectNear(again[i]?.place.latDeg ?? 0, place.latDeg, 1e-10, '°'); // 1e-10° is 0.01 mm
    expectNear(again[i]?.place.lonDeg ?? 0, place.lonDeg, 1e-10, '°');
  }
});

test('over a picture that knows its place, what is drawn is moved in the frame and the picture stays', () => {
  const corners = points([0, 50], [80, 50], [80, 0], [0, 0]);
  const placement = { kind: 'georeferenced', crs: 'EPSG:32616', corners } as unknown as Picture['placement'];
  const picture = {
    id: 'air',
    name: 'Air',
    imageHash: '00',
    mediaType: 'image/png',
    widthPx: 800,
    heightPx: 500,
    attribution: '',
    cornerSigmaM: null,
    scaleSigma: null,
    placement,
  } as const;
  const placed: Yard = {
    ...loose,
    pictures: [picture],
    details: { ...loose.details, frame: { kind: 'placed', origin } },
  };
  const motion = { about: { xM: 0, yM: 0 }, to: { xM: 4, yM: -3 }, turnDeg: -7 };
  const truth = applyEdit(placed, moveYardEdit(placed, motion));
  const { yard, ratio } = made(placed, knownPlaces(placed, truth));
  expect(yard.details).toBe(placed.details);
  expect(yard.pictures[0]).toBe(picture);
  for (const [i, at] of ringAt(yard, 0).entries()) {
    expectNear(distanceM(at, ringAt(truth, 0)[i] as YardPoint), 0, 1e-7, 'm'); // the motion it was made with
  }
  expectNear(ratio, 1, 1e-9, ''); // nothing was scaled
});

test('one point alone places nothing', () => {
  expect(placeByPointsEdit(loose, [{ at: { xM: 0, yM: 0 }, place: origin }])).toMatchObject({
    ok: false,
    problems: [{ kind: 'value/too-few' }],
  });
});
