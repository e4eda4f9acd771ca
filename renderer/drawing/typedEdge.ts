import { ok, type Result, trouble } from '../../core/result.ts';
import { parseLength } from '../../core/units/index.ts';
import type { UnitSystem } from '../../core/yard.ts';
import type { DrawingInput, EdgeToCome, OvalShape } from './drawing.ts';
import { typedUnit } from './typedCorner.ts';

/**
 * Reads a word typed at the foot line that says how an edge runs:
 *
 *     straight              the next edge, or the edge in hand, is straight
 *     smooth                it runs smoothly on with its smooth neighbours
 *     arc                   the next point is a point on its arc, then comes the corner
 *     arc 12 ft left        an arc of that radius that bulges to the left; "right", and "long" for the long way round
 *     mend                  uncross what is in hand
 *
 * @returns null when it is none of these words, so that it is read as a figure
 * Problems: value/missing (the side), those of `parseLength`
 */
export function readTypedEdge(text: string, units: UnitSystem): Result<DrawingInput> | null {
  const words = text.trim().toLowerCase();
  if (words === 'mend') return ok({ kind: 'mend' });
  if (words === 'straight' || words === 'smooth') return ok({ kind: 'run', edge: { kind: words } });
  if (words === 'arc') return ok({ kind: 'run', edge: { kind: 'arc', via: null } });
  const [, figure = '', , side, long] = /^arc\s+(.+?)(\s+(left|right|l|r))?(\s+long)?$/.exec(words) ?? [];
  if (figure === '') return null;
  const radius = parseLength(figure, 'radius', typedUnit(units));
  if (!radius.ok) return radius;
  if (side === undefined) {
    return trouble({ kind: 'value/missing', where: { field: 'left or right' }, facts: {} });
  }
  const edge: EdgeToCome = {
    kind: 'radius',
    radiusM: radius.value,
    side: side.startsWith('l') ? 'left' : 'right',
    long: long !== undefined,
  };
  return ok({ kind: 'run', edge });
}

/** The shape a word asks for in place of corners; null when it is none. */
export function readTypedShape(text: string): OvalShape | null {
  const word = text.trim().toLowerCase();
  return word === 'circle' || word === 'ellipse' ? word : null;
}
