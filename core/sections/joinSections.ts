import { LOAD_SLACK } from '../applicators/index.ts';
import { distanceM, interiorPoint, regionAreaM2, regionContains } from '../kernel/index.ts';
import type { Problem } from '../problems.ts';
import { ok, type Result, trouble } from '../result.ts';
import type { Region } from '../spaces.ts';
import type { HeldCut, Job } from '../yard.ts';
import { isSameLine } from './cutEdits.ts';
import { partByHeldCuts } from './heldCuts.ts';
import type { CutLine, Section } from './section.ts';
import { type PlannedCuts, type WholeCut, wholeCuts } from './wholeCuts.ts';

/** A plan's sections with what parts them. */
export interface PlannedSections extends PlannedCuts {
  readonly sections: readonly Section[];
  readonly cutLines: readonly CutLine[];
  /** Map area of a zone's ground that one load treats. */
  readonly loadAreaM2Of: (zoneId: string) => number;
}

/** Parts of one cut that meet end to end. */
const MEET_M = 1e-4;
/** Joined ground is the two sections' own to this part of it: cut points carry rounding. */
const SAME_PART = 1e-6;

/**
 * Joins two neighbouring sections into one: every other cut line that borders either is held where it is, and the line
 * between them is not, so that the plan finds the joined ground as one piece that fits one load.
 *
 * Problems: plan/sections-apart, plan/join-over-load, plan/join-not-straight (held from edge to edge, the lines round
 * both would run on through them)
 */
export function joinSections(
  job: Job,
  [one, other]: readonly [string, string],
  planned: PlannedSections,
  makeId: () => string,
): Result<Job> {
  const thing = `${one} and ${other}`;
  const [first, second] = planned.sections.filter(({ id }) => id === one || id === other);
  const between = planned.cutLines.filter(
    (line) => line.between.includes(one) && line.between.includes(other),
  );
  if (first === undefined || second === undefined || between.length === 0) {
    return trouble({ kind: 'plan/sections-apart', where: { thing }, facts: {} });
  }
  const togetherM2 = first.areaM2 + second.areaM2;
  const loadAreaM2 = planned.loadAreaM2Of(first.zoneId);
  if (togetherM2 > loadAreaM2 * (1 + LOAD_SLACK)) {
    return trouble({ kind: 'plan/join-over-load', where: { thing }, facts: { togetherM2, loadAreaM2 } });
  }
  const joined = { ...job, heldCuts: heldRound(job, [one, other], between, planned, makeId) };
  const problem = findProblem(joined, [first, second], planned.treatedOf(first.zoneId), thing);
  return problem === undefined ? ok(joined) : trouble(problem);
}

function heldRound(
  job: Job,
  [one, other]: readonly [string, string],
  between: readonly CutLine[],
  planned: PlannedSections,
  makeId: () => string,
): readonly HeldCut[] {
  const whole = wholeCuts(planned);
  const wholeOf = (line: CutLine): WholeCut | undefined => whole.find(({ runs }) => runs.includes(line.cut));
  const opened = new Set(between.map(wholeOf));
  const isOpened = (line: CutLine): boolean => opened.has(wholeOf(line));
  const isHeld = (line: CutLine): boolean => (wholeOf(line)?.heldId ?? null) !== null;
  const lines = planned.cutLines.filter((line) => {
    if (between.includes(line)) return false;
    // What the person held stays held but for the opened part, wherever it borders.
    return line.between.includes(one) || line.between.includes(other) || (isOpened(line) && isHeld(line));
  });
  const openedIds = [...opened].map((cut) => cut?.heldId);
  const stays = job.heldCuts.filter(({ id }) => !openedIds.includes(id));
  return whole
    .flatMap((cut) =>
      partsOf(
        cut,
        lines.filter((line) => wholeOf(line) === cut),
        planned,
      ),
    )
    .reduce((done: readonly HeldCut[], part) => withPart(done, part, makeId), stays);
}

/** A held cut as it will stand, and the whole cut it is a part of. */
interface HeldPart extends Omit<HeldCut, 'id'> {
  readonly cut: WholeCut;
}

/** Lines of one cut that follow on one another, over a bed too, are held as one line. */
function partsOf(
  cut: WholeCut,
  lines: readonly CutLine[],
  { treatedOf }: PlannedSections,
): readonly HeldPart[] {
  const inOrder = lines
    .map(({ from, to }) =>
      distanceM(cut.from, from) <= distanceM(cut.from, to) ? { from, to } : { from: to, to: from },
    )
    .toSorted((a, b) => distanceM(cut.from, a.from) - distanceM(cut.from, b.from));
  const parts: HeldPart[] = [];
  for (const { from, to } of inOrder) {
    const last = parts.at(-1);
    const gap = last && { xM: (last.to.xM + from.xM) / 2, yM: (last.to.yM + from.yM) / 2 };
    const follows =
      last !== undefined &&
      gap !== undefined &&
      (distanceM(last.to, from) <= MEET_M ||
        !treatedOf(cut.zoneId).some((region) => regionContains(region, gap)));
    if (follows) parts[parts.length - 1] = { ...last, to };
    else parts.push({ zoneId: cut.zoneId, from, to, cut });
  }
  return parts;
}

function withPart(
  held: readonly HeldCut[],
  { zoneId, from, to, cut }: HeldPart,
  makeId: () => string,
): readonly HeldCut[] {
  const isThere = held.some((each) => isSameLine(each, { from, to }) || each.id === cut.heldId);
  return isThere ? held : [...held, { id: makeId(), zoneId, from, to }];
}

/** Made as the plan will make them, the held cuts must leave the two sections as one part. */
function findProblem(
  job: Job,
  [first, second]: readonly [Section, Section],
  treated: readonly Region[],
  thing: string,
): Problem | undefined {
  const own = job.heldCuts.filter(({ zoneId }) => zoneId === first.zoneId);
  const within = interiorPoint(first.region);
  const part = partByHeldCuts(treated, own).parts.find((region) => regionContains(region, within));
  const togetherM2 = first.areaM2 + second.areaM2;
  const isOne =
    part !== undefined &&
    regionContains(part, interiorPoint(second.region)) &&
    Math.abs(regionAreaM2(part) - togetherM2) <= SAME_PART * togetherM2;
  return isOne ? undefined : { kind: 'plan/join-not-straight', where: { thing }, facts: {} };
}
