import { intersectRegions, regionsAreaM2 } from '../kernel/index.ts';
import type { Region } from '../spaces.ts';
import {
  apportionForDisplay,
  areaStepM2,
  areaUnitM2,
  formatLength,
  type UnitSystem,
} from '../units/index.ts';
import { CUT_OUT_KINDS, type OutlineKind, type Yard, type YardFrame } from '../yard.ts';
import { type PrintedZone, printedZones } from './printedZones.ts';
import type { ResolvedYard, ResolvedZone } from './resolved.ts';
import type { RingWorking } from './ringWorking.ts';
import { ownerOrder } from './ownerOrder.ts';
import { type SigmaWorking, sigmaWorking } from './sigmaWorking.ts';
import { type SlopeWorking, slopeWorking } from './slopeWorking.ts';
import { near, type Shape, shapeOf } from './shape.ts';
import { stripShapes } from './strips.ts';
import { outlineEdges, type TracedWorking } from './tracedWorking.ts';
import { takeAway } from './takeAway.ts';

/** How one zone's areas come about, as numbers to be checked by hand. Areas in the person's unit. */
export interface AreaWorking {
  readonly name: string;
  readonly units: UnitSystem;
  readonly frame: YardFrame;
  /** The edge first, then the holes an imported outline came with. */
  readonly rings: readonly TracedWorking[];
  readonly owned: TakenWorking;
  readonly cutOut: TakenWorking;
  readonly leftOut: TakenWorking;
  readonly balance: readonly BalanceLine[];
  readonly sigma: SigmaWorking;
  /** null where the ground is level. */
  readonly slope: SlopeWorking | null;
}

/** What one set of outlines takes away; ground under two of them goes once. */
export interface TakenWorking {
  readonly shapes: readonly TakenShape[];
  /** The sum of what each takes, less what they take together. */
  readonly countedTwice: number;
  readonly together: number;
}

export interface TakenShape {
  readonly name: string;
  readonly kind: OutlineKind;
  readonly ownArea: number;
  /** Of the ground that the steps before left to this zone. */
  readonly takes: number;
}

export type BalanceItem = 'gross' | 'owned' | 'cut out' | 'turf' | 'left out' | 'treated';

export interface BalanceLine {
  readonly item: BalanceItem;
  /** To the working's last digit; gross - owned - cut out = turf and turf - left out = treated, exactly. */
  readonly worked: number;
  /** As `printedZones` shows it. */
  readonly shown: number;
  /** Whether rounding among all zones made the shown figure another than the nearest to the worked one. */
  readonly stepOff: boolean;
}

/** Digits of a worked area behind the shown one's last. */
const MORE_DIGITS = 100;

/** The last digit a worked area is given to: a hundredth of what is shown. */
function workedStepM2(units: UnitSystem): number {
  return areaStepM2(units) / MORE_DIGITS;
}

/**
 * The working of one zone.
 *
 * @param resolved the yard's outlines resolved, the zone among them
 * @returns undefined for what is no zone of the resolved yard
 * Accuracy: the rings as `ringWorking`; the rest is the resolved yard's own, to a hundredth of the shown step
 * Cost: an overlay for each outline near the zone; meant for one zone, when asked for
 * Source: the steps of `resolveZones`, taken again one outline at a time
 */
export function areaWorking(resolved: ResolvedYard, yard: Yard, zoneId: string): AreaWorking | undefined {
  const units = yard.details.unitSystem;
  const at = resolved.zones.findIndex((row) => row.zoneId === zoneId);
  const zone = resolved.zones[at];
  const outline = yard.outlines.find((row) => row.id === zoneId);
  const printed = printedZones(resolved, units)[at];
  if (zone === undefined || outline === undefined || printed === undefined) return undefined;

  const shape = shapeOf(outline);
  const shapesOf = (kinds: readonly OutlineKind[]): readonly Shape[] =>
    near(shape, yard.outlines.filter((row) => kinds.includes(row.kind)).map(shapeOf));
  const zones = yard.outlines.filter((row) => row.kind === 'zone').map(shapeOf);
  const order = ownerOrder(zones, yard.details.overlapRule);
  const owners = near(shape, order.slice(0, order.indexOf(shape)));
  const strips = near(shape, yard.outlines.flatMap(stripShapes)).flatMap(oneByOne);
  const rings = outlineEdges(outline, units);
  const worked = workedAreas(zone, rings, units);
  const left = takeAway(shape.regions, owners).regions;
  return {
    name: outline.name,
    units,
    frame: yard.details.frame,
    rings,
    owned: taken(owners, shape.regions, worked.owned, units),
    cutOut: taken(shapesOf(CUT_OUT_KINDS), left, worked['cut out'], units),
    leftOut: taken(
      [...shapesOf(['keep-off', 'check-plot']), ...strips],
      zone.turf,
      worked['left out'],
      units,
    ),
    balance: balanceOf(worked, printed, units),
    sigma: sigmaWorking(zone, yard),
    slope: slopeWorking(zone, outline, worked.treated),
  };
}

type Worked = Readonly<Record<BalanceItem, number>>;

function workedAreas(zone: ResolvedZone, rings: readonly RingWorking[], units: UnitSystem): Worked {
  const step = workedStepM2(units);
  const unitM2 = areaUnitM2(units);
  const [edge = 0, ...holes] = rings.map((ring) => ring.area);
  const byCornersM2 = holes.reduce((area, hole) => area - hole, edge) * unitM2;
  // The same number as by hand at a tie of rounding; apart where holes overlap or reach over the edge.
  const isSame = Math.abs(byCornersM2 - zone.grossAreaM2) < step / 4;
  const parts = [
    zone.treatedAreaM2,
    zone.turfAreaM2 - zone.treatedAreaM2,
    zone.cutOutAreaM2,
    zone.ownedByOtherAreaM2,
  ].map((area) => Math.max(0, area));
  const grossM2 = isSame ? byCornersM2 : zone.grossAreaM2;
  const [treated = 0, leftOut = 0, cutOut = 0, owned = 0] = apportionForDisplay(parts, step, grossM2).map(
    (area) => inStep(area, units),
  );
  const turf = inStep((treated + leftOut) * unitM2, units);
  const gross = inStep((turf + cutOut + owned) * unitM2, units);
  return { gross, owned, 'cut out': cutOut, turf, 'left out': leftOut, treated };
}

function balanceOf(worked: Worked, printed: PrintedZone, units: UnitSystem): readonly BalanceLine[] {
  const shownM2: Worked = {
    gross: printed.grossM2,
    owned: printed.ownedByOtherM2,
    'cut out': printed.cutOutM2,
    turf: printed.turfM2,
    'left out': printed.leftOutM2,
    treated: printed.treatedM2,
  };
  const step = areaStepM2(units) / areaUnitM2(units);
  return (Object.keys(shownM2) as BalanceItem[]).map((item) => {
    const shown = inStep(shownM2[item], units);
    // Half a step and no more is the nearest; the hair is for what floating arithmetic leaves at a tie.
    const stepOff = Math.abs(shown - worked[item]) > step / 2 + step / (10 * MORE_DIGITS);
    return { item, worked: worked[item], shown, stepOff };
  });
}

/** Each strip by itself, to be told by name. */
function oneByOne(shape: Shape): readonly Shape[] {
  const together = shape.strips;
  return (together?.strips ?? []).map((strip) => ({
    ...shape,
    regions: strip.regions,
    strips: { outlineId: strip.outlineId, strips: [strip], regions: strip.regions },
  }));
}

/** "3 ft off the pond"; "3 ft off the pond, edge 2" where it is along one edge only. */
function takerName({ outline, strips }: Shape, units: UnitSystem): string {
  const [strip] = strips?.strips ?? [];
  if (strip === undefined) return outline.name;
  const along =
    strip.edge === null ? '' : `, ${strip.ring === 0 ? '' : `hole ${strip.ring} `}edge ${strip.edge + 1}`;
  return `${formatLength(strip.widthM, units)} off ${outline.name}${along}`;
}

function taken(
  shapes: readonly Shape[],
  from: readonly Region[],
  together: number,
  units: UnitSystem,
): TakenWorking {
  const rows = shapes.flatMap((shape): readonly TakenShape[] => {
    const { outline, regions } = shape;
    const takes = inStep(regionsAreaM2(intersectRegions(from, regions)), units);
    if (takes === 0) return [];
    return [
      {
        name: takerName(shape, units),
        kind: outline.kind,
        ownArea: inStep(regionsAreaM2(regions), units),
        takes,
      },
    ];
  });
  const sum = rows.reduce((total, { takes }) => total + takes, 0);
  return {
    shapes: rows,
    countedTwice: inStep((sum - together) * areaUnitM2(units), units),
    together,
  };
}

/** An area in the person's unit, to the working's last digit. */
function inStep(areaM2: number, units: UnitSystem): number {
  const perUnit = Math.round(areaUnitM2(units) / workedStepM2(units));
  return Math.round((areaM2 / areaUnitM2(units)) * perUnit) / perUnit + 0;
}
