import { boxesMeet, type RingBounds, regionAreaM2, ringBounds, signedAreaM2 } from '../kernel/index.ts';
import type { Region, Ring } from '../spaces.ts';

/** Two states of some ground that differ as the given ones do, without most of what is the very same in both. */
export interface Differing {
  readonly before: readonly Region[];
  readonly after: readonly Region[];
  /** To be added to what is common to the two above, for what is common to the two states. */
  readonly commonM2: number;
}

/**
 * Sets aside regions and holes that are corner by corner the same in both states. Most of a yard stays as it was,
 * and need not go through an overlay.
 *
 * With A = P - H - X and B = Q - H - Y, the holes of one region apart from each other: H lies in Q and off Y, so
 * A - B = (P - X - Q) + (P - X) ∩ Y holds nothing of H, and is (P - X) - (Q - Y); A ∩ B is (P - X) ∩ (Q - Y) less H.
 * A hole that another region lies in is kept, for filled it would hide that region.
 *
 * @param before, after each without overlap in itself
 * Accuracy: exact
 * Cost: n in the vertices, n squared in boxes of holes and regions
 */
export function setAsideCommon(before: readonly Region[], after: readonly Region[]): Differing {
  const wasKeys = before.map(regionKey);
  const isKeys = after.map(regionKey);
  const [was, is] = [new Set(wasKeys), new Set(isKeys)];
  const same = before.filter((_, i) => is.has(wasKeys[i] ?? ''));
  const [restBefore, restAfter] = [
    before.filter((_, i) => !is.has(wasKeys[i] ?? '')),
    after.filter((_, i) => !was.has(isKeys[i] ?? '')),
  ];
  const holes = commonHoles(restBefore, restAfter);
  const fill = (regions: readonly Region[]): readonly Region[] =>
    regions.map((region) => ({
      outer: region.outer,
      holes: region.holes.filter((hole) => !holes.has(ringKey(hole))),
    }));
  const sameM2 = same.reduce((sumM2, region) => sumM2 + regionAreaM2(region), 0);
  const holesM2 = [...holes.values()].reduce((sumM2, hole) => sumM2 + Math.abs(signedAreaM2(hole)), 0);
  const turned = turnInsideOut(fill(restBefore), fill(restAfter));
  return { ...turned, commonM2: sameM2 - holesM2 + turned.commonM2 };
}

/**
 * Regions with one edge in both states and other holes in each. With A = P - X and B = P - Y, A - B is Y - X and B - A is
 * X - Y: the holes stand for the regions, crosswise, and the long edge needs no overlay. A ∩ B is P - X - Y + X ∩ Y.
 */
function turnInsideOut(before: readonly Region[], after: readonly Region[]): Differing {
  const others = [...before, ...after].map((region) => ({ region, box: ringBounds(region.outer) }));
  const byEdge = new Map(before.map((region) => [ringKey(region.outer), region] as const));
  const pairs = after.flatMap((now) => {
    const was = byEdge.get(ringKey(now.outer));
    if (was === undefined) return [];
    const box = ringBounds(now.outer);
    // What lies in one of the holes would be taken for part of it.
    const isAlone = others.every(
      ({ region, box: other }) => region === now || region === was || !boxesMeet(other, box),
    );
    return isAlone ? [{ was, now }] : [];
  });
  const [wasTurned, nowTurned] = [new Set(pairs.map(({ was }) => was)), new Set(pairs.map(({ now }) => now))];
  const filled = ({ holes }: Region): Region[] =>
    holes.map((hole) => ({ outer: [...hole].reverse(), holes: [] }));
  return {
    before: [
      ...before.filter((region) => !wasTurned.has(region)),
      ...pairs.flatMap(({ now }) => filled(now)),
    ],
    after: [...after.filter((region) => !nowTurned.has(region)), ...pairs.flatMap(({ was }) => filled(was))],
    // P - X + P - Y - P
    commonM2: pairs.reduce(
      (sumM2, { was, now }) =>
        sumM2 + regionAreaM2(was) + regionAreaM2(now) - Math.abs(signedAreaM2(now.outer)),
      0,
    ),
  };
}

function commonHoles(before: readonly Region[], after: readonly Region[]): ReadonlyMap<string, Ring> {
  const holesOf = (regions: readonly Region[]): ReadonlyMap<string, Ring> =>
    new Map(regions.flatMap(({ holes }) => holes.map((hole) => [ringKey(hole), hole] as const)));
  const was = holesOf(before);
  const boxes = [...before, ...after].map(({ outer }) => ringBounds(outer));
  return new Map(
    [...holesOf(after)].filter(([key, hole]) => {
      if (!was.has(key)) return false;
      const box = ringBounds(hole);
      // Only the region it is a hole of reaches round it on every side.
      return boxes.every((other) => !boxesMeet(other, box) || isRound(other, box));
    }),
  );
}

function isRound(outer: RingBounds, inner: RingBounds): boolean {
  const aboutX = outer.minXM < inner.minXM && outer.maxXM > inner.maxXM;
  return aboutX && outer.minYM < inner.minYM && outer.maxYM > inner.maxYM;
}

function regionKey({ outer, holes }: Region): string {
  return [ringKey(outer), ...holes.map(ringKey).sort()].join('|');
}

/** The same for a ring whichever corner it starts at. */
function ringKey(ring: Ring): string {
  const corners = ring.map(({ xM, yM }) => `${xM},${yM}`);
  const first = corners.reduce((least, corner, i) => (corner < (corners[least] ?? '') ? i : least), 0);
  return [...corners.slice(first), ...corners.slice(0, first)].join(' ');
}
