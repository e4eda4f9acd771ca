import { straight } from '../../core/curves/index.ts';
import { USUAL_STEP_M } from '../../core/applicators/index.ts';
import { newJob, newOutline } from '../../core/edits/index.ts';
import { FLUID_OUNCE_L, FOOT_M, GALLON_L, THOUSAND_FT2_M2 } from '../../core/units/index.ts';
import type { YardPoint } from '../../core/spaces.ts';
import type {
  Applicator,
  Job,
  Mark,
  MarkKind,
  Outline,
  OutlineKind,
  Product,
  Traced,
  Yard,
} from '../../core/yard.ts';

/** Metres from the south-west post of the lot, east and north: how the lot would be taped. */
type Tape = readonly [eastM: number, northM: number];

const LOT_EAST_M = 40;
const LOT_NORTH_M = 30;
/** Corners set along one curve; the chord then leaves a bed's edge by less than a centimetre. */
const CURVE_STEPS = 12;

/**
 * The yard a first start opens: an invented lot, drawn and with one job, so that every step has something to
 * show. No person, address or product in it exists. Its true areas are in sample-maps/README.md.
 */
export function sampleYard(): Yard {
  return {
    details: {
      id: 'yard',
      name: '7 Larkfield Lane',
      groundDate: '2026-05-12',
      unitSystem: 'us',
      frame: { kind: 'placed', origin: { lonDeg: -86.2, latDeg: 39.9 } },
      cornerSigmaM: 0.05,
      overlapRule: 'drawn-first',
      amountsBy: 'plan',
    },
    pictures: [],
    outlines: [...zones(), ...cutOuts(), ...untreated()],
    marks: marks(),
    elevations: [],
    // The lot's diagonal is 50 m by its posts.
    checks: [
      {
        id: 'check-lot',
        name: 'south-west post to north-east post',
        from: toYard([0, 0]),
        to: toYard([40, 30]),
        tapedM: 50.02,
      },
    ],
    products: [FEED],
    applicators: [HOSE_END, TANK],
    jobs: [JOB],
  };
}

function zones(): readonly Outline[] {
  return [
    outline('zone', 'back lawn', box([0, 20], [40, 30])),
    // Runs under the house, which is cut out of it: the east side is part of the front lawn.
    outline('zone', 'front lawn', [
      [0, 0],
      [40, 0],
      [40, 20],
      [12, 20],
      [12, 13],
      [0, 13],
    ]),
    outline('zone', 'west side', box([0, 13], [12, 20])),
  ];
}

function cutOuts(): readonly Outline[] {
  return [
    outline('building', 'house', [
      [12, 13],
      [20, 13],
      [20, 11.5],
      [32, 11.5],
      [32, 20],
      [12, 20],
    ]),
    outline('hardscape', 'drive', box([26.6, 0], [31.6, 11.5])),
    outline('hardscape', 'front walk', [
      [16.2, 6.6],
      [26.6, 6.6],
      [26.6, 8],
      [17.6, 8],
      [17.6, 13],
      [16.2, 13],
    ]),
    outline('hardscape', 'patio', box([15, 20], [24, 24.6])),
    outline('bed', 'fern bed', [
      ...curve([0, 21], [2, 21.6], [1.6, 23], [1.6, 24.9]),
      ...curve([1.6, 24.9], [1.6, 28.2], [5.9, 27.2], [6.2, 30]),
      [6.2, 30],
      [0, 30],
    ]),
    outline('bed', 'front bed', [
      [12, 13],
      ...curve([12, 11.9], [13, 11.1], [15, 11.2], [16.2, 11.9]),
      [16.2, 11.9],
      [16.2, 13],
    ]),
    outline('bed', 'east bed', box([32, 12], [33.2, 20])),
    drawn('tree', 'maple', { kind: 'circle', centre: toYard([6.4, 5]), radiusM: 1.7 }),
    drawn('water', 'pond', {
      kind: 'ellipse',
      centre: toYard([37.3, 27.3]),
      halfLengthM: 1.6,
      halfWidthM: 1.5,
      bearingDeg: 90,
    }),
  ];
}

function untreated(): readonly Outline[] {
  return [
    outline('keep-off', 'pond bank', [
      [32, 30],
      ...curve([32, 30], [32.3, 27.6], [34.3, 27.4], [35, 25.6]).slice(1),
      ...curve([35, 25.6], [35.7, 24], [37.6, 23.6], [40, 23.6]),
      [40, 23.6],
      [40, 30],
    ]),
    outline('check-plot', 'check plot', box([8.6, 16], [10.6, 18])),
  ];
}

function marks(): readonly Mark[] {
  return [
    mark('spigot', 'front spigot', [18.6, 13]),
    mark('spigot', 'back spigot', [13.4, 20]),
    mark('landmark', 'north-west post', [0, 30]),
    mark('landmark', 'north-east post', [40, 30]),
    mark('landmark', 'south-west post', [0, 0]),
  ];
}

const FEED: Product = {
  id: 'product-sample-feed',
  name: 'Sample liquid feed (invented)',
  use: 'fertilizer',
  rateLPerM2: (12 * FLUID_OUNCE_L) / THOUSAND_FT2_M2,
  mostRateLPerM2: (16 * FLUID_OUNCE_L) / THOUSAND_FT2_M2,
  leastCarrierLPerM2: (2 * GALLON_L) / THOUSAND_FT2_M2,
};

/** 5 gal per 1,000 ft² at 6 ft and 1 ft/s is a hose that gives 1.8 gal/min. */
const HOSE_END: Applicator = {
  id: 'applicator-hose-end',
  name: 'Hose-end sprayer, 16 fl oz bottle',
  kind: 'hose-end',
  capacityL: 16 * FLUID_OUNCE_L,
  carrierLPerM2: (5 * GALLON_L) / THOUSAND_FT2_M2,
  swathM: 6 * FOOT_M,
  paceMPerS: FOOT_M,
  stepM: FOOT_M,
};

const TANK: Applicator = {
  id: 'applicator-tank',
  name: 'Backpack sprayer, 4 gal',
  kind: 'tank',
  capacityL: 4 * GALLON_L,
  carrierLPerM2: (2 * GALLON_L) / THOUSAND_FT2_M2,
  swathM: 4 * FOOT_M,
  paceMPerS: 2.5 * FOOT_M,
  stepM: USUAL_STEP_M,
};

const JOB: Job = newJob({
  id: 'job-spring-feed',
  name: 'Spring feed',
  productId: FEED.id,
  applicatorId: HOSE_END.id,
});

function outline(kind: OutlineKind, name: string, taped: readonly Tape[]): Outline {
  return drawn(kind, name, straight(taped.map(toYard)));
}

function drawn(kind: OutlineKind, name: string, outer: Traced): Outline {
  return newOutline({ id: idOf(kind, name), kind, name, outer });
}

function mark(kind: MarkKind, name: string, at: Tape): Mark {
  return { id: idOf(kind, name), kind, name, at: toYard(at) };
}

function idOf(kind: string, name: string): string {
  return `${kind}-${name.replaceAll(' ', '-')}`;
}

/** The frame's origin is the middle of the lot. */
function toYard([eastM, northM]: Tape): YardPoint {
  return { xM: eastM - LOT_EAST_M / 2, yM: northM - LOT_NORTH_M / 2 };
}

function box([west, south]: Tape, [east, north]: Tape): readonly Tape[] {
  return [
    [west, south],
    [east, south],
    [east, north],
    [west, north],
  ];
}

/** A cubic curve from `a` to `d`, drawn towards `b` and `c`; its last point is left to what follows. */
function curve(a: Tape, b: Tape, c: Tape, d: Tape): readonly Tape[] {
  return Array.from({ length: CURVE_STEPS }, (_, step): Tape => {
    const t = step / CURVE_STEPS;
    const u = 1 - t;
    const at = (axis: 0 | 1): number =>
      u ** 3 * a[axis] + 3 * u * u * t * b[axis] + 3 * u * t * t * c[axis] + t ** 3 * d[axis];
    return [at(0), at(1)];
  });
}
