import { tracedRegion } from '../curves/index.ts';
import { unionRegions } from '../kernel/index.ts';
import type { Region, YardPoint } from '../spaces.ts';
import type { JobHose, Outline, OutlineKind, Yard } from '../yard.ts';

/** Where a hose starts. */
export interface HoseSpigot {
  readonly id: string;
  readonly name: string;
  readonly at: YardPoint;
}

/** What a hose is laid over: where it starts, how long it is, and what it has to go round. */
export interface HoseGround {
  readonly spigots: readonly HoseSpigot[];
  readonly lengthM: number;
  /** Kept from the corners it is laid round. */
  readonly clearanceM: number;
  /** Disjoint regions it cannot cross. */
  readonly barriers: readonly Region[];
  /** What the barriers are made of, to name a bend by. */
  readonly obstacles: readonly Pick<Outline, 'id' | 'name' | 'outer'>[];
}

/** How far a hose that nobody has measured keeps from a corner it is pulled round, in metres: common practice, no source. */
export const USUAL_CLEARANCE_M = 0.15;

/** What a hose is not drawn over unless the person says otherwise. */
const USUAL_BARRIERS: readonly OutlineKind[] = ['building', 'water'];

export function blocksHose({ kind, blocksHose: said }: Pick<Outline, 'kind' | 'blocksHose'>): boolean {
  return said ?? USUAL_BARRIERS.includes(kind);
}

/** The spigots a job may use and what stands in its hose's way. A zone never does. */
export function hoseGround(yard: Pick<Yard, 'outlines' | 'marks'>, hose: JobHose): HoseGround {
  const { lengthM, clearanceM, spigotIds } = hose;
  const spigots = yard.marks.filter(
    ({ kind, id }) => kind === 'spigot' && (spigotIds === null || spigotIds.includes(id)),
  );
  const barriers = yard.outlines.filter((outline) => outline.kind !== 'zone' && blocksHose(outline));
  return {
    spigots: spigots.map(({ id, name, at }) => ({ id, name, at })),
    lengthM,
    clearanceM,
    barriers: unionRegions(barriers.map(tracedRegion)),
    obstacles: barriers.map(({ id, name, outer }) => ({ id, name, outer })),
  };
}
