import { distanceM, regionAreaM2 } from '../kernel/index.ts';
import type { Region, YardPoint } from '../spaces.ts';
import type { HeldCut } from '../yard.ts';
import { type Chord, findChords } from './chords.ts';
import { cornersOf, faceAlong } from './facing.ts';
import { sidesOfLine } from './sidesOfLine.ts';
import { type Halves, splitRegion } from './splitRegion.ts';

/** Ground parted along the cuts a person keeps in place. */
export interface HeldParts {
  readonly parts: readonly Region[];
  /** One for each run over the ground, so two where a cut goes over a bed. */
  readonly cuts: readonly { readonly from: YardPoint; readonly to: YardPoint; readonly heldId: string }[];
  /** Those that part nothing where they lie. */
  readonly idle: readonly HeldCut[];
}

/** A run is the cut's when they share more than this part of the shorter of the two. */
const SHARED_PART = 0.5;
/** Less is no part but rounding: a cut that lies on another one. */
const LEAST_PART_M2 = 1e-3;

/**
 * Parts ground along straight cuts that stand where they were put. Each goes from edge to edge of the ground it lies
 * on, so it is made longer or shorter when an outline was moved since; one that ended on another cut ends there.
 *
 * @param heldCuts of this ground, in any order
 * Accuracy: cuts stand on the line through their two ends to 1e-9 m; checked in tests/core/sections/heldCuts.test.ts
 * Cost: cuts x parts x corners
 */
export function partByHeldCuts(treated: readonly Region[], heldCuts: readonly HeldCut[]): HeldParts {
  const parting = rememberedPartings();
  let parts = treated;
  let left = heldCuts;
  const cuts: HeldParts['cuts'][number][] = [];
  for (;;) {
    // The one that fits the ground best goes first: one that ends on another cut fits once that one is made.
    const next = left
      .map((held) => ({ held, misfitM: misfitM(held, parts, parting) }))
      .reduce((best, other) => (other.misfitM < best.misfitM ? other : best), NONE);
    const { held } = next;
    if (held === null) return { parts, cuts, idle: left };
    left = left.filter((other) => other !== held);
    const cutUp = (part: Region): Region[] => {
      const found = parting(part, held);
      if (found === null) return [part];
      cuts.push(...found.run.map(({ start, end }) => ({ from: start.at, to: end.at, heldId: held.id })));
      return [...cutUp(found.halves.below), ...cutUp(found.halves.above)];
    };
    parts = parts.flatMap(cutUp);
  }
}

const NONE: { readonly held: HeldCut | null; readonly misfitM: number } = { held: null, misfitM: Infinity };

/** How a cut parts one piece: a run from edge to edge; all its runs there, counted from the cut's own start. */
interface HeldParting {
  readonly run: readonly Chord[];
  readonly halves: Halves;
  readonly startM: number;
  readonly endM: number;
}

type FindParting = (part: Region, held: HeldCut) => HeldParting | null;

/** Parts that were not cut are asked about again and again: answered once. */
function rememberedPartings(): FindParting {
  const known = new Map<Region, Map<HeldCut, HeldParting | null>>();
  return (part, held) => {
    const ofPart = known.get(part) ?? new Map<HeldCut, HeldParting | null>();
    known.set(part, ofPart);
    const before = ofPart.get(held);
    if (before !== undefined) return before;
    const found = findParting(part, held);
    ofPart.set(held, found);
    return found;
  };
}

/** How far both ends of the cut are from the edges it would end on; no number where it parts nothing. */
function misfitM(held: HeldCut, parts: readonly Region[], parting: FindParting): number {
  const found = parts.flatMap((part) => parting(part, held) ?? []);
  if (found.length === 0) return Infinity;
  const startM = Math.min(...found.map((run) => run.startM));
  const endM = Math.max(...found.map((run) => run.endM));
  return Math.abs(startM) + Math.abs(endM - distanceM(held.from, held.to));
}

function findParting(part: Region, { from, to }: HeldCut): HeldParting | null {
  const lengthM = distanceM(from, to);
  if (!(lengthM > 0)) return null;
  const normal = { x: (to.yM - from.yM) / lengthM, y: -(to.xM - from.xM) / lengthM };
  const facing = faceAlong(cornersOf(part), normal);
  const origin = part.outer[0] ?? from;
  const [x, y] = [from.xM - origin.xM, from.yM - origin.yM];
  const fromM = y * normal.x - x * normal.y;
  const levelM = x * normal.x + y * normal.y;
  const chords = findChords(facing, levelM, sidesOfLine(facing, levelM)) ?? [];
  const isHeld = ({ start, end }: Chord): boolean => {
    const sharedM = Math.min(end.vM, fromM + lengthM) - Math.max(start.vM, fromM);
    return sharedM > SHARED_PART * Math.min(end.vM - start.vM, lengthM);
  };
  const own = chords.filter(isHeld);
  const [startM, endM] = [(own[0]?.start.vM ?? 0) - fromM, (own.at(-1)?.end.vM ?? 0) - fromM];
  for (let first = 0; first < chords.length; first++) {
    const run: Chord[] = [];
    for (const chord of chords.slice(first)) {
      const before = run.at(-1);
      if (!isHeld(chord) || (before !== undefined && before.end.edge.ring !== chord.start.edge.ring)) break;
      run.push(chord);
      if (chord.end.edge.ring !== run[0]?.start.edge.ring) continue;
      const halves = splitRegion(facing, run);
      const isParted = halves !== undefined && leastM2(halves) > LEAST_PART_M2;
      if (isParted) return { run, halves, startM, endM };
      break;
    }
  }
  return null;
}

function leastM2({ below, above }: Halves): number {
  return Math.min(regionAreaM2(below), regionAreaM2(above));
}
