import { tracedRing } from '../curves/index.ts';
import { distanceM, ringBounds, signedAreaM2, windIn } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { Mark, Outline, OutlineKind, Traced, Yard } from '../yard.ts';

/** What a tape is held to, best first: 'bend' is a point placed on a curve or among corners too near together. */
export type PointKind = 'landmark' | 'spigot' | 'corner' | 'flag' | 'bend';

/** A place a person finds on the ground by what it is called; no two of a yard are called the same. */
export interface NamedPoint {
  readonly at: YardPoint;
  readonly kind: PointKind;
  /** 'NE corner', 'NE corner 2' where there are several on that side, 'lamp post', 'flag c'. */
  readonly own: string;
  /** What it is a corner of; null where its own name says all. */
  readonly of: string | null;
  readonly outline: Outline | null;
}

/** The named points of a yard; for each ring of each outline those of its own corners, in the order traced. */
export interface YardPoints {
  readonly all: readonly NamedPoint[];
  readonly cornersOf: ReadonlyMap<Traced, readonly NamedPoint[]>;
}

/** A corner that turns less is a bend of a line drawn in steps. */
const LEAST_TURN_RAD = (15 * Math.PI) / 180;
/** Shorter edges are steps of a curve set corner by corner: they cannot be found on the ground. */
export const LEAST_SIDE_M = 1;

/** The whole of a name: 'NE corner 2 of back lawn'. */
export function fullName({ own, of }: Pick<NamedPoint, 'own' | 'of'>): string {
  return of === null ? own : `${own} of ${of}`;
}

/** All that tapes can be held to: landmarks, spigots, corners of outlines, and the points that were placed on curves. */
export function yardPoints({ outlines, marks }: Pick<Yard, 'outlines' | 'marks'>): YardPoints {
  const taken = new Map<string, number>();
  const markPoints = marks.map((mark) => pointOf(mark, taken));
  const cornersOf = new Map<Traced, readonly NamedPoint[]>();
  const middles: NamedPoint[] = [];
  for (const outline of outlines) {
    const of = unlike(outline.name.trim() || KIND_WORDS[outline.kind], taken);
    [outline.outer, ...outline.holes].forEach((traced, ring) => {
      const owner = ring === 0 ? of : `hole ${ring} of ${of}`;
      cornersOf.set(traced, pointsOn(traced, outline, owner));
      if (traced.kind === 'corners') return;
      // The trunk of a tree stands in the middle of its ring; in other ovals nothing marks the middle.
      const kind = outline.kind === 'tree' ? 'corner' : 'bend';
      middles.push({ at: traced.centre, kind, own: 'middle', of: owner, outline });
    });
  }
  return { all: [...markPoints, ...[...cornersOf.values()].flat(), ...middles], cornersOf };
}

const KIND_WORDS: Readonly<Record<OutlineKind, string>> = {
  zone: 'zone',
  bed: 'bed',
  hardscape: 'hardscape',
  building: 'building',
  water: 'water',
  tree: 'tree ring',
  'keep-off': 'keep-off strip',
  'check-plot': 'check plot',
};

/** A name given for the second time is told from the first by a number, in the order drawn. */
function unlike(name: string, taken: Map<string, number>): string {
  const count = (taken.get(name) ?? 0) + 1;
  taken.set(name, count);
  return count === 1 ? name : unlike(`${name} (${count})`, taken);
}

function pointOf({ kind, name, at }: Mark, taken: Map<string, number>): NamedPoint {
  return { at, kind, own: unlike(name.trim() || kind, taken), of: null, outline: null };
}

/** The corners of a traced ring, or the four ends of an oval's axes. */
function pointsOn(traced: Traced, outline: Outline, of: string): readonly NamedPoint[] {
  const box = ringBounds(tracedRing(traced));
  const places = traced.kind === 'corners' ? traced.corners : axisEnds(traced);
  const winds = places.map((place) => windIn(box, place).letters);
  const kinds = places.map((_, i) =>
    traced.kind === 'corners' && isFindable(traced, i) ? 'corner' : 'bend',
  );
  const names = numbered(
    winds.map((wind, i) => `${wind} ${kinds[i]}`),
    clockwise(places),
  );
  return places.map(({ xM, yM }, i) => {
    return { at: { xM, yM }, kind: kinds[i] as PointKind, own: names[i] as string, of, outline };
  });
}

function axisEnds(traced: Exclude<Traced, { kind: 'corners' }>): readonly YardPoint[] {
  const [alongM, acrossM, bearingDeg] =
    traced.kind === 'circle'
      ? [traced.radiusM, traced.radiusM, 0]
      : [traced.halfLengthM, traced.halfWidthM, traced.bearingDeg];
  return [alongM, acrossM, alongM, acrossM].map((outM, i) => {
    const rad = ((bearingDeg + 90 * i) * Math.PI) / 180;
    return { xM: traced.centre.xM + outM * Math.sin(rad), yM: traced.centre.yM + outM * Math.cos(rad) };
  });
}

/** Whether the ground shows the corner: it turns, and a straight edge long enough to be seen ends in it. */
function isFindable({ corners }: Extract<Traced, { kind: 'corners' }>, i: number): boolean {
  const count = corners.length;
  const [before, here, after] = [i + count - 1, i, i + 1].map((place) => corners[place % count]);
  if (before === undefined || here === undefined || after === undefined) return false;
  const [straightIn, straightOut] = [before.run === undefined, here.run === undefined];
  const [inM, outM] = [distanceM(before, here), distanceM(here, after)];
  if (!(straightIn && inM >= LEAST_SIDE_M) && !(straightOut && outM >= LEAST_SIDE_M)) return false;
  const ring = tracedRing({ kind: 'corners', corners });
  const at = ring.findIndex(({ xM, yM }) => xM === here.xM && yM === here.yM);
  const [from, to] = [ring.at(at - 1) ?? before, ring[(at + 1) % ring.length] ?? after];
  const cross = (here.xM - from.xM) * (to.yM - here.yM) - (here.yM - from.yM) * (to.xM - here.xM);
  const dot = (here.xM - from.xM) * (to.xM - here.xM) + (here.yM - from.yM) * (to.yM - here.yM);
  return Math.abs(Math.atan2(cross, dot)) >= LEAST_TURN_RAD;
}

/** The places' indices clockwise round the ring. */
function clockwise(places: readonly YardPoint[]): readonly number[] {
  const order = places.map((_, i) => i);
  return signedAreaM2(places) > 0 ? order.reverse() : order;
}

/** Names that occur more than once get numbers, clockwise, so that those side by side count up. */
function numbered(names: readonly string[], order: readonly number[]): readonly string[] {
  const start = order.findIndex((place, i) => names[place] !== names[order.at(i - 1) ?? place]);
  const turned = [...order.slice(Math.max(0, start)), ...order.slice(0, Math.max(0, start))];
  const given = new Map<number, string>();
  for (const name of new Set(names)) {
    const same = turned.filter((place) => names[place] === name);
    same.forEach((place, i) => {
      given.set(place, same.length === 1 ? name : `${name} ${i + 1}`);
    });
  }
  return names.map((name, place) => given.get(place) ?? name);
}
