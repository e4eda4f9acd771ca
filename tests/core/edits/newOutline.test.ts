import { expect, test } from 'vitest';
import { straight } from '../../../core/curves/index.ts';
import { newOutline } from '../../../core/edits/index.ts';
import { rect } from '../../support/builders.ts';

const said = { id: 'a', kind: 'bed', name: 'Roses', outer: straight(rect(0, 0, 2, 1)) } as const;

test('an outline is placed by hand, level and with nothing kept off unless it is said', () => {
  expect(newOutline(said)).toEqual({
    ...said,
    holes: [],
    placing: { by: 'hand', pictureId: null, sigmaM: null },
    keepOffM: null,
    slope: null,
    claimsOverlaps: false,
    blocksHose: null,
  });
});

test('what is said stands', () => {
  expect(newOutline({ ...said, keepOffM: 0.5, claimsOverlaps: true })).toMatchObject({
    keepOffM: 0.5,
    claimsOverlaps: true,
  });
});
