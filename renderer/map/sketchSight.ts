import { useSyncExternalStore } from 'react';
import type { LeafletMap } from './leafletMap.ts';

interface Sight {
  readonly map: LeafletMap | null;
  readonly metresPerPx: number | null;
}

/**
 * Where the sketch looks just now, for the foot line beside it: its scale bar and its keys. There is one
 * sketch on the screen at a time, and this is its.
 */
class SketchSight {
  #sight: Sight = { map: null, metresPerPx: null };
  readonly #listeners = new Set<() => void>();

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  readonly snapshot = (): Sight => this.#sight;

  set(map: LeafletMap | null, metresPerPx: number | null): void {
    if (map === this.#sight.map && metresPerPx === this.#sight.metresPerPx) return;
    this.#sight = { map, metresPerPx };
    for (const listener of this.#listeners) listener();
  }
}

export const sketchSight = new SketchSight();

export function useSketchSight(): Sight {
  return useSyncExternalStore(sketchSight.subscribe, sketchSight.snapshot);
}
