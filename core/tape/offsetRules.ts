/** The areas two rules of surveying make of the same offsets. */
export interface OffsetAreas {
  /** Straight from offset to offset: what is drawn. */
  readonly trapezoidAreaM2: number;
  /** A parabola through every three offsets; null with fewer than three or with unequal spacings. */
  readonly simpsonAreaM2: number | null;
}

/**
 * Area between a baseline and an edge from offsets, by the trapezoidal rule and by Simpson's. Where Simpson's finds
 * an odd number of intervals, the last one is a trapezoid.
 *
 * @param offsetsM two or more
 * @param spacingsM one less than the offsets, or a single one that holds for all
 * Source: textbooks of plane surveying; h/3 × (ends + 4 × odd + 2 × even offsets)
 */
export function offsetAreas(offsetsM: readonly number[], spacingsM: readonly number[]): OffsetAreas {
  const last = offsetsM.length - 1;
  const spacingM = (i: number): number => (spacingsM.length === 1 ? spacingsM[0] : spacingsM[i]) ?? 0;
  const offsetM = (i: number): number => offsetsM[i] ?? 0;
  const trapezoidM2 = (i: number): number => (spacingM(i) * (offsetM(i) + offsetM(i + 1))) / 2;

  let trapezoidAreaM2 = 0;
  for (let i = 0; i < last; i += 1) trapezoidAreaM2 += trapezoidM2(i);
  const even = spacingsM.every((each) => each === spacingsM[0]);
  if (last < 2 || !even) return { trapezoidAreaM2, simpsonAreaM2: null };
  let simpsonAreaM2 = last % 2 === 0 ? 0 : trapezoidM2(last - 1);
  for (let i = 0; i + 2 <= last; i += 2) {
    simpsonAreaM2 += (spacingM(i) * (offsetM(i) + 4 * offsetM(i + 1) + offsetM(i + 2))) / 3;
  }
  return { trapezoidAreaM2, simpsonAreaM2 };
}
