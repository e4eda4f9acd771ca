import { ok, type Result, trouble } from '../result.ts';
import type { TapePoint } from './place.ts';

/**
 * Where two lengths meet that start at the ends of a base: along the base from its start, and to its left.
 *
 * Problems: value/tapes-do-not-meet, when they are together shorter than the base, one outruns the other by
 * more than the base, or they only meet on the line of the base itself
 * Accuracy: relative 1e-12 of the lengths while the three are far from one line
 * Source: two right triangles over the base b share the height: d1² − x² = d2² − (b − x)², so
 * x = (d1² − d2² + b²) / 2b. The height is taken from the factored form of Heron's formula, y = 2A / b with
 * 16A² = (d1+d2+b)(d1+d2−b)(b+d1−d2)(b+d2−d1), which keeps its digits where √(d1² − x²) loses them.
 */
export function meeting(field: string, baseM: number, startM: number, endM: number): Result<TapePoint> {
  const sixteenA2 =
    (startM + endM + baseM) * (startM + endM - baseM) * (baseM + startM - endM) * (baseM + endM - startM);
  if (!(startM + endM > baseM && Math.abs(startM - endM) < baseM && sixteenA2 > 0)) {
    return trouble({
      kind: 'value/tapes-do-not-meet',
      where: { field },
      facts: { firstM: startM, secondM: endM, apartM: baseM },
    });
  }
  const alongM = ((startM - endM) * (startM + endM) + baseM * baseM) / (2 * baseM);
  return ok({ alongM, leftM: Math.sqrt(sixteenA2) / (2 * baseM) });
}
