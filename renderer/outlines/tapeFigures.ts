import { straight, tracedRing } from '../../core/curves/index.ts';
import { regionAreaM2 } from '../../core/kernel/index.ts';
import type { Problem } from '../../core/problems.ts';
import { ok, type Result, trouble } from '../../core/result.ts';
import type { Ring } from '../../core/spaces.ts';
import {
  circle,
  ellipse,
  offsetAreas,
  offsetsFromBaseline,
  type Place,
  raysFromStake,
  rectangle,
  trapezoid,
  triangleByHeight,
  triangleBySides,
  walkedChain,
} from '../../core/tape/index.ts';
import {
  fineLengthFigure,
  formatAreaBoth,
  formatLength,
  formatNumber,
  parseLength,
  parseOffset,
  USUAL_UNITS,
} from '../../core/units/index.ts';
import type { Traced, UnitSystem } from '../../core/yard.ts';
import { readLegs, readLengths } from './readTape.ts';

/** What was typed for one figure, by the field's label. */
export type Typed = Readonly<Record<string, string>>;

export interface TapeField {
  readonly label: string;
  /** size: a length; maybe: a length of either sign, or nothing; lengths, legs: several. */
  readonly kind: 'size' | 'maybe' | 'lengths' | 'legs';
}

/** A figure to scale, and what is said of it before it is drawn. */
export interface TapedFigure {
  readonly outer: Traced;
  /** What the measuring itself says of its corners: one standard deviation, 0 where it says nothing. */
  readonly cornerSigmaM: number;
  readonly lines: readonly (readonly [string, string])[];
  /** Why the figures of the lines differ, in a sentence or two; '' when one stands alone. */
  readonly said: string;
  readonly cautions: readonly Problem[];
}

interface TapeFigure {
  readonly words: string;
  /** What the typed east and north are of. */
  readonly standsOn: string;
  readonly bearingOf: string | null;
  readonly fields: readonly TapeField[];
  readonly draw: (typed: Typed, place: Place, units: UnitSystem) => Result<TapedFigure>;
}

const CORNER = { standsOn: 'first corner', bearingOf: 'bearing of the first side' } as const;
const size = (label: string): TapeField => ({ label, kind: 'size' });

export const TAPE_FIGURES = {
  rectangle: {
    ...CORNER,
    words: 'rectangle',
    fields: [size('length'), size('width')],
    draw: (typed, place, units) =>
      withSizes(typed, ['length', 'width'], units, ([length = 0, width = 0]) =>
        shown(rectangle(length, width, place), units),
      ),
  },
  sides: {
    ...CORNER,
    words: 'triangle, three sides',
    fields: [size('first side'), size('second side'), size('third side')],
    draw: (typed, place, units) =>
      withSizes(typed, ['first side', 'second side', 'third side'], units, ([a = 0, b = 0, c = 0]) =>
        shown(triangleBySides(a, b, c, place), units),
      ),
  },
  height: {
    ...CORNER,
    words: 'triangle, base and height',
    fields: [size('base'), size('height'), { label: 'height stands along it at', kind: 'maybe' }],
    draw: (typed, place, units) => {
      const foot = maybe(typed, 'height stands along it at', units);
      if (!foot.ok) return foot;
      return withSizes(typed, ['base', 'height'], units, ([base = 0, height = 0]) =>
        shown(triangleByHeight(base, height, foot.value, place), units),
      );
    },
  },
  trapezoid: {
    ...CORNER,
    words: 'trapezoid',
    fields: [
      size('first side'),
      size('far side'),
      size('across'),
      { label: 'far side begins along it at', kind: 'maybe' },
    ],
    draw: (typed, place, units) => {
      const start = maybe(typed, 'far side begins along it at', units);
      if (!start.ok) return start;
      return withSizes(
        typed,
        ['first side', 'far side', 'across'],
        units,
        ([first = 0, far = 0, across = 0]) =>
          shown(
            trapezoid({ firstSideM: first, farSideM: far, acrossM: across, farStartM: start.value }, place),
            units,
          ),
      );
    },
  },
  circle: {
    words: 'circle',
    standsOn: 'middle',
    bearingOf: null,
    fields: [size('radius')],
    draw: (typed, place, units) =>
      withSizes(typed, ['radius'], units, ([radius = 0]) => asCurve(circle(radius, place), units)),
  },
  ellipse: {
    words: 'ellipse',
    standsOn: 'middle',
    bearingOf: 'bearing of its length',
    fields: [size('length'), size('width')],
    draw: (typed, place, units) =>
      withSizes(typed, ['length', 'width'], units, ([length = 0, width = 0]) =>
        asCurve(ellipse(length, width, place), units),
      ),
  },
  offsets: {
    words: 'baseline and offsets',
    standsOn: 'baseline’s start',
    bearingOf: 'bearing of the baseline',
    fields: [
      { label: 'offsets', kind: 'lengths' },
      { label: 'spacing', kind: 'lengths' },
    ],
    draw: (typed, place, units) => {
      const offsets = readLengths(typed.offsets ?? '', 'offsets', units);
      if (!offsets.ok) return offsets;
      const spacing = readLengths(typed.spacing ?? '', 'spacing', units);
      if (!spacing.ok) return spacing;
      const ring = offsetsFromBaseline(offsets.value, spacing.value, place);
      if (!ring.ok) return ring;
      const { trapezoidAreaM2, simpsonAreaM2 } = offsetAreas(offsets.value, spacing.value);
      const drawn = areaLine('area as drawn, the trapezoidal rule’s', trapezoidAreaM2, units);
      if (simpsonAreaM2 === null) return figureOf(ring.value, { lines: [drawn] });
      return figureOf(ring.value, {
        lines: [drawn, areaLine('by Simpson’s rule', simpsonAreaM2, units)],
        said: 'Simpson’s rule bends the edge through every three offsets. Where the two differ much, take offsets closer together.',
      });
    },
  },
  chain: {
    words: 'walked chain',
    standsOn: 'start',
    bearingOf: null,
    fields: [{ label: 'legs', kind: 'legs' }],
    draw: (typed, place, units) => {
      const legs = readLegs(typed.legs ?? '', units);
      if (!legs.ok) return legs;
      const chain = walkedChain(legs.value, place.at);
      if (!chain.ok) return chain;
      const { ring, misclosure, oneIn, cornerSigmaM, lengthM, cautions } = chain.value;
      const precision = oneIn === null ? '' : `, 1 in ${formatNumber(oneIn, 0)}`;
      return figureOf(ring, {
        cautions,
        cornerSigmaM,
        lines: [
          areaLine('area', areaOf(ring), units),
          ['walked', formatLength(lengthM, units)],
          ['misclosure', oneIn === null ? 'none' : `${formatLength(misclosure.lengthM, units)}${precision}`],
          ...(oneIn === null ? [] : [cornersLine(cornerSigmaM, units)]),
        ],
        said: 'The misclosure is shared out by the compass rule: each leg takes as much of it as its length is of the whole way. The larger of this ± and the one stated above is kept.',
      });
    },
  },
  rays: {
    words: 'rays from a stake',
    standsOn: 'stake',
    bearingOf: 'bearing of the first ray',
    fields: [{ label: 'rays, clockwise', kind: 'lengths' }],
    draw: (typed, place, units) => {
      const rays = readLengths(typed['rays, clockwise'] ?? '', 'ray', units);
      if (!rays.ok) return rays;
      const ground = raysFromStake(rays.value, place);
      if (!ground.ok) return ground;
      const { ring, chordAreaM2, sectorAreaM2, meanRadiusAreaM2 } = ground.value;
      return figureOf(ring, {
        lines: [
          areaLine('area as drawn, straight from ray to ray', chordAreaM2, units),
          areaLine('as sectors of circles', sectorAreaM2, units),
          areaLine('as one circle of the mean ray', meanRadiusAreaM2, units),
        ],
        said: 'Straight lines cut off what bulges between two rays. The mean ray always gives less than the sectors, by π times the variance of the rays. More rays bring the first two together.',
      });
    },
  },
} as const satisfies Readonly<Record<string, TapeFigure>>;

export type TapeFigureName = keyof typeof TAPE_FIGURES;

function withSizes(
  typed: Typed,
  labels: readonly string[],
  units: UnitSystem,
  draw: (sizesM: readonly number[]) => Result<TapedFigure>,
): Result<TapedFigure> {
  const reads = labels.map((label) => parseLength(typed[label] ?? '', label, USUAL_UNITS[units].length));
  const [first, ...more] = reads.flatMap((read) => (read.ok ? [] : read.problems));
  if (first !== undefined) return trouble(first, ...more);
  return draw(reads.map((read) => (read.ok ? read.value : 0)));
}

function maybe(typed: Typed, label: string, units: UnitSystem): Result<number | null> {
  const text = typed[label] ?? '';
  return text.trim() === '' ? ok(null) : parseOffset(text, label, USUAL_UNITS[units].length);
}

function shown(ring: Result<Ring>, units: UnitSystem): Result<TapedFigure> {
  if (!ring.ok) return ring;
  return figureOf(ring.value, { lines: [areaLine('area', areaOf(ring.value), units)] });
}

/** A circle or an ellipse, kept as what it is. */
function asCurve(outer: Result<Traced>, units: UnitSystem): Result<TapedFigure> {
  if (!outer.ok) return outer;
  const ring = tracedRing(outer.value);
  return figureOf(ring, { outer: outer.value, lines: [areaLine('area', areaOf(ring), units)] });
}

function figureOf(ring: Ring, said: Pick<TapedFigure, 'lines'> & Partial<TapedFigure>): Result<TapedFigure> {
  return ok({ outer: straight(ring), cornerSigmaM: 0, cautions: [], said: '', ...said });
}

function areaOf(ring: Ring): number {
  return regionAreaM2({ outer: ring, holes: [] });
}

function areaLine(label: string, areaM2: number, units: UnitSystem): readonly [string, string] {
  return [label, formatAreaBoth(areaM2, units)];
}

function cornersLine(sigmaM: number, units: UnitSystem): readonly [string, string] {
  const { text, unit } = fineLengthFigure(sigmaM, units);
  return ['that leaves its corners within', `± ${text} ${unit}`];
}
