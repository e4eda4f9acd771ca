import { emptyYard, makeEdit, putRow } from '../../../core/edits/index.ts';
import { frameAround } from '../../../core/earth/index.ts';
import { ok, type Result, trouble } from '../../../core/result.ts';
import type { LonLat } from '../../../core/spaces.ts';
import { counted, formatLength } from '../../../core/units/index.ts';
import type { Picture, PicturePlacement, Yard } from '../../../core/yard.ts';
import type { ImportAsk, ImportDraft, YardDraft } from '../../contract/HostApi.ts';
import type { BroughtFeatures } from './brought.ts';
import { featuresToRows } from './featuresToRows.ts';
import { fileKindOf } from './fileKind.ts';
import { freeIds } from './freeIds.ts';
import { readGeoJson } from './geoJson/readGeoJson.ts';
import { nameFromFile, todayIso, usualUnits } from './firstGuesses.ts';
import { heightsInYard } from './heights.ts';
import {
  type BroughtHeights,
  type BroughtPicture,
  cornersInYard,
  readPlainPicture,
  readTiff,
} from './pictures.ts';

type Brought =
  | { readonly kind: 'features'; readonly features: BroughtFeatures }
  | { readonly kind: 'picture'; readonly picture: BroughtPicture }
  | BroughtHeights;

/**
 * A new yard made from a file: a GeoTIFF picture (placed), a PNG, JPEG or WebP (loose, unscaled) or GeoJSON outlines
 * (placed). Nothing is written. `today` is the ISO date the ground is taken to be of.
 * Problems: file/ of every kind of damage, file/heights-alone, shape/ of an outline that crosses itself or is too large
 */
export async function draftYard(
  { fileName, bytes }: ImportAsk,
  today: string = todayIso(),
): Promise<Result<YardDraft>> {
  const read = await readFile(fileName, bytes);
  if (!read.ok) return read;
  const brought = read.value;
  switch (brought.kind) {
    case 'features':
      return yardFromFeatures(fileName, brought.features, today);
    case 'picture':
      return yardFromPicture(fileName, brought.picture, today);
    case 'heights':
      // Which part of a grid is kept is told by outlines, and there are none yet.
      return trouble({ kind: 'file/heights-alone', where: { fileName }, facts: {} });
  }
}

/**
 * The same file brought into a yard as one edit. What has a place on earth can only come into a yard that has
 * one too.
 * Problems: those of `draftYard`, file/yard-has-no-place, and those of `heightsInYard`
 */
export async function draftImport(into: Yard, { fileName, bytes }: ImportAsk): Promise<Result<ImportDraft>> {
  const read = await readFile(fileName, bytes);
  if (!read.ok) return read;
  const brought = read.value;
  const { frame } = into.details;
  const hasPlace = brought.kind !== 'picture' || brought.picture.place !== null;
  if (hasPlace && frame.kind === 'loose') {
    return trouble({ kind: 'file/yard-has-no-place', where: { fileName }, facts: {} });
  }
  const origin = frame.kind === 'placed' ? frame.origin : null;
  const rows = addRows(fileName, brought, origin, into);
  if (!rows.ok) return rows;
  const { yard, images, notes } = rows.value;
  const changes = [
    ...yard.pictures.slice(into.pictures.length).map((row) => ['pictures', row] as const),
    ...yard.outlines.slice(into.outlines.length).map((row) => ['outlines', row] as const),
    ...yard.marks.slice(into.marks.length).map((row) => ['marks', row] as const),
    ...yard.elevations.slice(into.elevations.length).map((row) => ['elevations', row] as const),
  ].map(([part, row]) => {
    // Each new row's index counts those put before it, so that redo keeps their order.
    const change = putRow(into, part, row);
    const index = yard[part].findIndex((each) => each.id === row.id);
    return { ...change, index } as typeof change;
  });
  return ok({ edit: makeEdit(`bring in ${fileName}`, ...changes), images, notes });
}

async function readFile(fileName: string, bytes: Uint8Array): Promise<Result<Brought>> {
  const { kind, ...rest } = fileKindOf(fileName, bytes);
  if (kind === null) {
    const found = 'found' in rest ? rest.found : 'something else';
    return trouble({ kind: 'file/unknown-kind', where: { fileName }, facts: { found } });
  }
  if (kind === 'geojson') {
    const features = readGeoJson(fileName, bytes);
    return features.ok ? ok({ kind: 'features', features: features.value }) : features;
  }
  const read = kind === 'tiff' ? await readTiff(fileName, bytes) : readPlainPicture(fileName, kind, bytes);
  if (!read.ok) return read;
  return ok('heightsM' in read.value ? read.value : { kind: 'picture', picture: read.value });
}

function yardFromFeatures(fileName: string, features: BroughtFeatures, today: string): Result<YardDraft> {
  const { yard: said } = features;
  const origin = said?.origin ?? frameAround(placesIn(features));
  const name = said?.name ?? nameFromFile(fileName);
  const empty = emptyYard(
    name,
    { kind: 'placed', origin },
    said?.unitSystem ?? usualUnits(origin),
    said?.groundDate ?? today,
  );
  const cornerSigmaM = said?.cornerSigmaM ?? null;
  const amountsBy = said?.amountsBy ?? empty.details.amountsBy;
  const overlapRule = said?.overlapRule ?? empty.details.overlapRule;
  const start = { ...empty, details: { ...empty.details, cornerSigmaM, amountsBy, overlapRule } };
  const made = addRows(fileName, { kind: 'features', features }, origin, start);
  return made.ok ? ok({ ...made.value, document: made.value.yard }) : made;
}

function yardFromPicture(fileName: string, picture: BroughtPicture, today: string): Result<YardDraft> {
  const { place } = picture;
  const origin = place === null ? null : frameAround(place.corners);
  const frame = origin === null ? ({ kind: 'loose' } as const) : ({ kind: 'placed', origin } as const);
  const empty = emptyYard(nameFromFile(fileName), frame, origin === null ? 'us' : usualUnits(origin), today);
  const made = addRows(fileName, { kind: 'picture', picture }, origin, empty);
  if (!made.ok) return made;
  const { yard, pixelM, images, notes } = made.value;
  if (pixelM === null) return ok({ document: yard, images, notes });
  // A hand sets a corner to about a pixel; a person who knows better says so.
  const document = { ...yard, details: { ...yard.details, cornerSigmaM: pixelM } };
  const shown = formatLength(pixelM, yard.details.unitSystem);
  return ok({ document, images, notes: [...notes, `One pixel is ${shown}; corners are taken as ± that.`] });
}

interface Added {
  readonly yard: Yard;
  readonly images: YardDraft['images'];
  readonly notes: readonly string[];
  /** Size of a placed picture's pixel; null otherwise. */
  readonly pixelM: number | null;
}

function addRows(fileName: string, brought: Brought, origin: LonLat | null, yard: Yard): Result<Added> {
  if (brought.kind === 'features') {
    const { features } = brought;
    const rows = featuresToRows(fileName, features, origin ?? frameAround(placesIn(features)), yard);
    if (!rows.ok) return rows;
    const outlines = [...yard.outlines, ...rows.value.outlines];
    const marks = [...yard.marks, ...rows.value.marks];
    const counts = `Brought in ${counted(rows.value.outlines.length, 'outline')} and ${counted(rows.value.marks.length, 'point')}.`;
    return ok({
      yard: { ...yard, outlines, marks },
      images: [],
      notes: [counts, ...features.notes, ...rows.value.notes],
      pixelM: null,
    });
  }
  if (brought.kind === 'heights') {
    const kept = heightsInYard(fileName, brought, yard);
    if (!kept.ok) return kept;
    const { elevation, notes } = kept.value;
    return ok({
      yard: { ...yard, elevations: [...yard.elevations, elevation] },
      images: [],
      notes: [...brought.notes, ...notes],
      pixelM: null,
    });
  }
  const { picture: found } = brought;
  const { place } = found;
  let placement: PicturePlacement = { kind: 'unscaled' };
  let pixelM: number | null = null;
  if (place !== null && origin !== null) {
    const inYard = cornersInYard(fileName, { ...found, place }, origin);
    if (!inYard.ok) return inYard;
    placement = { kind: 'georeferenced', crs: place.crs, corners: inYard.value.corners };
    pixelM = inYard.value.pixelM;
  }
  const row: Picture = { id: freeIds(yard.pictures)('picture'), ...found.picture, placement };
  return ok({
    yard: { ...yard, pictures: [...yard.pictures, row] },
    images: [found.image],
    notes: found.notes,
    pixelM,
  });
}

function placesIn({ outlines, marks }: BroughtFeatures): readonly LonLat[] {
  return [...outlines.flatMap((outline) => outline.outer), ...marks.map((mark) => mark.at)];
}
