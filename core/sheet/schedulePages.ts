import { AMOUNTS_BY_WORDS } from '../slope/index.ts';
import {
  areaFigure,
  areaSigmaFigure,
  formatAngle,
  formatArea,
  formatNumber,
  formatPercent,
  formatTime,
  otherUnits,
  sum,
} from '../units/index.ts';
import type { UnitSystem } from '../yard.ts';
import { unstatedWords } from '../zones/index.ts';
import { checkTables } from './checkTable.ts';
import { type CoveredGround, coverageFigures } from './coverageFigures.ts';
import { coveredWords, outsideWords } from './coverageWords.ts';
import type { LedgerCell, LedgerRow } from './ledger.ts';
import { type FlowItem, flowOverPages } from './pageFlow.ts';
import { paperPlan } from './paper.ts';
import type { DraftPage, SheetContext } from './sheetContext.ts';
import { walkFigures, walkText } from './walkFigures.ts';

const UNIT: Readonly<Record<UnitSystem, string>> = { us: 'ft²', metric: 'm²' };
const LENGTH: Readonly<Record<UnitSystem, string>> = { us: 'ft', metric: 'm' };

/** The area schedule by zone and by section, and how the passes cover the ground. */
export function schedulePages(context: SheetContext): DraftPage[] {
  const paper = paperPlan(context.paper, 'portrait');
  const schedules = [zoneSchedule(context), sectionSchedule(context), coverageSchedule(context)];
  const items = [...schedules, ...checkTables(context.yard, context.units)];
  return flowOverPages(paper.body, items).map((marks) => ({
    paper,
    title: 'Areas',
    subtitle: 'zones, sections and ground covered',
    scaleWords: '',
    marks,
  }));
}

function zoneSchedule({ units, figures, plan, yard }: SheetContext): FlowItem {
  const other = otherUnits(units);
  const { zones, zoneSum } = figures;
  const unstated = unstatedWords(zones);
  const shared = zoneSum.ownedByOtherM2 > 0;
  const slopes = plan.ground.resolved.zones.some((zone) => zone.slope !== null);
  const rowOf = (name: string, zone: Omit<typeof zoneSum, 'groundM2'>): LedgerRow => [
    name,
    areaFigure(zone.grossM2, units).text,
    areaFigure(zone.cutOutM2, units).text,
    ...(shared ? [areaFigure(zone.ownedByOtherM2, units).text] : []),
    areaFigure(zone.turfM2, units).text,
    areaFigure(zone.leftOutM2, units).text,
    withSigma(zone.treatedM2, zone.sigmaM2, units),
    ...(slopes ? [areaFigure(zone.surfaceM2, units).text] : []),
    withSigma(zone.otherTreatedM2, zone.sigmaM2, other),
  ];
  return {
    kind: 'ledger',
    title: 'Zones',
    note: [
      'gross = turf + cut-outs; turf = treated + left out; ± is one standard deviation',
      ...(unstated === undefined ? [] : [unstated]),
      ...(slopes ? [`amounts by ${AMOUNTS_BY_WORDS[yard.details.amountsBy]}`] : []),
    ].join('; '),
    ledger: {
      columns: [
        { title: 'zone', share: 2, align: 'left' },
        { title: `gross, ${UNIT[units]}`, share: 1, align: 'right' },
        { title: `cut-outs, ${UNIT[units]}`, share: 1, align: 'right' },
        ...(shared ? [{ title: `elsewhere, ${UNIT[units]}`, share: 1, align: 'right' } as const] : []),
        { title: `turf, ${UNIT[units]}`, share: 1, align: 'right' },
        { title: `left out, ${UNIT[units]}`, share: 1, align: 'right' },
        { title: `treated, ${UNIT[units]}`, share: 1.3, align: 'right' },
        ...(slopes ? [{ title: `its surface, ${UNIT[units]}`, share: 1, align: 'right' } as const] : []),
        { title: `treated, ${UNIT[other]}`, share: 1.3, align: 'right' },
      ],
      rows: zones.map((zone) => rowOf(zone.name, zone)),
      sum: rowOf('all zones', zoneSum),
    },
  };
}

function withSigma(areaM2: number, sigmaM2: number | null, units: UnitSystem): LedgerCell {
  const entry = areaFigure(areaM2, units).text;
  if (sigmaM2 === null) return { entry };
  // The unit stands in the column's head.
  return { entry, soft: areaSigmaFigure(sigmaM2, units).text };
}

function sectionSchedule({ units, figures, plan }: SheetContext): FlowItem {
  const other = otherUnits(units);
  const figuresOf = new Map(plan.ground.sectionFigures.map((entry) => [entry.sectionId, entry]));
  const walks = walkFigures(plan.ground, units);
  const rows = figures.loads.map((load): LedgerRow => {
    const own = figuresOf.get(load.section.id);
    const walk = walks.bySection.get(load.section.id);
    return [
      load.section.id,
      load.section.zoneName,
      withSigma(load.areaM2, load.areaSigmaM2, units),
      areaFigure(load.otherAreaM2, other).text,
      own === undefined ? '' : String(own.passes),
      walk === undefined ? '' : walkText(walk.onM, units),
      walk === undefined ? '' : walkText(walk.wetM, units),
      own === undefined ? '' : formatAngle(own.headingDeg),
      own === undefined ? '' : formatTime(own.timeS),
    ];
  });
  const { passes, timeS } = plan.ground;
  return {
    kind: 'ledger',
    title: 'Sections',
    note: [
      'in the order they are walked',
      figures.fills.length < figures.loads.length ? 'small ones share a load' : 'one load each',
      'over treated = walked on turf treated before',
    ].join('; '),
    ledger: {
      columns: [
        { title: 'section', share: 0.8, align: 'left' },
        { title: 'zone', share: 2, align: 'left' },
        { title: `treated, ${UNIT[units]}`, share: 1, align: 'right' },
        { title: `treated, ${UNIT[other]}`, share: 1, align: 'right' },
        { title: 'passes', share: 0.8, align: 'right' },
        { title: `spraying, ${LENGTH[units]}`, share: 1, align: 'right' },
        { title: `over treated, ${LENGTH[units]}`, share: 1, align: 'right' },
        { title: 'lanes run', share: 0.9, align: 'right' },
        { title: 'time', share: 0.8, align: 'right' },
      ],
      rows,
      sum: [
        'all',
        '',
        areaFigure(sum(figures.loads.map((load) => load.areaM2)), units).text,
        areaFigure(sum(figures.loads.map((load) => load.otherAreaM2)), other).text,
        formatNumber(passes.length, 0),
        walkText(walks.all.onM, units),
        walkText(walks.all.wetM, units),
        '',
        formatTime(timeS),
      ],
    },
  };
}

function coverageSchedule({ units, plan, figures }: SheetContext): FlowItem {
  const { treatedM2 } = figures.zoneSum;
  const { coverage, request } = plan.ground;
  const covered = coverageFigures(coverage, treatedM2, units);
  const words = coveredWords(request.rounds);
  const rowOf = (name: string, { areaM2, share }: CoveredGround): LedgerRow => [
    name,
    areaFigure(areaM2, units).text,
    formatPercent(share),
  ];
  const { outside, short } = covered;
  const onto = outsideWords(covered, units);
  return {
    kind: 'ledger',
    title: 'Ground covered',
    note: `thrown outside: ${formatArea(outside.areaM2, units)}, ${formatPercent(outside.share)} of it${onto === '' ? '' : `; ${onto}`}`,
    widthShare: 0.55,
    ledger: {
      columns: [
        { title: 'measured by laying every swath over the ground', share: 3.2, align: 'left' },
        { title: UNIT[units], share: 1, align: 'right' },
        { title: 'share', share: 0.9, align: 'right' },
      ],
      rows: [
        rowOf(`covered ${words.once}`, covered.once),
        ...(short === null ? [] : [rowOf(`covered ${words.short}`, short)]),
        rowOf(`covered ${words.twice}`, covered.twice),
        rowOf(words.missed, covered.missed),
      ],
      sum: rowOf('all treated ground', { areaM2: treatedM2, share: 1 }),
    },
  };
}
