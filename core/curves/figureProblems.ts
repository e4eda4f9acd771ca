import type { Problem } from '../problems.ts';
import type { Traced } from '../yard.ts';

/**
 * A problem for each size of a traced circle or ellipse that cannot be one. Corners have no sizes; what their ring
 * encloses is the kernel's to check.
 *
 * @param outlineId, name go into the problem's `where`
 */
export function figureProblems(traced: Traced, outlineId: string, name: string): readonly Problem[] {
  return sizesOf(traced)
    .filter(([, sizeM]) => !(sizeM > 0 && Number.isFinite(sizeM)))
    .map(([size]): Problem => ({ kind: 'shape/no-size', where: { outlineId, name }, facts: { size } }));
}

function sizesOf(traced: Traced): readonly (readonly ['radius' | 'length' | 'width', number])[] {
  switch (traced.kind) {
    case 'corners':
      return [];
    case 'circle':
      return [['radius', traced.radiusM]];
    case 'ellipse':
      return [
        ['length', traced.halfLengthM],
        ['width', traced.halfWidthM],
      ];
  }
}
