import { distanceM } from '../../../core/kernel/index.ts';
import type { GroundPlan } from '../../../core/plan/index.ts';
import { ok, type Result, trouble } from '../../../core/result.ts';
import {
  checkWords,
  printedFlag,
  printedLine,
  settingWords,
  stakeCuts,
} from '../../../core/staking/index.ts';
import type { Yard } from '../../../core/yard.ts';
import { feature, type GeoJsonFile, line, polygon } from './geoJson.ts';
import { planSummaryOf } from './summary.ts';

/**
 * A plan as a FeatureCollection: net areas, sections, cut lines and passes told apart by `role`, and the
 * figures in the member `summary`. Extra members of `more` go into the summary.
 * Problems: file/yard-has-no-place for a loose yard
 */
export function planToGeoJson(
  yard: Yard,
  plan: GroundPlan,
  fileName: string,
  more: Readonly<Record<string, unknown>> = {},
): Result<GeoJsonFile> {
  const { frame } = yard.details;
  if (frame.kind === 'loose') {
    return trouble({ kind: 'file/yard-has-no-place', where: { fileName }, facts: {} });
  }
  const { origin } = frame;
  const netAreas = plan.resolved.zones
    .filter(({ turf }) => turf.length > 0)
    .map(({ name, turf, turfAreaM2, treatedAreaM2 }) =>
      feature(
        { role: 'net-area', zone: name, areaM2: turfAreaM2, netAreaM2: turfAreaM2, treatedAreaM2 },
        polygon(origin, turf),
      ),
    );
  const sections = plan.sections.map(({ id, zoneName, region, areaM2 }) => {
    const load = plan.loads.find(({ sectionIds }) => sectionIds.includes(id))?.number ?? null;
    const headingDeg = plan.sectionFigures.find(({ sectionId }) => sectionId === id)?.headingDeg ?? null;
    return feature(
      { role: 'section', id, zone: zoneName, load, areaM2, headingDeg },
      polygon(origin, [region]),
    );
  });
  const units = yard.details.unitSystem;
  const staking = stakeCuts(yard, plan, units);
  const cutLines = staking.lines.map((staked) => {
    const { from, to, between, cut } = staked.cutLine;
    const flags = staked.flags.map((flag) => {
      return { letter: flag.letter, words: settingWords(printedFlag(flag, units)) };
    });
    const checks = printedLine(staked, units).checks.map(checkWords);
    const held = (plan.cuts[cut]?.heldId ?? null) !== null;
    const lengthM = distanceM(from, to);
    return feature(
      { role: 'cut-line', between, cut: cut + 1, held, lengthM, flags, checks },
      line(origin, [from, to]),
    );
  });
  const passes = plan.passes.map(({ sectionId, order, round, kind, lengthM, line: points }) =>
    feature({ role: 'pass', section: sectionId, order, round, kind, lengthM }, line(origin, points)),
  );
  return ok({
    type: 'FeatureCollection',
    summary: { ...planSummaryOf(yard, plan), ...more },
    features: [...netAreas, ...sections, ...cutLines, ...passes],
  });
}
