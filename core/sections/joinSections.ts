import { distanceM } from '../kernel/index.ts';
import { ok, type Result, trouble } from '../result.ts';
import type { HeldCut, Job } from '../yard.ts';
import { isSameLine } from './cutEdits.ts';
import type { Cut, CutLine, Section } from './section.ts';

/** A plan's sections with what parts them. */
export interface PlannedSections {
  readonly sections: readonly Section[];
  readonly cuts: readonly Cut[];
  readonly cutLines: readonly CutLine[];
  /** Map area of a zone's ground that one load treats. */
  readonly loadAreaM2Of: (zoneId: string) => number;
}

/** Together they may be over one load by this part of it, which is rounding. */
const LOAD_SLACK = 1e-9;
/** Parts of one cut that meet end to end. */
const MEET_M = 1e-4;

/**
 * Joins two neighbouring sections into one: every other cut line that borders either is held where it is, and the line
 * between them is not, so that the plan finds the joined ground as one piece that fits one load.
 *
 * Problems: plan/sections-apart, plan/join-over-load
 */
export function joinSections(
  job: Job,
  [one, other]: readonly [string, string],
  { sections, cuts, cutLines, loadAreaM2Of }: PlannedSections,
  makeId: () => string,
): Result<Job> {
  const thing = `${one} and ${other}`;
  const pair = sections.filter(({ id }) => id === one || id === other);
  const [first, second] = pair;
  const between = cutLines.filter((line) => line.between.includes(one) && line.between.includes(other));
  if (first === undefined || second === undefined || between.length === 0) {
    return trouble({ kind: 'plan/sections-apart', where: { thing }, facts: {} });
  }
  const togetherM2 = first.areaM2 + second.areaM2;
  const loadAreaM2 = loadAreaM2Of(first.zoneId);
  if (togetherM2 > loadAreaM2 * (1 + LOAD_SLACK)) {
    return trouble({ kind: 'plan/join-over-load', where: { thing }, facts: { togetherM2, loadAreaM2 } });
  }
  const opened = new Set(between.map(({ cut }) => cut));
  const borders = cutLines.filter(
    (line) => !between.includes(line) && (line.between.includes(one) || line.between.includes(other)),
  );
  // What the person held stays held but for the opened part, wherever it borders.
  const kept = cutLines.filter(
    (line) => !between.includes(line) && opened.has(line.cut) && cuts[line.cut]?.heldId !== null,
  );
  const openedIds = new Set([...opened].map((cut) => cuts[cut]?.heldId));
  const stays = job.heldCuts.filter(({ id }) => !openedIds.has(id));
  const held = joinedParts([...new Set([...kept, ...borders])], cuts).reduce(
    (done: readonly HeldCut[], line) => withLine(done, line, makeId),
    stays,
  );
  return ok({ ...job, heldCuts: held });
}

/** A held cut as it will stand, and the whole cut it is a part of. */
interface HeldPart extends Omit<HeldCut, 'id'> {
  readonly cut: Cut;
}

/** Lines of one cut that follow on one another are held as one line; a whole cut as it is. */
function joinedParts(lines: readonly CutLine[], cuts: readonly Cut[]): readonly HeldPart[] {
  return cuts.flatMap((cut, place) => {
    const own = lines.filter((line) => line.cut === place);
    const inOrder = own.toSorted((a, b) => distanceM(cut.from, a.from) - distanceM(cut.from, b.from));
    const parts: HeldPart[] = [];
    for (const { from, to } of inOrder) {
      const last = parts.at(-1);
      if (last !== undefined && distanceM(last.to, from) <= MEET_M) parts[parts.length - 1] = { ...last, to };
      else parts.push({ zoneId: cut.zoneId, from, to, cut });
    }
    return parts;
  });
}

function withLine(
  held: readonly HeldCut[],
  { zoneId, from, to, cut }: HeldPart,
  makeId: () => string,
): readonly HeldCut[] {
  const isThere = held.some((each) => isSameLine(each, { from, to }) || each.id === cut.heldId);
  return isThere ? held : [...held, { id: makeId(), zoneId, from, to }];
}
