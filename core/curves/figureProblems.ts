import type { Problem } from '../problems.ts';
import type { YardPoint } from '../spaces.ts';
import type { Traced } from '../yard.ts';

/**
 * A problem for each size of a traced circle or ellipse that cannot be one, and for an arc through a place that is
 * none, which would be drawn straight. What the ring of corners encloses is the kernel's to check.
 *
 * @param outlineId, name go into the problem's `where`
 */
export function figureProblems(traced: Traced, outlineId: string, name: string): readonly Problem[] {
  const where = { outlineId, name };
  if (traced.kind === 'corners') {
    const isLost = traced.corners.some(({ run }) => run?.kind === 'arc' && !isPlace(run.via));
    return isLost ? [{ kind: 'shape/not-finite', where, facts: {} }] : [];
  }
  return sizesOf(traced)
    .filter(([, sizeM]) => !(sizeM > 0 && Number.isFinite(sizeM)))
    .map(([size]): Problem => ({ kind: 'shape/no-size', where, facts: { size } }));
}

function isPlace({ xM, yM }: YardPoint): boolean {
  return Number.isFinite(xM) && Number.isFinite(yM);
}

function sizesOf(
  traced: Exclude<Traced, { kind: 'corners' }>,
): readonly (readonly ['radius' | 'length' | 'width', number])[] {
  switch (traced.kind) {
    case 'circle':
      return [['radius', traced.radiusM]];
    case 'ellipse':
      return [
        ['length', traced.halfLengthM],
        ['width', traced.halfWidthM],
      ];
  }
}
