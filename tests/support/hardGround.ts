import { subtractRegions, unionRegions } from '../../core/kernel/index.ts';
import type { Region, YardPoint } from '../../core/spaces.ts';
import { rect, region, regularPolygon } from './builders.ts';
import { between, type Random, randomComb } from './randomYards.ts';

/** Ground that is hard to cut into connected sections, all of it made up. */
export const HARD_GROUND: readonly { readonly name: string; readonly make: (random: Random) => Region }[] = [
  { name: 'a comb', make: (random) => region(randomComb(random, 7, 44, 24)) },
  { name: 'a ring', make: () => region(rect(0, 0, 40, 30), [...rect(4, 4, 32, 22)]) },
  { name: 'a spiral', make: spiral },
  { name: 'a net of ways', make: (random) => netOfWays(random, 4) },
  { name: 'a maze', make: (random) => netOfWays(random, 7) },
  { name: 'a hundred holes', make: hundredHoles },
];

/** A way 3 m wide that winds inward at right angles. */
function spiral(): Region {
  const bars: Region[] = [];
  for (let i = 0; i < 4; i++) {
    const [lowM, highM] = [6 * i, 60 - 6 * i];
    bars.push(region(rect(lowM, lowM, highM - lowM, 3)), region(rect(highM - 3, lowM, 3, highM - lowM)));
    bars.push(
      region(rect(lowM, highM - 3, highM - lowM, 3)),
      region(rect(lowM, lowM + 6, 3, highM - lowM - 6)),
    );
    bars.push(region(rect(lowM, lowM + 6, 9, 3)));
  }
  return largest(unionRegions(bars));
}

/** Ways 2 m wide between random places, all in one piece. */
function netOfWays(random: Random, places: number): Region {
  const at = Array.from({ length: places }, () => ({
    xM: between(random, 0, 80),
    yM: between(random, 0, 80),
  }));
  const ways = at.flatMap((from, i) => at.slice(i + 1).map((to) => way(from, to)));
  return largest(unionRegions(ways));
}

function way(from: YardPoint, to: YardPoint): Region {
  const lengthM = Math.hypot(to.xM - from.xM, to.yM - from.yM);
  const [x, y] = [(to.xM - from.xM) / lengthM, (to.yM - from.yM) / lengthM];
  const corner = (at: YardPoint, alongM: number, offM: number): YardPoint => {
    return { xM: at.xM + x * alongM - y * offM, yM: at.yM + y * alongM + x * offM };
  };
  return region([corner(from, -1, -1), corner(to, 1, -1), corner(to, 1, 1), corner(from, -1, 1)]);
}

function hundredHoles(random: Random): Region {
  const beds = Array.from({ length: 100 }, (_, i) => {
    const centre = {
      xM: 10 * (i % 10) + between(random, 3, 7),
      yM: 10 * Math.floor(i / 10) + between(random, 3, 7),
    };
    return region(regularPolygon(centre, between(random, 0.5, 2), 8));
  });
  return largest(subtractRegions([region(rect(0, 0, 100, 100))], beds));
}

function largest(regions: readonly Region[]): Region {
  const sizeOf = ({ outer }: Region): number => outer.length;
  return regions.reduce((best, other) => (sizeOf(other) > sizeOf(best) ? other : best));
}
