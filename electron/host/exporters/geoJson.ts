import { tracedRegion } from '../../../core/curves/index.ts';
import { yardToLonLat } from '../../../core/earth/index.ts';
import { orientRegion } from '../../../core/kernel/index.ts';
import { ok, type Result, trouble } from '../../../core/result.ts';
import type { LonLat, Region, Ring, YardPoint } from '../../../core/spaces.ts';
import type { Outline, Yard } from '../../../core/yard.ts';

/** RFC 7946, with the foreign members it allows beside the features. */
export interface GeoJsonFile {
  readonly type: 'FeatureCollection';
  readonly features: readonly GeoJsonFeature[];
  readonly [member: string]: unknown;
}

export interface GeoJsonFeature {
  readonly type: 'Feature';
  readonly properties: Readonly<Record<string, unknown>>;
  readonly geometry: GeoJsonShape;
}

export type Position = readonly [lonDeg: number, latDeg: number];

export type GeoJsonShape =
  | { readonly type: 'Point'; readonly coordinates: Position }
  | { readonly type: 'LineString'; readonly coordinates: readonly Position[] }
  | { readonly type: 'Polygon'; readonly coordinates: readonly (readonly Position[])[] }
  | { readonly type: 'MultiPolygon'; readonly coordinates: readonly (readonly (readonly Position[])[])[] };

/**
 * A placed yard's outlines and marks, at full precision. The member `yard` carries what else is needed to make
 * the same yard of it again; products, applicators, jobs, pictures and elevation grids stay behind.
 * Problems: file/yard-has-no-place for a loose yard
 */
export function yardToGeoJson(yard: Yard, fileName: string): Result<GeoJsonFile> {
  const { frame, name, groundDate, unitSystem, cornerSigmaM, amountsBy, overlapRule } = yard.details;
  if (frame.kind === 'loose') {
    return trouble({ kind: 'file/yard-has-no-place', where: { fileName }, facts: {} });
  }
  const { origin } = frame;
  const outlines = yard.outlines.map((outline) =>
    feature(
      { kind: outline.kind, name: outline.name, ...slopeMember(outline), ...groundMembers(outline) },
      polygon(origin, [tracedRegion(outline)]),
    ),
  );
  const marks = yard.marks.map(({ kind, name, at }) =>
    feature({ kind, name }, { type: 'Point', coordinates: position(origin, at) }),
  );
  const { lonDeg: originLonDeg, latDeg: originLatDeg } = origin;
  return ok({
    type: 'FeatureCollection',
    yard: {
      name,
      groundDate,
      unitSystem,
      cornerSigmaM,
      amountsBy,
      overlapRule,
      originLonDeg,
      originLatDeg,
    },
    features: [...outlines, ...marks],
  });
}

/** Rise over run of a zone that slopes by one grade; a slope by an elevation grid stays behind with its grid. */
function slopeMember({ slope }: Outline): { readonly slopeGrade?: number } {
  return slope?.kind === 'grade' ? { slopeGrade: slope.grade } : {};
}

/** What else is said of an outline: the strip kept off all round, a claim to shared ground, and whether it bars a hose. */
function groundMembers({ keepOffM, claimsOverlaps, blocksHose }: Outline): Readonly<Record<string, unknown>> {
  return {
    ...(keepOffM === null ? {} : { keepOffM }),
    ...(claimsOverlaps ? { claimsOverlaps } : {}),
    ...(blocksHose === null ? {} : { blocksHose }),
  };
}

export function feature(
  properties: Readonly<Record<string, unknown>>,
  geometry: GeoJsonShape,
): GeoJsonFeature {
  return { type: 'Feature', properties, geometry };
}

/** One region as a Polygon, several as a MultiPolygon; outer rings counter-clockwise, holes clockwise, closed. */
export function polygon(origin: LonLat, regions: readonly Region[]): GeoJsonShape {
  const parts = regions.map((region) => {
    const { outer, holes } = orientRegion(region);
    return [outer, ...holes].map((ring) => closedRing(origin, ring));
  });
  const [only] = parts;
  return parts.length === 1 && only !== undefined
    ? { type: 'Polygon', coordinates: only }
    : { type: 'MultiPolygon', coordinates: parts };
}

export function line(origin: LonLat, points: readonly YardPoint[]): GeoJsonShape {
  return { type: 'LineString', coordinates: points.map((point) => position(origin, point)) };
}

export function position(origin: LonLat, point: YardPoint): Position {
  const { lonDeg, latDeg } = yardToLonLat(origin, point);
  return [lonDeg, latDeg];
}

/** As a file: one feature a line, so that a change of one outline is a change of one line. */
export function geoJsonText(file: GeoJsonFile): string {
  const { features, ...members } = file;
  const head = JSON.stringify(members).slice(0, -1);
  return `${head},"features":[\n${features.map((each) => JSON.stringify(each)).join(',\n')}\n]}\n`;
}

function closedRing(origin: LonLat, ring: Ring): readonly Position[] {
  const positions = ring.map((point) => position(origin, point));
  const [first] = positions;
  return first === undefined ? [] : [...positions, first];
}
