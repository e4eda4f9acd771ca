import type { GeoTIFFImage } from 'geotiff';
import { FOOT_M, SURVEY_FOOT_M } from '../../../../core/units/index.ts';
import type { TiffPlace } from './tiffPlace.ts';

/** Heights of the ground in metres, row by row from the top left; NaN where there is none. */
export interface TiffHeights {
  readonly heightsM: Float32Array;
  readonly notes: readonly string[];
}

/** TIFF 6.0, section 8: PhotometricInterpretation. */
const BLACK_IS_ZERO = 1;
/** Heights of the ground lie between these; what does not is a mark for "no data" that the file forgot to name. */
const LOWEST_M = -500;
const HIGHEST_M = 9000;

/**
 * Whether a TIFF holds heights rather than a picture: one grey band of 16 bits or more. An eight-bit band is a
 * picture, and so is all that has colours, a palette or transparency.
 */
export function holdsHeights(image: GeoTIFFImage): boolean {
  const photometric = image.fileDirectory.getValue('PhotometricInterpretation');
  return (
    image.getSamplesPerPixel() === 1 &&
    photometric === BLACK_IS_ZERO &&
    Number(image.getBitsPerSample(0)) >= 16
  );
}

/** Throws when the file's values cannot be decoded. */
export async function readTiffHeights(image: GeoTIFFImage, place: TiffPlace): Promise<TiffHeights> {
  const [band] = (await image.readRasters({
    interleave: false,
    samples: [0],
  })) as unknown as ArrayLike<number>[];
  const values = band ?? [];
  const noData = image.getGDALNoData();
  const { scale, offset, unit } = await readScaling(image);
  const { unitM, words } = verticalUnit(image, unit, place);
  const heightsM = Float32Array.from(values, (value) => {
    const heightM = (value * scale + offset) * unitM;
    return value === noData || !(heightM >= LOWEST_M && heightM <= HIGHEST_M) ? Number.NaN : heightM;
  });
  const kind = image.getSampleFormat(0) === 3 ? 'floating' : 'whole';
  const bits = image.getBitsPerSample(0);
  return {
    heightsM,
    notes: [`Its one band of ${bits}-bit ${kind} values is read as heights of the ground, ${words}.`],
  };
}

/** What GDAL writes beside a band: value × scale + offset, and the name of the unit. */
async function readScaling(
  image: GeoTIFFImage,
): Promise<{ readonly scale: number; readonly offset: number; readonly unit: string | null }> {
  const said: Record<string, unknown> = (await image.getGDALMetadata(0)) ?? {};
  const numberOf = (value: unknown, usual: number): number => {
    const read = value === undefined ? usual : Number(value);
    return Number.isFinite(read) ? read : usual;
  };
  const unit = typeof said.UNITTYPE === 'string' ? said.UNITTYPE : null;
  return { scale: numberOf(said.SCALE, 1), offset: numberOf(said.OFFSET, 0), unit };
}

interface VerticalUnit {
  readonly unitM: number;
  readonly words: string;
}

const METRES: VerticalUnit = { unitM: 1, words: 'in metres as it says' };
const FEET: VerticalUnit = { unitM: FOOT_M, words: 'in feet as it says' };
const SURVEY_FEET: VerticalUnit = { unitM: SURVEY_FOOT_M, words: 'in US survey feet as it says' };

/** EPSG units of measure, for GeoTIFF 1.1's VerticalUnitsGeoKey. */
const BY_CODE: Readonly<Record<number, VerticalUnit>> = { 9001: METRES, 9002: FEET, 9003: SURVEY_FEET };
/** EPSG vertical systems of North America: NAVD88 in metres, US survey feet and feet. */
const BY_SYSTEM: Readonly<Record<number, VerticalUnit>> = { 5703: METRES, 6360: SURVEY_FEET, 8228: FEET };

/**
 * The unit the file states; where it states none, that of its places on the map, as most programs take it.
 * Said in words, because a wrong guess is wrong by a factor of three.
 */
function verticalUnit(image: GeoTIFFImage, unit: string | null, place: TiffPlace): VerticalUnit {
  const keys: Record<string, unknown> = image.getGeoKeys() ?? {};
  const stated =
    BY_CODE[Number(keys.VerticalUnitsGeoKey)] ?? BY_SYSTEM[Number(keys.VerticalCSTypeGeoKey)] ?? byName(unit);
  if (stated !== null) return stated;
  const { proj = '', unitX = 1 } = place.definition ?? {};
  // The unit stands in the projection's text, or beside it, or in both.
  const unitM = unitX === 1 ? Number(/\+to_meter=([\d.]+)/.exec(proj)?.[1] ?? 1) : unitX;
  const isFeet = Math.abs(unitM - FOOT_M) < 1e-4;
  return isFeet
    ? { unitM, words: 'taken as feet like its map: it states no unit of height' }
    : { unitM: 1, words: 'taken as metres: it states no unit of height' };
}

function byName(unit: string | null): VerticalUnit | null {
  const name = (unit ?? '').trim().toLowerCase();
  if (/^(?:m|met(?:re|er)s?)$/.test(name)) return METRES;
  if (/us.*(?:survey)?.*f(?:oo|ee)?t/.test(name)) return SURVEY_FEET;
  return /^(?:ft|foot|feet|international f.*)$/.test(name) ? FEET : null;
}
