import { straight, tracedRing } from '../../core/curves/index.ts';
import { newJob, newOutline } from '../../core/edits/index.ts';
import type { LoadMix } from '../../core/applicators/index.ts';
import { byKind, sumCoverage } from '../../core/passes/coverage.ts';
import type { Coverage, Pass, SectionCoverage } from '../../core/passes/index.ts';
import type { JobPlan, SectionFigures } from '../../core/plan/index.ts';
import type { Cut, CutLine, Section } from '../../core/sections/index.ts';
import type { Ring, YardPoint } from '../../core/spaces.ts';
import type { Applicator, Mark, Outline, OutlineKind, Product, UnitSystem, Yard } from '../../core/yard.ts';
import type { ResolvedZone } from '../../core/zones/index.ts';
import { LEVEL, spreadOf } from './builders.ts';
import { oneLoadEach } from './oneLoadEach.ts';
import { planRequest } from './planRequest.ts';

/** A zone cut by straight lines across x; its cut-outs lie wholly inside one section or outside the zone. */
export interface HandMadeZone {
  readonly name: string;
  readonly ring: readonly (readonly [number, number])[];
  /** x of each cut, west to east. */
  readonly cutsAtXM: readonly number[];
  readonly leftOutM2?: number;
  readonly sigmaM2?: number | null;
}

export interface HandMadeGround {
  readonly name: string;
  readonly units: UnitSystem;
  readonly zones: readonly HandMadeZone[];
  readonly things?: readonly {
    readonly kind: OutlineKind;
    readonly name: string;
    readonly ring: readonly (readonly [number, number])[];
  }[];
  readonly marks?: readonly Mark[];
  readonly swathM?: number;
  readonly applicatorKind?: Applicator['kind'];
  readonly placed?: boolean;
  readonly jobName?: string;
}

/**
 * A job plan made by hand, not by the planners: sections between vertical cuts, lanes along x through each,
 * amounts by plain proportion. Good enough to be drawn; nothing about it is optimal.
 */
export function handMadePlan(ground: HandMadeGround): { readonly yard: Yard; readonly plan: JobPlan } {
  const swathM = ground.swathM ?? 1.8;
  const yard = makeYard(ground, swathM);
  const zoneOutlines = yard.outlines.filter((outline) => outline.kind === 'zone');
  const holes = yard.outlines.filter((outline) => !['zone', 'keep-off'].includes(outline.kind));
  const sections: Section[] = [];
  const cutLines: CutLine[] = [];
  const cuts: Cut[] = [];
  const zones: ResolvedZone[] = [];
  ground.zones.forEach((zone, z) => {
    const outline = zoneOutlines[z] as Outline;
    const inside = holes.filter((hole) =>
      insideRing(tracedRing(outline.outer), tracedRing(hole.outer)[0] as YardPoint),
    );
    const bands = [Number.NEGATIVE_INFINITY, ...zone.cutsAtXM, Number.POSITIVE_INFINITY];
    const own = bands.slice(1).map((right, i): Section => {
      const outer = clipBand(tracedRing(outline.outer), bands[i] as number, right);
      const own = inside.filter((hole) => insideRing(outer, tracedRing(hole.outer)[0] as YardPoint));
      const areaM2 =
        ringAreaM2(outer) - own.reduce((sum, hole) => sum + ringAreaM2(tracedRing(hole.outer)), 0);
      const id = `${String.fromCharCode(65 + z)}${i + 1}`;
      const region = { outer, holes: own.map((hole) => [...tracedRing(hole.outer)].reverse()) };
      return { id, zoneId: outline.id, zoneName: zone.name, region, areaM2 };
    });
    zone.cutsAtXM.forEach((xM, i) => {
      const ys = crossings(tracedRing(outline.outer), xM);
      const between = [(own[i] as Section).id, (own[i + 1] as Section).id] as const;
      const [from, to] = [
        { xM, yM: ys[0] as number },
        { xM, yM: ys.at(-1) as number },
      ];
      cutLines.push({ from, to, between, cut: cuts.length });
      cuts.push({ zoneId: outline.id, from, to, heldId: null });
    });
    sections.push(...own);
    const grossAreaM2 = ringAreaM2(tracedRing(outline.outer));
    const treatedAreaM2 = own.reduce((sum, section) => sum + section.areaM2, 0);
    const leftOutM2 = zone.leftOutM2 ?? 0;
    const sigmaM2 = zone.sigmaM2 === undefined ? treatedAreaM2 * 0.009 : zone.sigmaM2;
    zones.push({
      zoneId: outline.id,
      name: zone.name,
      grossAreaM2,
      cutOutAreaM2: grossAreaM2 - treatedAreaM2 - leftOutM2,
      ownedByOtherAreaM2: 0,
      turfAreaM2: treatedAreaM2 + leftOutM2,
      treatedAreaM2,
      sigmaM2,
      spread: spreadOf(outline.id, sigmaM2),
      ...LEVEL,
      turf: own.map((section) => section.region),
      treated: own.map((section) => section.region),
    });
  });
  const product = yard.products[0] as Product;
  const applicator = yard.applicators[0] as Applicator;
  const passes = sections
    .flatMap((section) => lanes(section, swathM))
    .map((pass, i) => ({ ...pass, order: i + 1 }));
  const mixes = sections.map((section): LoadMix => {
    const productL = section.areaM2 * product.rateLPerM2;
    const sprayedL = section.areaM2 * applicator.carrierLPerM2;
    return {
      sectionId: section.id,
      areaM2: section.areaM2,
      productL,
      carrierL: applicator.kind === 'tank' ? sprayedL - productL : sprayedL,
      dialRatio: applicator.kind === 'tank' ? null : product.rateLPerM2 / applicator.carrierLPerM2,
    };
  });
  const figures = sections.map((section): SectionFigures => {
    const own = passes.filter((pass) => pass.sectionId === section.id);
    const onLengthM = own.reduce((sum, pass) => sum + pass.lengthM, 0);
    const timeS = onLengthM / applicator.paceMPerS;
    return {
      sectionId: section.id,
      areaM2: section.areaM2,
      passes: own.length,
      onLengthM,
      offLengthM: 0,
      wetM: 0,
      timeS,
      headingDeg: 90,
    };
  });
  const onLengthM = figures.reduce((sum, entry) => sum + entry.onLengthM, 0);
  return {
    yard,
    plan: {
      ground: {
        request: planRequest({ loadAreaM2: 100, swathM, paceMPerS: applicator.paceMPerS }),
        resolved: { zones, overlaps: [], strips: [], untreated: [], warnings: [] },
        sections,
        cuts,
        cutLines,
        loads: oneLoadEach(sections),
        passes,
        coverage: handMadeCoverage(sections, figures, swathM),
        hose: null,
        sectionFigures: figures,
        onLengthM,
        offLengthM: 0,
        wetM: 0,
        timeS: onLengthM / applicator.paceMPerS,
        warnings: [],
      },
      mixes,
      loadSigmas: new Map(
        sections.map(({ zoneId, areaM2 }, i) => {
          const isStated = zones.find((zone) => zone.zoneId === zoneId)?.sigmaM2 !== null;
          return [i + 1, isStated ? areaM2 * 0.02 : null];
        }),
      ),
      sectionSigmas: new Map(
        sections.map(({ id, zoneId, areaM2 }) => {
          const isStated = zones.find((zone) => zone.zoneId === zoneId)?.sigmaM2 !== null;
          return [id, isStated ? areaM2 * 0.02 : null];
        }),
      ),
      productTotalL: mixes.reduce((sum, mix) => sum + mix.productL, 0),
      carrierTotalL: mixes.reduce((sum, mix) => sum + mix.carrierL, 0),
    },
  };
}

/** Nineteen twentieths covered once and 0.2 % thrown on hardscape, wherever the passes run. */
function handMadeCoverage(
  sections: readonly Section[],
  figures: readonly SectionFigures[],
  swathM: number,
): Coverage {
  const own = sections.map(({ id, areaM2 }, place): SectionCoverage => {
    const [onceM2, twiceM2, missedM2] = [areaM2 * 0.95, areaM2 * 0.047, areaM2 * 0.003];
    return {
      sectionId: id,
      treatedM2: areaM2,
      onceM2,
      shortM2: 0,
      twiceM2,
      missedM2,
      outsideM2: areaM2 * 0.002,
      outsideOntoM2: byKind((kind) => (kind === 'hardscape' ? areaM2 * 0.002 : 0)),
      depthsM2: [missedM2, onceM2, twiceM2, 0, 0],
      rounds: [{ onceM2, twiceM2, missedM2 }],
      sweptM2: (figures[place]?.onLengthM ?? 0) * swathM,
    };
  });
  return { ...sumCoverage(own, 1), sections: own };
}

function makeYard(ground: HandMadeGround, swathM: number): Yard {
  const outline = (id: string, kind: OutlineKind, name: string, ring: HandMadeZone['ring']): Outline =>
    newOutline({ id, kind, name, outer: straight(ring.map(([xM, yM]) => ({ xM, yM }))) });
  return {
    details: {
      id: 'yard',
      name: ground.name,
      groundDate: '2026-05-12',
      unitSystem: ground.units,
      frame:
        ground.placed === false ? { kind: 'loose' } : { kind: 'placed', origin: { lonDeg: -93, latDeg: 45 } },
      cornerSigmaM: 0.1,
      overlapRule: 'drawn-first',
      amountsBy: 'plan',
    },
    pictures: [],
    outlines: [
      ...ground.zones.map((zone, i) => outline(`z${i}`, 'zone', zone.name, zone.ring)),
      ...(ground.things ?? []).map((thing, i) => outline(`t${i}`, thing.kind, thing.name, thing.ring)),
    ],
    marks: ground.marks ?? [],
    elevations: [],
    checks: [],
    products: [
      {
        id: 'p',
        name: 'Meadowmere spring feed',
        use: 'fertilizer',
        rateLPerM2: 0.00095,
        mostRateLPerM2: 0.0019,
        leastCarrierLPerM2: null,
      },
    ],
    applicators: [
      {
        id: 'a',
        name: ground.applicatorKind === 'tank' ? 'Backpack sprayer' : 'Hose-end sprayer',
        kind: ground.applicatorKind ?? 'hose-end',
        capacityL: ground.applicatorKind === 'tank' ? 15 : 0.95,
        carrierLPerM2: 0.102,
        swathM,
        paceMPerS: 0.3,
        stepM: 0.6,
      },
    ],
    jobs: [newJob({ id: 'j', name: ground.jobName ?? 'Spring feed', productId: 'p', applicatorId: 'a' })],
  };
}

/** Lanes along x, a swath apart, half a swath inside the section; a perimeter pass first where it is a rectangle. */
function lanes(section: Section, swathM: number): Omit<Pass, 'order'>[] {
  const passes: Omit<Pass, 'order'>[] = [];
  const rings = [section.region.outer, ...section.region.holes];
  const xs = section.region.outer.map((point) => point.xM);
  const ys = section.region.outer.map((point) => point.yM);
  const [west, east] = [Math.min(...xs), Math.max(...xs)];
  const [south, north] = [Math.min(...ys), Math.max(...ys)];
  const half = swathM / 2;
  const rectangle = section.region.outer.length === 4 && section.region.holes.length === 0;
  let [low, high] = [south + half, north - half];
  if (rectangle && east - west > 3 * swathM && north - south > 3 * swathM) {
    const corners = [
      [west + half, low],
      [east - half, low],
      [east - half, high],
      [west + half, high],
      [west + half, low],
    ];
    passes.push(
      passAlong(
        section.id,
        'perimeter',
        corners.map(([xM, yM]) => ({ xM: xM as number, yM: yM as number })),
      ),
    );
    low += swathM;
    high -= swathM;
  }
  let forth = true;
  const count = Math.max(1, Math.ceil((high - low) / swathM) + 1);
  for (let i = 0; i < count; i++) {
    const yM = count === 1 ? (low + high) / 2 : low + ((high - low) * i) / (count - 1);
    const cuts = rings
      .flatMap((ring) =>
        crossings(
          ring.map((point) => ({ xM: point.yM, yM: point.xM })),
          yM,
        ),
      )
      .sort((a, b) => a - b);
    for (let k = 0; k + 1 < cuts.length; k += 2) {
      const [from, to] = [(cuts[k] as number) + half, (cuts[k + 1] as number) - half];
      if (to - from < 0.5) continue;
      const ends = [
        { xM: from, yM },
        { xM: to, yM },
      ];
      passes.push(passAlong(section.id, 'lane', forth ? ends : ends.reverse()));
    }
    forth = !forth;
  }
  return passes;
}

function passAlong(sectionId: string, kind: Pass['kind'], line: YardPoint[]): Omit<Pass, 'order'> {
  let lengthM = 0;
  for (let i = 1; i < line.length; i++) {
    const [a, b] = [line[i - 1] as YardPoint, line[i] as YardPoint];
    lengthM += Math.hypot(b.xM - a.xM, b.yM - a.yM);
  }
  return { sectionId, kind, round: 1, line, lengthM };
}

/** Where a ring crosses the vertical line at x, ascending. */
function crossings(ring: Ring, xM: number): number[] {
  const ys: number[] = [];
  ring.forEach((a, i) => {
    const b = ring[(i + 1) % ring.length] as YardPoint;
    if (a.xM > xM !== b.xM > xM) ys.push(a.yM + ((xM - a.xM) / (b.xM - a.xM)) * (b.yM - a.yM));
  });
  return ys.sort((a, b) => a - b);
}

/** The part of a ring between two verticals (Sutherland and Hodgman 1974). */
function clipBand(ring: Ring, leftM: number, rightM: number): YardPoint[] {
  return clipSide(clipSide([...ring], leftM, 1), rightM, -1);
}

function clipSide(ring: YardPoint[], xM: number, keep: 1 | -1): YardPoint[] {
  if (!Number.isFinite(xM)) return ring;
  return ring.flatMap((a, i) => {
    const b = ring[(i + 1) % ring.length] as YardPoint;
    const [aIn, bIn] = [(a.xM - xM) * keep >= 0, (b.xM - xM) * keep >= 0];
    const crossing = { xM, yM: a.yM + ((xM - a.xM) / (b.xM - a.xM)) * (b.yM - a.yM) };
    return [...(aIn ? [a] : []), ...(aIn !== bIn ? [crossing] : [])];
  });
}

function insideRing(ring: Ring, point: YardPoint): boolean {
  return crossings(ring, point.xM + 1e-6).filter((yM) => yM > point.yM + 1e-6).length % 2 === 1;
}

function ringAreaM2(ring: Ring): number {
  let twice = 0;
  ring.forEach((a, i) => {
    const b = ring[(i + 1) % ring.length] as YardPoint;
    twice += a.xM * b.yM - b.xM * a.yM;
  });
  return Math.abs(twice) / 2;
}
