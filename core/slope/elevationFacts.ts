import { distanceM } from '../kernel/index.ts';
import { FOOT_M } from '../units/index.ts';
import type { Elevation } from '../yard.ts';

/** What a person recognises an elevation grid by. */
export interface ElevationFacts {
  /** Along its north row. */
  readonly spacingM: number;
  readonly lowestM: number;
  readonly highestM: number;
  /** Places without a height. */
  readonly missing: number;
}

/** @returns lowestM and highestM 0 where there is no height at all */
export function elevationFacts({ columns, corners, heightsMm }: Elevation): ElevationFacts {
  let [lowestMm, highestMm, missing] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0];
  for (const heightMm of heightsMm) {
    if (heightMm === null) missing++;
    else [lowestMm, highestMm] = [Math.min(lowestMm, heightMm), Math.max(highestMm, heightMm)];
  }
  const isEmpty = missing === heightsMm.length;
  return {
    spacingM: distanceM(corners[0], corners[1]) / (columns - 1),
    lowestM: isEmpty ? 0 : lowestMm / 1000,
    highestM: isEmpty ? 0 : highestMm / 1000,
    missing,
  };
}

/** The same grid where its file meant the other unit of height: feet taken as metres, or metres taken as feet. */
export function readAnew(elevation: Elevation, meant: 'feet' | 'metres'): Elevation {
  const factor = meant === 'feet' ? FOOT_M : 1 / FOOT_M;
  return {
    ...elevation,
    heightsMm: elevation.heightsMm.map((heightMm) =>
      heightMm === null ? null : Math.round(heightMm * factor),
    ),
  };
}
