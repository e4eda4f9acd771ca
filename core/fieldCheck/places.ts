import { type RingBounds, ringBounds } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { Outline, Traced } from '../yard.ts';

/** A place a tape can be held to, and what it is called. */
export interface NamedPlace {
  readonly at: YardPoint;
  readonly words: string;
  /** For a narrow column: "Lawn 3". */
  readonly short: string;
  /** Where it lies on its outline, to tell it from the others in a list: "north-east". */
  readonly side: string;
}

/**
 * The places of an outline that can be found on the ground: its corners as they were placed, hole by hole, and
 * the four ends of the axes of a circle or an ellipse.
 */
export function cornersOf(outline: Outline): readonly NamedPlace[] {
  const known = corners.get(outline);
  if (known !== undefined) return known;
  const found = findCorners(outline);
  corners.set(outline, found);
  return found;
}

/** Outlines do not change, so their places are named once: checks are held anew at every move of a drag. */
const corners = new WeakMap<Outline, readonly NamedPlace[]>();

function findCorners({ name, outer, holes }: Outline): readonly NamedPlace[] {
  return [outer, ...holes].flatMap((traced, ring) => {
    const of = ring === 0 ? name : `hole ${ring} of ${name}`;
    const places = placesOf(traced);
    const box = ringBounds(places.map(({ at }) => at));
    return places.map(({ at, words, short }) => ({
      at,
      words: `${words} of ${of}`,
      short: `${of} ${short}`,
      side: windIn(box, at),
    }));
  });
}

const WINDS = [
  'north',
  'north-east',
  'east',
  'south-east',
  'south',
  'south-west',
  'west',
  'north-west',
] as const;

/** The nearest of the eight winds from the middle of a box, which counts as square: a corner is a corner. */
function windIn(box: RingBounds, { xM, yM }: YardPoint): string {
  const across = (2 * xM - box.minXM - box.maxXM) / (box.maxXM - box.minXM || 1);
  const up = (2 * yM - box.minYM - box.maxYM) / (box.maxYM - box.minYM || 1);
  const eighths = Math.round(Math.atan2(across, up) / (Math.PI / 4));
  return WINDS[(eighths + 8) % 8] ?? 'north';
}

function placesOf(traced: Traced): readonly Omit<NamedPlace, 'side'>[] {
  if (traced.kind === 'corners') {
    return traced.corners.map(({ xM, yM }, i) => ({
      at: { xM, yM },
      words: `corner ${i + 1}`,
      short: `${i + 1}`,
    }));
  }
  const [alongM, acrossM, bearingDeg] =
    traced.kind === 'circle'
      ? [traced.radiusM, traced.radiusM, 0]
      : [traced.halfLengthM, traced.halfWidthM, traced.bearingDeg];
  return AXIS_ENDS.map((words, i) => {
    const turnRad = ((bearingDeg + 90 * i) * Math.PI) / 180;
    const outM = i % 2 === 0 ? alongM : acrossM;
    const at = {
      xM: traced.centre.xM + outM * Math.sin(turnRad),
      yM: traced.centre.yM + outM * Math.cos(turnRad),
    };
    const end = traced.kind === 'circle' ? `${CIRCLE_ENDS[i]} side` : words;
    return { at, words: end, short: end };
  });
}

/** From the bearing of the length round clockwise. */
const AXIS_ENDS = ['far end', 'right side', 'near end', 'left side'] as const;
const CIRCLE_ENDS = ['north', 'east', 'south', 'west'] as const;
