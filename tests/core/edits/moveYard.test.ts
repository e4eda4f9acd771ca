import { describe, expect, test } from 'vitest';
import { straight, tracedRing } from '../../../core/curves/index.ts';
import {
  applyEdit,
  hasFixedGround,
  inverseOf,
  loosenYardEdit,
  moveYardEdit,
  placeOfMiddle,
  newOutline,
  placeYardEdit,
  yardMiddle,
  newJob,
} from '../../../core/edits/index.ts';
import { movePoint } from '../../../core/frame/index.ts';
import { GRID_M, ringPerimeterM } from '../../../core/kernel/index.ts';
import type { YardPoint } from '../../../core/spaces.ts';
import type { Job, Outline, Picture, Traced, TracedCorner, Yard } from '../../../core/yard.ts';
import { resolveZones } from '../../../core/zones/index.ts';
import { outline, rect } from '../../support/builders.ts';
import { yardOf } from '../../support/drawing.ts';
import { expectNear } from '../../support/expectNear.ts';
import { between, randomStar, randomYard, seededRandom, yardOutlines } from '../../support/randomYards.ts';

const corners = [
  { xM: -20, yM: 15 },
  { xM: 20, yM: 15 },
  { xM: 20, yM: -15 },
  { xM: -20, yM: -15 },
] as const;
const plan: Picture = {
  id: 'plan',
  name: 'Plan',
  imageHash: '00',
  mediaType: 'image/png',
  widthPx: 800,
  heightPx: 600,
  attribution: '',
  cornerSigmaM: null,
  scaleSigma: null,
  placement: { kind: 'scaled', lengths: [], corners },
};
const fromAir: Picture = {
  ...plan,
  id: 'air',
  placement: { kind: 'georeferenced', crs: 'EPSG:32616', corners },
};
const heights = { id: 'e', name: 'Heights', columns: 2, rows: 2, corners, heightsMm: [0, 1, 2, null] };
const job: Job = newJob({
  id: 'j',
  name: 'Iron',
  productId: 'p',
  applicatorId: 'a',
  heading: { kind: 'picked', deg: 350 },
  heldCuts: [{ id: 'h', zoneId: 'lawn', from: { xM: 30, yM: 0 }, to: { xM: 30, yM: 40 } }],
  startAt: { xM: 10, yM: 20 },
});
const origin = { latDeg: 39.9, lonDeg: -86.2 };

/** A loose yard with something in every part that has a place, its middle at (30, 20). */
const full: Yard = {
  ...yardOf({
    outlines: [outline('zone', 'lawn', rect(10, 0, 40, 40), rect(20, 10, 5, 5))],
    marks: [{ id: 'tap', kind: 'spigot', name: 'Tap', at: { xM: 30, yM: 25 } }],
    pictures: [plan],
  }),
  elevations: [heights],
  checks: [{ id: 'c', name: 'Diagonal', from: { xM: 10, yM: 0 }, to: { xM: 50, yM: 40 }, tapedM: 56.5 }],
  jobs: [job],
};

/** Twice the area about the first corner: the plain shoelace, not the kernel's. */
function shoelaceM2(ring: readonly YardPoint[]): number {
  const first = ring[0] ?? { xM: 0, yM: 0 };
  return ring.reduce((sum, at, i) => {
    const next = ring[(i + 1) % ring.length] ?? at;
    return sum + ((at.xM - first.xM) * (next.yM - first.yM) - (next.xM - first.xM) * (at.yM - first.yM)) / 2;
  }, 0);
}

/** Every third corner begins an arc, every fifth a smooth run. */
function curved(ring: readonly YardPoint[]): Traced {
  return {
    kind: 'corners',
    corners: ring.map((at, i): TracedCorner => {
      const next = ring[(i + 1) % ring.length] ?? at;
      const bulge = { xM: (next.yM - at.yM) * 0.15, yM: (at.xM - next.xM) * 0.15 };
      const via = { xM: (at.xM + next.xM) / 2 + bulge.xM, yM: (at.yM + next.yM) / 2 + bulge.yM };
      if (i % 3 === 0) return { ...at, run: { kind: 'arc', via } };
      return i % 5 === 0 ? { ...at, run: { kind: 'smooth' } } : at;
    }),
  };
}

function plainOutlines(seed: number, farM: number): readonly Outline[] {
  const random = seededRandom(seed);
  const away = { xM: between(random, -farM, farM), yM: between(random, -farM, farM) };
  return yardOutlines(randomYard(random, 3 + Math.floor(random() * 40), 5)).map((made) => ({
    ...made,
    outer: straight(tracedRing(made.outer).map(({ xM, yM }) => ({ xM: xM + away.xM, yM: yM + away.yM }))),
  }));
}

function curvedOutlines(seed: number): readonly Outline[] {
  const random = seededRandom(seed);
  const centre = { xM: between(random, -200, 200), yM: between(random, -200, 200) };
  const star = randomStar(random, 12, centre, between(random, 5, 50), 0.4);
  const round = newOutline({ id: 'round', kind: 'zone', name: 'round', outer: curved(star) });
  const circle = { kind: 'circle', centre, radiusM: between(random, 0.5, 30) } as const;
  const ellipse = {
    kind: 'ellipse',
    centre,
    halfLengthM: between(random, 5, 30),
    halfWidthM: between(random, 0.5, 5),
    bearingDeg: between(random, 0, 360),
  } as const;
  return [
    round,
    { ...round, id: 'circle', name: 'circle', outer: circle },
    { ...round, id: 'ellipse', name: 'ellipse', outer: ellipse },
  ];
}

describe('a loose yard laid down on earth', () => {
  const placed = applyEdit(full, placeYardEdit(full, { origin, turnDeg: 90 }));

  test('has its middle at the place given, and everything turned about it, clockwise', () => {
    expect(placed.details.frame).toEqual({ kind: 'placed', origin });
    // The middle is (30, 20); the tap 5 m north of it is 5 m east after a quarter turn.
    expectNear(placed.marks[0]?.at.xM ?? Number.NaN, 5, 1e-12, 'm');
    expectNear(placed.marks[0]?.at.yM ?? Number.NaN, 0, 1e-12, 'm');
    // The check's far end (50, 40) is 20 east and 20 north of the middle: (20, -20).
    expectNear(placed.checks[0]?.to.xM ?? Number.NaN, 20, 1e-12, 'm');
    expectNear(placed.checks[0]?.to.yM ?? Number.NaN, -20, 1e-12, 'm');
    // The picture's corner (-20, 15), like the elevation's, is 50 west and 5 south of the middle: (-5, 50).
    for (const moved of [placed.pictures[0]?.placement, placed.elevations[0]]) {
      const [first] = moved !== undefined && 'corners' in moved ? moved.corners : [];
      expectNear(first?.xM ?? Number.NaN, -5, 1e-12, 'm');
      expectNear(first?.yM ?? Number.NaN, 50, 1e-12, 'm');
    }
    const [moved] = placed.jobs;
    expect(moved?.heading).toEqual({ kind: 'picked', deg: 80 }); // 350 + 90 - 360
    // What has a place in the job moves too: 20 south of the middle goes 20 west, 20 west of it 20 north.
    expectNear(moved?.heldCuts[0]?.from.xM ?? Number.NaN, -20, 1e-12, 'm');
    expectNear(moved?.heldCuts[0]?.from.yM ?? Number.NaN, 0, 1e-12, 'm');
    expectNear(moved?.startAt?.xM ?? Number.NaN, 0, 1e-12, 'm');
    expectNear(moved?.startAt?.yM ?? Number.NaN, 20, 1e-12, 'm');
    expect(moved?.finishAt).toBeNull();
    expectNear(yardMiddle(placed).xM, 0, 1e-12, 'm'); // the frame's origin is in the middle
    expectNear(yardMiddle(placed).yM, 0, 1e-12, 'm');
  });

  test('comes back, to the last bit, in one undo', () => {
    for (let seed = 1; seed <= 20; seed++) {
      const random = seededRandom(seed);
      const yard = { ...full, outlines: [...plainOutlines(seed, 200), ...curvedOutlines(seed)] };
      const edit = placeYardEdit(yard, { origin, turnDeg: between(random, -180, 180) });
      expect(applyEdit(applyEdit(yard, edit), inverseOf(edit))).toEqual(yard);
    }
  });

  test.each([
    ['of corners', (seed: number) => plainOutlines(seed, 200)],
    // As a loose yard in the coordinates of some grid would: corners there hold a nanometre.
    ['of corners, drawn as far out as grid coordinates are', (seed: number) => plainOutlines(seed, 5e6)],
    ['of curves', curvedOutlines],
  ])('keeps every area %s to 1e-12', (_of, outlinesOf) => {
    for (let seed = 1; seed <= 100; seed++) {
      const turnDeg = between(seededRandom(seed), -180, 180);
      const yard = { ...full, marks: [], outlines: outlinesOf(seed) };
      const moved = applyEdit(yard, placeYardEdit(yard, { origin, turnDeg }));
      for (const [i, { outer, name }] of yard.outlines.entries()) {
        const before = shoelaceM2(tracedRing(outer));
        const after = shoelaceM2(tracedRing((moved.outlines[i] as Outline).outer));
        expectNear(after / before, 1, 1e-12, `of ${name}, seed ${seed}`); // design, section 4
      }
    }
  });
});

test('net areas of a yard put on earth are the same to the kernel’s grid, on which its corners lie anew', () => {
  for (let seed = 1; seed <= 60; seed++) {
    const random = seededRandom(seed);
    const { zone, beds } = randomYard(random, 12, 6);
    const outlines = yardOutlines({ zone, beds }).map((each, i) => ({
      ...each,
      keepOffM: i === 1 ? 0.5 : null,
    }));
    const yard = { ...full, marks: [], outlines };
    const edit = placeYardEdit(yard, { origin, turnDeg: between(random, -180, 180) });
    const [before, after] = [yard, applyEdit(yard, edit)].map((each) => {
      const resolved = resolveZones(each);
      if (!resolved.ok) throw new Error(JSON.stringify(resolved.problems[0]));
      return resolved.value.zones[0];
    });
    const edgesM = outlines.reduce((sum, { outer }) => sum + ringPerimeterM(tracedRing(outer)), 0);
    for (const of of ['grossAreaM2', 'turfAreaM2', 'treatedAreaM2'] as const) {
      // A corner moves by up to 0.7 of a grid step, and its edges with it.
      expectNear(after?.[of] ?? -1, before?.[of] ?? -2, GRID_M * edgesM, `m², ${of}, seed ${seed}`);
    }
  }
});

describe('moving within the frame', () => {
  const motion = { about: { xM: 30, yM: 20 }, to: { xM: 31, yM: 22 }, turnDeg: 10 };

  test('of a loose yard moves all of it together', () => {
    const moved = applyEdit(full, moveYardEdit(full, motion));
    expect(moved.marks[0]?.at).toEqual(movePoint(motion, { xM: 30, yM: 25 }));
    expect(moved.elevations[0]?.corners[0]).toEqual(movePoint(motion, corners[0]));
    expect(moved.details).toBe(full.details);
  });

  test('of a placed yard leaves where they are a picture that knows its place and an elevation grid', () => {
    const placed: Yard = {
      ...full,
      details: { ...full.details, frame: { kind: 'placed', origin } },
      pictures: [plan, fromAir],
    };
    const edit = moveYardEdit(placed, motion);
    const moved = applyEdit(placed, edit);
    expect(moved.pictures[1]).toBe(fromAir);
    expect(moved.elevations[0]).toBe(heights);
    expect(moved.pictures[0]).not.toEqual(plan); // a scaled one is drawn over, and goes along
    expect(moved.marks[0]?.at).toEqual(movePoint(motion, { xM: 30, yM: 25 }));
    expect(applyEdit(moved, inverseOf(edit))).toEqual(placed);
  });
});

test('ground is fixed by a picture that knows its place or an elevation grid, in a placed yard only', () => {
  const bare = { ...full, elevations: [] };
  const placedAt = (yard: Yard): Yard => ({
    ...yard,
    details: { ...yard.details, frame: { kind: 'placed', origin } },
  });
  expect(hasFixedGround(placedAt(bare))).toBe(false);
  expect(hasFixedGround(placedAt(full))).toBe(true);
  expect(hasFixedGround(placedAt({ ...bare, pictures: [fromAir] }))).toBe(true);
  expect(hasFixedGround({ ...bare, pictures: [fromAir] })).toBe(false);
});

test('taken off the earth, a yard is as it was drawn', () => {
  const placed = applyEdit(full, placeYardEdit(full, { origin, turnDeg: 0 }));
  const loose = applyEdit(placed, loosenYardEdit(placed));
  expect(loose).toEqual({ ...placed, details: { ...placed.details, frame: { kind: 'loose' } } });
});

describe('the middle of a yard', () => {
  test('is that of what is drawn, pictures aside', () => {
    expect(yardMiddle(full)).toEqual({ xM: 30, yM: 20 }); // the lawn spans 10 … 50 and 0 … 40
  });

  test('has a place on earth once the yard does, which a move takes along', () => {
    expect(placeOfMiddle(full)).toBeNull();
    const placed = applyEdit(full, placeYardEdit(full, { origin, turnDeg: 0 }));
    const to = { xM: 0, yM: 111.03463 };
    const moved = applyEdit(placed, moveYardEdit(placed, { about: { xM: 0, yM: 0 }, to, turnDeg: 0 }));
    // A degree is 111,034.63 m at 40° north (GeographicLib 2.1.2), to a part in 50,000 at 39.9°.
    expectNear(placeOfMiddle(moved)?.latDeg ?? 0, 39.901, 1e-7, '°');
    expectNear(placeOfMiddle(moved)?.lonDeg ?? 0, -86.2, 1e-9, '°');
  });

  test('is that of its pictures while nothing is drawn, and the origin in an empty yard', () => {
    expect(yardMiddle({ ...full, outlines: [], marks: [] })).toEqual({ xM: 0, yM: 0 }); // ±20, ±15
    expect(yardMiddle(yardOf())).toEqual({ xM: 0, yM: 0 });
  });
});
