import {
  bufferLine,
  distanceToEdgeM,
  lineLengthM,
  offsetRegions,
  regionAreaM2,
  ringPerimeterM,
  subtractRegions,
} from '../kernel/index.ts';
import type { Region, Ring, YardPoint } from '../spaces.ts';
import type { OpenEdges } from './openEdges.ts';
import type { Walk } from './leg.ts';

/** Perimeter passes, and the ground they leave for lanes. */
export interface Perimeters {
  readonly walks: readonly Walk[];
  readonly inner: readonly Region[];
}

/** Passes shorter than this part of a swath are the rounding of a shape that just fits. */
const SHORTEST_PART = 0.1;
/** Ground left inside that is smaller than this part of a swath square is rounding. */
const SMALLEST_REST_PART = 0.002;
/** An edge of the shrunken ground this near to an open edge lies on it; the kernel rounds corners by far less. */
const ON_EDGE_M = 1e-3;

/**
 * Perimeter passes along every edge.
 *
 * @param reachable the region shrunk by half a swath
 */
export function fullPerimeters(region: Region, reachable: readonly Region[], swathM: number): Perimeters {
  const walks = reachable
    .flatMap((part) => [part.outer, ...part.holes])
    .filter((ring) => ringPerimeterM(ring) > SHORTEST_PART * swathM)
    .map((line): Walk => ({ kind: 'perimeter', line, isRing: true }));
  return { walks, inner: worthWalking(offsetRegions([region], -swathM), swathM) };
}

/** Perimeter passes along all edges but the open ones; each ends squarely on an open edge, or closes. */
export function partPerimeters(region: Region, open: OpenEdges, swathM: number): Perimeters {
  const chains = closedChains(region, open);
  const near = (distanceM: number): Region[] =>
    chains.flatMap((chain) => bufferLine(chain, distanceM, 'round'));
  const openEdges = region.outer.flatMap((a, i) =>
    open.isOpen[i] === true ? [[a, region.outer[(i + 1) % region.outer.length] as YardPoint] as const] : [],
  );
  const walks = subtractRegions([region], near(swathM / 2))
    .flatMap((part) => [part.outer, ...part.holes])
    .flatMap((ring) => linesOffEdges(ring, openEdges))
    .filter(({ line }) => lineLengthM(line) > SHORTEST_PART * swathM);
  return { walks, inner: worthWalking(subtractRegions([region], near(swathM)), swathM) };
}

function worthWalking(regions: readonly Region[], swathM: number): Region[] {
  return regions.filter((region) => regionAreaM2(region) > SMALLEST_REST_PART * swathM * swathM);
}

/** The edges that are not open, as lines from corner to corner; a whole ring repeats its first corner. */
function closedChains(region: Region, { isOpen }: OpenEdges): YardPoint[][] {
  const chains = region.holes.map((hole) => [...hole, hole[0] as YardPoint]);
  const { outer } = region;
  const start = isOpen.indexOf(true);
  let chain: YardPoint[] = [];
  for (let step = 1; step <= outer.length; step++) {
    const i = (start + step) % outer.length;
    if (isOpen[i] === true) {
      if (chain.length > 0) chains.push(chain);
      chain = [];
      continue;
    }
    if (chain.length === 0) chain.push(outer[i] as YardPoint);
    chain.push(outer[(i + 1) % outer.length] as YardPoint);
  }
  return chains;
}

type EdgeEnds = readonly [YardPoint, YardPoint];

/** The stretches of a ring that do not lie on any of some edges. */
function linesOffEdges(ring: Ring, edges: readonly EdgeEnds[]): Walk[] {
  const isOn = ring.map((a, i) => {
    const b = ring[(i + 1) % ring.length] as YardPoint;
    return edges.some((edge) => [a, b].every((end) => distanceToEdgeM(...edge, end) < ON_EDGE_M));
  });
  const start = isOn.indexOf(true);
  if (start < 0) return [{ kind: 'perimeter', line: ring, isRing: true }];
  const lines: Walk[] = [];
  let line: YardPoint[] = [];
  for (let step = 1; step <= ring.length; step++) {
    const i = (start + step) % ring.length;
    if (isOn[i] === true) {
      if (line.length > 0) lines.push({ kind: 'perimeter', line, isRing: false });
      line = [];
      continue;
    }
    if (line.length === 0) line.push(ring[i] as YardPoint);
    line.push(ring[(i + 1) % ring.length] as YardPoint);
  }
  return lines;
}
