import type { OwnedBy, Problem } from './problems.ts';
import { Defect } from './result.ts';
import {
  formatArea,
  formatCarrier,
  formatLength,
  formatNumber,
  formatPercent,
  formatRate,
  formatSignificant,
  type UnitSystem,
} from './units/index.ts';

/** What is wrong and what mends it, each one or two whole sentences. */
export interface ProblemText {
  readonly what: string;
  readonly mend: string;
}

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
  switch (problem.kind) {
    case 'shape/self-crossing':
      return say(
        `The edge of ${problem.where.name} crosses itself.`,
        'Move a corner so that the edge does not cross; the crossing is marked on the map.',
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
        `${problem.where.name} stretches the yard to ${formatLength(problem.facts.extentM, units)} across, more than a yard can be.`,
        'Check its scale and its coordinates.',
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

    case 'value/not-a-number':
      return say(
        `${atStart(problem.where.field)}: “${problem.facts.typed}” cannot be read as a number.`,
        'Type a number such as 43.3, with a point before the decimals.',
      );
    case 'value/not-a-date':
      return say(
        `${atStart(problem.where.field)}: “${problem.facts.typed}” is not a date.`,
        'Type the year, month and day, such as 2026-05-12.',
      );
    case 'value/missing-unit':
      return say(
        `${atStart(problem.where.field)}: “${problem.facts.typed}” has no unit.`,
        `Add the unit, for example ${problem.facts.expected}.`,
      );
    case 'value/unknown-unit':
      return say(
        `${atStart(problem.where.field)}: “${problem.facts.typed}” has a unit that does not fit here.`,
        `Give it in a unit such as ${problem.facts.expected}.`,
      );
    case 'value/out-of-range':
      return say(
        `${atStart(problem.where.field)} is out of range.`,
        `Give a value from ${problem.facts.least} to ${problem.facts.most} ${problem.facts.unit}.`,
      );
    case 'value/not-positive':
      return say(`${atStart(problem.where.field)} must be more than zero.`, 'Give a value above zero.');
    case 'value/no-scale':
      return say(
        `${atStart(problem.where.field)} has no scale yet, so nothing on it has a size.`,
        'Give one known length on the picture first.',
      );
    case 'value/rate-over-label':
      return say(
        `${atStart(problem.where.field)}: ${formatRate(problem.facts.rateLPerM2, units)} is over the label limit of ${formatRate(problem.facts.mostRateLPerM2, units)} for one application.`,
        'Lower the rate to the label limit or below.',
      );
    case 'value/carrier-under-label':
      return say(
        `${atStart(problem.where.field)}: ${formatCarrier(problem.facts.carrierLPerM2, units)} is under the ${formatCarrier(problem.facts.leastCarrierLPerM2, units)} the label asks for.`,
        'Raise the carrier volume: walk slower, or use a larger nozzle and calibrate again.',
      );
    case 'value/rate-over-carrier':
      return say(
        `${atStart(problem.where.field)}: the whole mix of ${formatCarrier(problem.facts.carrierLPerM2, units)} is less than the product alone, ${formatRate(problem.facts.rateLPerM2, units)}.`,
        'Check both numbers and their units.',
      );
    case 'value/carrier-unusual':
      return say(
        `${atStart(problem.where.field)}: ${formatCarrier(problem.facts.carrierLPerM2, units)} is outside the usual ${formatCarrier(problem.facts.leastLPerM2, units)} to ${formatCarrier(problem.facts.mostLPerM2, units)}.`,
        'Check the number and its unit; leave it if the applicator was calibrated to it.',
      );
    case 'value/too-steep':
      return say(
        `${atStart(problem.where.field)}: ${Number.isFinite(problem.facts.grade) ? `${formatPercent(problem.facts.grade)} is` : 'that is'} steeper than turf can lie.`,
        `Give the rise first, then the level run, such as 8 ft in 40 ft; up to ${formatPercent(problem.facts.mostGrade)} is taken.`,
      );
    case 'value/scale-does-not-fit':
      return say(
        `${atStart(problem.where.field)}: the yard does not fit the paper at 1:${problem.facts.scale}.`,
        `Take 1:${problem.facts.fittingScale} or a smaller scale, larger paper, or let the scale be picked.`,
      );
    case 'value/too-few':
      return say(
        `${atStart(problem.where.field)}: there ${problem.facts.found === 1 ? 'is' : 'are'} ${formatNumber(problem.facts.found, 0)}; at least ${formatNumber(problem.facts.least, 0)} are needed.`,
        'Measure and type the others.',
      );
    case 'value/counts-differ':
      return say(
        `${atStart(problem.where.field)}: there ${problem.facts.found === 1 ? 'is' : 'are'} ${formatNumber(problem.facts.found, 0)} where ${formatNumber(problem.facts.expected, 0)} ${problem.facts.expected === 1 ? 'belongs' : 'belong'}.`,
        'Type one for all, or one between each two offsets.',
      );
    case 'value/tapes-do-not-meet':
      return say(
        `${atStart(problem.where.field)}: lengths of ${formatLength(problem.facts.firstM, units)} and ${formatLength(problem.facts.secondM, units)} do not meet off the line between ends ${formatLength(problem.facts.apartM, units)} apart.`,
        'Measure again: each of the three must be shorter than the other two together.',
      );
    case 'value/tapes-cross-flat':
      return say(
        `${atStart(problem.where.field)}: they cross so flat that an error of one moves the point ${formatNumber(problem.facts.timesError, 1)} times as far.`,
        'Pull them from landmarks where they cross between 30° and 150°, best near 90°.',
      );
    case 'value/nothing-to-hold':
      return say(
        `${atStart(problem.where.field)} cannot be held there: bare ground is not found again.`,
        'Point at a corner, a mark or an edge.',
      );
    case 'value/radius-below-half-chord':
      return say(
        `${atStart(problem.where.field)}: no arc of ${formatLength(problem.facts.radiusM, units)} reaches from corner to corner; the least is ${formatLength(problem.facts.leastM, units)}, half the way between them.`,
        'Type a longer radius, or move the corners closer together.',
      );
    case 'value/behind-baseline':
      return say(
        `${atStart(problem.where.field)} of ${formatLength(problem.facts.offsetM, units)} lies behind the baseline.`,
        'Lay the baseline so that all of the edge is on its left, or draw the rest from another baseline.',
      );
    case 'value/closes-badly':
      return say(
        `${atStart(problem.where.field)}: they end ${formatLength(problem.facts.misclosureM, units)} from where they began, a precision of only 1:${formatNumber(problem.facts.oneIn, 0)}.`,
        'Look for a leg that was misread or left out; the last leg must lead back to the start.',
      );
    case 'value/lengths-disagree':
      return say(
        `${atStart(problem.where.field)}: a length measured as ${formatLength(problem.facts.lengthM, units)} comes to ${formatLength(problem.facts.byOthersM, units)} by the others, ${moreOrLess(problem.facts.byOthersM / problem.facts.lengthM)}.`,
        'Measure it again, or take the wrong one away.',
      );
    case 'value/not-a-place':
      return say(
        `${atStart(problem.where.field)}: “${problem.facts.typed}” is not a place on earth.`,
        'Type latitude, longitude such as 39.9, -86.2 or 39°54′N 86°12′W, or a code with east and north: EPSG:2965 186000 1650000.',
      );
    case 'value/place-out-of-range':
      return say(
        `${atStart(problem.where.field)} is beyond the ends of the earth: latitudes run from -90 to 90, longitudes from -180 to 180.`,
        problem.facts.swappedLikely
          ? 'Give latitude first; the two look swapped.'
          : 'Check the degrees, minutes and seconds.',
      );
    case 'value/unknown-crs':
      return say(
        `${atStart(problem.where.field)}: Platpace does not know the coordinate system ${problem.facts.crs}.`,
        'Check the code, or type latitude and longitude.',
      );
    case 'value/place-outside-crs':
      return say(
        `${atStart(problem.where.field)}: these coordinates lie nowhere in ${problem.facts.crs}.`,
        'East comes first, then north, in the units of that system; check its code.',
      );
    case 'value/places-coincide':
      return say(
        `${atStart(problem.where.field)}: all the points are one and the same, so nothing says how the yard is turned.`,
        'Give two points far apart.',
      );
    case 'value/scale-misfit':
      return say(
        `${atStart(problem.where.field)}: the points on earth are ${moreOrLess(problem.facts.ratio, 'farther apart', 'closer together')} than the yard says.`,
        'Check the scale and the typed places; placing a yard never scales it.',
      );
    case 'value/missing':
      return say(`${atStart(problem.where.field)} is missing.`, 'Fill it in or choose it.');

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
    case 'plan/cancelled':
      return say(`Planning of ${problem.where.thing} was stopped.`, 'Start the plan again when ready.');

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
        'Say where the yard lies, under “Its place” on the Ground page, and bring it in then.',
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

function say(what: string, mend: string): ProblemText {
  return { what, mend };
}

/** Reached only by a kind the type does not know; a new kind without words does not compile. */
function unsaid(problem: never): never {
  throw new Defect(`no words for ${JSON.stringify(problem)}`);
}

/** A field's name is written as it stands on its ruled line; a sentence begins with a capital. */
function atStart(field: string): string {
  return field.charAt(0).toUpperCase() + field.slice(1);
}

function counted(count: number, noun: string): string {
  return `${formatNumber(count, 0)} ${noun}${count === 1 ? '' : 's'}`;
}

/** "17% more", "0.25% less": how far a ratio is from 1. */
function moreOrLess(ratio: number, more = 'more', less = 'less'): string {
  return `${formatSignificant(Math.abs(ratio - 1) * 100, 2)}% ${ratio < 1 ? less : more}`;
}

function lengthOrNone(lengthM: number, units: UnitSystem): string {
  return Number.isFinite(lengthM) ? formatLength(lengthM, units) : 'no number';
}

function megabytes(bytes: number): string {
  return `${formatNumber(bytes / 1_000_000, 1)} MB`;
}
