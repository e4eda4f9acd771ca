import { straight } from '../../core/curves/index.ts';
import { newOutline } from '../../core/edits/index.ts';
import { distanceM, distanceToEdgeM } from '../../core/kernel/index.ts';
import type { Ring, YardPoint } from '../../core/spaces.ts';
import type { Outline, OutlineKind, Picture, Placing } from '../../core/yard.ts';
import type { Ground } from '../../core/zones/index.ts';
import { groundOf, moved, rect } from './builders.ts';
import { placeOf } from './movedOutlines.ts';
import { between, pick, type Random, randomStar } from './randomYards.ts';

/** How a yard's places are drawn anew: said here by itself, so that the code under test is not asked. */
export interface UncertainYard {
  readonly ground: Ground;
  /** For each place, how far it is out and the picture it was read off. */
  readonly places: ReadonlyMap<string, { readonly sigmaM: number; readonly picture: Picture | null }>;
}

const YARD_SIGMA_M = 0.08;

/** A picture of 60 m by 60 m about a middle that is not the yard's. */
function pictureOf(random: Random, id: string): Picture {
  const [x, y] = [between(random, -10, 10), between(random, -10, 10)];
  const corner = (dx: number, dy: number): YardPoint => ({ xM: x + dx, yM: y + dy });
  const corners = [corner(-30, 30), corner(30, 30), corner(30, -30), corner(-30, -30)] as const;
  return {
    id,
    name: `${id}.png`,
    imageHash: '',
    mediaType: 'image/png',
    widthPx: 600,
    heightPx: 600,
    placement: { kind: 'georeferenced', crs: 'EPSG:32613', corners },
    attribution: '',
    cornerSigmaM: between(random, 0.03, 0.12),
    scaleSigma: between(random, 0.001, 0.008),
  };
}

/**
 * Two lawns along one edge, a drive across both, beds inside, across an edge and over one another, and one that has a
 * corner with the first lawn; each traced over one of two pictures, taped, or placed by hand.
 */
export function uncertainYard(random: Random): UncertainYard {
  const pictures = [pictureOf(random, 'plan'), pictureOf(random, 'photo')];
  const first = randomStar(random, 6 + Math.floor(5 * random()), { xM: 0, yM: 0 }, 20, 0.35);
  const edge = Math.floor(random() * first.length);
  const [from, to] = [first[edge] as YardPoint, first[(edge + 1) % first.length] as YardPoint];
  const outline = (kind: OutlineKind, name: string, ring: Ring): Outline =>
    newOutline({ id: name, kind, name, outer: straight(ring), placing: placingOf(random, pictures) });
  const beds = Array.from({ length: 1 + Math.floor(3 * random()) }, (_, i) => {
    const centre = { xM: between(random, -14, 14), yM: between(random, -14, 14) };
    return outline('bed', `bed ${i + 1}`, randomStar(random, 5, centre, between(random, 2, 6), 0.4));
  });
  const corner = first[(edge + 3) % first.length] as YardPoint;
  const snapped = [
    corner,
    { xM: corner.xM * 0.6 + 2, yM: corner.yM * 0.6 },
    { xM: corner.xM * 0.6, yM: corner.yM * 0.6 + 2 },
  ];
  const outlines = [
    outline('zone', 'first', first),
    outline('zone', 'second', beyond(from, to, between(random, 8, 14))),
    outline(
      'hardscape',
      'drive',
      moved(rect(-30, -1, 60, 2.5), between(random, 0, 3), 0, between(random, -6, 6)),
    ),
    ...beds,
    outline('tree', 'tree', snapped),
  ];
  const ground: Ground = { ...groundOf(outlines, YARD_SIGMA_M), pictures };
  return { ground, places: placesOf(outlines, pictures) };
}

/** Edges that run this near to one another for so long are within their error of crossing anywhere. */
const ALONG_M = 0.3;
const ALONG_FOR_M = 3;

/** The first yard drawn in which no two edges run along one another within their error, snapped ones apart. */
export function clearYard(random: Random): UncertainYard {
  for (;;) {
    const yard = uncertainYard(random);
    if (!runsAlong(yard)) return yard;
  }
}

/** Whether an edge runs along another outline's, not snapped to it, so near that either may be the outer one. */
export function runsAlong({ ground }: UncertainYard): boolean {
  const edges = ground.outlines.flatMap(({ id, outer }) => {
    const corners = outer.kind === 'corners' ? outer.corners : [];
    return corners.map((from, i) => ({ id, from, to: corners[(i + 1) % corners.length] as YardPoint }));
  });
  return edges.some(({ id, from, to }) => {
    const lengthM = distanceM(from, to);
    const steps = Math.ceil(lengthM / 0.25);
    return edges.some((other) => {
      if (other.id === id || samePlaces(from, to, other.from, other.to)) return false;
      let near = 0;
      for (let step = 0; step <= steps; step++) {
        const share = step / steps;
        const at = { xM: from.xM + share * (to.xM - from.xM), yM: from.yM + share * (to.yM - from.yM) };
        if (distanceToEdgeM(other.from, other.to, at) < ALONG_M) near++;
      }
      return (near * lengthM) / steps > ALONG_FOR_M;
    });
  });
}

function samePlaces(a: YardPoint, b: YardPoint, c: YardPoint, d: YardPoint): boolean {
  const [from, to] = [placeOf(c), placeOf(d)];
  return [from, to].includes(placeOf(a)) && [from, to].includes(placeOf(b));
}

/** A four-cornered lawn on the other side of an edge of a star about the origin. */
function beyond(from: YardPoint, to: YardPoint, depthM: number): Ring {
  const [dx, dy] = [to.xM - from.xM, to.yM - from.yM];
  const perM = depthM / Math.hypot(dx, dy);
  // A star runs counter-clockwise, so outside is to the right of its edges.
  const out = ({ xM, yM }: YardPoint): YardPoint => ({ xM: xM + dy * perM, yM: yM - dx * perM });
  return [to, from, out(from), out(to)];
}

function placingOf(random: Random, pictures: readonly Picture[]): Placing {
  const by = pick(random, ['hand', 'picture', 'picture', 'tape'] as const);
  const pictureId = by === 'picture' ? (pick(random, pictures).id ?? null) : null;
  return { by, pictureId, sigmaM: by === 'tape' ? between(random, 0.02, 0.15) : null };
}

function placesOf(outlines: readonly Outline[], pictures: readonly Picture[]): UncertainYard['places'] {
  const places = new Map<string, { sigmaM: number; picture: Picture | null }>();
  for (const { placing, outer } of outlines) {
    const picture = pictures.find(({ id }) => id === placing.pictureId) ?? null;
    const sigmaM = placing.sigmaM ?? picture?.cornerSigmaM ?? YARD_SIGMA_M;
    for (const at of outer.kind === 'corners' ? outer.corners : []) {
      const known = places.get(placeOf(at));
      if (known === undefined || sigmaM < known.sigmaM) places.set(placeOf(at), { sigmaM, picture });
    }
  }
  return places;
}

/** Normally distributed about 0, of standard deviation 1. Box & Muller 1958. */
export function normal(random: Random): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}
