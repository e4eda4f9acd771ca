/** A value as text and the unit it is in, apart, for a field or a column whose head carries the unit. */
export interface Figure<U extends string> {
  readonly text: string;
  readonly unit: U;
}

/** The figure and its unit in one line. */
export function joined(figure: Figure<string>): string {
  return `${figure.text} ${figure.unit}`;
}
