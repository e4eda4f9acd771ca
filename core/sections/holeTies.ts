import type { Region, Ring, YardPoint } from '../spaces.ts';

/** A straight way over the ground from a hole to another ring: what is on which side of a cut follows from it. */
export interface HoleTie {
  /** Place of the hole among the region's rings, the outer one being 0. */
  readonly ring: number;
  /** Places of corners among all corners of the region, ring after ring. */
  readonly fromCorner: number;
  readonly toEdge: number;
  /** How far along that edge, from 0 to 1. */
  readonly part: number;
}

/**
 * Ties every hole to a ring whose own tie comes before it, or to the outer ring.
 *
 * @returns in an order in which every hole comes after the one it is tied to
 * Source: straight up from a hole's highest corner lies ground, up to an edge of a ring that reaches higher still. Own
 *   work.
 * Cost: corners x holes
 */
export function tiesOf(region: Region): HoleTie[] {
  let corners = 0;
  const rings = [region.outer, ...region.holes].map((ring, place) => {
    const first = corners;
    corners += ring.length;
    return { ring, place, first, top: topOf(ring) };
  });
  const [outer, ...holes] = rings;
  const known = outer === undefined ? [] : [outer];
  return holes
    .sort((a, b) => heightM(b) - heightM(a))
    .map((hole) => {
      const at = hole.ring[hole.top] as YardPoint;
      let hit = { toEdge: 0, part: 0 };
      let leastM = Infinity;
      for (const { ring, first } of known) {
        for (const [place, from] of ring.entries()) {
          const to = ring[(place + 1) % ring.length] as YardPoint;
          if (from.xM <= at.xM === to.xM <= at.xM) continue;
          const part = (at.xM - from.xM) / (to.xM - from.xM);
          const upM = from.yM + part * (to.yM - from.yM) - at.yM;
          if (upM < 0 || upM >= leastM) continue;
          leastM = upM;
          hit = { toEdge: first + place, part };
        }
      }
      known.push(hole);
      return { ring: hole.place, fromCorner: hole.first + hole.top, ...hit };
    });
}

function topOf(ring: Ring): number {
  return ring.reduce((top, at, place) => (at.yM > (ring[top] as YardPoint).yM ? place : top), 0);
}

function heightM({ ring, top }: { readonly ring: Ring; readonly top: number }): number {
  return (ring[top] as YardPoint).yM;
}
