import { movedTraced, type Similarity, tracedRing } from '../curves/index.ts';
import { type YardPlacing, yardToLonLat } from '../earth/index.ts';
import { movePoint, type RigidMotion, wholeBearing } from '../frame/index.ts';
import type { LonLat, YardPoint } from '../spaces.ts';
import type { Job, LaneHeading, Outline, PictureCorners, Traced, Yard } from '../yard.ts';
import type { Change, Edit } from './edit.ts';
import { makeEdit, putRow } from './makeEdit.ts';

/** Halfway between the outermost points of what is drawn, else of the pictures; (0, 0) in an empty yard. */
export function yardMiddle({ outlines, marks, pictures }: Yard): YardPoint {
  const drawn = [...outlines.flatMap(({ outer }) => tracedRing(outer)), ...marks.map(({ at }) => at)];
  const laid = pictures.flatMap(({ placement }) =>
    placement.kind === 'unscaled' ? [] : [...placement.corners],
  );
  let [west, south, east, north] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { xM, yM } of drawn.length > 0 ? drawn : laid) {
    [west, east] = [Math.min(west, xM), Math.max(east, xM)];
    [south, north] = [Math.min(south, yM), Math.max(north, yM)];
  }
  return west <= east ? { xM: (west + east) / 2, yM: (south + north) / 2 } : { xM: 0, yM: 0 };
}

/** Where on earth the yard's middle lies; null for a loose yard. */
export function placeOfMiddle(yard: Yard): LonLat | null {
  const { frame } = yard.details;
  return frame.kind === 'loose' ? null : yardToLonLat(frame.origin, yardMiddle(yard));
}

/**
 * Whether something in a placed yard has its place from its own file: a picture that knows where it is, an elevation
 * grid. What is drawn can then be moved over it, but the frame under it stays.
 */
export function hasFixedGround({ details, pictures, elevations }: Yard): boolean {
  const knows = pictures.some(({ placement }) => placement.kind === 'georeferenced');
  return details.frame.kind === 'placed' && (knows || elevations.length > 0);
}

/**
 * Lays the yard down on earth, or elsewhere on it, as one edit: its middle becomes the frame's origin, and everything
 * in it is turned about that. No area changes. Not for a yard with fixed ground, whose frame stays.
 */
export function placeYardEdit(
  yard: Yard,
  { origin, turnDeg }: Pick<YardPlacing, 'origin' | 'turnDeg'>,
): Edit {
  const motion = { about: yardMiddle(yard), to: { xM: 0, yM: 0 }, turnDeg };
  const details = { ...yard.details, frame: { kind: 'placed', origin } } as const;
  return makeEdit('place the yard', putRow(yard, 'details', details), ...moves(yard, motion, true));
}

/**
 * Moves and turns what is drawn within the yard's frame, as one edit. In a placed yard, pictures that know their place
 * and elevation grids stay where they are: they are what the drawing is moved to fit. In a loose one nothing has a
 * place, so all of it moves together.
 */
export function moveYardEdit(yard: Yard, motion: RigidMotion): Edit {
  return makeEdit('move the yard', ...moves(yard, motion, yard.details.frame.kind === 'loose'));
}

/** Takes the yard off the earth: what is drawn stays as it is, among itself. */
export function loosenYardEdit(yard: Yard): Edit {
  return makeEdit(
    'take the yard off the earth',
    putRow(yard, 'details', { ...yard.details, frame: { kind: 'loose' } }),
  );
}

function moves(yard: Yard, motion: RigidMotion, all: boolean): readonly Change[] {
  const move = (at: YardPoint): YardPoint => movePoint(motion, at);
  const by: Similarity = { move, scale: 1, turnDeg: motion.turnDeg };
  const corners = (quad: PictureCorners): PictureCorners => quad.map(move) as unknown as PictureCorners;
  const changes: Change[] = yard.outlines.map((outline) =>
    putRow(yard, 'outlines', movedOutline(outline, by)),
  );
  for (const mark of yard.marks) changes.push(putRow(yard, 'marks', { ...mark, at: move(mark.at) }));
  for (const check of yard.checks) {
    changes.push(putRow(yard, 'checks', { ...check, from: move(check.from), to: move(check.to) }));
  }
  for (const picture of yard.pictures) {
    const { placement } = picture;
    if (placement.kind === 'unscaled' || (placement.kind === 'georeferenced' && !all)) continue;
    const moved = { ...picture, placement: { ...placement, corners: corners(placement.corners) } };
    changes.push(putRow(yard, 'pictures', moved));
  }
  for (const elevation of all ? yard.elevations : []) {
    changes.push(putRow(yard, 'elevations', { ...elevation, corners: corners(elevation.corners) }));
  }
  for (const job of yard.jobs) {
    const moved = movedJob(job, move, motion.turnDeg);
    if (moved !== job) changes.push(putRow(yard, 'jobs', moved));
  }
  return changes;
}

/** The same job where nothing in it has a place. Lanes are walked on compass bearings: they turn with their lawn. */
function movedJob(job: Job, move: (at: YardPoint) => YardPoint, turnDeg: number): Job {
  const { heading, heldCuts, startAt, finishAt } = job;
  const isTurned = heading.kind !== 'best' && turnDeg !== 0;
  if (!isTurned && heldCuts.length === 0 && startAt === null && finishAt === null) return job;
  return {
    ...job,
    heading: turnedHeading(heading, turnDeg),
    heldCuts: heldCuts.map((cut) => ({ ...cut, from: move(cut.from), to: move(cut.to) })),
    startAt: startAt === null ? null : move(startAt),
    finishAt: finishAt === null ? null : move(finishAt),
  };
}

function turnedHeading(heading: LaneHeading, turnDeg: number): LaneHeading {
  if (heading.kind === 'best') return heading;
  return heading.kind === 'picked'
    ? { ...heading, deg: wholeBearing(heading.deg + turnDeg) }
    : { ...heading, lastDeg: wholeBearing(heading.lastDeg + turnDeg) };
}

function movedOutline(outline: Outline, by: Similarity): Outline {
  const move = (traced: Traced): Traced => movedTraced(traced, by);
  return { ...outline, outer: move(outline.outer), holes: outline.holes.map(move) };
}
