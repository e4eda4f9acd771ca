import { straight, tracedRing } from '../../core/curves/index.ts';
import { createHash } from 'node:crypto';
import fc from 'fast-check';
import type { Change, Edit } from '../../core/edits/index.ts';
import { applyEdit, newJob, newOutline, putRow, rowsOf, YARD_PARTS } from '../../core/edits/index.ts';
import type { Ring, YardPoint } from '../../core/spaces.ts';
import {
  CUT_OUT_KINDS,
  type Mark,
  MARK_KINDS,
  type Outline,
  OUTLINE_KINDS,
  OVERLAP_RULES,
  PLACED_BY,
  type Yard,
  type YardFrame,
} from '../../core/yard.ts';
import type { NewImage } from '../../core/yardFile/index.ts';

/** An image of a few bytes; what is in them does not matter to a store. */
export function imageOf(content: Uint8Array): NewImage {
  const imageHash = createHash('sha256').update(content).digest('hex');
  return { imageHash, mediaType: 'image/png', bytes: content };
}

export const SKETCH = imageOf(Uint8Array.of(137, 80, 78, 71, 1, 2, 3));

export const PLACED: YardFrame = {
  kind: 'placed',
  origin: { lonDeg: -105.08123456789, latDeg: 40.58765432101 },
};

export function point(xM: number, yM: number): YardPoint {
  return { xM, yM };
}

/** Counter-clockwise rectangle outline with its lower left corner at (x, y). */
export function rectOutline(
  id: string,
  kind: Outline['kind'],
  x: number,
  y: number,
  width: number,
  height: number,
  holes: readonly Ring[] = [],
): Outline {
  const outer = [point(x, y), point(x + width, y), point(x + width, y + height), point(x, y + height)];
  return newOutline({ id, kind, name: `${kind} ${id}`, outer: straight(outer), holes: holes.map(straight) });
}

/** A yard with a row in every part and every table, and coordinates no decimal writes exactly. */
export function fullYard(frame: YardFrame = PLACED): Yard {
  const corner: Mark = { id: 'm2', kind: 'landmark', name: 'NW house corner', at: point(-1 / 3, 1e-300) };
  return {
    details: {
      id: 'yard',
      name: 'Maple Court 7 – “front & back”',
      groundDate: '2026-05-01',
      unitSystem: 'us',
      frame,
      cornerSigmaM: 0.05,
      overlapRule: 'smaller',
      amountsBy: 'surface',
    },
    pictures: [
      {
        id: 'p1',
        name: 'sketch.png',
        imageHash: SKETCH.imageHash,
        mediaType: 'image/png',
        widthPx: 640,
        heightPx: 480,
        placement: {
          kind: 'scaled',
          lengths: [
            { fromPx: { xPx: 0.5, yPx: 1 / 7 }, toPx: { xPx: 600, yPx: 1 / 7 }, lengthM: 30.48 },
            { fromPx: { xPx: 20, yPx: 10 }, toPx: { xPx: 20, yPx: 400 }, lengthM: 19.9 },
          ],
          corners: [point(-16, 12), point(16, 12), point(16, -12), point(-16, -12)],
        },
        attribution: 'drawn by hand',
        cornerSigmaM: null,
        scaleSigma: 1 / 300,
      },
    ],
    outlines: [
      rectOutline('z1', 'zone', 0, 0, 30.1, 20.7),
      rectOutline('b1', 'bed', 2, 2, Math.SQRT2, Math.PI),
      rectOutline('k1', 'keep-off', 0, 0, 30.1, 1),
      rectOutline('z2', 'zone', -40, 0, 20, 20, [
        [point(-30, 5), point(-30, 9), point(-26, 9), point(-26, 5)],
      ]),
      rectOutline('c1', 'check-plot', -39, 1, 2, 2),
      newOutline({
        id: 'z3',
        kind: 'zone',
        name: 'round the oak',
        outer: {
          kind: 'corners',
          corners: [
            { ...point(60, 0), run: { kind: 'arc', via: point(70.1, -2.3) } },
            { ...point(80, 0), keepOffM: 0.9 },
            { ...point(80, 20), run: { kind: 'smooth' } },
            { ...point(70, 23), run: { kind: 'smooth' }, keepOffM: 1 / 3 },
            point(60, 20),
          ],
        },
        holes: [{ kind: 'circle', centre: point(70, 10), radiusM: Math.SQRT1_2 }],
        placing: { by: 'picture', pictureId: 'p1', sigmaM: 0.12 },
        keepOffM: 1.5,
        slope: { kind: 'elevation', elevationId: 'e1' },
        claimsOverlaps: true,
        blocksHose: false,
      }),
      newOutline({
        id: 't1',
        kind: 'tree',
        name: 'oak',
        outer: { kind: 'ellipse', centre: point(90, 10), halfLengthM: 3, halfWidthM: 2, bearingDeg: 33.3 },
        slope: { kind: 'grade', grade: 1 / 7 },
      }),
      rectOutline('h1', 'hardscape', 28, 15, 5, 5),
    ],
    marks: [{ id: 'm1', kind: 'spigot', name: 'Spigot', at: point(30.1, 10) }, corner],
    elevations: [
      {
        id: 'e1',
        name: 'ground.tif',
        columns: 2,
        rows: 3,
        corners: [point(50, 30), point(90, 30), point(90, -10), point(50, -10)],
        heightsMm: [1000, 1250, null, 900, -12, 0],
      },
    ],
    checks: [{ id: 'x1', name: 'diagonal', from: point(0, 0), to: point(30.1, 20.7), tapedM: 36.55 }],
    products: [
      {
        id: 'f1',
        name: 'Green Sample 12-0-0',
        use: 'fertilizer',
        rateLPerM2: 0.00095,
        mostRateLPerM2: null,
        leastCarrierLPerM2: 0.04,
      },
    ],
    applicators: [
      {
        id: 'a1',
        name: 'hose-end',
        kind: 'hose-end',
        capacityL: 0.946352946,
        carrierLPerM2: 0.08,
        swathM: 1.8,
        paceMPerS: 0.7,
        stepM: 0.65,
      },
    ],
    jobs: [
      newJob({ id: 'j1', name: 'May', zoneIds: ['z1', 'z2'], productId: 'f1', applicatorId: 'a1' }),
      newJob({
        id: 'j2',
        name: 'June',
        productId: 'f1',
        applicatorId: 'a1',
        policy: 'fewest',
        heading: { kind: 'turned', lastDeg: 92.5, byDeg: 45 },
        rounds: 2,
        heldCuts: [{ id: 'c1', zoneId: 'z1', from: { xM: 1, yM: 0.5 }, to: { xM: 1, yM: 7.25 } }],
        startAt: { xM: -3, yM: 0.1 },
        finishAt: { xM: 4, yM: -2 },
        hose: { lengthM: 22.86, spigotIds: ['m1'], clearanceM: 0.15 },
      }),
    ],
  };
}

/** The edit that moves the first corner of an outline. */
export function moveCorner(yard: Yard, outlineId: string, to: YardPoint): Edit {
  const outline = yard.outlines.find((row) => row.id === outlineId);
  if (outline === undefined) throw new Error(`no outline ${outlineId}`);
  const moved = { ...outline, outer: straight([to, ...tracedRing(outline.outer).slice(1)]) };
  return { label: `move corner of ${outline.name}`, changes: [putRow(yard, 'outlines', moved)] };
}

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
      fc.record({ kind: fc.constant('picked' as const), deg: anyNumber }),
      fc.record({
        kind: fc.constant('turned' as const),
        lastDeg: anyNumber,
        byDeg: fc.constantFrom(45 as const, 90 as const),
      }),
    ),
    rounds: fc.constantFrom(1 as const, 2 as const),
    heldCuts: fc.array(fc.record({ id: anyText, zoneId: anyText, from: anyPoint, to: anyPoint }), {
      maxLength: 2,
    }),
    startAt: fc.option(anyPoint, { nil: null }),
    finishAt: fc.option(anyPoint, { nil: null }),
    hose: fc.option(
      fc.record({
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
