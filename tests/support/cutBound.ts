/**
 * How little cutting a rectangle of area 1 can be parted with into k connected parts of equal area by k - 1 straight
 * cuts, each from edge to edge of the part it cuts: a bound below it, and the best cuts square to the sides.
 *
 * Derived here. Let the rectangle be w long and h wide, w h = 1, and a = 1 / k. The parts are convex. p = length of a
 * part's edges inside the rectangle, m = how many such edges it has. Each cut line has a part on either side, so
 * twice the cutting is the sum of p. What p is at least, by what sides of the rectangle the part touches:
 *
 * - Two sides that meet, with their corner: mirrored in both it is a polygon of at most 4 m edges and area 4 a, whose
 *   perimeter is 4 p. An n-gon of area A has a perimeter of at least √(4 n tan(π / n) A), that of the regular one
 *   (isoperimetric inequality for polygons, textbook). So p >= √(4 m tan(π / 4m) a): from 2 √a for one edge down
 *   to √(π a), the quarter disc.
 * - One side, or none: mirrored in one line, in the same way, p >= √(4 m tan(π / 2m) a), m >= 2.
 * - Two sides that meet, without their corner: what lies between it and the corner holds a whole part, so with that
 *   it is 2 a in a corner, p >= √(2 π a) + √(π a), which is more than the line above.
 * - Two sides that face each other, holding two corners or more: p >= h. Every line parallel to the two meets the
 *   part; where none lies in it all along, each crosses an edge of it, and p is at least the distance of the two.
 *   Where one does, the same goes for the lines square to it; where one of those does too, what is left is in the
 *   four corners, 1 - a >= 1/2 in all, and p >= √(π / 2) > 1 >= h.
 * - The same, holding no corner: each such line leaves the part at both ends, p >= 2 h; if it touches a third side as
 *   well, it shuts off two corners with a whole part in each, p >= 2 √(π a), again more than for one side.
 * - The same, holding one corner: it shuts off the corner that faces that one, and more beyond: p >= √(π a) + h, or
 *   3 √(π a), more than the first line unless the rectangle is hundreds of times as long as wide.
 *
 * A corner is held by one part at most, and there are four. The edges inside are few: each cut has two faces, and a
 * cut that ends on another parts one face of that in two. The first cut ends on none, the second on one at most, the
 * others on two at most: the sum of m is at most 2 (k - 1) + 2 k - 5 = 4 k - 7, and 2 for k = 2. The bound is the
 * least sum of p over all shares of corners and edges that keep to this.
 *
 * Holes are another matter: cuts that run into them are shorter, so ground with holes can do with less.
 */
export function leastCutM(k: number, elongation: number): number {
  const widthM = 1 / Math.sqrt(elongation);
  const mostEdges = k === 2 ? 2 : 4 * k - 7;
  let leastM = Infinity;
  for (let corners = 0; corners <= Math.min(4, k); corners++) {
    for (let ends = 0; corners + 2 * ends <= 4 && corners + ends <= k; ends++) {
      for (let strips = 0; corners + ends + strips <= k; strips++) {
        const counts = { corners, ends, strips, sides: k - corners - ends - strips };
        leastM = Math.min(leastM, leastOf(counts, 1 / k, widthM, mostEdges));
      }
    }
  }
  return leastM;
}

/** Parts that hold one corner, two or more, none but reach across, none. */
interface Counts {
  readonly corners: number;
  readonly ends: number;
  readonly strips: number;
  readonly sides: number;
}

/** Half the least sum of p; Infinity where even the fewest edges such parts have are too many. */
function leastOf(counts: Counts, areaM2: number, widthM: number, mostEdges: number): number {
  const { corners, ends, strips, sides } = counts;
  const bent = [
    ...Array.from({ length: corners }, () => ({ edges: 1, mirrors: 4 })),
    ...Array.from({ length: sides }, () => ({ edges: 2, mirrors: 2 })),
  ];
  let left = mostEdges - ends - 2 * strips - bent.reduce((sum, { edges }) => sum + edges, 0);
  if (left < 0) return Infinity;
  const saved = ({ edges, mirrors }: (typeof bent)[number]): number =>
    polygonM(edges, mirrors, areaM2) - polygonM(edges + 1, mirrors, areaM2);
  // Each further edge saves less than the one before, so the one that saves most comes next.
  for (; left > 0 && bent.length > 0; left--) {
    const most = bent.reduce((best, part) => (saved(part) > saved(best) ? part : best));
    most.edges++;
  }
  const bentM = bent.reduce((sum, { edges, mirrors }) => sum + polygonM(edges, mirrors, areaM2), 0);
  return (ends * widthM + strips * 2 * widthM + bentM) / 2;
}

/** Least inner edge of a part that makes a polygon with its mirror images, `mirrors` of them with itself. */
function polygonM(edges: number, mirrors: number, areaM2: number): number {
  return Math.sqrt(4 * edges * Math.tan(Math.PI / (mirrors * edges)) * areaM2);
}

/** Least cutting by cuts square to the sides, each across a whole rectangle: all ways tried. */
export function bestSquareCutM(k: number, elongation: number): number {
  const lengthM = Math.sqrt(elongation);
  return squareCutM(k, lengthM, 1 / lengthM);
}

function squareCutM(k: number, lengthM: number, widthM: number): number {
  if (k === 1) return 0;
  let leastM = Infinity;
  for (let below = 1; below <= k / 2; below++) {
    const part = below / k;
    leastM = Math.min(
      leastM,
      widthM +
        squareCutM(below, part * lengthM, widthM) +
        squareCutM(k - below, (1 - part) * lengthM, widthM),
      lengthM +
        squareCutM(below, lengthM, part * widthM) +
        squareCutM(k - below, lengthM, (1 - part) * widthM),
    );
  }
  return leastM;
}

/** What cut lengths are compared by: k - 1 cuts as long as the side of a square of a part's area; the whole has area 1. */
export function usualCutM(k: number): number {
  return (k - 1) / Math.sqrt(k);
}
