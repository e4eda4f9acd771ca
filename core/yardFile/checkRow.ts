import { YARD_PARTS, type YardPart } from '../edits/index.ts';
import { type Elevation, MARK_KINDS, OUTLINE_KINDS, OVERLAP_RULES, PLACED_BY } from '../yard.ts';
import {
  byKind,
  type Check,
  finite,
  listOf,
  matching,
  oneOf,
  orNull,
  record,
  recordWith,
  text,
  whole,
} from './shape.ts';

const yardPoint = record({ xM: finite, yM: finite });
const picturePoint = record({ xPx: finite, yPx: finite });
const corners = listOf(yardPoint, 4);

function degreesTo(most: number): Check {
  return (value) => finite(value) ?? (Math.abs(value as number) <= most ? null : `is beyond ${most}°`);
}

const frame = byKind({
  placed: record({ kind: text, origin: record({ lonDeg: degreesTo(180), latDeg: degreesTo(90) }) }),
  loose: record({ kind: text }),
});

const knownLength = record({ fromPx: picturePoint, toPx: picturePoint, lengthM: finite });

const placement = byKind({
  unscaled: record({ kind: text }),
  scaled: record({ kind: text, lengths: listOf(knownLength), corners }),
  georeferenced: record({ kind: text, crs: text, corners }),
});

const edgeRun = byKind({
  arc: record({ kind: text, via: yardPoint }),
  smooth: record({ kind: text }),
});

const traced = byKind({
  corners: record({
    kind: text,
    corners: listOf(recordWith({ xM: finite, yM: finite }, { run: edgeRun, keepOffM: finite })),
  }),
  circle: record({ kind: text, centre: yardPoint, radiusM: finite }),
  ellipse: record({
    kind: text,
    centre: yardPoint,
    halfLengthM: finite,
    halfWidthM: finite,
    bearingDeg: finite,
  }),
});

const placing = record({ by: oneOf(PLACED_BY), pictureId: orNull(text), sigmaM: orNull(finite) });

const slope = byKind({
  grade: record({ kind: text, grade: finite }),
  elevation: record({ kind: text, elevationId: text }),
});

const laneHeading = byKind({
  best: record({ kind: text }),
  picked: record({ kind: text, deg: finite }),
  turned: record({ kind: text, lastDeg: finite, byDeg: oneOf([45, 90]) }),
});

/** What a row of each part of a yard must look like; the one door for rows that come from a file. */
const ROW_CHECKS: Readonly<Record<YardPart, Check>> = {
  details: record({
    id: oneOf(['yard']),
    name: text,
    groundDate: matching(/^\d{4}-\d{2}-\d{2}$/, 'a date as yyyy-mm-dd'),
    unitSystem: oneOf(['us', 'metric']),
    frame,
    cornerSigmaM: orNull(finite),
    overlapRule: oneOf(OVERLAP_RULES),
    amountsBy: oneOf(['plan', 'surface']),
  }),
  pictures: record({
    id: text,
    name: text,
    imageHash: matching(/^[0-9a-f]{64}$/, 'a SHA-256 in lower-case hex'),
    mediaType: oneOf(['image/png', 'image/jpeg', 'image/webp']),
    widthPx: whole,
    heightPx: whole,
    placement,
    attribution: text,
    cornerSigmaM: orNull(finite),
    scaleSigma: orNull(finite),
  }),
  outlines: record({
    id: text,
    kind: oneOf(OUTLINE_KINDS),
    name: text,
    outer: traced,
    holes: listOf(traced),
    placing,
    keepOffM: orNull(finite),
    slope: orNull(slope),
    claimsOverlaps: oneOf([true, false]),
    blocksHose: oneOf([true, false, null]),
  }),
  marks: record({ id: text, kind: oneOf(MARK_KINDS), name: text, at: yardPoint }),
  elevations: (value) => wrongElevation(value),
  checks: record({ id: text, name: text, from: yardPoint, to: yardPoint, tapedM: finite }),
  products: record({
    id: text,
    name: text,
    use: oneOf(['fertilizer', 'pesticide', 'other']),
    rateLPerM2: finite,
    mostRateLPerM2: orNull(finite),
    leastCarrierLPerM2: orNull(finite),
  }),
  applicators: record({
    id: text,
    name: text,
    kind: oneOf(['hose-end', 'tank']),
    capacityL: finite,
    carrierLPerM2: finite,
    swathM: finite,
    paceMPerS: finite,
    stepM: finite,
  }),
  jobs: record({
    id: text,
    name: text,
    zoneIds: orNull(listOf(text)),
    productId: text,
    applicatorId: text,
    policy: oneOf(['even', 'fewest']),
    heading: laneHeading,
    rounds: oneOf([1, 2]),
    heldCuts: listOf(record({ id: text, zoneId: text, from: yardPoint, to: yardPoint })),
    startAt: orNull(yardPoint),
    finishAt: orNull(yardPoint),
    hose: orNull(record({ lengthM: finite, spigotIds: orNull(listOf(text)), clearanceM: finite })),
  }),
};

const elevationForm = record({
  id: text,
  name: text,
  columns: whole,
  rows: whole,
  corners,
  heightsMm: listOf(orNull(whole)),
});

/** A grid whose heights do not fill its rows would be read past its end. */
function wrongElevation(value: unknown): string | null {
  const wrong = elevationForm(value);
  if (wrong !== null) return wrong;
  const { columns, rows, heightsMm } = value as Elevation;
  if (columns < 2 || rows < 2) return 'is less than one cell';
  return heightsMm.length === columns * rows ? null : `does not have ${columns * rows} heights`;
}

/** What is wrong with a row of a yard, or null. Only its form: whether a rate is sensible is not asked here. */
export function checkRow(part: YardPart, row: unknown): string | null {
  return ROW_CHECKS[part](row);
}

/** What is wrong with a whole yard, or null: the form of every row, and that no part has an id twice. */
export function checkYard(yard: unknown): string | null {
  const wrong = record({
    details: (value) => checkRow('details', value),
    pictures: rowsOfPart('pictures'),
    outlines: rowsOfPart('outlines'),
    marks: rowsOfPart('marks'),
    elevations: rowsOfPart('elevations'),
    checks: rowsOfPart('checks'),
    products: rowsOfPart('products'),
    applicators: rowsOfPart('applicators'),
    jobs: rowsOfPart('jobs'),
  })(yard);
  return wrong === null ? null : `the yard: ${wrong}`;
}

/** What is wrong with an edit, or null: each change names a part, fits its rows, and has a before or an after. */
export function checkEdit(edit: unknown): string | null {
  const wrong = record({ label: text, changes: listOf(change) })(edit);
  return wrong === null ? null : `the edit: ${wrong}`;
}

const change: Check = (value) => {
  const wrong = changeForm(value);
  if (wrong !== null) return wrong;
  const { part, id, index, before, after } = value as Record<string, unknown>;
  if ((index as number) < 0) return 'index is below 0';
  if (before === null && after === null) return 'has neither before nor after';
  if (part === 'details' && (before === null || after === null)) return 'adds or removes the details';
  for (const row of [before, after]) {
    if (row === null) continue;
    const rowWrong = checkRow(part as YardPart, row);
    if (rowWrong !== null) return `${part}: ${rowWrong}`;
    if ((row as { id: unknown }).id !== id) return `${part}: the row has another id`;
  }
  return null;
};

const changeForm = record({
  part: oneOf(YARD_PARTS),
  id: text,
  index: whole,
  before: () => null,
  after: () => null,
});

function rowsOfPart(part: YardPart): Check {
  const rows = listOf((row) => checkRow(part, row));
  return (value) => {
    const wrong = rows(value);
    if (wrong !== null) return wrong;
    const ids = (value as { id: string }[]).map((row) => row.id);
    return new Set(ids).size === ids.length ? null : 'has an id twice';
  };
}
