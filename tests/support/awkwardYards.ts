import type { Ring, YardPoint } from '../../core/spaces.ts';
import { moved, rect, regularPolygon } from './builders.ts';
import { between, pick, type Random, type RandomYard, randomStar, randomYard } from './randomYards.ts';

/** Families of yards that are hard for an overlay, each with its one-line story. */
export const AWKWARD: Readonly<Record<string, (random: Random) => RandomYard>> = {
  /** Beds of every kind `randomYard` knows, from four corners to sixty. */
  'random beds': (random) => randomYard(random, 4 + Math.floor(random() * 60), 1 + Math.floor(random() * 12)),
  /** Beds on one lattice: shared edges, shared corners, beds in line with the lawn's edge. */
  'shared edges': latticeYard,
  /** The same lattice turned, so that shared edges are no longer exact in binary. */
  'shared edges, turned': (random) => turned(latticeYard(random), between(random, 0, 7)),
  /** Diamonds that touch each other and the lawn's edge with their corners. */
  'touching holes': (random) => {
    const beds: Ring[] = [];
    for (let i = 0; i < 6; i++) {
      for (let j = 0; j < 6; j++) {
        if (random() < 0.6) beds.push(diamond({ xM: 2 + 4 * i, yM: 2 + 4 * j }, 2));
      }
    }
    return { zone: rect(0, 0, 24, 24), beds };
  },
  /** Needles a tenth of a millimetre to a centimetre wide, across the lawn and each other. */
  slivers: (random) => {
    const zone = randomStar(random, 12, { xM: 0, yM: 0 }, 25, 0.4);
    const beds = Array.from({ length: 12 }, () => {
      const widthM = 10 ** between(random, -4, -2);
      const needle = rect(-30, 0, 60, widthM);
      return moved(needle, between(random, 0, 7), between(random, -10, 10), between(random, -10, 10));
    });
    return { zone, beds };
  },
  /** A bed in a bed in a bed. */
  'nested cut-outs': (random) => {
    const zone = randomStar(random, 20, { xM: 0, yM: 0 }, 30, 0.3);
    const middle = { xM: between(random, -5, 5), yM: between(random, -5, 5) };
    const beds = [9, 7, 5, 3, 1].map((radiusM) =>
      regularPolygon(middle, radiusM * between(random, 0.7, 1), 16),
    );
    return { zone, beds: random() < 0.5 ? beds : beds.reverse() };
  },
  /** Corners clicked twice, three times, and many on a straight edge. */
  'repeated corners': (random) => stuttering(randomYard(random, 16, 6), random),
  /** Beds that cross themselves. */
  'bow-ties': (random) => {
    const zone = randomStar(random, 16, { xM: 0, yM: 0 }, 25, 0.5);
    const beds = Array.from({ length: 5 }, () => {
      const spot = () => ({ xM: between(random, -20, 20), yM: between(random, -20, 20) });
      return Array.from({ length: 4 + Math.floor(random() * 3) }, spot);
    });
    return { zone, beds };
  },
  /** Read from map-sheet coordinates and brought home, so that only nine decimals are left. */
  'map-sheet offsets': (random) => {
    const { zone, beds } = random() < 0.5 ? latticeYard(random) : randomYard(random, 24, 8);
    const rounded = (ring: Ring) =>
      moved(ring, 0, 483_211.37, 4_400_123.71).map(({ xM, yM }) => ({
        xM: xM - 483_211,
        yM: yM - 4_400_123,
      }));
    return { zone: rounded(zone), beds: beds.map(rounded) };
  },
  /** Kilometres from the yard's origin and kilometres across. */
  'large and far': (random) => {
    const yard = randomYard(random, 40, 8);
    const grown = (ring: Ring) => ring.map(({ xM, yM }) => ({ xM: 50 * xM + 5000, yM: 50 * yM - 6000 }));
    return { zone: grown(yard.zone), beds: yard.beds.map(grown) };
  },
  /** One bed over and over, each time moved by less than the width of a hair. */
  'nearly the same bed': (random) => {
    const zone = randomStar(random, 14, { xM: 0, yM: 0 }, 25, 0.4);
    const bed = randomStar(random, 9, { xM: 0, yM: 0 }, 8, 0.6);
    const beds = Array.from({ length: 6 }, () =>
      moved(bed, 0, between(random, -1, 1) * 1e-5, between(random, -1, 1) * 1e-5),
    );
    return { zone, beds };
  },
  /** Beds that run along the lawn's edge, a few micrometres inside or outside it. */
  'along the edge': (random) => {
    const zone = randomStar(random, 12, { xM: 0, yM: 0 }, 25, 0.3);
    const beds = zone.flatMap((from, i) => {
      if (random() < 0.4) return [];
      const to = zone[(i + 1) % zone.length] as YardPoint;
      const slip = () => pick(random, [0, 0, 1e-6, -1e-6, 3e-6, -5e-5]);
      const mid = { xM: (from.xM + to.xM) / 2, yM: (from.yM + to.yM) / 2 };
      const near = (p: YardPoint) => ({ xM: p.xM + slip(), yM: p.yM + slip() });
      return [[near(from), near(mid), near(to), { xM: mid.xM * 0.8, yM: mid.yM * 0.8 }]];
    });
    return { zone, beds };
  },
};

function latticeYard(random: Random): RandomYard {
  const zone = rect(0, 0, 20, 14);
  const beds = Array.from({ length: 4 + Math.floor(random() * 14) }, () => {
    const whole = (most: number) => Math.floor(random() * most);
    return rect(whole(20) - 1, whole(14) - 1, 1 + whole(5), 1 + whole(4));
  });
  return { zone, beds };
}

function diamond({ xM, yM }: YardPoint, reachM: number): Ring {
  return [
    { xM: xM + reachM, yM },
    { xM, yM: yM + reachM },
    { xM: xM - reachM, yM },
    { xM, yM: yM - reachM },
  ];
}

function turned({ zone, beds }: RandomYard, turnRad: number): RandomYard {
  return { zone: moved(zone, turnRad, 0, 0), beds: beds.map((bed) => moved(bed, turnRad, 0, 0)) };
}

function stuttering({ zone, beds }: RandomYard, random: Random): RandomYard {
  const stutter = (ring: Ring): Ring =>
    ring.flatMap((from, i) => {
      const to = ring[(i + 1) % ring.length] as YardPoint;
      const mid = { xM: (from.xM + to.xM) / 2, yM: (from.yM + to.yM) / 2 };
      return pick(random, [[from], [from, from], [from, from, from], [from, mid], [from, mid, mid]]);
    });
  return { zone: stutter(zone), beds: beds.map(stutter) };
}
