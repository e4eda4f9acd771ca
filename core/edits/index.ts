/**
 * Edits: the only way a yard document changes. An edit lists rows before and after, so that it can be
 * applied, undone, stored and replayed without knowing what it meant. In: a yard and an edit; out: the next
 * yard. Out of scope: whether the edit makes sense on the ground (the tools and `core/zones` say that).
 */
export { applyEdit, inverseOf } from './applyEdit.ts';
export { type Change, type Edit, rowsOf, YARD_PARTS, type YardPart, type YardRows } from './edit.ts';
export { emptyYard } from './emptyYard.ts';
export { editFits } from './editFits.ts';
export { type PlacedByPoints, placeByPointsEdit } from './placeByPointsEdit.ts';
export { makeEdit, putRow, removeRow } from './makeEdit.ts';
export {
  hasFixedGround,
  loosenYardEdit,
  moveYardEdit,
  placeOfMiddle,
  placeYardEdit,
  yardMiddle,
} from './moveYard.ts';
export { newJob } from './newJob.ts';
export { newOutline } from './newOutline.ts';
