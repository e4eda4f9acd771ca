import { type CutEnds, type CutSides, cutSides } from '../../core/sections/index.ts';
import type { Region, YardPoint } from '../../core/spaces.ts';
import { type Dimension, dimension } from './dimensions.ts';
import type { AddCutState, CutPart, CutState, DrawingContext } from './drawing.ts';
import type { Preview } from './previewOf.ts';
import { bedOf, cutsOf, loadAreaM2Of, type NamedCut, treatedOf, type WalkContext } from './walkCuts.ts';

/** The walk as a hand finds it: its cuts, where it starts and finishes, and the cut in hand. */
export interface WalkPreview {
  readonly cuts: readonly NamedCut[];
  readonly startAt: YardPoint | null;
  readonly finishAt: YardPoint | null;
  readonly inHand: CutInHand | null;
}

/** A cut that is selected, dragged or being added. */
export interface CutInHand {
  readonly line: CutEnds;
  /** Whether the job holds it. */
  readonly isHeld: boolean;
  /** Its ends and its middle are open to the hand. */
  readonly hasHandles: boolean;
  readonly chosen: CutPart | null;
  readonly hover: CutPart | null;
  /** While it is moved: where it was. */
  readonly was: CutEnds | null;
  /** What lies on both hands of it; null where it parts nothing. */
  readonly sides: CutSides | null;
}

export function walkPreview(walk: WalkContext | null): WalkPreview | null {
  if (walk === null) return null;
  const { startAt, finishAt } = walk.job;
  return { cuts: cutsOf(walk), startAt, finishAt, inHand: null };
}

export function cutPreview(state: CutState, { walk }: DrawingContext): Partial<Preview> {
  const cut = walk && cutsOf(walk).find(({ id }) => id === state.cutId);
  if (walk === null || !cut) return {};
  const { draft } = state;
  const line = draft?.line ?? cut;
  const inHand: CutInHand = {
    line,
    isHeld: cut.heldId !== null || draft !== null,
    hasHandles: walk.mayEdit,
    chosen: state.chosen,
    hover: state.hover,
    was: draft === null ? null : cut,
    sides: sidesOf(walk, cut.zoneId, bedOf(walk, cut), line),
  };
  return {
    walk: { ...baseOf(walk), inHand },
    mayEdit: walk.mayEdit,
    dimensions: alongEdge(draft?.place),
  };
}

export function addCutPreview(state: AddCutState, { walk }: DrawingContext): Partial<Preview> {
  if (walk === null) return {};
  const { from, aim } = state;
  const end = aim?.snap.at;
  const line = from !== null && end !== undefined ? { from: from.place.at, to: end } : null;
  const bed =
    from === null || line === null || aim?.on == null
      ? undefined
      : treatedOf(walk, from.zoneId).find((region) => sidesOf(walk, from.zoneId, region, line) !== null);
  const inHand: CutInHand | null = line && {
    line,
    isHeld: true,
    hasHandles: false,
    chosen: null,
    hover: null,
    was: null,
    sides: from && sidesOf(walk, from.zoneId, bed, line),
  };
  return {
    walk: { ...baseOf(walk), inHand },
    mayEdit: true,
    aim: aim?.snap ?? null,
    pointed: from === null || line !== null ? [] : [from.place.at],
    dimensions: [...alongEdge(from?.place), ...alongEdge(aim?.on?.place)],
  };
}

function baseOf(walk: WalkContext): WalkPreview {
  return walkPreview(walk) as WalkPreview;
}

/** How far an end stands along its edge, from the corner a tape is laid from. */
function alongEdge(
  place: { readonly side: CutEnds; readonly at: YardPoint } | null | undefined,
): readonly Dimension[] {
  return place ? [dimension(place.side.from, place.at)] : [];
}

function sidesOf(
  { plan }: WalkContext,
  zoneId: string,
  bed: Region | undefined,
  line: CutEnds,
): CutSides | null {
  if (plan === null || bed === undefined) return null;
  return cutSides(bed, line, loadAreaM2Of(plan, zoneId)) ?? null;
}
