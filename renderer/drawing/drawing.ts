import type { OwnPoint } from '../../core/curves/index.ts';
import type { Edit } from '../../core/edits/index.ts';
import type { KnownPlace } from '../../core/earth/index.ts';
import type { Problem } from '../../core/problems.ts';
import type { Result } from '../../core/result.ts';
import type { CutEnds, EdgePlace } from '../../core/sections/index.ts';
import type { LonLat, YardPoint } from '../../core/spaces.ts';
import type {
  MarkKind,
  Outline,
  OutlineKind,
  Traced,
  TracedCorner,
  UnitSystem,
  Yard,
} from '../../core/yard.ts';
import type { Snap } from './snap.ts';
import type { WalkContext } from './walkCuts.ts';

/** What the person has picked out; the same pick is shown orange on the sketch and in the columns. */
export type Selection = {
  readonly kind: 'outline' | 'mark' | 'picture' | 'section' | 'check' | 'cut' | 'flag';
  readonly id: string;
} | null;

/** What can be taken in hand. */
export type Tool =
  | { readonly kind: 'select' }
  | { readonly kind: 'trace'; readonly outlineKind: OutlineKind }
  | { readonly kind: 'oval'; readonly outlineKind: OutlineKind; readonly shape: OvalShape }
  | { readonly kind: 'place-mark'; readonly markKind: MarkKind }
  | { readonly kind: 'scale-picture'; readonly pictureId: string }
  | { readonly kind: 'tape-between' }
  | { readonly kind: 'place-yard'; readonly readPlace: ReadPlace }
  | { readonly kind: 'move-yard' }
  | { readonly kind: 'add-cut' }
  | { readonly kind: 'place-end'; readonly end: WalkEnd };

export type DrawingState =
  | SelectState
  | TraceState
  | OvalState
  | PlaceMarkState
  | ReshapeState
  | ScalePictureState
  | TapeBetweenState
  | PlaceYardState
  | MoveYardState
  | CutState
  | AddCutState
  | PlaceEndState;

/** Corners of an outline that was left before it closed. Nothing drawn is lost: Backspace takes it up again. */
export interface SetAside {
  readonly outlineKind: OutlineKind;
  readonly corners: readonly TracedCorner[];
}

/** How the next edge is to run, while tracing or for the edge in hand. */
export type EdgeToCome =
  | { readonly kind: 'straight' | 'smooth' }
  /** `via` null = the next point placed is the point on the arc, the one after it the corner. */
  | { readonly kind: 'arc'; readonly via: YardPoint | null }
  /** For one edge: an arc of this radius that bulges to a side of the way from corner to corner. */
  | {
      readonly kind: 'radius';
      readonly radiusM: number;
      readonly side: 'left' | 'right';
      readonly long: boolean;
    };

export type OvalShape = 'circle' | 'ellipse';

interface Common {
  readonly setAside: SetAside | null;
  /** What stands in the way of the last thing tried; cleared by the next input that changes anything. */
  readonly problem: Problem | null;
}

/** Nothing in hand: a click picks an outline or a mark. */
export interface SelectState extends Common {
  readonly kind: 'select';
  /** A mark held by the pointer or chosen for the arrow keys, and where it has got to. */
  readonly mark: { readonly id: string; readonly to: YardPoint | null; readonly held: boolean } | null;
}

/** An outline is being traced, corner by corner. */
export interface TraceState extends Common {
  readonly kind: 'trace';
  readonly outlineKind: OutlineKind;
  /** What is said of the edge from the last corner is still to come. */
  readonly corners: readonly TracedCorner[];
  readonly edge: EdgeToCome;
  /** Where the next corner would go: the pointer, snapped; null while the pointer is away. */
  readonly aim: Snap | null;
}

/** A circle or an ellipse is being drawn: its centre, then its rim, or the end of its length and its width. */
export interface OvalState extends Common {
  readonly kind: 'oval';
  readonly outlineKind: OutlineKind;
  readonly shape: OvalShape;
  /** The centre, then the end of an ellipse's length. */
  readonly points: readonly YardPoint[];
  readonly aim: Snap | null;
}

export interface PlaceMarkState extends Common {
  readonly kind: 'place-mark';
  readonly markKind: MarkKind;
  readonly aim: Snap | null;
}

/**
 * Ring 0 is the outer ring, 1… the holes. `at` is the corner; of an edge and of the point on its arc (`via`) the corner
 * it begins at; of a circle or an ellipse 0.
 */
export interface Handle {
  readonly of: 'edge' | OwnPoint['kind'];
  readonly ring: number;
  readonly at: number;
}

/** `of` is the outline the draft was made from; when the yard holds another by now, the draft is void. */
export interface Draft {
  readonly of: Outline;
  readonly rings: readonly Traced[];
  /** For the edit it becomes: "move a corner of Back lawn". */
  readonly label: string;
  /** Made by the app, not by the hand: only Enter makes it an edit. */
  readonly asks?: true;
  /** An edge taken hold of to be bent and not pulled yet: let go, it is as it was. */
  readonly unpulled?: true;
}

/** The selected outline with its corners open to the hand. */
export interface ReshapeState extends Common {
  readonly kind: 'reshape';
  readonly outlineId: string;
  /** Under the pointer. */
  readonly hover: Handle | null;
  /** Chosen for the keyboard and typed values; never the middle of an edge. */
  readonly chosen: Handle | null;
  readonly held: boolean;
  /** What has been moved and is not yet in the yard: a drag, a run of arrow keys, a crossing to mend. */
  readonly draft: Draft | null;
  readonly snap: Snap | null;
}

/** Two ends of a known length are pointed out on a picture, then the length is typed. */
export interface ScalePictureState extends Common {
  readonly kind: 'scale-picture';
  readonly pictureId: string;
  readonly from: YardPoint | null;
  readonly to: YardPoint | null;
  readonly aim: YardPoint | null;
}

/** Two places are pointed out that a tape was pulled between, then what it reads is typed. */
export interface TapeBetweenState extends Common {
  readonly kind: 'tape-between';
  readonly from: YardPoint | null;
  readonly to: YardPoint | null;
  readonly aim: Snap | null;
}

/** Reads a place on earth as typed. It knows coordinate systems by the thousand and is brought by the page that has it. */
export type ReadPlace = (typed: string, field: string) => Result<LonLat>;

/** Points of the yard are pointed out and their places on earth typed, to lay the whole yard down by them. */
export interface PlaceYardState extends Common {
  readonly kind: 'place-yard';
  readonly readPlace: ReadPlace;
  readonly known: readonly KnownPlace[];
  /** Pointed out, its place still to be typed. */
  readonly at: YardPoint | null;
  readonly aim: Snap | null;
}

/** The whole yard is in hand, and how far it has got: moved, and turned clockwise about its middle. */
export interface MoveYardState extends Common {
  readonly kind: 'move-yard';
  readonly held: { readonly by: 'shift' | 'turn'; readonly from: YardPoint } | null;
  readonly eastM: number;
  readonly northM: number;
  readonly turnDeg: number;
}

/** An end of a cut, or its middle, by which the whole is moved square to itself. */
export type CutPart = 'from' | 'middle' | 'to';

/** A cut that has been moved and is not yet in the yard. */
export interface CutDraft {
  /** As it was taken hold of. */
  readonly of: CutEnds;
  readonly line: CutEnds;
  /** Where the end that is moved stands on the edge; null while the whole is. */
  readonly place: EdgePlace | null;
}

/** A cut of the walk is selected: its ends and its middle are open to the hand. */
export interface CutState extends Common {
  readonly kind: 'cut';
  readonly cutId: string;
  readonly hover: CutPart | null;
  /** What the arrow keys and typed distances move; the whole when none is chosen. */
  readonly chosen: CutPart | null;
  /** Where the pointer took hold. */
  readonly heldAt: YardPoint | null;
  readonly draft: CutDraft | null;
}

/** Where an end of a cut would stand; `on` null while the hand is off every edge. */
export interface CutAim {
  readonly snap: Snap;
  readonly on: CutFoot | null;
}

/** A place on the edge of a zone's treated ground. */
export interface CutFoot {
  readonly zoneId: string;
  readonly place: EdgePlace;
}

/** A cut is added by its two ends, both on the edge of one zone's treated ground. */
export interface AddCutState extends Common {
  readonly kind: 'add-cut';
  readonly from: CutFoot | null;
  readonly aim: CutAim | null;
}

export type WalkEnd = 'start' | 'finish';

/** Where the walk starts or finishes is pointed out. */
export interface PlaceEndState extends Common {
  readonly kind: 'place-end';
  readonly end: WalkEnd;
  readonly aim: Snap | null;
}

/** `reachM` is the snapping and grabbing distance: some pixels, as metres at this zoom. `free` = do not snap. */
export interface Pointing {
  readonly at: YardPoint;
  readonly reachM: number;
  readonly free: boolean;
}

export type DrawingInput =
  /** A tool is taken; whatever was under way is put aside. */
  | { readonly kind: 'take'; readonly tool: Tool }
  /** Something was picked out elsewhere (in the columns, by Tab). */
  | { readonly kind: 'choose'; readonly selection: Selection }
  | ({ readonly kind: 'move' } & Pointing)
  | { readonly kind: 'leave' }
  /** The pointer went down on a handle (see `handleNear`) and holds it. */
  | ({ readonly kind: 'press' } & Pointing)
  | { readonly kind: 'release' }
  | ({ readonly kind: 'click' } & Pointing)
  /** Enter at the foot line, with what stands in it; '' when nothing does. */
  | { readonly kind: 'typed'; readonly text: string }
  /** An arrow key: one step east or north; while the pointer is away it moves the crosshair from `from`. */
  | {
      readonly kind: 'arrow';
      readonly eastM: number;
      readonly northM: number;
      readonly from: YardPoint;
    }
  /** All arrow keys were let go: what they moved becomes one edit. */
  | { readonly kind: 'arrows-let-go' }
  | { readonly kind: 'next-corner' }
  | { readonly kind: 'previous-corner' }
  /** Space: the same as a click where the crosshair stands. */
  | { readonly kind: 'place' }
  /** How the next edge runs, or the edge in hand. */
  | { readonly kind: 'run'; readonly edge: EdgeToCome }
  /** A ring of the outline in hand with figures typed on the page. */
  | { readonly kind: 'redraw'; readonly ring: number; readonly traced: Traced; readonly label: string }
  /** Uncross what is in hand; what comes of it is shown first. */
  | { readonly kind: 'mend' }
  | { readonly kind: 'back' }
  | { readonly kind: 'remove' }
  | { readonly kind: 'escape' }
  /** The window lost the hand: focus went, the touch was taken away, the yard changed underneath. */
  | { readonly kind: 'interrupted' };

export interface DrawingContext {
  readonly yard: Yard;
  readonly units: UnitSystem;
  /** false on a page that only shows the yard, or when the file is read only: nothing then makes an edit. */
  readonly mayEdit: boolean;
  /** The job's walk, on the page it is worked out on; null on every other. */
  readonly walk: WalkContext | null;
  /** The one source of new ids, so that a step stays a function of what it is given. */
  readonly makeId: () => string;
}

/** `select` undefined = the selection stays as it is. */
export interface Step {
  readonly state: DrawingState;
  readonly edits: readonly Edit[];
  readonly select?: Selection;
}
