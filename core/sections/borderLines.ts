import { distanceM } from '../kernel/index.ts';
import type { YardPoint } from '../spaces.ts';
import type { CutLine, Section } from './section.ts';

/** An edge this near to a cut lies along it; cut points carry rounding only. */
const ALONG_M = 1e-6;
/** Shorter bits of border are the rounding of where three sections meet. */
const SHORTEST_M = 1e-5;

interface Stretch {
  readonly fromM: number;
  readonly toM: number;
  readonly section: Section;
}

/**
 * The parts of the cuts that really lie between two sections, each with the section on either hand. A cut made
 * early borders several sections once they have been cut themselves, and is given in as many parts.
 */
export function borderLines(
  cuts: readonly (readonly [YardPoint, YardPoint])[],
  sections: readonly Section[],
): CutLine[] {
  return cuts.flatMap(([from, to], cut) => {
    const lengthM = distanceM(from, to);
    if (lengthM < SHORTEST_M) return [];
    const x = (to.xM - from.xM) / lengthM;
    const y = (to.yM - from.yM) / lengthM;
    const at = (alongM: number): YardPoint => ({ xM: from.xM + x * alongM, yM: from.yM + y * alongM });
    const { left, right } = stretchesAlong(from, x, y, lengthM, sections);
    return left.flatMap((l) =>
      right.flatMap((r): CutLine[] => {
        const startM = Math.max(l.fromM, r.fromM);
        const endM = Math.min(l.toM, r.toM);
        if (endM - startM < SHORTEST_M) return [];
        return [{ from: at(startM), to: at(endM), between: [l.section.id, r.section.id], cut }];
      }),
    );
  });
}

/** Edges of sections that run along the cut: with it when the section is on its left, against it on its right. */
function stretchesAlong(
  from: YardPoint,
  x: number,
  y: number,
  lengthM: number,
  sections: readonly Section[],
): { left: Stretch[]; right: Stretch[] } {
  const left: Stretch[] = [];
  const right: Stretch[] = [];
  const along = (p: YardPoint): number => (p.xM - from.xM) * x + (p.yM - from.yM) * y;
  const off = (p: YardPoint): number => Math.abs((p.yM - from.yM) * x - (p.xM - from.xM) * y);
  for (const section of sections) {
    for (const ring of [section.region.outer, ...section.region.holes]) {
      ring.forEach((a, i) => {
        const b = ring[(i + 1) % ring.length] as YardPoint;
        if (off(a) > ALONG_M || off(b) > ALONG_M) return;
        const fromM = Math.max(0, Math.min(along(a), along(b)));
        const toM = Math.min(lengthM, Math.max(along(a), along(b)));
        if (toM - fromM < SHORTEST_M) return;
        (along(b) > along(a) ? left : right).push({ fromM, toM, section });
      });
    }
  }
  return { left: joined(left), right: joined(right) };
}

/** Puts together stretches of one section that meet end to end. */
function joined(stretches: readonly Stretch[]): Stretch[] {
  const list: Stretch[] = [];
  for (const stretch of stretches.toSorted((a, b) => a.fromM - b.fromM)) {
    const last = list.at(-1);
    if (last !== undefined && last.section === stretch.section && stretch.fromM - last.toM < SHORTEST_M) {
      list[list.length - 1] = { ...last, toM: Math.max(last.toM, stretch.toM) };
    } else list.push(stretch);
  }
  return list;
}
