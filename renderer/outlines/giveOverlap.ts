import { type Edit, makeEdit, putRow } from '../../core/edits/index.ts';
import type { Outline, Yard } from '../../core/yard.ts';

/** The edit by which one zone owns what it shares with another, whatever the yard's rule: it claims, the other does not. */
export function giveOverlap(yard: Yard, toId: string, fromId: string): Edit {
  const claims = (id: string, claimsOverlaps: boolean) =>
    yard.outlines
      .filter((row: Outline) => row.id === id && row.claimsOverlaps !== claimsOverlaps)
      .map((row) => putRow(yard, 'outlines', { ...row, claimsOverlaps }));
  const to = yard.outlines.find(({ id }) => id === toId)?.name ?? '';
  return makeEdit(`give shared ground to ${to}`, ...claims(toId, true), ...claims(fromId, false));
}
