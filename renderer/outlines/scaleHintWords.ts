import type { ScaleHint } from '../../core/fieldCheck/index.ts';
import { formatPercent } from '../../core/units/index.ts';

/** What all taped distances together say of the map's scale, in a sentence or two. */
export function scaleHintWords(hint: ScaleHint): string {
  const { checks, ratio, ratioSigma, oneWay, isOff, fits, areaShare } = hint;
  const longer = ratio > 1;
  const by = formatPercent(Math.abs(ratio - 1));
  const sure = ratioSigma === null ? '' : ` (± ${formatPercent(ratioSigma)})`;
  const who = oneWay
    ? `Every one of ${checks} taped distances is ${longer ? 'longer' : 'shorter'} than the map`
    : `The ${checks} taped distances lie on both sides of the map`;
  const best = `best fit ${by} ${longer ? 'longer' : 'shorter'}${sure}`;
  if (isOff === null)
    return `${who}; ${best}. No accuracy is stated, so nobody can say whether that is much.`;
  if (fits === false)
    return `${who}, but no one scale fits them: look for a misread tape or a corner that is off.`;
  if (!isOff) return `${who}; ${best}: no sign that the scale is off.`;
  const areas = formatPercent(Math.abs(areaShare));
  return `${who}; ${best}: the map’s scale is off. The true areas would be ${areas} ${longer ? 'larger' : 'smaller'}.`;
}
