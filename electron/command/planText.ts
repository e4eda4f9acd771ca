import {
  formatAngle,
  formatArea,
  formatLength,
  formatPercent,
  formatTime,
  formatVolume,
} from '../../core/units/index.ts';
import type { HoseReach } from '../../core/hose/index.ts';
import type { MadePlan } from './makePlan.ts';
import { tableText } from './tableText.ts';

/** A plan in a few lines for a terminal: the sections, their sum, the ground covered and the hose. */
export function planText({ yard, plan, hasMix }: MadePlan, hose: HoseReach | undefined): string {
  const units = yard.details.unitSystem;
  const { ground, mixes } = plan;
  const beyond = new Map(hose?.sections.map((section) => [section.id, section]));
  const rows = ground.sections.map((section) => {
    const figures = ground.sectionFigures.find((each) => each.sectionId === section.id);
    const mix = mixes.find((each) => each.sectionId === section.id);
    const reach = beyond.get(section.id);
    return [
      section.id,
      section.zoneName,
      formatArea(section.areaM2, units),
      String(figures?.passes ?? 0),
      formatLength((figures?.onLengthM ?? 0) + (figures?.offLengthM ?? 0), units),
      formatTime(figures?.timeS ?? 0),
      formatAngle(Math.round(figures?.headingDeg ?? 0)),
      ...(hasMix ? [amount(mix?.productL ?? 0), amount(mix?.carrierL ?? 0)] : []),
      ...(reach === undefined
        ? []
        : [`${formatLength(reach.neededM, units)}${reach.isBeyond ? ' beyond' : ''}`]),
    ];
  });
  function amount(volumeL: number): string {
    return formatVolume(volumeL, units);
  }
  const { coverage } = ground;
  const share = (areaM2: number): string => formatPercent(areaM2 / coverage.treatedM2);
  const total = [
    'total',
    '',
    formatArea(coverage.treatedM2, units),
    String(ground.passes.length),
    formatLength(ground.onLengthM + ground.offLengthM, units),
    formatTime(ground.timeS),
    '',
    ...(hasMix ? [amount(plan.productTotalL), amount(plan.carrierTotalL)] : []),
    ...(hose === undefined ? [] : ['']),
  ];
  const head = [
    'section',
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
    `once ${share(coverage.onceM2)}`,
    `twice ${share(coverage.twiceM2)}`,
    `missed ${share(coverage.missedM2)}`,
    `outside ${share(coverage.outsideM2)}`,
  ].join(', ');
  const hoseLine =
    hose === undefined
      ? ''
      : `hose: from ${hose.spigot}, round buildings to the farthest place of the passes\n`;
  return `${tableText(head, [...rows, total])}covered: ${covered}\n${hoseLine}`;
}
