import type { LonLat } from '../../../core/spaces.ts';
import type { UnitSystem } from '../../../core/yard.ts';

/** A file's name as a yard's name: no folder, no extension. */
export function nameFromFile(fileName: string): string {
  const base = fileName.split(/[\\/]/).at(-1) ?? '';
  return base.replace(/\.[a-z0-9]+$/i, '').trim() || 'Yard';
}

/** Feet and ounces where they are the custom (the United States), metres and litres elsewhere; the person can change it. */
export function usualUnits({ lonDeg, latDeg }: LonLat): UnitSystem {
  const isIn = ([west, south, east, north]: readonly [number, number, number, number]): boolean =>
    lonDeg >= west && lonDeg <= east && latDeg >= south && latDeg <= north;
  return US_BOXES.some(isIn) ? 'us' : 'metric';
}

/** West, south, east, north: the contiguous states, Alaska, Hawaii. Rough on purpose; it is only a first guess. */
const US_BOXES: readonly (readonly [number, number, number, number])[] = [
  [-125, 24.4, -66.9, 49],
  [-170, 54.5, -141, 71.5],
  [-161, 18.8, -154.7, 22.4],
];

/** Today where the host runs, as an ISO date. */
export function todayIso(): string {
  const now = new Date();
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
