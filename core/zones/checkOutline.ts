import { figureProblems, tracedRing } from '../curves/index.ts';
import { checkRing } from '../kernel/index.ts';
import type { Problem } from '../problems.ts';
import { ok, type Result } from '../result.ts';
import { MOST_GRADE } from '../slope/index.ts';
import type { Outline } from '../yard.ts';
import { stripProblems } from './strips.ts';

/** Outlines do not change, so one that was found sound stays so; while one is dragged the others are not asked again. */
const sound = new WeakSet<Outline>();

/**
 * Whether every ring of an outline can stand for ground, curves as the corners they are computed with.
 *
 * Problems: those of `checkRing`, all rings' together, shape/no-size of a circle or an ellipse, shape/no-grade, and of
 * widths kept off, each naming the outline
 */
export function checkOutline(outline: Outline): Result<Outline> {
  if (sound.has(outline)) return ok(outline);
  const rings = [outline.outer, ...outline.holes].flatMap((traced): readonly Problem[] => {
    const sizes = figureProblems(traced, outline.id, outline.name);
    if (sizes.length > 0) return sizes;
    const checked = checkRing(tracedRing(traced), outline.id, outline.name);
    return checked.ok ? [] : checked.problems;
  });
  const [first, ...more] = [...rings, ...stripProblems(outline), ...slopeProblems(outline)];
  if (first !== undefined) return { ok: false, problems: [first, ...more] };
  sound.add(outline);
  return ok(outline);
}

/** Fields refuse such slopes as they are typed; a file may hold them all the same. */
function slopeProblems({ id, name, slope }: Outline): readonly Problem[] {
  // Written so that NaN fails too.
  if (slope?.kind !== 'grade' || (slope.grade >= 0 && slope.grade <= MOST_GRADE)) return [];
  return [{ kind: 'shape/no-grade', where: { outlineId: id, name }, facts: { mostGrade: MOST_GRADE } }];
}
