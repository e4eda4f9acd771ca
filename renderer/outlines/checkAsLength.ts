import { type Edit, makeEdit, removeRow } from '../../core/edits/index.ts';
import type { Result } from '../../core/result.ts';
import { ok } from '../../core/result.ts';
import type { FieldCheck, Picture, Yard } from '../../core/yard.ts';
import { rescaleEdit, yardToPicture } from '../drawing/index.ts';

/**
 * Makes a taped distance one more known length of the picture both its ends were traced over: the picture and all
 * traced over it take the scale its lengths then have. The distance is a check no longer, for the map now follows it.
 *
 * Problems: those of `rescaleEdit`
 */
export function checkAsLength(yard: Yard, picture: Picture, check: FieldCheck): Result<Edit> {
  const known = {
    fromPx: yardToPicture(picture, check.from),
    toPx: yardToPicture(picture, check.to),
    lengthM: check.tapedM,
  };
  const lengths = picture.placement.kind === 'scaled' ? [...picture.placement.lengths, known] : [known];
  const label = `scale ${picture.name} by ${check.name}`;
  const edit = rescaleEdit(yard, picture, lengths, label);
  if (!edit.ok) return edit;
  const gone = removeRow(yard, 'checks', check.id);
  const kept = edit.value.changes.filter(({ part, id }) => part !== 'checks' || id !== check.id);
  return ok(makeEdit(label, ...kept, ...(gone === undefined ? [] : [gone])));
}
