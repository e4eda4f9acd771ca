import type { LonLat } from '../spaces.ts';
import { formatNumber } from '../units/index.ts';

/** "39.900000° N, 86.200000° W": to a tenth of a metre. */
export function formatPlace({ latDeg, lonDeg }: LonLat): string {
  const half = (deg: number, [above, below]: readonly [string, string]): string =>
    `${formatNumber(Math.abs(deg), 6)}° ${deg < 0 ? below : above}`;
  return `${half(latDeg, ['N', 'S'])}, ${half(lonDeg, ['E', 'W'])}`;
}
