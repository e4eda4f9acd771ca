import type { Region, YardPoint } from '../spaces.ts';

/** A connected piece of a zone done from one load. `id` is a letter for the zone and a number: 'A1'. */
export interface Section {
  readonly id: string;
  readonly zoneId: string;
  readonly zoneName: string;
  readonly region: Region;
  readonly areaM2: number;
}

/** A straight border between two sections. */
export interface CutLine {
  readonly from: YardPoint;
  readonly to: YardPoint;
  /** Ids of the sections on its left and right. */
  readonly between: readonly [string, string];
}
