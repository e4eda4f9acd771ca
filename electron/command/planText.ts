import {
  counted,
  formatAngle,
  formatArea,
  formatLength,
  formatPercent,
  formatTime,
  formatVolume,
} from '../../core/units/index.ts';
import { coverageFigures, sheetFigures } from '../../core/sheet/index.ts';
import type { HoseReach } from '../../core/hose/index.ts';
import type { MadePlan } from './makePlan.ts';
import { tableText } from './tableText.ts';

/**
 * A plan in a few lines for a terminal: the sections, their sum, the ground covered and the hose. Areas, amounts and
 * coverage are the figures of screen and sheet, which add up.
 */
export function planText({ yard, plan, hasMix }: MadePlan, hose: HoseReach | undefined): string {
  const units = yard.details.unitSystem;
  const { ground } = plan;
  const { loads, zoneSum, productUnit, carrierUnit, productTotalL, carrierTotalL } = sheetFigures(
    plan,
    units,
  );
  const beyond = new Map(hose?.sections.map((section) => [section.id, section]));
  const product = (volumeL: number): string => formatVolume(volumeL, units, productUnit);
  const carrier = (volumeL: number): string => formatVolume(volumeL, units, carrierUnit);
  const loadNumbers = new Map(
    ground.loads.flatMap(({ number, sectionIds }) => sectionIds.map((id) => [id, number] as const)),
  );
  const rows = ground.sections.map((section) => {
    const figures = ground.sectionFigures.find((each) => each.sectionId === section.id);
    const load = loads.find((each) => each.section === section);
    const reach = beyond.get(section.id);
    return [
      section.id,
      String(loadNumbers.get(section.id) ?? ''),
      section.zoneName,
      formatArea(load?.areaM2 ?? section.areaM2, units),
      String(figures?.passes ?? 0),
      formatLength((figures?.onLengthM ?? 0) + (figures?.offLengthM ?? 0), units),
      formatTime(figures?.timeS ?? 0),
      formatAngle(Math.round(figures?.headingDeg ?? 0)),
      ...(hasMix ? [product(load?.productL ?? 0), carrier(load?.carrierL ?? 0)] : []),
      ...(reach === undefined
        ? []
        : [`${formatLength(reach.neededM, units)}${reach.isBeyond ? ' beyond' : ''}`]),
    ];
  });
  const coverage = coverageFigures(plan, zoneSum.treatedM2, units);
  const total = [
    'total',
    counted(ground.loads.length, 'load'),
    '',
    formatArea(zoneSum.treatedM2, units),
    String(ground.passes.length),
    formatLength(ground.onLengthM + ground.offLengthM, units),
    formatTime(ground.timeS),
    '',
    ...(hasMix ? [product(productTotalL), carrier(carrierTotalL)] : []),
    ...(hose === undefined ? [] : ['']),
  ];
  const head = [
    'section',
    'load',
    'zone',
    'treated',
    'passes',
    'walk',
    'time',
    'lanes',
    ...(hasMix ? ['product', 'carrier'] : []),
    ...(hose === undefined ? [] : ['hose needed']),
  ];
  const covered = [
    `once ${formatPercent(coverage.once.share)}`,
    `twice ${formatPercent(coverage.twice.share)}`,
    `missed ${formatPercent(coverage.missed.share)}`,
    `outside ${formatPercent(coverage.outside.share)}`,
  ].join(', ');
  const hoseLine =
    hose === undefined
      ? ''
      : `hose: from ${hose.spigot}, round buildings to the farthest place of the passes\n`;
  const roundsLine =
    ground.request.rounds === 2 ? 'walked twice at half the rate, the second time square to the first\n' : '';
  return `${tableText(head, [...rows, total])}covered: ${covered}\n${roundsLine}${hoseLine}`;
}
