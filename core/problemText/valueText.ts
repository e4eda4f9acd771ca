import type { Problem } from '../problems.ts';
import { Defect } from '../result.ts';
import {
  formatCarrier,
  formatLength,
  formatNumber,
  formatPercent,
  formatRate,
  type UnitSystem,
} from '../units/index.ts';
import { say, atStart, moreOrLess, type ProblemText } from './sentences.ts';

/** What a person mends at a field. */
export type ValueTrouble = Extract<Problem, { readonly kind: `value/${string}` }>;

export function isValueTrouble(problem: Problem): problem is ValueTrouble {
  return problem.kind.startsWith('value/');
}

/** The words for trouble with a value. Complete by type. */
export function valueText(problem: ValueTrouble, units: UnitSystem): ProblemText {
  switch (problem.kind) {
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
        'Give it a known length on the Ground page first.',
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
    case 'value/no-such-mark': {
      const { typed, known } = problem.facts;
      return say(
        `${atStart(problem.where.field)}: no mark of this yard is called “${typed}”.`,
        known.length === 0
          ? 'Place the mark on the map first.'
          : `Give one of its marks: ${known.join(', ')}.`,
      );
    }
    case 'value/missing':
      return say(`${atStart(problem.where.field)} is missing.`, 'Fill it in or choose it.');
    default:
      return unsaid(problem);
  }
}

/** Reached only by a kind the type does not know; a new kind without words does not compile. */
function unsaid(problem: never): never {
  throw new Defect(`no words for ${JSON.stringify(problem)}`);
}
