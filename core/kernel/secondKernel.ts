import * as polyclip from 'polyclip-ts';
import type { Region, Ring } from '../spaces.ts';
import type { Overlay } from './clipper.ts';

type Coordinates = [number, number][][][];

/**
 * The same overlays by another method (a sweep in exact arithmetic), slower, for the rare result that fails
 * the first kernel's identity check. Throws what the library throws.
 */
export function overlayBySecondKernel(
  overlay: Overlay,
  subject: readonly Region[],
  clip: readonly Region[],
): Region[] {
  const a = subject.map(toCoordinates) as Coordinates;
  const b = clip.map(toCoordinates) as Coordinates;
  const found =
    overlay === 'union'
      ? polyclip.union(a, b)
      : overlay === 'subtract'
        ? polyclip.difference(a, b)
        : polyclip.intersection(a, b);
  return (found as Coordinates).map(([outer, ...holes]) => ({
    outer: fromCoordinates(outer ?? []),
    holes: holes.map(fromCoordinates),
  }));
}

function toCoordinates(region: Region): [number, number][][] {
  return [region.outer, ...region.holes].map((ring) => ring.map(({ xM, yM }): [number, number] => [xM, yM]));
}

/** The library closes its rings; ours are open. */
function fromCoordinates(ring: readonly [number, number][]): Ring {
  return ring.slice(0, -1).map(([xM, yM]) => ({ xM, yM }));
}
