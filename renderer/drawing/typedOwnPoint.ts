import { moveOwnPoint } from '../../core/curves/index.ts';
import { ok, type Result } from '../../core/result.ts';
import type { Ring } from '../../core/spaces.ts';
import { parseLength } from '../../core/units/index.ts';
import type { Traced, UnitSystem } from '../../core/yard.ts';
import type { Handle } from './drawing.ts';
import { arcFigures, withEdge } from './edges.ts';
import { ownPointOf } from './handles.ts';
import { readTypedCorner, typedUnit } from './typedCorner.ts';

/**
 * A ring changed by what was typed for one of its own points. With a comma it is a place for any of them. Else it is,
 * for a corner, a length and direction from the corner before; for an arc its radius; for a circle's rim its radius;
 * for the ends of an ellipse its whole length or width; for a centre, how far and which way it moves.
 *
 * @param chain the two corners before a corner
 * Problems: those of `readTypedCorner`, `parseLength` and `arcByRadius`
 */
export function readOwnPoint(
  text: string,
  traced: Traced,
  handle: Handle,
  chain: Ring,
  units: UnitSystem,
): Result<Traced> {
  const own = ownPointOf([traced], { ...handle, ring: 0 });
  if (own === undefined) return ok(traced);
  if (own.kind === 'corner' || own.kind === 'centre' || text.includes(',')) {
    const from = own.kind === 'corner' ? chain : [own.place];
    const to = readTypedCorner(text, from, own.kind === 'corner' ? own.place : null, units);
    return to.ok ? ok(moveOwnPoint(traced, own, to.value)) : to;
  }
  const field = FIELDS[own.kind];
  const size = parseLength(text, field, typedUnit(units));
  if (!size.ok) return size;
  if (own.kind === 'via') {
    const { side, long } = arcFigures(traced, own.of) ?? { side: 'right', long: false };
    return withEdge(traced, own.of, { kind: 'radius', radiusM: size.value, side, long });
  }
  if (traced.kind === 'circle') return ok({ ...traced, radiusM: size.value });
  if (traced.kind !== 'ellipse') return ok(traced);
  const halfM = size.value / 2;
  return ok(own.kind === 'length-end' ? { ...traced, halfLengthM: halfM } : { ...traced, halfWidthM: halfM });
}

const FIELDS = { via: 'radius', rim: 'radius', 'length-end': 'length', 'width-end': 'width' } as const;
