import type { OwnedBy, Problem } from './problems.ts';
import { lengthOrNone, type ProblemText, say } from './problemText/sentences.ts';
import { hoseText, isHoseTrouble } from './problemText/hoseText.ts';
import { isValueTrouble, valueText } from './problemText/valueText.ts';
import { Defect } from './result.ts';
import {
  counted,
  formatArea,
  formatLength,
  formatNumber,
  formatPercent,
  type UnitSystem,
} from './units/index.ts';

export type { ProblemText };

/** Why shared ground is its owner's. */
export const OWNED_BY_WORDS: Readonly<Record<OwnedBy, string>> = {
  'drawn-first': 'drawn first',
  'drawn-last': 'drawn last',
  smaller: 'the smaller',
  larger: 'the larger',
  claimed: 'which was given it',
};

/** The words for a problem, with its numbers in the person's units. Complete by type. */
export function problemText(problem: Problem, units: UnitSystem): ProblemText {
  if (isValueTrouble(problem)) return valueText(problem, units);
  if (isHoseTrouble(problem)) return hoseText(problem, units);
  switch (problem.kind) {
    case 'shape/self-crossing':
      return say(
        `The edge of ${problem.where.name} crosses itself.`,
        'Move a corner so that the edge does not cross; the crossing is marked on the map.',
      );
    case 'shape/not-uncrossed':
      return say(
        `The edge of ${problem.where.name} cannot be mended by turning a stretch of it round.`,
        'Move the corner at the marked place: the edge touches itself there, or a curve crosses.',
      );
    case 'shape/too-few-points':
      return say(
        `${problem.where.name} has ${counted(problem.facts.points, 'corner')}; an outline needs at least 3.`,
        'Add corners, or remove the outline.',
      );
    case 'shape/zero-area':
      return say(
        `${problem.where.name} encloses no ground: its corners lie on one line.`,
        'Move a corner off the line, or remove the outline.',
      );
    case 'shape/not-finite':
      return say(
        `A corner of ${problem.where.name} has no usable position.`,
        'Remove that corner and place it again.',
      );
    case 'shape/no-size':
      return say(
        `The ${problem.facts.size} of ${problem.where.name} is not a length above zero.`,
        'Give it one, or remove the outline.',
      );
    case 'shape/cut-out-outside':
      return say(
        `${problem.where.name} lies outside every zone, so it takes nothing away.`,
        'Move it into a zone, or leave it if it is only drawn for the map.',
      );
    case 'shape/covered-whole':
      return say(
        `${problem.where.name} is covered whole; nothing of it is left to treat.`,
        'Make what covers it smaller, or leave the zone out of the job.',
      );
    case 'shape/overlaps':
      return say(
        `${problem.where.name} and ${problem.facts.ownerName} share ${formatArea(problem.facts.overlapM2, units)}; it counts once, for ${problem.facts.ownerName}, ${OWNED_BY_WORDS[problem.facts.by]}.`,
        'Give it to the other, choose the yard’s rule, or move the border between them.',
      );
    case 'shape/keep-off-width':
      return say(
        `The width kept off along ${problem.where.name} cannot be ${lengthOrNone(problem.facts.widthM, units)}.`,
        `Give a width from nothing to ${formatLength(problem.facts.mostM, units)}, or take it away.`,
      );
    case 'shape/too-large':
      return say(
        `${problem.where.name} stretches the yard to ${lengthOrNone(problem.facts.extentM, units)} across, more than a yard can be.`,
        'Check its scale and its coordinates.',
      );
    case 'shape/no-grade':
      return say(
        `${problem.where.name} has a slope that ground cannot have.`,
        `Give a slope from level to ${formatPercent(problem.facts.mostGrade)}, or take it away.`,
      );
    case 'shape/steep':
      return say(
        `${problem.where.name} is steeper than 33% on ${formatArea(problem.facts.steepM2, units)}, up to ${formatPercent(problem.facts.steepestGrade)}.`,
        'Mowing or spraying such ground on foot is dangerous (common practice): leave it out, or work it from level ground.',
      );
    case 'shape/heights-missing':
      return say(
        `No heights are known for ${formatArea(problem.facts.missingM2, units)} of ${problem.where.name}; it counts as level.`,
        'Bring in an elevation grid that covers it, or state its slope.',
      );

    case 'plan/load-below-one-swath-square':
      return say(
        `${problem.where.thing}: one load covers only ${formatArea(problem.facts.capacityM2, units)}, less than a square of one swath (${formatLength(problem.facts.swathM, units)}).`,
        'Check the rate, the carrier volume and the capacity of the applicator.',
      );
    case 'plan/swath-wider-than-zone':
      return say(
        `${problem.where.thing} is narrower than the swath of ${formatLength(problem.facts.swathM, units)}.`,
        'Use a narrower swath there, or treat it by hand: what no pass fits is marked as missed.',
      );
    case 'plan/too-narrow-to-walk':
      return say(
        `${problem.where.thing} has ${problem.facts.areaM2 < 0.1 ? 'a neck' : formatArea(problem.facts.areaM2, units)} too narrow to walk: under ${formatLength(problem.facts.widthM, units)}, half the swath.`,
        'Treat it by hand, or take it out of the outline; what no pass reaches is marked as missed.',
      );
    case 'plan/nothing-to-treat':
      return say(
        `${problem.where.thing} has no ground to treat.`,
        'Outline a zone, or choose zones that are not covered whole.',
      );
    case 'plan/too-many-sections':
      return say(
        `${problem.where.thing} would need ${counted(problem.facts.sections, 'section')}; at most ${formatNumber(problem.facts.most, 0)} can be planned.`,
        'Use a larger load, or plan fewer zones in one job.',
      );
    case 'plan/no-connected-cut':
      return say(
        `No straight cuts were found that part ${problem.where.thing} into ${counted(problem.facts.sections, 'connected section')}.`,
        'Draw it as two zones, or change what one load covers.',
      );
    case 'plan/held-cut-parts-nothing':
      return problem.facts.isZoneGone
        ? say('A cut line you keep belongs to a zone that is gone.', 'Let it go.')
        : say(
            `Cut line ${problem.facts.place} of those you keep in ${problem.where.thing} does not part its ground any more.`,
            'Drag it onto the ground, or let it go.',
          );
    case 'plan/cancelled':
      return say(`Planning of ${problem.where.thing} was stopped.`, 'Start the plan again when ready.');
    case 'plan/sections-apart':
      return say(
        `${problem.where.thing} do not border each other.`,
        'Choose two sections with a cut between.',
      );
    case 'plan/join-over-load':
      return say(
        `${problem.where.thing} have ${formatArea(problem.facts.togetherM2, units)} together; one load covers ${formatArea(problem.facts.loadAreaM2, units)}.`,
        'Drag a cut so that they have less, or change what one load covers.',
      );
    case 'plan/join-not-straight':
      return say(
        `The cuts round ${problem.where.thing} are not in line with each other, so none can go from edge to edge.`,
        'Drag them in line first, or let them go.',
      );
    case 'plan/cut-off-edge':
      return say(`${problem.where.thing} is not on the edge of the ground.`, 'Point at the edge.');
    case 'plan/cut-parts-nothing':
      return say(
        `That line does not part ${problem.where.thing} in two.`,
        'Draw it over the ground, from one edge to another.',
      );

    case 'compare/only-one-placed':
      return say(
        `${problem.facts.looseName}, the ${problem.facts.looseIs} state, has no place on earth and the other has one, so neither can be laid over the other.`,
        'Place the loose yard first, or compare it with a state that is loose too.',
      );
    case 'compare/too-far-apart':
      return say(
        `The two yards lie ${formatLength(problem.facts.apartM, units)} apart: they are not two states of one ground.`,
        'Choose a file of the same yard.',
      );
    case 'file/not-found':
      return say(
        `${problem.where.fileName} is not there.`,
        'Check its name and folder, or choose another file.',
      );
    case 'file/not-a-yard':
      return say(
        `${problem.where.fileName} is not a yard file: ${problem.facts.found}.`,
        'Choose a yard file, or start a new yard and bring this file into it.',
      );
    case 'file/newer-version':
      return say(
        `${problem.where.fileName} was written by a newer Platpace (file version ${problem.facts.fileVersion}; this one reads up to ${problem.facts.ourVersion}). It was left untouched.`,
        'Open it with the newer Platpace.',
      );
    case 'file/damaged':
      return say(
        `${problem.where.fileName} is damaged: ${problem.facts.detail}.`,
        'Keep it as it is and open a copy made earlier.',
      );
    case 'file/locked':
      return say(
        `${problem.where.fileName} is open in another window or program.`,
        'Close it there and try again, or open it read only.',
      );
    case 'file/read-only':
      return say(
        `${problem.where.fileName} cannot be changed: it is open read only.`,
        'Save a copy somewhere you may write, and work in the copy.',
      );
    case 'file/disk-full':
      return say(
        `There is no room on the disk to write ${problem.where.fileName}. What was saved before is intact.`,
        'Free some space and make the change again.',
      );
    case 'file/exists':
      return say(
        `${problem.where.fileName} is there already and was not overwritten.`,
        'Choose another name.',
      );
    case 'file/too-large':
      return say(
        `${problem.where.fileName} has ${megabytes(problem.facts.bytes)}; at most ${megabytes(problem.facts.mostBytes)} can be read.`,
        'Cut it down to the yard, or save it at a lower resolution.',
      );
    case 'file/too-many-pixels':
      return say(
        `${problem.where.fileName} is ${formatNumber(problem.facts.widthPx, 0)} by ${formatNumber(problem.facts.heightPx, 0)} pixels; at most ${formatNumber(problem.facts.mostPx / 1_000_000, 0)} million pixels can be shown.`,
        'Cut it down to the yard, or save it at a lower resolution.',
      );
    case 'file/yard-has-no-place':
      return say(
        `${problem.where.fileName} is in longitude and latitude, and this yard has no place on earth.`,
        'Say where the yard lies, under “Its place” on the Ground page, first.',
      );
    case 'file/heights-alone':
      return say(
        `${problem.where.fileName} holds heights of the ground, which are kept for the outlines of a yard.`,
        'Open a yard that is placed on earth and has its zones drawn, then bring it in on the Ground page. A grey picture is taken as one when it is saved with 8 bits.',
      );
    case 'file/heights-elsewhere':
      return say(
        `${problem.where.fileName} has no heights near the outlines of this yard.`,
        'Take the elevation grid of the place the yard lies in, and check that its no-data value is set.',
      );
    case 'file/too-many-heights':
      return say(
        `${problem.where.fileName} has ${formatNumber(problem.facts.heights, 0)} heights over this yard; ${formatNumber(problem.facts.most, 0)} can be kept.`,
        'Resample it to a coarser grid, such as 1 m, and bring it in again.',
      );
    case 'file/unknown-kind':
      return say(
        `${problem.where.fileName} holds something Platpace does not read: ${problem.facts.found}.`,
        'Save it as PNG, JPEG, WebP, GeoTIFF or GeoJSON and bring that in.',
      );
    case 'file/unreadable':
      return say(
        `${problem.where.fileName} cannot be read: ${problem.facts.detail}.`,
        'Check that the file is whole, or save it again where it came from.',
      );
    case 'file/no-georeference':
      return say(
        `${problem.where.fileName} does not say where on earth it is.`,
        'Save it as PNG or JPEG, bring that in as a plain picture and give one known length on it.',
      );
    case 'file/unknown-crs':
      return say(
        `${problem.where.fileName} uses a coordinate system Platpace does not know: ${problem.facts.crs}.`,
        'Save it in WGS84 or UTM where it came from, and bring that in.',
      );
    case 'file/coordinates-out-of-range':
      return say(
        `${problem.where.fileName}: the coordinates of ${problem.facts.feature} are not where a yard can be.`,
        problem.facts.swappedLikely
          ? 'Latitude and longitude look swapped; longitude comes first in GeoJSON.'
          : 'Save the file in longitude and latitude (WGS84).',
      );
    case 'file/broken-ring':
      return say(
        `${problem.where.fileName}: the outline of ${problem.facts.feature} is broken: ${problem.facts.detail}.`,
        'Mend that outline where the file came from.',
      );
    case 'file/nothing-in-it':
      return say(
        `${problem.where.fileName} has nothing in it that can be used.`,
        'Choose a file with outlines or a picture in it.',
      );

    case 'host/bad-request':
      return say(
        `The request was refused: ${problem.facts.detail}.`,
        'Reload the window; nothing saved is lost. If it happens again, report it.',
      );
    case 'host/unknown-yard':
      return say('This yard is not open any more.', 'Open the yard file again.');
    case 'host/stale-edit':
      return say(
        'The yard was changed elsewhere since this window last read it, so the change was not made.',
        'Open the yard again and repeat the change.',
      );
    case 'host/unreachable':
      return say(
        'The part of Platpace that keeps your files does not answer.',
        'Start Platpace again; everything saved is on disk.',
      );
    case 'host/defect':
      return say(
        `Something inside Platpace broke: ${problem.facts.detail}.`,
        'What was saved before is on disk. Open the yard again; if it happens again, report it.',
      );
    default:
      return unsaid(problem);
  }
}

/** Reached only by a kind the type does not know; a new kind without words does not compile. */
function unsaid(problem: never): never {
  throw new Defect(`no words for ${JSON.stringify(problem)}`);
}

function megabytes(bytes: number): string {
  return `${formatNumber(bytes / 1_000_000, 1)} MB`;
}
