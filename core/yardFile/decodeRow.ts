import { outlineRings, straight } from '../curves/index.ts';
import type { YardPart, YardRows } from '../edits/index.ts';
import type { Region } from '../spaces.ts';
import type { Outline } from '../yard.ts';
import { isAsTraced } from './asTraced.ts';
import { checkRow } from './checkRow.ts';
import { decodePoint, decodePolygon } from './decodeGeometry.ts';
import { type Reading, readAs, unreadable } from './reading.ts';
import { kindOfTable, type RowTable } from './tables.ts';

type Columns = Readonly<Record<string, unknown>>;

/**
 * A row of the document out of the columns of its table, checked: nothing of a damaged or hostile file gets
 * past here. The detail of an unreadable row names its table and id. An outline comes back as it was traced, unless
 * another program moved its geometry since: then it is what was moved, with plain corners.
 */
export function decodeRow<P extends YardPart>(table: RowTable, columns: Columns): Reading<YardRows[P]> {
  const row = assemble(table, columns);
  const wrong = row.ok ? checkRow(table.part, row.value) : row.detail;
  if (wrong !== null) return unreadable(`${table.name} ${String(columns.id ?? '').slice(0, 60)}: ${wrong}`);
  const checked = row as Reading<YardRows[P]>;
  return table.part === 'outlines' && checked.ok && columns.traced !== null
    ? (unlessMoved(checked.value as Outline, columns.geom as Uint8Array) as Reading<YardRows[P]>)
    : checked;
}

/** Only a checked outline can be drawn, so the geometry is read a second time. */
function unlessMoved(outline: Outline, geom: Uint8Array): Reading<Outline> {
  const region = decodePolygon(geom);
  if (!region.ok) return region;
  const { outer, holes } = region.value;
  return readAs(
    isAsTraced([outer, ...holes], outlineRings(outline))
      ? outline
      : { ...outline, ...plainCorners(region.value) },
  );
}

function plainCorners({ outer, holes }: Region): Pick<Outline, 'outer' | 'holes'> {
  return { outer: straight(outer), holes: holes.map(straight) };
}

/** SQLite has no booleans; anything but its two numbers is left for the check to refuse. */
function yesOrNo(value: unknown): unknown {
  if (value === 1) return true;
  return value === 0 ? false : value;
}

/** A place in two columns; half of one is left for the check to refuse. */
function placeOrNull(xM: unknown, yM: unknown): unknown {
  return xM === null && yM === null ? null : { xM, yM };
}

function assemble(table: RowTable, columns: Columns): Reading<unknown> {
  const c = columns;
  switch (table.part) {
    case 'details':
      return readAs({
        id: 'yard',
        name: c.name,
        groundDate: c.ground_date,
        unitSystem: c.unit_system,
        frame:
          c.frame_kind === 'placed'
            ? { kind: 'placed', origin: { lonDeg: c.origin_lon_deg, latDeg: c.origin_lat_deg } }
            : { kind: c.frame_kind },
        cornerSigmaM: c.corner_sigma_m,
        overlapRule: c.overlap_rule,
        amountsBy: c.amounts_by,
      });
    case 'pictures': {
      const placement = fromJson(c.placement);
      if (!placement.ok) return placement;
      return readAs({
        id: c.id,
        name: c.name,
        imageHash: c.image_hash,
        mediaType: c.media_type,
        widthPx: c.width_px,
        heightPx: c.height_px,
        placement: placement.value,
        attribution: c.attribution,
        cornerSigmaM: c.corner_sigma_m,
        scaleSigma: c.scale_sigma,
      });
    }
    case 'outlines': {
      const region = c.geom instanceof Uint8Array ? decodePolygon(c.geom) : unreadable('has no geometry');
      if (!region.ok) return region;
      const traced = c.traced === null ? readAs(plainCorners(region.value)) : fromJson(c.traced);
      if (!traced.ok) return traced;
      const { outer, holes, ...more } = (traced.value ?? {}) as Record<string, unknown>;
      if (Object.keys(more).length > 0) return unreadable('the text of its curves holds more than rings');
      const slope = c.slope === null ? readAs(null) : fromJson(c.slope);
      if (!slope.ok) return slope;
      return readAs({
        id: c.id,
        kind: kindOfTable(table.name) ?? c.kind,
        name: c.name,
        outer,
        holes,
        placing: { by: c.placed_by, pictureId: c.picture_id, sigmaM: c.corner_sigma_m },
        keepOffM: c.keep_off_m,
        slope: slope.value,
        claimsOverlaps: yesOrNo(c.claims_overlaps),
        blocksHose: yesOrNo(c.blocks_hose),
      });
    }
    case 'marks': {
      const at = c.geom instanceof Uint8Array ? decodePoint(c.geom) : unreadable('has no geometry');
      return at.ok ? readAs({ id: c.id, kind: c.kind, name: c.name, at: at.value }) : at;
    }
    case 'elevations': {
      const corners = fromJson(c.corners);
      if (!corners.ok) return corners;
      const heightsMm = fromJson(c.heights_mm);
      if (!heightsMm.ok) return heightsMm;
      return readAs({
        id: c.id,
        name: c.name,
        columns: c.grid_columns,
        rows: c.grid_rows,
        corners: corners.value,
        heightsMm: heightsMm.value,
      });
    }
    case 'checks':
      return readAs({
        id: c.id,
        name: c.name,
        from: { xM: c.from_x_m, yM: c.from_y_m },
        to: { xM: c.to_x_m, yM: c.to_y_m },
        tapedM: c.taped_m,
      });
    case 'products':
      return readAs({
        id: c.id,
        name: c.name,
        use: c.product_use,
        rateLPerM2: c.rate_l_per_m2,
        mostRateLPerM2: c.most_rate_l_per_m2,
        leastCarrierLPerM2: c.least_carrier_l_per_m2,
      });
    case 'applicators':
      return readAs({
        id: c.id,
        name: c.name,
        kind: c.kind,
        capacityL: c.capacity_l,
        carrierLPerM2: c.carrier_l_per_m2,
        swathM: c.swath_m,
        paceMPerS: c.pace_m_per_s,
        stepM: c.step_m,
      });
    case 'jobs': {
      const zoneIds = c.zone_ids === null ? readAs(null) : fromJson(c.zone_ids);
      if (!zoneIds.ok) return zoneIds;
      const heading = fromJson(c.heading);
      if (!heading.ok) return heading;
      const heldCuts = fromJson(c.held_cuts);
      if (!heldCuts.ok) return heldCuts;
      const hose = c.hose === null ? readAs(null) : fromJson(c.hose);
      if (!hose.ok) return hose;
      return readAs({
        id: c.id,
        name: c.name,
        zoneIds: zoneIds.value,
        productId: c.product_id,
        applicatorId: c.applicator_id,
        policy: c.policy,
        heading: heading.value,
        rounds: c.rounds,
        heldCuts: heldCuts.value,
        startAt: placeOrNull(c.start_x_m, c.start_y_m),
        finishAt: placeOrNull(c.finish_x_m, c.finish_y_m),
        hose: hose.value,
      });
    }
  }
}

/** JSON out of a text column. */
export function fromJson(value: unknown): Reading<unknown> {
  if (typeof value !== 'string') return unreadable('is not JSON text');
  try {
    return readAs(JSON.parse(value));
  } catch {
    return unreadable('is not JSON text');
  }
}
