import type { ReshapeState, SetAside } from '../drawing.ts';

/** An outline with its corners open to the hand, nothing moved yet. */
export function beginReshape(outlineId: string, setAside: SetAside | null): ReshapeState {
  return {
    kind: 'reshape',
    outlineId,
    setAside,
    problem: null,
    hover: null,
    chosen: null,
    held: false,
    draft: null,
    snap: null,
  };
}
