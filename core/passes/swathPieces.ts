import { type RingBounds, ringBounds } from '../kernel/index.ts';
import type { Ring } from '../spaces.ts';
import type { Pass } from './pass.ts';
import { passSwaths } from './passSwaths.ts';

/** Ground that a walk treats once. */
export interface SwathPiece {
  readonly rings: readonly Ring[];
  readonly bounds: RingBounds;
  readonly sectionId: string;
  readonly round: 1 | 2;
}

/** The ground of passes, in pieces: what lies under two of them is treated twice. */
export function swathPieces(
  passes: readonly Pick<Pass, 'line' | 'sectionId' | 'round'>[],
  swathM: number,
): SwathPiece[] {
  return passes.flatMap(({ line, sectionId, round }) =>
    passSwaths(line, swathM).map(({ outer, holes }) => {
      return { rings: [outer, ...holes], bounds: ringBounds(outer), sectionId, round };
    }),
  );
}
