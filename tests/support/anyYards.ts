import fc from 'fast-check';
import type { Change, Edit } from '../../core/edits/index.ts';
import { applyEdit, rowsOf, YARD_PARTS } from '../../core/edits/index.ts';
import {
  CUT_OUT_KINDS,
  MARK_KINDS,
  OUTLINE_KINDS,
  OVERLAP_RULES,
  PLACED_BY,
  type Yard,
} from '../../core/yard.ts';
import { fullYard, SKETCH } from './storedYards.ts';

/** JSON has no minus zero. */
function noMinusZero(value: number): number {
  return value === 0 ? 0 : value;
}

/** A record as core makes them: with the usual prototype. */
function record<T extends object>(model: { [K in keyof T]: fc.Arbitrary<T[K]> }): fc.Arbitrary<T> {
  return fc.record(model, { noNullPrototype: true }) as fc.Arbitrary<T>;
}

const anyText = fc.string({ unit: 'grapheme', maxLength: 12 });
/** Minus zero left out: a column of the file keeps no sign of zero. */
const anyNumber = fc.double({ noNaN: true, noDefaultInfinity: true }).map(noMinusZero);
const anyPoint = record({ xM: anyNumber, yM: anyNumber });
const numberOrNull = fc.option(anyNumber, { nil: null });
const anyRun = fc.oneof(
  record({ kind: fc.constant('arc' as const), via: anyPoint }),
  fc.constant({ kind: 'smooth' as const }),
);
const anyCorner = fc.oneof(
  anyPoint,
  record({ xM: anyNumber, yM: anyNumber, run: anyRun }),
  record({ xM: anyNumber, yM: anyNumber, keepOffM: anyNumber }),
);
/** Curves of every form, sensible or not; what they come to must be numbers all the same. */
const anyTraced = fc.oneof(
  record({ kind: fc.constant('corners' as const), corners: fc.array(anyCorner, { maxLength: 6 }) }),
  record({
    kind: fc.constant('circle' as const),
    centre: record({
      xM: fc.double({ min: -99, max: 99, noNaN: true }).map(noMinusZero),
      yM: fc.constant(1 / 3),
    }),
    radiusM: fc.double({ min: 0.1, max: 50, noNaN: true }),
  }),
  record({
    kind: fc.constant('ellipse' as const),
    centre: anyPoint,
    halfLengthM: anyNumber,
    halfWidthM: anyNumber,
    bearingDeg: anyNumber,
  }),
);

/** Rows of every form the file can hold, sensible or not. */
const ROWS = {
  details: record({
    id: fc.constant('yard' as const),
    name: anyText,
    groundDate: fc.constantFrom('2026-05-01', '1999-12-31'),
    unitSystem: fc.constantFrom('us' as const, 'metric' as const),
    frame: fc.oneof(
      fc.constant({ kind: 'loose' as const }),
      record({
        kind: fc.constant('placed' as const),
        origin: record({
          lonDeg: fc.double({ min: -180, max: 180, noNaN: true }),
          latDeg: fc.double({ min: -90, max: 90, noNaN: true }),
        }),
      }),
    ),
    cornerSigmaM: numberOrNull,
    overlapRule: fc.constantFrom(...OVERLAP_RULES),
    amountsBy: fc.constantFrom('plan' as const, 'surface' as const),
  }),
  pictures: record({
    name: anyText,
    imageHash: fc.constant(SKETCH.imageHash),
    mediaType: fc.constantFrom('image/png' as const, 'image/jpeg' as const),
    widthPx: fc.nat(),
    heightPx: fc.nat(),
    placement: fc.oneof(
      fc.constant({ kind: 'unscaled' as const }),
      record({
        kind: fc.constant('georeferenced' as const),
        crs: anyText,
        corners: fc.tuple(anyPoint, anyPoint, anyPoint, anyPoint),
      }),
    ),
    attribution: anyText,
    cornerSigmaM: numberOrNull,
    scaleSigma: numberOrNull,
  }),
  outlines: record({
    kind: fc.constantFrom(...OUTLINE_KINDS, ...CUT_OUT_KINDS),
    name: anyText,
    outer: anyTraced,
    holes: fc.array(anyTraced, { maxLength: 2 }),
    placing: record({
      by: fc.constantFrom(...PLACED_BY),
      pictureId: fc.option(anyText, { nil: null }),
      sigmaM: numberOrNull,
    }),
    keepOffM: numberOrNull,
    slope: fc.option(
      fc.oneof(
        record({ kind: fc.constant('grade' as const), grade: anyNumber }),
        record({ kind: fc.constant('elevation' as const), elevationId: anyText }),
      ),
      { nil: null },
    ),
    claimsOverlaps: fc.boolean(),
    blocksHose: fc.constantFrom(true, false, null),
  }),
  marks: record({ kind: fc.constantFrom(...MARK_KINDS), name: anyText, at: anyPoint }),
  elevations: record({
    name: anyText,
    columns: fc.constant(2),
    rows: fc.constant(2),
    corners: fc.tuple(anyPoint, anyPoint, anyPoint, anyPoint),
    heightsMm: fc.array(fc.option(fc.integer(), { nil: null }), { minLength: 4, maxLength: 4 }),
  }),
  checks: record({ name: anyText, from: anyPoint, to: anyPoint, tapedM: anyNumber }),
  products: record({
    name: anyText,
    use: fc.constantFrom('fertilizer' as const, 'pesticide' as const, 'other' as const),
    rateLPerM2: anyNumber,
    mostRateLPerM2: numberOrNull,
    leastCarrierLPerM2: numberOrNull,
  }),
  applicators: record({
    name: anyText,
    kind: fc.constantFrom('hose-end' as const, 'tank' as const),
    capacityL: anyNumber,
    carrierLPerM2: anyNumber,
    swathM: anyNumber,
    paceMPerS: anyNumber,
    stepM: anyNumber,
  }),
  jobs: record({
    name: anyText,
    zoneIds: fc.option(fc.array(anyText, { maxLength: 3 }), { nil: null }),
    productId: anyText,
    applicatorId: anyText,
    policy: fc.constantFrom('even' as const, 'fewest' as const),
    heading: fc.oneof(
      fc.constant({ kind: 'best' as const }),
      record({ kind: fc.constant('picked' as const), deg: anyNumber }),
      record({
        kind: fc.constant('turned' as const),
        lastDeg: anyNumber,
        byDeg: fc.constantFrom(45 as const, 90 as const),
      }),
    ),
    rounds: fc.constantFrom(1 as const, 2 as const),
    heldCuts: fc.array(record({ id: anyText, zoneId: anyText, from: anyPoint, to: anyPoint }), {
      maxLength: 2,
    }),
    startAt: fc.option(anyPoint, { nil: null }),
    finishAt: fc.option(anyPoint, { nil: null }),
    hose: fc.option(
      record({
        lengthM: anyNumber,
        spigotIds: fc.option(fc.array(anyText, { maxLength: 2 }), { nil: null }),
        clearanceM: anyNumber,
      }),
      { nil: null },
    ),
  }),
};

/** What a person does next; it becomes an edit only on the yard it meets. */
export type Deed =
  | { readonly do: 'edit'; readonly strokes: readonly Stroke[] }
  | { readonly do: 'undo' | 'redo' | 'reopen' };

export interface Stroke {
  readonly part: keyof typeof ROWS;
  readonly place: number;
  readonly act: 'add' | 'change' | 'remove';
  readonly row: object;
}

const stroke: fc.Arbitrary<Stroke> = fc
  .constantFrom(...YARD_PARTS, 'outlines' as const, 'outlines' as const)
  .chain((part) =>
    record({
      part: fc.constant(part),
      place: fc.nat({ max: 9 }),
      act: fc.constantFrom('add' as const, 'add' as const, 'change' as const, 'remove' as const),
      row: ROWS[part] as fc.Arbitrary<object>,
    }),
  );

export const anyDeeds: fc.Arbitrary<Deed[]> = fc.array(
  fc.oneof(
    {
      weight: 4,
      arbitrary: record({ do: fc.constant('edit' as const), strokes: fc.array(stroke, { maxLength: 3 }) }),
    },
    { weight: 3, arbitrary: record({ do: fc.constantFrom('undo' as const, 'redo' as const) }) },
    { weight: 1, arbitrary: record({ do: fc.constant('reopen' as const) }) },
  ),
  { maxLength: 20 },
);

/** The edit that a few strokes make of a yard, each made on what the one before it left. */
export function editOf(yard: Yard, strokes: readonly Stroke[], serial: number): Edit {
  const changes: Change[] = [];
  let now = yard;
  strokes.forEach(({ part, place, act, row }, i) => {
    const rows = rowsOf(now, part);
    const old = rows[place % Math.max(rows.length, 1)] ?? null;
    const change = (
      part === 'details'
        ? { part, id: 'yard', index: 0, before: now.details, after: row }
        : act === 'add' || old === null
          ? newRow(part, `${part}-${serial}-${i}`, place, row)
          : {
              part,
              id: old.id,
              index: rows.indexOf(old),
              before: old,
              after: act === 'remove' ? null : { ...row, id: old.id },
            }
    ) as Change;
    changes.push(change);
    now = applyEdit(now, { label: '', changes: [change] });
  });
  return { label: `edit ${serial}`, changes };
}

/** Any yard the file can hold, made from nothing by strokes. */
export const anyYard: fc.Arbitrary<Yard> = fc
  .array(stroke, { maxLength: 12 })
  .map((strokes) => applyEdit(fullYard(), editOf(fullYard(), strokes, 0)));

function newRow(part: string, id: string, index: number, row: object): object {
  return { part, id, index, before: null, after: { ...row, id } };
}
