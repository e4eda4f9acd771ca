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
  /** Which cut it is a part of: its place in the list of cuts. */
  readonly cut: number;
}

/** A whole straight cut as it was made, from edge to edge; later cuts may have parted what lies along it. */
export interface Cut {
  readonly zoneId: string;
  readonly from: YardPoint;
  readonly to: YardPoint;
  /** The person's own, by its id; null when the plan placed it. */
  readonly heldId: string | null;
}
