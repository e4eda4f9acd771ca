import { type Result, trouble } from '../result.ts';
import type { Ring } from '../spaces.ts';
import { type Place, placeRing, requireCount, requirePositive } from './place.ts';

/**
 * Ground between a straight baseline and an edge, taped by offsets square to the baseline on its left. The
 * baseline runs from the first corner on the bearing; the edge is drawn straight from offset to offset, so
 * that its area is the trapezoidal rule's.
 *
 * @param offsetsM zero or more, the first at the baseline's start, the last at its end
 * @param spacingsM the baseline between one offset and the next; a single one holds for all
 * Problems: value/too-few, value/counts-differ, value/not-positive, value/behind-baseline; shape/ as `checkRing`
 * (an offset of nothing between the ends makes the edge touch the baseline)
 */
export function offsetsFromBaseline(
  offsetsM: readonly number[],
  spacingsM: readonly number[],
  place: Place,
): Result<Ring> {
  const enough = requireCount('offsets', offsetsM.length, 2);
  if (!enough.ok) return enough;
  const spacings = spacingsM.length === 1 ? offsetsM.slice(1).map(() => spacingsM[0] as number) : spacingsM;
  if (spacings.length !== offsetsM.length - 1) {
    const facts = { found: spacings.length, expected: offsetsM.length - 1 };
    return trouble({ kind: 'value/counts-differ', where: { field: 'spacing' }, facts });
  }
  const positive = requirePositive(Object.fromEntries(spacings.map((m, i) => [`spacing ${i + 1}`, m])));
  if (!positive.ok) return positive;
  const behind = offsetsM.findIndex((offsetM) => !(offsetM >= 0));
  if (behind >= 0) {
    const [where, facts] = [{ field: `offset ${behind + 1}` }, { offsetM: offsetsM[behind] as number }];
    return trouble({ kind: 'value/behind-baseline', where, facts });
  }

  let alongM = 0;
  const edge = offsetsM.map((leftM, i) => {
    if (i > 0) alongM += spacings[i - 1] as number;
    return { alongM, leftM };
  });
  // An offset of nothing at an end is the baseline's own end.
  const farEdge = edge.filter(({ leftM }, i) => leftM > 0 || (i > 0 && i < edge.length - 1)).reverse();
  return placeRing('The ground by offsets', place, [
    { alongM: 0, leftM: 0 },
    { alongM, leftM: 0 },
    ...farEdge,
  ]);
}
