import type { CutState, SetAside } from '../drawing.ts';

/** A cut with its ends and its middle open to the hand, nothing moved yet. */
export function beginCut(cutId: string, setAside: SetAside | null): CutState {
  return {
    kind: 'cut',
    cutId,
    hover: null,
    chosen: null,
    heldAt: null,
    draft: null,
    setAside,
    problem: null,
  };
}
