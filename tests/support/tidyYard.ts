import { regularPolygon } from './builders.ts';
import { type RandomYard, randomStar, seededRandom } from './randomYards.ts';

/**
 * A lawn with round beds on a lattice, clear of each other and of the edge.
 *
 * @param jag how far its corners stand in and out, as a part of its radius
 */
export function tidyYard(corners: number, beds: number, jag = 0.05): RandomYard {
  const across = Math.ceil(Math.sqrt(beds));
  const stepM = 70 / across;
  const spots = Array.from({ length: beds }, (_, i) => ({
    xM: ((i % across) - (across - 1) / 2) * stepM,
    yM: (Math.floor(i / across) - (across - 1) / 2) * stepM,
  }));
  return {
    zone: randomStar(seededRandom(1), corners, { xM: 0, yM: 0 }, 60, jag),
    beds: spots.map((spot) => regularPolygon(spot, stepM * 0.3, 12)),
  };
}
