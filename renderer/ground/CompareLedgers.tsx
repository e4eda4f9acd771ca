import {
  type AreaChange,
  type PrintedChange,
  printedChangeSum,
  printedChanges,
  shownAloneM2,
  type YardComparison,
  type ZoneChange,
  type ZoneMeasure,
} from '../../core/compare/index.ts';
import { areaFigure, formatLength } from '../../core/units/index.ts';
import type { OutlineKind, UnitSystem } from '../../core/yard.ts';
import { printedZones, type ResolvedYard } from '../../core/zones/index.ts';
import { useBook, useOpenYard, useViewState } from '../app/context.ts';
import type { Compared } from '../app/view.ts';
import { OUTLINE_WORDS } from '../drawing/index.ts';
import { ChangeSwatch } from '../map/index.ts';
import { ChoiceField } from '../shared/ChoiceField.tsx';
import { type ComparedGround, comparisonOf, isMeasure } from '../shared/comparisonOf.ts';
import { Ledger } from '../shared/Ledger.tsx';
import { ProblemLines } from '../shared/ProblemLines.tsx';
import { changedNames } from './changedNames.ts';
import { tracingWords } from './tracingWords.ts';

const MEASURE_WORDS = {
  treated: 'treated ground',
  turf: 'turf',
  gross: 'zones, all inside their edges',
} as const;

interface LedgersProps {
  readonly compared: Compared;
}

/** What changed, zone by zone and kind by kind, and which of it the sketch shows. */
export function CompareLedgers({ compared }: LedgersProps) {
  const { view } = useBook();
  const { yard } = useOpenYard();
  const units = yard.details.unitSystem;
  const comparison = comparisonOf(compared.earlier, yard);
  if (!comparison.ok) return <ProblemLines problems={comparison.problems} units={units} />;
  const { kinds, framesApartM } = comparison.value;
  const show = (of: ComparedGround): void => view.compare({ ...compared, of });
  const choices: readonly (readonly [ComparedGround, string])[] = [
    ...Object.entries(MEASURE_WORDS).map(([measure, words]) => [measure as ComparedGround, words] as const),
    ...kinds.map(({ kind }) => [kind, `${kindWords(kind)}, counted once`] as const),
  ];
  const chosen = choices.some(([of]) => of === compared.of) ? compared.of : 'treated';
  return (
    <>
      <ChoiceField<ComparedGround>
        label="shown on the sketch"
        value={chosen}
        choices={choices}
        onChoose={show}
      />
      <p className="said change-legend">
        <ChangeSwatch of="lost" /> lost since, <ChangeSwatch of="gained" /> gained since
      </p>
      <ZoneChanges comparison={comparison.value} of={chosen} units={units} />
      <KindChanges comparison={comparison.value} of={chosen} units={units} onShow={show} />
      {changedNames(kinds).map((words) => (
        <p key={words} className="said">
          {words}
        </p>
      ))}
      {tracingWords(compared.earlier, yard).map((words) => (
        <p key={words} className="said">
          {words}
        </p>
      ))}
      <p className="said">
        Areas of the map, slope aside; figures are rounded together, so that rows and columns add up.
        {framesApartM === null &&
          ' Neither yard has a place on earth: they are laid over each other as drawn.'}
        {framesApartM !== null &&
          framesApartM > 0 &&
          ` The earlier state’s origin lies ${formatLength(framesApartM, units)} away; it is brought over by longitude and latitude.`}
      </p>
    </>
  );
}

interface ChangesProps {
  readonly comparison: YardComparison;
  readonly of: ComparedGround;
  readonly units: UnitSystem;
}

function ZoneChanges({ comparison, of, units }: ChangesProps) {
  const { view } = useBook();
  const { selection } = useViewState();
  const { resolved } = useOpenYard();
  const measure = isMeasure(of) ? of : 'treated';
  const { zones } = comparison;
  const shown = printedChanges(
    zones.map((zone) => zone[measure]),
    zones.map((zone) => (zone.state === 'gone' ? 0 : shownNowM2(resolved, units, zone.zoneId, measure))),
    units,
  );
  return (
    <Ledger
      caption={`What changed of the ${MEASURE_WORDS[measure]}, zone by zone`}
      columns={columnsOf(MEASURE_WORDS[measure].split(',')[0] ?? '', units)}
      rows={zones.map((zone, i) => ({
        key: `${zone.state} ${zone.zoneId}`,
        selected: selection?.kind === 'outline' && selection.id === zone.zoneId,
        onSelect: zone.state === 'gone' ? undefined : () => view.select({ kind: 'outline', id: zone.zoneId }),
        cells: [zoneWords(zone), ...figuresOf(shown[i], units)],
      }))}
      sum={['all', ...figuresOf(printedChangeSum(shown), units)]}
    />
  );
}

interface KindsProps extends ChangesProps {
  readonly onShow: (of: OutlineKind) => void;
}

/** Kinds lie over one another, so there is no sum of them and each is rounded by itself. */
function KindChanges({ comparison, of, units, onShow }: KindsProps) {
  return (
    <Ledger
      caption="What changed of each kind of outline; ground under two of a kind counts once"
      columns={columnsOf('all outlines', units)}
      rows={comparison.kinds.map(({ kind, ground }) => ({
        key: kind,
        selected: of === kind,
        onSelect: () => onShow(kind),
        cells: [kindWords(kind), ...figuresOf(printedAlone(ground, units), units)],
      }))}
    />
  );
}

/** A zone's area as every other part of the screen shows it. */
function shownNowM2(
  resolved: ResolvedYard | null,
  units: UnitSystem,
  zoneId: string,
  measure: ZoneMeasure,
): number {
  const printed = resolved === null ? [] : printedZones(resolved, units);
  const zone = printed.find((row) => row.zoneId === zoneId);
  if (zone === undefined) return 0;
  return { treated: zone.treatedM2, turf: zone.turfM2, gross: zone.grossM2 }[measure];
}

function printedAlone(ground: AreaChange, units: UnitSystem): PrintedChange | undefined {
  return printedChanges([ground], [shownAloneM2(ground.afterM2, units)], units)[0];
}

function columnsOf(first: string, units: UnitSystem) {
  return [
    { head: first, align: 'left' },
    { head: `before ${areaFigure(0, units).unit}`, align: 'right' },
    { head: '− lost', align: 'right' },
    { head: '+ gained', align: 'right' },
    { head: '= after', align: 'right' },
  ] as const;
}

function figuresOf(change: PrintedChange | undefined, units: UnitSystem): readonly string[] {
  if (change === undefined) return [];
  const { beforeM2, lostM2, gainedM2, afterM2 } = change;
  return [beforeM2, lostM2, gainedM2, afterM2].map((areaM2) => areaFigure(areaM2, units).text);
}

function zoneWords({ name, formerName, state }: ZoneChange): string {
  if (state !== 'in both') return `${name} (${state})`;
  return formerName === null ? name : `${name} (was ${formerName})`;
}

function kindWords(kind: OutlineKind): string {
  return kind === 'hardscape' || kind === 'water' ? OUTLINE_WORDS[kind] : `${OUTLINE_WORDS[kind]}s`;
}
