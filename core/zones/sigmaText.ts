import type { OwnPoint } from '../curves/index.ts';
import {
  areaFigure,
  areaUnitM2,
  formatAreaSigma,
  formatNumber,
  formatSignificant,
  lengthFigure,
  lengthUnitM,
  type UnitSystem,
} from '../units/index.ts';
import type { SigmaPart, SigmaWorking, Tightener } from './sigmaWorking.ts';
import { someNames } from './someNames.ts';

/** The ± as a table: what it comes from, how sure that is, what it makes. The first row is the heads. */
export function sigmaTable(
  { parts, sigmaM2 }: SigmaWorking,
  units: UnitSystem,
): readonly (readonly string[])[] {
  if (sigmaM2 === null) return [];
  const area = areaFigure(0, units).unit;
  return [
    ['± from', 'points', 'each ±', `makes ± ${area}`, 'of its square'],
    ...parts.map((part) => [
      partWords(part),
      part.kind === 'points' ? formatNumber(part.points, 0) : '',
      part.kind === 'points' ? pointText(part.sigmaM, units) : `${formatSignificant(100 * part.sigma, 2)}%`,
      areaText(part.makesM2, units),
      percentText(part.share),
    ]),
    ['together', '', '', areaText(sigmaM2, units), ''],
  ];
}

/** What the ± holds and what it does not, in lines. */
export function sigmaWords(sigma: SigmaWorking, units: UnitSystem): readonly string[] {
  const { sigmaM2, sharedPoints, unstated, unstatedScales } = sigma;
  const missing =
    unstated.length === 0
      ? []
      : [`± not stated: nothing says how well the corners of ${someNames(unstated)} were placed`];
  const method =
    sigmaM2 === null
      ? []
      : [
          'one standard deviation, first order: each point moves the area by what the edges at it sweep; the squares of what each makes add up to the square of the whole',
        ];
  const shown = sigmaM2 === null ? [] : [`shown ${formatAreaSigma(sigmaM2, units)}`];
  const shared =
    sharedPoints === 0 || sigmaM2 === null
      ? []
      : [
          `${sharedPoints === 1 ? '1 point stands' : `${sharedPoints} points stand`} on more than one outline and ${sharedPoints === 1 ? 'counts' : 'count'} once, as the surest says`,
        ];
  const scales = unstatedScales.map(
    (name) => `the scale of ${name} has no ± of its own stated: what it may be off by is not in this ±`,
  );
  return [...missing, ...method, ...shared, ...shown, ...scales];
}

/** What would tighten the ± most, in one line. */
export function tightenWords(tightener: Tightener, units: UnitSystem): string {
  const makes = `${percentText(tightener.share)} of this ±`;
  const would = `it would be ${formatAreaSigma(tightener.sigmaWithoutM2, units)}`;
  switch (tightener.kind) {
    case 'point': {
      const { point, ring, name } = tightener;
      const of = ring === 0 ? name : `hole ${ring} of ${name}`;
      return `${pointWords(point)} of ${of} makes ${makes}: measured exactly ${would}.`;
    }
    case 'outline':
      return `No corner stands out. The ${tightener.points} of ${tightener.name} together make ${makes}: measured exactly ${would}.`;
    case 'scale':
      return tightener.isByLengths
        ? `The scale of ${tightener.pictureName} makes ${makes}: longer known lengths that agree would help. Known exactly ${would}.`
        : `The scale of ${tightener.pictureName} makes ${makes}: known exactly ${would}.`;
  }
}

function pointWords(point: OwnPoint): string {
  switch (point.kind) {
    case 'corner':
      return `Corner ${point.at + 1}`;
    case 'via':
      return `The arc after corner ${point.of + 1}`;
    case 'centre':
      return 'The middle';
    case 'rim':
      return 'The radius';
    case 'length-end':
      return 'The length';
    case 'width-end':
      return 'The width';
  }
}

function partWords(part: SigmaPart): string {
  if (part.kind === 'scale') return `scale of ${part.pictureName}`;
  switch (part.by) {
    case 'outline':
      return `${part.name}, as stated for it`;
    case 'picture':
      return `${part.name}, as stated for ${part.pictureName}`;
    case 'pixel':
      return `${part.name}, one pixel of ${part.pictureName}`;
    case 'yard':
      return `${part.name}, as the yard says`;
  }
}

/** How sure a point is, in the person's length unit: "0.16 ft". */
function pointText(sigmaM: number, units: UnitSystem): string {
  return `${formatSignificant(sigmaM / lengthUnitM(units), 2)} ${lengthFigure(0, units).unit}`;
}

function areaText(sigmaM2: number, units: UnitSystem): string {
  return formatNumber(sigmaM2 / areaUnitM2(units), 2);
}

function percentText(share: number): string {
  return `${formatNumber(100 * share, 0)}%`;
}
