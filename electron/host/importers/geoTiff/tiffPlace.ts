import type { GeoTIFFImage } from 'geotiff';
import * as geokeysToProj4 from 'geotiff-geokeys-to-proj4';

/**
 * Where a TIFF lies: from pixels to its coordinate system by
 *   x = a*px + b*py + c,  y = d*px + e*py + f     with (0, 0) the outer corner of the top left pixel,
 * then from that system to the earth by an EPSG code, a proj definition, or both.
 */
export interface TiffPlace {
  readonly affine: readonly [a: number, b: number, c: number, d: number, e: number, f: number];
  readonly epsg: string | null;
  readonly definition: ProjDefinition | null;
  /** How the file itself calls its system. */
  readonly crsName: string;
}

/** A proj string in metres (or degrees) and what the file's units are multiplied by first. */
export interface ProjDefinition {
  readonly proj: string;
  readonly unitX: number;
  readonly unitY: number;
}

/** GeoTIFF 1.1 (OGC 19-008), 7.1.2: RasterPixelIsPoint puts the tie point at the pixel's centre. */
const PIXEL_IS_POINT = 2;
/** GeoTIFF 1.1, 7.1.1: GTModelTypeGeoKey. */
const MODEL_PROJECTED = 1;
const MODEL_GEOGRAPHIC = 2;
/** GeoTIFF 1.1: the code that says "defined by the keys that follow". */
const USER_DEFINED = 32767;

/** Null when the file does not say where it lies. */
export async function readTiffPlace(image: GeoTIFFImage): Promise<TiffPlace | null> {
  const keys: Record<string, unknown> = image.getGeoKeys() ?? {};
  const affine = await readAffine(image, keys);
  if (affine === null) return null;
  const code = [keys.ProjectedCSTypeGeoKey, keys.GeographicTypeGeoKey].find(
    (each) => typeof each === 'number' && each > 0,
  );
  const epsg = typeof code === 'number' && code !== USER_DEFINED ? `EPSG:${code}` : null;
  const citation = [keys.GTCitationGeoKey, keys.PCSCitationGeoKey, keys.GeogCitationGeoKey].find(
    (each): each is string => typeof each === 'string' && each !== '',
  );
  return { affine, epsg, definition: definitionOf(keys), crsName: epsg ?? citation ?? 'none is named in it' };
}

async function readAffine(
  image: GeoTIFFImage,
  keys: Record<string, unknown>,
): Promise<TiffPlace['affine'] | null> {
  const shift = keys.GTRasterTypeGeoKey === PIXEL_IS_POINT ? 0.5 : 0;
  const matrix = await numbersOf(image, 'ModelTransformation');
  const scale = await numbersOf(image, 'ModelPixelScale');
  const tie = await numbersOf(image, 'ModelTiepoint');
  let a = 0;
  let b = 0;
  let c = 0;
  let d = 0;
  let e = 0;
  let f = 0;
  if (matrix.length === 16) {
    [a, b, , c, d, e, , f] = matrix as [number, number, number, number, number, number, number, number];
  } else if (scale.length >= 2 && tie.length >= 6) {
    const [stepX = 0, stepY = 0] = scale;
    const [px = 0, py = 0, , x = 0, y = 0] = tie;
    [a, c, e, f] = [stepX, x - px * stepX, -stepY, y + py * stepY];
  } else return null;
  const affine = [a, b, c - shift * (a + b), d, e, f - shift * (d + e)] as const;
  const isUsable = affine.every(Number.isFinite) && a * e - b * d !== 0;
  return isUsable ? affine : null;
}

async function numbersOf(
  image: GeoTIFFImage,
  tag: 'ModelTransformation' | 'ModelPixelScale' | 'ModelTiepoint',
): Promise<readonly number[]> {
  if (!image.fileDirectory.hasTag(tag)) return [];
  return Array.from((await image.fileDirectory.loadValue(tag)) as ArrayLike<number>);
}

/**
 * What the keys spell out, when they spell out anything. The library answers plain longitude and latitude for
 * keys it does not understand and for none at all, so its answer counts only where the keys ask for that.
 */
function definitionOf(keys: Record<string, unknown>): ProjDefinition | null {
  const isProjected = keys.GTModelTypeGeoKey === MODEL_PROJECTED || keys.ProjectedCSTypeGeoKey !== undefined;
  const isGeographic = keys.GTModelTypeGeoKey === MODEL_GEOGRAPHIC && keys.GeographicTypeGeoKey !== undefined;
  if (!isProjected && !isGeographic) return null;
  try {
    const made = geokeysToProj4.toProj4(keys as unknown as geokeysToProj4.GeoKeys);
    // A file may name the system its projection stands on; the library calls that an error and copes.
    const { bothGCSAndPCSAreSet: _, ...errors } = made.errors as Partial<typeof made.errors>;
    const isAsAsked = made.isGCS === !isProjected && made.proj4.includes('+proj');
    if (!isAsAsked || Object.keys(errors).length > 0) return null;
    const { x, y } = made.coordinatesConversionParameters;
    return { proj: made.proj4, unitX: x, unitY: y };
  } catch {
    return null; // keys that contradict each other: the EPSG code, when there is one, still serves
  }
}
