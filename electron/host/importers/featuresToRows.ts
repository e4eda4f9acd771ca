import { straight } from '../../../core/curves/index.ts';
import { newOutline } from '../../../core/edits/index.ts';
import { lonLatToYard } from '../../../core/earth/index.ts';
import { checkRing, orientRegion } from '../../../core/kernel/index.ts';
import type { Problem, ProblemKind } from '../../../core/problems.ts';
import { ok, type Result, trouble } from '../../../core/result.ts';
import type { LonLat, Ring } from '../../../core/spaces.ts';
import type { Mark, Outline, Yard } from '../../../core/yard.ts';
import type { BroughtFeatures, BroughtOutline } from './brought.ts';
import { freeIds } from './freeIds.ts';
import { checkReach } from './reach.ts';

export interface YardRowsBrought {
  readonly outlines: readonly Outline[];
  readonly marks: readonly Mark[];
  readonly notes: readonly string[];
}

const MOST_PROBLEMS = 20;

/**
 * Brings features from the globe into a yard's frame, names those without a name (“zone 2”) and checks every
 * ring. Nothing is mended: a ring that crosses itself refuses the file and is named. Only a hole that encloses no
 * ground is left out, and that is said.
 * Problems: shape/ of a ring, shape/too-large
 */
export function featuresToRows(
  fileName: string,
  brought: BroughtFeatures,
  origin: LonLat,
  into: Pick<Yard, 'outlines' | 'marks'>,
): Result<YardRowsBrought> {
  const everyPlace = [
    ...brought.outlines.flatMap(({ outer }) => outer),
    ...brought.marks.map(({ at }) => at),
  ];
  const reach = checkReach(
    fileName,
    everyPlace.map((place) => lonLatToYard(origin, place)),
  );
  if (!reach.ok) return reach;
  const problems: Problem[] = [];
  const notes = [...reach.value];
  const newId = freeIds([...into.outlines, ...into.marks]);
  const newName = freeNames([...into.outlines, ...into.marks, ...brought.outlines, ...brought.marks]);
  const outlines: Outline[] = [];
  for (const each of brought.outlines) {
    if (problems.length >= MOST_PROBLEMS) break;
    const name = each.name ?? newName(each.kind);
    const made = outlineOf(each, newId(each.kind), name, origin, notes);
    if (made.ok) outlines.push(made.value);
    else problems.push(...made.problems);
  }
  const marks = brought.marks.map(({ kind, name, at }): Mark => {
    return { id: newId(kind), kind, name: name ?? newName(kind), at: lonLatToYard(origin, at) };
  });
  const [first, ...more] = problems;
  return first === undefined ? ok({ outlines, marks, notes }) : trouble(first, ...more);
}

function outlineOf(
  brought: BroughtOutline,
  id: string,
  name: string,
  origin: LonLat,
  notes: string[],
): Result<Outline> {
  const { kind, feature } = brought;
  const toRing = (ring: readonly LonLat[]): Ring => ring.map((point) => lonLatToYard(origin, point));
  const where = brought.name === null ? `${name} (${feature})` : name;
  const outer = toRing(brought.outer);
  const problems: Problem[] = problemsOf(checkRing(outer, id, where));
  const holes: Ring[] = [];
  for (const [at, hole] of brought.holes.map(toRing).entries()) {
    const found = problemsOf(checkRing(hole, id, `${where}, hole ${at + 1},`));
    if (found.length === 0) holes.push(hole);
    else if (found.every((problem) => NO_GROUND.includes(problem.kind))) {
      notes.push(`Left out: hole ${at + 1} of ${where}, which encloses no ground.`);
    } else problems.push(...found);
  }
  const [first, ...more] = problems;
  if (first !== undefined) return trouble(first, ...more);
  const region = orientRegion({ outer, holes });
  const grade = kind === 'zone' ? brought.slopeGrade : null;
  const slope = grade === null ? null : ({ kind: 'grade', grade } as const);
  const [edge, within] = [straight(region.outer), region.holes.map(straight)];
  const { keepOffM } = brought;
  const blocksHose = kind === 'zone' ? null : brought.blocksHose;
  const claimsOverlaps = kind === 'zone' && brought.claimsOverlaps;
  return ok(
    newOutline({ id, kind, name, outer: edge, holes: within, slope, keepOffM, claimsOverlaps, blocksHose }),
  );
}

/** A hole with one of these takes nothing away. */
const NO_GROUND: readonly ProblemKind[] = ['shape/too-few-points', 'shape/zero-area'];

function problemsOf(checked: Result<Ring>): Problem[] {
  return checked.ok ? [] : [...checked.problems];
}

/** Names “kind n” with the first n not taken by anything named. */
function freeNames(rows: readonly { readonly name: string | null }[]): (kind: string) => string {
  const taken = new Set(rows.map((row) => row.name));
  const next = new Map<string, number>();
  return (kind) => {
    let number = next.get(kind) ?? 1;
    while (taken.has(`${kind} ${number}`)) number++;
    next.set(kind, number + 1);
    return `${kind} ${number}`;
  };
}
