import {
  counted,
  formatAngle,
  formatArea,
  formatEnough,
  formatLength,
  lengthFigure,
  formatPercent,
  formatTime,
  formatVolume,
} from '../../core/units/index.ts';
import {
  coveredWords,
  coverageFigures,
  loadUseWords,
  outsideWords,
  sheetFigures,
  walkFigures,
  walkText,
} from '../../core/sheet/index.ts';
import type { HosePlan, SectionHose } from '../../core/hose/index.ts';
import { type GroundPlan, loadUses } from '../../core/plan/index.ts';
import type { UnitSystem } from '../../core/yard.ts';
import type { MadePlan } from './makePlan.ts';
import { tableText } from './tableText.ts';

/**
 * A plan in a few lines for a terminal: the sections, their sum, the ground covered, the hose and the flags. Areas, amounts and
 * coverage are the figures of screen and sheet, which add up.
 */
export function planText({ yard, plan, hasMix }: MadePlan): string {
  const units = yard.details.unitSystem;
  const { ground } = plan;
  const { loads, zoneSum, productUnit, carrierUnit, productTotalL, carrierTotalL } = sheetFigures(
    plan,
    units,
  );
  const { hose } = ground;
  const hosed = new Map(hose?.sections.map((section) => [section.sectionId, section]));
  const product = (volumeL: number): string => formatVolume(volumeL, units, productUnit);
  const carrier = (volumeL: number): string => formatVolume(volumeL, units, carrierUnit);
  const loadNumbers = new Map(
    ground.loads.flatMap(({ number, sectionIds }) => sectionIds.map((id) => [id, number] as const)),
  );
  const walks = walkFigures(ground, units);
  const walked = (lengthM: number): string => `${walkText(lengthM, units)} ${lengthFigure(0, units).unit}`;
  const rows = ground.sections.map((section) => {
    const figures = ground.sectionFigures.find((each) => each.sectionId === section.id);
    const covered = ground.coverage.sections.find(({ sectionId }) => sectionId === section.id);
    const load = loads.find((each) => each.section === section);
    const walk = walks.bySection.get(section.id);
    const own = hosed.get(section.id);
    return [
      section.id,
      String(loadNumbers.get(section.id) ?? ''),
      section.zoneName,
      formatArea(load?.areaM2 ?? section.areaM2, units),
      String(figures?.passes ?? 0),
      walked(walk?.walkM ?? 0),
      walked(walk?.wetM ?? 0),
      formatTime(figures?.timeS ?? 0),
      formatAngle(Math.round(figures?.headingDeg ?? 0)),
      formatPercent(covered === undefined ? 0 : covered.twiceM2 / covered.treatedM2),
      formatPercent(covered === undefined ? 0 : covered.missedM2 / covered.treatedM2),
      ...(hasMix ? [product(load?.productL ?? 0), carrier(load?.carrierL ?? 0)] : []),
      ...(own === undefined ? [] : [hoseWords(own, units)]),
    ];
  });
  const coverage = coverageFigures(ground.coverage, zoneSum.treatedM2, units);
  const total = [
    'total',
    counted(ground.loads.length, 'load'),
    '',
    formatArea(zoneSum.treatedM2, units),
    String(ground.passes.length),
    walked(walks.all.walkM),
    walked(walks.all.wetM),
    formatTime(ground.timeS),
    '',
    formatPercent(coverage.twice.share),
    formatPercent(coverage.missed.share),
    ...(hasMix ? [product(productTotalL), carrier(carrierTotalL)] : []),
    ...(hose === null ? [] : ['']),
  ];
  const head = [
    'section',
    'load',
    'zone',
    'treated',
    'passes',
    'walk',
    'over treated',
    'time',
    'lanes',
    'twice',
    'missed',
    ...(hasMix ? ['product', 'carrier'] : []),
    ...(hose === null ? [] : ['hose needed']),
  ];
  const { rounds } = ground.request;
  const words = coveredWords(rounds);
  const covered = (['once', 'short', 'twice', 'missed'] as const)
    .flatMap((part) =>
      coverage[part] === null ? [] : `${words[part]} ${formatPercent(coverage[part].share)}`,
    )
    .join(', ');
  const onto = outsideWords(coverage, units);
  const outside = `outside ${formatPercent(coverage.outside.share)}${onto === '' ? '' : ` (${onto})`}`;
  const use = loadUseWords(loadUses(ground), units);
  const useLine = use === null ? '' : `${use.text}\n`;
  const hoseLine = hose === null ? '' : hoseSumWords(ground, hose, units);
  const roundsLine =
    rounds === 2 ? 'walked twice at half the rate, the second time square to the first\n' : '';
  return `${tableText(head, [...rows, total])}covered: ${covered}, ${outside}\n${useLine}${roundsLine}${hoseLine}`;
}

function hoseWords({ neededM, isBeyond }: SectionHose, units: UnitSystem): string {
  if (neededM === null) return 'no way';
  return `${formatEnough(neededM, units)}${isBeyond ? ' beyond' : ''}`;
}

/** From where, how long a hose does it all, and what of it lies on turf treated before. */
function hoseSumWords({ request }: GroundPlan, hose: HosePlan, units: UnitSystem): string {
  const from = request.hose?.spigots.map(({ name }) => name).join(', ') ?? '';
  if (from === '') return 'hose: no spigot to start from\n';
  const shortest =
    hose.shortestHoseM === null
      ? 'no hose gets everywhere'
      : `${formatEnough(hose.shortestHoseM, units)} get everywhere`;
  return `hose: from ${from}; ${shortest}; ${formatLength(hose.overWetM, units)} over turf treated before\n`;
}
