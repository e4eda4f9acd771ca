import { movedTraced, tracedRing } from '../../core/curves/index.ts';
import { type Change, type Edit, makeEdit, putRow } from '../../core/edits/index.ts';
import { fitScale, pixelSizeM } from '../../core/frame/index.ts';
import { regionContains } from '../../core/kernel/index.ts';
import { ok, type Result } from '../../core/result.ts';
import type { YardPoint } from '../../core/spaces.ts';
import type { KnownLength, Outline, Picture, PictureCorners, Traced, Yard } from '../../core/yard.ts';
import { pictureCorners } from './pictureCorners.ts';

/**
 * Gives a picture the scale its known lengths have by least squares, about its own middle. A picture that had a
 * scale takes with it all that was traced over it, so that it stays over what it was traced from: outlines that name
 * it, outlines by hand with a corner on it, marks and check points on it. What was drawn by tape or GPS keeps its own
 * lengths. Over a picture that had no scale nothing was traced (`take` sees to that).
 *
 * Problems: those of `fitScale`
 */
export function rescaleEdit(
  yard: Yard,
  picture: Picture,
  lengths: readonly KnownLength[],
  label: string,
): Result<Edit> {
  const fit = fitScale(lengths, picture.cornerSigmaM);
  if (!fit.ok) return fit;
  const corners = pictureCorners(picture);
  const first = picture.placement.kind === 'unscaled';
  const shownM = pixelSizeM({ ...picture, placement: { kind: 'scaled', lengths, corners } }) ?? 1;
  const factor = fit.value.metresPerPx / shownM;
  const about = { xM: (corners[0].xM + corners[2].xM) / 2, yM: (corners[0].yM + corners[2].yM) / 2 };
  const scaled = (at: YardPoint): YardPoint => ({
    xM: about.xM + (at.xM - about.xM) * factor,
    yM: about.yM + (at.yM - about.yM) * factor,
  });
  const placement = {
    kind: 'scaled',
    lengths,
    corners: corners.map(scaled) as unknown as PictureCorners,
  } as const;
  const changes: Change[] = [putRow(yard, 'pictures', { ...picture, placement })];
  if (first) return ok(makeEdit(label, ...changes));

  const covers = (at: YardPoint): boolean => regionContains({ outer: corners, holes: [] }, at);
  const move = (traced: Traced): Traced => movedTraced(traced, { move: scaled, scale: factor, turnDeg: 0 });
  for (const outline of yard.outlines) {
    if (!tracedOver(outline, picture, covers)) continue;
    const [outer, holes] = [move(outline.outer), outline.holes.map(move)];
    changes.push(putRow(yard, 'outlines', { ...outline, outer, holes }));
  }
  for (const mark of yard.marks) {
    if (covers(mark.at)) changes.push(putRow(yard, 'marks', { ...mark, at: scaled(mark.at) }));
  }
  for (const check of yard.checks) {
    if (!covers(check.from) && !covers(check.to)) continue;
    const end = (at: YardPoint): YardPoint => (covers(at) ? scaled(at) : at);
    changes.push(putRow(yard, 'checks', { ...check, from: end(check.from), to: end(check.to) }));
  }
  return ok(makeEdit(label, ...changes));
}

function tracedOver(
  { placing, outer }: Outline,
  picture: Picture,
  covers: (at: YardPoint) => boolean,
): boolean {
  if (placing.pictureId !== null) return placing.pictureId === picture.id;
  return (placing.by === 'hand' || placing.by === 'picture') && tracedRing(outer).some(covers);
}
