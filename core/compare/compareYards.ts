import { regionsAreaM2, unionRegions } from '../kernel/index.ts';
import type { Problem } from '../problems.ts';
import { Defect, ok, type Result } from '../result.ts';
import type { Region } from '../spaces.ts';
import { OUTLINE_KINDS, type OutlineKind, type Yard } from '../yard.ts';
import { type ResolvedYard, resolveZones, shapeOf } from '../zones/index.ts';
import { carrierBetween } from './carryAcross.ts';
import type {
  AreaChange,
  GroundChange,
  KindChange,
  NamedArea,
  YardComparison,
  ZoneChange,
  ZoneMeasure,
} from './comparison.ts';
import { groundChange, sumOfChanges } from './groundChange.ts';
import { matchRows } from './matchRows.ts';

export const ZONE_MEASURES: readonly ZoneMeasure[] = ['treated', 'turf', 'gross'];

/**
 * What changed on the ground between two states of a yard. A zone is the same one by its id, else by its name. Areas are
 * those of the map; a slope changes none of them.
 *
 * Problems: shape/ problems of outlines of either that cannot stand (of the earlier yard without a place on the
 * map, for the map is the later one's), compare/only-one-placed, compare/too-far-apart
 * Accuracy: as `groundChange`, and as `carrierBetween` where the frames differ
 * Cost: six overlays a zone and two a kind, of what is not the very same in both; meant to be asked for, not to
 * follow the hand
 */
export function compareYards(before: Yard, after: Yard): Result<YardComparison> {
  const carrier = carrierBetween(before, after);
  if (!carrier.ok) return carrier;
  const then = resolveZones(before);
  const now = resolveZones(after);
  if (!then.ok || !now.ok) {
    const [first, ...more] = [
      ...(then.ok ? [] : then.problems.map((problem) => ofEarlier(problem, before))),
      ...(now.ok ? [] : now.problems),
    ];
    if (first === undefined) throw new Defect('trouble without a problem');
    return { ok: false, problems: [first, ...more] };
  }
  const { apartM, carry } = carrier.value;
  const was = stateOf(before, then.value, carry);
  const is = stateOf(after, now.value, (regions) => regions);
  const zones = zoneChanges(was, is);
  const all = (measure: ZoneMeasure): AreaChange => sumOfChanges(zones.map((zone) => zone[measure]));
  return ok({
    zones,
    all: { treated: all('treated'), turf: all('turf'), gross: all('gross') },
    kinds: OUTLINE_KINDS.flatMap((kind) => kindChange(kind, was, is)),
    framesApartM: apartM,
  });
}

/** The map shows the later yard, so a broken outline of the earlier one is named and not pointed at. */
function ofEarlier(problem: Problem, { details }: Yard): Problem {
  if (!('outlineId' in problem.where)) return problem;
  const { outlineId, name } = problem.where;
  const where = { outlineId, name: `${name}, in the earlier state of ${details.groundDate},` };
  return { ...problem, where } as Problem;
}

type Carry = (regions: readonly Region[]) => readonly Region[];

/** One state of the ground, all of it in the later yard's frame. */
interface State {
  readonly zones: readonly StateZone[];
  readonly shapes: readonly StateShape[];
}

interface StateZone extends Readonly<Record<ZoneMeasure, readonly Region[]>> {
  readonly id: string;
  readonly name: string;
}

interface StateShape {
  readonly id: string;
  readonly name: string;
  readonly kind: OutlineKind;
  readonly regions: readonly Region[];
}

function stateOf({ outlines }: Yard, { zones }: ResolvedYard, carry: Carry): State {
  const shapes = outlines.map((outline) => {
    const { id, name, kind } = outline;
    return { id, name, kind, regions: carry(shapeOf(outline).regions) };
  });
  return {
    shapes,
    zones: zones.map(({ zoneId, name, turf, treated }) => ({
      id: zoneId,
      name,
      gross: shapes.find(({ id }) => id === zoneId)?.regions ?? [],
      turf: carry(turf),
      treated: carry(treated),
    })),
  };
}

function zoneChanges(before: State, after: State): readonly ZoneChange[] {
  const { later, gone } = matchRows(before.zones, after.zones);
  return [
    ...later.map(({ now, was }) => zoneChange(was, now)),
    ...gone.map((was) => zoneChange(was, undefined)),
  ];
}

function zoneChange(was: StateZone | undefined, is: StateZone | undefined): ZoneChange {
  const known = is ?? was;
  if (known === undefined) throw new Defect('a zone in neither state');
  const change = (measure: ZoneMeasure): GroundChange =>
    groundChange(was?.[measure] ?? [], is?.[measure] ?? []);
  return {
    zoneId: known.id,
    name: known.name,
    formerName: was !== undefined && was.name !== known.name ? was.name : null,
    state: was === undefined ? 'new' : is === undefined ? 'gone' : 'in both',
    treated: change('treated'),
    turf: change('turf'),
    gross: change('gross'),
  };
}

function kindChange(kind: OutlineKind, before: State, after: State): readonly KindChange[] {
  const [was, is] = [before, after].map(({ shapes }) => shapes.filter((shape) => shape.kind === kind));
  if (was === undefined || is === undefined || was.length + is.length === 0) return [];
  const together = (shapes: readonly StateShape[]): readonly Region[] =>
    unionRegions(shapes.flatMap(({ regions }) => regions));
  const { later, gone } = matchRows(was, is);
  return [
    {
      kind,
      ground: groundChange(together(was), together(is)),
      appeared: later.filter((row) => row.was === undefined).map((row) => namedArea(row.now)),
      vanished: gone.map(namedArea),
    },
  ];
}

function namedArea({ id, name, regions }: StateShape): NamedArea {
  return { id, name, areaM2: regionsAreaM2(regions) };
}
