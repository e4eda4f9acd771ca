import type {
  Applicator,
  Elevation,
  FieldCheck,
  Job,
  Mark,
  Outline,
  Picture,
  Product,
  Yard,
  YardDetails,
} from '../yard.ts';

/** The parts of a yard, by name; each row has an `id` of its own within its part. */
export interface YardRows {
  readonly details: YardDetails;
  readonly pictures: Picture;
  readonly outlines: Outline;
  readonly marks: Mark;
  readonly elevations: Elevation;
  readonly checks: FieldCheck;
  readonly products: Product;
  readonly applicators: Applicator;
  readonly jobs: Job;
}

export const YARD_PARTS = [
  'details',
  'pictures',
  'outlines',
  'marks',
  'elevations',
  'checks',
  'products',
  'applicators',
  'jobs',
] as const;
export type YardPart = (typeof YARD_PARTS)[number];

/**
 * One row before and after. `before` null = the row is new, `after` null = it is removed; never both.
 * `index` is the row's place in its list: where it is put when new, where it stood when removed.
 */
export type Change = {
  readonly [P in YardPart]: {
    readonly part: P;
    readonly id: string;
    readonly index: number;
    readonly before: YardRows[P] | null;
    readonly after: YardRows[P] | null;
  };
}[YardPart];

/** What a person did in one go, undone in one go. `label` says it in plain words: "move corner of back lawn". */
export interface Edit {
  readonly label: string;
  readonly changes: readonly Change[];
}

/** The rows of one part of a yard. */
export function rowsOf<P extends YardPart>(yard: Yard, part: P): readonly YardRows[P][] {
  const rows: Record<YardPart, readonly unknown[]> = { ...yard, details: [yard.details] };
  return rows[part] as readonly YardRows[P][];
}
