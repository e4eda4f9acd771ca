import { ok, type Result, trouble } from '../result.ts';
import type { LonLat } from '../spaces.ts';
import { makeProjector } from './projector.ts';

/**
 * A place on earth as a person types it:
 *
 *     39.9, -86.2                       latitude, longitude
 *     39°54'00"N 86°12'00"W             degrees, minutes, seconds; also 39 54 00 N, 40:38:23N, N 39.9
 *     EPSG:2965 186000 1650000          east, north in a coordinate system, in its own units
 *
 * Latitude comes first unless letters say otherwise. The code of a system of degrees takes latitude first as well.
 *
 * Problems: value/missing, value/not-a-place, value/place-out-of-range (saying when the two look swapped),
 * value/unknown-crs, value/place-outside-crs; all naming `field`
 */
export function readPlace(typed: string, field: string): Result<LonLat> {
  const where = { field };
  const text = plain(typed);
  if (text === '') return trouble({ kind: 'value/missing', where, facts: {} });
  const unread = trouble({ kind: 'value/not-a-place', where, facts: { typed: typed.trim() } });
  const code = /EPSG\s*:?\s*(\d+)/.exec(text);
  const pair = readPair(code === null ? text : text.replace(code[0], ' '));
  if (pair === undefined) return unread;
  if (code === null) return degreesFrom(pair, field);

  const crs = `EPSG:${code[1]}`;
  const projector = makeProjector(crs, field);
  if (!projector.ok) return trouble({ kind: 'value/unknown-crs', where, facts: { crs } });
  const { isDegrees, toLonLat, fromLonLat } = projector.value;
  const northFirst = pair[0].axis === 'north' || (isDegrees && pair[0].axis !== 'east');
  const [x, y] = northFirst ? [pair[1].value, pair[0].value] : [pair[0].value, pair[1].value];
  const at = toLonLat(x, y);
  const [again, back] = isFinitePlace(at) ? fromLonLat(at) : [Number.NaN, Number.NaN];
  // A projection far outside its reach gives some place or other, which does not lead back.
  return Math.abs(again - x) < BACK_WITHIN && Math.abs(back - y) < BACK_WITHIN
    ? ok(at)
    : trouble({ kind: 'value/place-outside-crs', where, facts: { crs } });
}

/** Units of the system, be they feet or degrees. */
const BACK_WITHIN = 0.01;

interface Half {
  readonly value: number;
  readonly axis: 'north' | 'east' | undefined;
}

function degreesFrom(pair: readonly [Half, Half], field: string): Result<LonLat> {
  const [first, second] = pair;
  const latFirst = first.axis !== 'east' && second.axis !== 'north';
  const [lat, lon] = latFirst ? [first, second] : [second, first];
  if (Math.abs(lat.value) <= 90 && Math.abs(lon.value) <= 180) {
    return ok({ lonDeg: lon.value, latDeg: lat.value });
  }
  const swappedLikely = Math.abs(lat.value) <= 180 && Math.abs(lon.value) <= 90;
  return trouble({ kind: 'value/place-out-of-range', where: { field }, facts: { swappedLikely } });
}

/** One spelling for each mark; the letters in capitals. */
function plain(typed: string): string {
  return typed
    .replace(/[−–]/g, '-')
    .replace(/[′’‘]/g, "'")
    .replace(/″|”|“|''/g, '"')
    .replace(/º|\bdeg(?:rees?)?\b/gi, '°')
    .trim()
    .toUpperCase();
}

/** The two halves of a pair, parted by a comma or semicolon, by their letters, or in the middle. */
function readPair(text: string): readonly [Half, Half] | undefined {
  const halves = partsOf(text);
  const [first, second] = halves.map(readHalf);
  if (halves.length !== 2 || first === undefined || second === undefined) return undefined;
  return first.axis !== undefined && first.axis === second.axis ? undefined : [first, second];
}

function partsOf(text: string): readonly string[] {
  const parted = text.split(/[,;]/);
  if (parted.length > 1) return parted;
  const ofLetters = /^\s*[NSEW]/.test(text)
    ? /^\s*([NSEW][^NSEW]+)([NSEW][^NSEW]+)$/.exec(text)
    : /^([^NSEW]+[NSEW])([^NSEW]+[NSEW])\s*$/.exec(text);
  if (ofLetters !== null) return ofLetters.slice(1);
  const numbers = text.match(/\S+/g) ?? [];
  const half = numbers.length / 2;
  return [numbers.slice(0, half).join(' '), numbers.slice(half).join(' ')];
}

const HALF =
  /^([NSEW])?\s*([+-]?)(\d+(?:\.\d*)?|\.\d+)\s*[°:]?(?:\s*(\d+(?:\.\d+)?)\s*[':]?)?(?:\s*(\d+(?:\.\d+)?)\s*"?)?\s*([NSEW])?$/;

function readHalf(text: string): Half | undefined {
  const [all, before, sign, deg = '', min = '0', sec = '0', after] = HALF.exec(text.trim()) ?? [];
  const letter = before ?? after;
  if (all === undefined || (before !== undefined && after !== undefined)) return undefined;
  // "39.5° 30'" and "-86 W" each say one thing twice.
  if ((deg.includes('.') && Number(min) !== 0) || (min.includes('.') && Number(sec) !== 0)) return undefined;
  if (Number(min) >= 60 || Number(sec) >= 60 || (letter !== undefined && sign === '-')) return undefined;
  const size = Number(deg) + Number(min) / 60 + Number(sec) / 3600;
  const below = sign === '-' || letter === 'S' || letter === 'W';
  const axis = letter === undefined ? undefined : letter === 'N' || letter === 'S' ? 'north' : 'east';
  return { value: below ? -size : size, axis };
}

function isFinitePlace({ lonDeg, latDeg }: LonLat): boolean {
  return Number.isFinite(lonDeg) && Math.abs(latDeg) <= 90;
}
