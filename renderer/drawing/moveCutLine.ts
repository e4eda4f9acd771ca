import { distanceM } from '../../core/kernel/index.ts';
import {
  atAlong,
  type CutEnds,
  leftOfM,
  nearestEdgePlace,
  nextMark,
  onMark,
  parallelCut,
  type TapeSides,
} from '../../core/sections/index.ts';
import type { Region, YardPoint } from '../../core/spaces.ts';
import type { CutDraft, CutPart } from './drawing.ts';
import { middle } from './plane.ts';

/** The ground a cut is moved on, and the marks its ends stand on. */
export interface CutGround {
  readonly bed: Region;
  readonly markM: number;
  readonly sides: TapeSides;
}

/** Which part of a cut is within reach: the nearer end, failing both its middle. */
export function cutPartNear({ from, to }: CutEnds, at: YardPoint, reachM: number): CutPart | null {
  const [fromM, toM] = [distanceM(from, at), distanceM(to, at)];
  if (Math.min(fromM, toM) <= reachM) return fromM <= toM ? 'from' : 'to';
  return distanceM(middle(from, to), at) <= reachM ? 'middle' : null;
}

/** One end moved along the edge to where it is nearest to a point, to a tape mark unless it is held free. */
export function withEndAt(
  line: CutEnds,
  part: 'from' | 'to',
  at: YardPoint,
  free: boolean,
  { bed, markM, sides }: CutGround,
): CutDraft | undefined {
  const near = nearestEdgePlace([bed], at, sides);
  if (near === undefined) return undefined;
  const place = free ? near : onMark(near, markM, sides);
  return { of: line, line: { ...line, [part]: place.at }, place };
}

/** The end a mark further along the edge, whichever way of it goes more the way that was asked. */
export function withEndNudged(
  line: CutEnds,
  part: 'from' | 'to',
  way: { readonly eastM: number; readonly northM: number },
  { bed, markM, sides }: CutGround,
): CutDraft | undefined {
  const place = nearestEdgePlace([bed], line[part], sides);
  if (place === undefined) return undefined;
  const { from, to } = place.edge;
  const along = (to.xM - from.xM) * way.eastM + (to.yM - from.yM) * way.northM;
  if (Math.abs(along) <= ASKEW * distanceM(from, to) * Math.hypot(way.eastM, way.northM)) return undefined;
  const next = nextMark(place, markM, along > 0 ? 1 : -1, sides);
  return { of: line, line: { ...line, [part]: next.at }, place: next };
}

/** An arrow key nearly square to what it could move along moves nothing. */
const ASKEW = 0.1;

/** The end a typed distance along its edge, from the corner it is told from. */
export function withEndAlong(
  line: CutEnds,
  part: 'from' | 'to',
  alongM: number,
  { bed, sides }: CutGround,
): CutDraft | undefined {
  const now = nearestEdgePlace([bed], line[part], sides);
  const place = now && atAlong(now, alongM, sides);
  return place && { of: line, line: { ...line, [part]: place.at }, place };
}

/** The whole moved square to itself by as much as a way leads across it, its ends on tape marks unless held free. */
export function movedAcross(
  line: CutEnds,
  way: { readonly eastM: number; readonly northM: number },
  free: boolean,
  ground: CutGround,
): CutDraft | undefined {
  const to = { xM: line.from.xM + way.eastM, yM: line.from.yM + way.northM };
  const moved = parallelCut(ground.bed, line, leftOfM(line, to));
  if (moved === undefined) return undefined;
  return { of: line, line: free ? moved : onMarks(moved, ground), place: null };
}

/** The whole moved by one mark across itself, to the side an arrow key points at. */
export function nudgedAcross(
  line: CutEnds,
  way: { readonly eastM: number; readonly northM: number },
  ground: CutGround,
): CutDraft | undefined {
  const stepM = Math.hypot(way.eastM, way.northM);
  const leftM = leftOfM(line, { xM: line.from.xM + way.eastM, yM: line.from.yM + way.northM });
  if (Math.abs(leftM) <= ASKEW * stepM) return undefined;
  // One end goes to the next mark, the other follows to one of its own, so that the run of keys never stands still.
  const moved = parallelCut(ground.bed, line, Math.sign(leftM) * ground.markM);
  return moved && { of: line, line: onMarks(moved, ground), place: null };
}

function onMarks(line: CutEnds, { bed, markM, sides }: CutGround): CutEnds {
  const marked = (at: YardPoint): YardPoint => {
    const place = nearestEdgePlace([bed], at, sides);
    return place === undefined ? at : onMark(place, markM, sides).at;
  };
  return { from: marked(line.from), to: marked(line.to) };
}
