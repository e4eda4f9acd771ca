import type { YardPoint } from '../spaces.ts';
import { parseOffset, type UnitSystem } from '../units/index.ts';
import type { Yard } from '../yard.ts';
import { fullName, type NamedPoint, yardPoints } from './namedPoints.ts';
import { placeAlong, placeByTapes } from './placing.ts';
import type { PrintedFlag } from './printed.ts';
import { straightSides } from './straightSides.ts';

/**
 * Sets the flags as a person does who has the printed table and the ground, and nothing else: corner by name, tape by
 * its reading, flag after flag.
 *
 * @returns places by letter; undefined when a row names what the yard has not, or its tapes do not meet
 * Accuracy: half a step of the tape for each tape, grown where tapes cross flat
 */
export function rebuild(
  flags: readonly PrintedFlag[],
  yard: Pick<Yard, 'outlines' | 'marks'>,
  units: UnitSystem,
): ReadonlyMap<string, YardPoint> | undefined {
  const points = yardPoints(yard);
  const sides = straightSides(yard.outlines, points);
  const byName = new Map(points.all.map((point) => [fullName(point), point.at]));
  const placed = new Map<string, YardPoint>();
  const read = (tape: string): number => {
    const length = parseOffset(tape, 'tape', units === 'us' ? 'ft' : 'm');
    return length.ok ? length.value : Number.NaN;
  };
  for (const flag of flags) {
    const at = placeOf(flag);
    if (at === undefined || !Number.isFinite(at.xM + at.yM)) return undefined;
    placed.set(flag.letter, at);
    byName.set(`flag ${flag.letter}`, at);
  }
  return placed;

  function placeOf(flag: PrintedFlag): YardPoint | undefined {
    if (flag.kind === 'tapes') {
      const [first, second] = [byName.get(flag.firstFrom), byName.get(flag.secondFrom)];
      if (first === undefined || second === undefined) return undefined;
      return placeByTapes([first, read(flag.first)], [second, read(flag.second)], flag.side);
    }
    if (flag.kind === 'line') {
      const [from, towards] = [byName.get(flag.from), byName.get(flag.towards)];
      return from && towards && placeAlong(from, towards, read(flag.along));
    }
    const isNamed = (point: NamedPoint, own: string): boolean => point.own === own && point.of === flag.of;
    const side = sides.find(
      ({ from, to }) =>
        (isNamed(from, flag.corner) && isNamed(to, flag.towards)) ||
        (isNamed(to, flag.corner) && isNamed(from, flag.towards)),
    );
    if (side === undefined) return undefined;
    const isForth = isNamed(side.from, flag.corner);
    const [from, towards] = isForth ? [side.from, side.to] : [side.to, side.from];
    const isLeft = (flag.offSide === 'in') === (side.isInLeft === isForth);
    const offM = flag.off === null ? 0 : read(flag.off);
    return placeAlong(from.at, towards.at, read(flag.along), isLeft ? offM : -offM);
  }
}
