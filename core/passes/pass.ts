import type { YardPoint } from '../spaces.ts';

/** One walk with the applicator on. `order` counts from 1 through the whole plan in walking order. */
export interface Pass {
  readonly sectionId: string;
  readonly order: number;
  readonly kind: 'perimeter' | 'lane';
  /** 2 in the second of two rounds at half the rate; 1 otherwise. */
  readonly round: 1 | 2;
  /** At least two points, in walking direction; a perimeter pass that closes repeats its first point. */
  readonly line: readonly YardPoint[];
  readonly lengthM: number;
}
