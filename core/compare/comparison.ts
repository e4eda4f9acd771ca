import type { Region } from '../spaces.ts';
import type { OutlineKind } from '../yard.ts';

/** Areas of ground in two states: before = unchanged + lost, after = unchanged + gained, each to the kernel grid. */
export interface AreaChange {
  readonly beforeM2: number;
  readonly lostM2: number;
  readonly gainedM2: number;
  readonly unchangedM2: number;
  readonly afterM2: number;
}

/** The same with the ground itself, in the later yard's frame. */
export interface GroundChange extends AreaChange {
  readonly lost: readonly Region[];
  readonly gained: readonly Region[];
}

/** What of a zone is compared: all inside its edge, the turf left of it, or what of that is treated. */
export type ZoneMeasure = 'treated' | 'turf' | 'gross';

export type ZoneChange = Readonly<Record<ZoneMeasure, GroundChange>> & {
  /** Of the later yard, or of the earlier when the zone is gone. */
  readonly zoneId: string;
  readonly name: string;
  /** What it was called before, where that was something else; null otherwise. */
  readonly formerName: string | null;
  readonly state: 'in both' | 'new' | 'gone';
};

export interface NamedArea {
  readonly id: string;
  readonly name: string;
  readonly areaM2: number;
}

/** All outlines of one kind together; ground under two of them counts once. */
export interface KindChange {
  readonly kind: OutlineKind;
  readonly ground: GroundChange;
  /** Outlines there were none of before, and those there are none of any more; areas are each one's whole own. */
  readonly appeared: readonly NamedArea[];
  readonly vanished: readonly NamedArea[];
}

export interface YardComparison {
  /** Those of the later yard in its order, then those that are gone. */
  readonly zones: readonly ZoneChange[];
  /** The sums over the zones. */
  readonly all: Readonly<Record<ZoneMeasure, AreaChange>>;
  /** The kinds there are any of in either yard. */
  readonly kinds: readonly KindChange[];
  /** How far the earlier yard's origin lies from the later one's; 0 for one frame, null for two loose yards. */
  readonly framesApartM: number | null;
}
