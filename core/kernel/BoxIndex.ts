import Flatbush from 'flatbush';
import type { RingBounds } from './measure.ts';

/**
 * Things found again by the boxes round them.
 * Cost: n log n to build; log n and what is found to ask
 */
export class BoxIndex<T> {
  readonly #rows: readonly T[];
  readonly #boxes: Flatbush | null;

  constructor(rows: readonly T[], boundsOf: (row: T) => RingBounds) {
    this.#rows = rows;
    // The library holds no empty index.
    this.#boxes = rows.length === 0 ? null : new Flatbush(rows.length);
    for (const row of rows) {
      const { minXM, minYM, maxXM, maxYM } = boundsOf(row);
      this.#boxes?.add(minXM, minYM, maxXM, maxYM);
    }
    this.#boxes?.finish();
  }

  /** What has a box that meets this one, touching included, in the order it was given. */
  meeting({ minXM, minYM, maxXM, maxYM }: RingBounds): readonly T[] {
    if (this.#boxes === null) return [];
    const found = this.#boxes.search(minXM, minYM, maxXM, maxYM).sort((a, b) => a - b);
    return found.map((at) => this.#rows[at] as T);
  }
}
