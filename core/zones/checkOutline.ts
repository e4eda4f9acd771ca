import { checkRing } from '../kernel/index.ts';
import type { Problem } from '../problems.ts';
import { ok, type Result } from '../result.ts';
import type { Outline } from '../yard.ts';

/**
 * Whether every ring of an outline can stand for ground.
 *
 * Problems: those of `checkRing`, all rings' together, each naming the outline
 */
export function checkOutline(outline: Outline): Result<Outline> {
  const problems = [outline.outer, ...outline.holes].flatMap((ring): readonly Problem[] => {
    const checked = checkRing(ring, outline.id, outline.name);
    return checked.ok ? [] : checked.problems;
  });
  const [first, ...more] = problems;
  return first === undefined ? ok(outline) : { ok: false, problems: [first, ...more] };
}
