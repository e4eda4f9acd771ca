/**
 * Drawing: what a hand does on the sketch, as small state machines. In: where the pointer is in yard metres,
 * keys, typed values; out: the next state, edits of the yard, and what to show meanwhile. Pure: no DOM, no
 * map, ids handed in. Out of scope: how it looks (`renderer/map`), whether zones overlap (`core/zones`).
 *
 * Transitions. `take` goes from any state to the tool's first state and puts an open trace aside; `interrupted`
 * lets go of what is held and makes no edit.
 *
 * | state         | input                        | next                | edit                        |
 * | ------------- | ---------------------------- | ------------------- | --------------------------- |
 * | select        | click/choose an outline      | reshape             |                             |
 * | select        | click/choose a mark          | select, mark chosen |                             |
 * | select        | press, move, release on mark | select              | move the mark               |
 * | select        | arrow …, arrows-let-go       | select              | move the mark               |
 * | select        | remove                       | select              | remove the mark             |
 * | trace         | click, place, typed corner   | trace, one more     |                             |
 * | trace         | click on the first corner,   | reshape the new one | trace the outline           |
 * |               | or Enter with nothing typed  |                     |                             |
 * | trace         | the same, but it crosses     | trace, problem      |                             |
 * | trace         | run (straight, arc, smooth,  | trace, the next     |                             |
 * |               | radius), also typed          | edge runs so        |                             |
 * | trace         | click, … while an arc is to  | trace, the point on |                             |
 * |               | come                         | it, then the corner |                             |
 * | trace         | mend after it crossed        | trace, uncrossed    |                             |
 * | trace         | typed circle, ellipse first  | oval                |                             |
 * | trace         | back                         | trace, one fewer;   |                             |
 * |               |                              | with none, takes up |                             |
 * |               |                              | what was put aside  |                             |
 * | trace         | escape                       | trace, put aside;   |                             |
 * |               |                              | with none, select   |                             |
 * | oval          | click, place, typed place or | one point more;     | trace the outline           |
 * |               | size                         | the last: reshape   |                             |
 * | oval          | typed circle, ellipse first  | oval of that shape  |                             |
 * | oval          | back                         | one point fewer     |                             |
 * | oval          | escape                       | no point; select    |                             |
 * | place-mark    | click, place, typed place    | select, mark chosen | place the mark              |
 * | place-mark    | escape                       | select              |                             |
 * | reshape       | press an own point, move,    | reshape             | move a corner, bend an edge,|
 * |               | release                      |                     | size or move the oval       |
 * | reshape       | press an edge, move, release | reshape             | add a corner                |
 * | reshape       | the same with Alt held       | reshape, arc chosen | bend an edge                |
 * | reshape       | arrow …, arrows-let-go       | reshape             | move the point, or the whole|
 * | reshape       | typed place or size of the   | reshape             | as if it were dragged there |
 * |               | chosen                       |                     |                             |
 * | reshape       | typed move, none chosen      | reshape             | move the whole              |
 * | reshape       | run, also typed, of the edge | reshape             | bend or straighten an edge  |
 * |               | from the chosen corner       |                     |                             |
 * | reshape       | redraw with figures typed    | reshape             | as the page says            |
 * | reshape       | mend of what crosses         | reshape, shown      |                             |
 * | reshape       | Enter while a mend is shown  | reshape             | uncross the outline         |
 * | reshape       | any of these, but it crosses | reshape, draft kept |                             |
 * | reshape       | remove/back, a corner or an  | reshape             | remove a corner, straighten |
 * |               | arc chosen                   |                     | the edge                    |
 * | reshape       | remove, none chosen          | select              | remove the outline          |
 * | reshape       | Enter with nothing typed     | trace the same kind |                             |
 * | reshape       | escape                       | drops the draft,    |                             |
 * |               |                              | then the choice,    |                             |
 * |               |                              | then select         |                             |
 * | scale-picture | click, click                 | both ends set       |                             |
 * | scale-picture | typed length                 | select              | scale the picture and all   |
 * |               |                              |                     | traced over it by all its   |
 * |               |                              |                     | known lengths               |
 * | scale-picture | back, escape                 | one end fewer, …    |                             |
 * | tape-between  | click, place                 | one end more        |                             |
 * | tape-between  | the same on bare ground      | the same, problem   |                             |
 * | tape-between  | typed distance               | tape-between afresh | note a taped distance       |
 * | tape-between  | back, escape                 | one end fewer, …    |                             |
 * | place-yard    | click or place a point       | its place is asked  |                             |
 * | place-yard    | typed place                  | place-yard, one more|                             |
 * | place-yard    | Enter with nothing typed     | select              | place the yard              |
 * | place-yard    | back, escape                 | one point fewer, …  |                             |
 * | move-yard     | press, move, release         | move-yard           | move or turn the yard       |
 * | move-yard     | arrow …, arrows-let-go       | move-yard           | move the yard               |
 * | move-yard     | typed shift or turn          | move-yard           | move or turn the yard       |
 * | move-yard     | escape, Enter                | select              |                             |
 * | select        | choose a cut of the walk     | cut                 |                             |
 * | cut           | press an end or the middle,  | cut, held by its id | move the cut                |
 * |               | move, release                |                     |                             |
 * | cut           | the same, but it parts       | cut, problem        |                             |
 * |               | nothing                      |                     |                             |
 * | cut           | arrow …, arrows-let-go       | cut                 | move the cut by tape marks  |
 * | cut           | typed distance               | cut                 | move the cut                |
 * | cut           | Enter with nothing typed     | cut                 | hold the cut                |
 * | cut           | remove                       | select              | let the cut go              |
 * | cut           | escape                       | drops the draft,    |                             |
 * |               |                              | the choice; select  |                             |
 * | add-cut       | click, place, typed place    | one end set         |                             |
 * | add-cut       | the same again               | cut, the new one    | add the cut                 |
 * | add-cut       | the same off the edge        | the same, problem   |                             |
 * | add-cut       | back, escape                 | one end fewer, …    |                             |
 * | place-end     | click, place, typed place    | select              | place the start or finish   |
 * | place-end     | escape                       | select              |                             |
 */
export type {
  CutPart,
  Draft,
  DrawingContext,
  DrawingInput,
  DrawingState,
  EdgeToCome,
  Handle,
  OvalShape,
  PlaceYardState,
  Pointing,
  ReshapeState,
  Selection,
  SetAside,
  Step,
  Tool,
  WalkEnd,
} from './drawing.ts';
export { mayStep } from './mayStep.ts';
export { cutPartNear } from './moveCutLine.ts';
export { MARK_WORDS, nextName, OUTLINE_WORDS } from './names.ts';
export { arcFigures, edgeLengthM, withEdge } from './edges.ts';
export { handlePlace, handlesOf } from './handles.ts';
export { pickAt } from './pick.ts';
export { pictureCorners, yardToPicture } from './pictureCorners.ts';
export { alongBearing, alongLine, bearingDegOf, middle } from './plane.ts';
export type { Dimension } from './dimensions.ts';
export { type Preview, previewOf, type Reshaping } from './previewOf.ts';
export {
  inverseOfProjective,
  pictureToQuad,
  type Projective,
  projected,
  type Quad,
  type Xy,
} from './projective.ts';
export { type Prompt, promptOf } from './promptOf.ts';
export type { Snap, SnapTo } from './snap.ts';
export { rescaleEdit } from './rescaleEdit.ts';
export { AT_REST, canGrab, step } from './step.ts';
export { type Direction, type LengthAndDirection, readLengthAndDirection } from './typedCorner.ts';
export {
  cutsOf,
  loadAreaM2Of,
  type NamedCut,
  plannedCutsOf,
  treatedOf,
  type WalkContext,
} from './walkCuts.ts';
export type { CutInHand, WalkPreview } from './walkPreview.ts';
