import { expect, test } from 'vitest';
import { swathPieces } from '../../../core/passes/swathPieces.ts';
import { points } from '../../support/builders.ts';

test('pieces know whose they are, in which round, and the box they lie in', () => {
  const pieces = swathPieces(
    [
      { line: points([0, 1], [10, 1]), sectionId: 'A1', round: 1 },
      { line: points([20, 0], [20, 5]), sectionId: 'A2', round: 2 },
    ],
    2,
  );
  expect(pieces.map(({ sectionId, round }) => `${sectionId} ${round}`)).toEqual(['A1 1', 'A2 2']); // one straight piece each
  expect(pieces[0]?.bounds).toEqual({ minXM: 0, minYM: 0, maxXM: 10, maxYM: 2 }); // 1 m to each side
});
