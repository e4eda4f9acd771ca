import { straight } from '../curves/index.ts';
import type { YardPart, YardRows } from '../edits/index.ts';
import { checkRow } from './checkRow.ts';
import { decodePoint, decodePolygon } from './decodeGeometry.ts';
import { type Reading, readAs, unreadable } from './reading.ts';
import { kindOfTable, type RowTable } from './tables.ts';

type Columns = Readonly<Record<string, unknown>>;

/**
 * A row of the document out of the columns of its table, checked: nothing of a damaged or hostile file gets
 * past here. The detail of an unreadable row names its table and id.
 */
export function decodeRow<P extends YardPart>(table: RowTable, columns: Columns): Reading<YardRows[P]> {
  const row = assemble(table, columns);
  const wrong = row.ok ? checkRow(table.part, row.value) : row.detail;
  if (wrong !== null) return unreadable(`${table.name} ${String(columns.id ?? '').slice(0, 60)}: ${wrong}`);
  return row as Reading<YardRows[P]>;
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
      const traced = c.traced === null ? readAs(null) : fromJson(c.traced);
      if (!traced.ok) return traced;
      const slope = c.slope === null ? readAs(null) : fromJson(c.slope);
      if (!slope.ok) return slope;
      const { outer, holes } = region.value;
      const drawn = { outer: straight(outer), holes: holes.map(straight) };
      return readAs({
        id: c.id,
        kind: kindOfTable(table.name) ?? c.kind,
        name: c.name,
        ...drawn,
        ...(traced.value as object | null),
        placing: { by: c.placed_by, pictureId: c.picture_id, sigmaM: c.corner_sigma_m },
        keepOffM: c.keep_off_m,
        slope: slope.value,
        claimsOverlaps: c.claims_overlaps === 1,
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
      });
    case 'jobs': {
      const zoneIds = c.zone_ids === null ? readAs(null) : fromJson(c.zone_ids);
      if (!zoneIds.ok) return zoneIds;
      return readAs({
        id: c.id,
        name: c.name,
        zoneIds: zoneIds.value,
        productId: c.product_id,
        applicatorId: c.applicator_id,
        policy: c.policy,
        headingDeg: c.heading_deg,
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
