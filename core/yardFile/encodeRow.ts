import { isPlain, tracedRegion } from '../curves/index.ts';
import type { YardPart, YardRows } from '../edits/index.ts';
import { encodePoint, encodePolygon } from './encodeGeometry.ts';
import { exactJson } from './exactJson.ts';
import { outlineTable, type RowTableName } from './tables.ts';

export type SqlValue = string | number | null | Uint8Array;
export type SqlRow = Readonly<Record<string, SqlValue>>;

/** A row of the document as it lies in the file: which table, and what stands in its columns. */
export interface EncodedRow {
  readonly table: RowTableName;
  readonly columns: SqlRow;
}

type Encoders = { readonly [P in YardPart]: (row: YardRows[P], srsId: number) => EncodedRow };

const ENCODERS: Encoders = {
  details: ({ name, groundDate, unitSystem, frame, cornerSigmaM, overlapRule, amountsBy }) => ({
    table: 'yard_details',
    columns: {
      name,
      ground_date: groundDate,
      unit_system: unitSystem,
      frame_kind: frame.kind,
      origin_lon_deg: frame.kind === 'placed' ? frame.origin.lonDeg : null,
      origin_lat_deg: frame.kind === 'placed' ? frame.origin.latDeg : null,
      corner_sigma_m: cornerSigmaM,
      overlap_rule: overlapRule,
      amounts_by: amountsBy,
    },
  }),
  pictures: (row) => ({
    table: 'pictures',
    columns: {
      id: row.id,
      name: row.name,
      image_hash: row.imageHash,
      media_type: row.mediaType,
      width_px: row.widthPx,
      height_px: row.heightPx,
      placement: exactJson(row.placement),
      attribution: row.attribution,
      corner_sigma_m: row.cornerSigmaM,
      scale_sigma: row.scaleSigma,
    },
  }),
  outlines: (row, srsId) => {
    const table = outlineTable(row.kind);
    const { id, name, kind, outer, holes, placing, slope } = row;
    const columns = {
      id,
      name,
      traced: isPlain(row) ? null : exactJson({ outer, holes }),
      placed_by: placing.by,
      picture_id: placing.pictureId,
      corner_sigma_m: placing.sigmaM,
      keep_off_m: row.keepOffM,
      slope: slope === null ? null : exactJson(slope),
      claims_overlaps: row.claimsOverlaps ? 1 : 0,
      blocks_hose: row.blocksHose === null ? null : row.blocksHose ? 1 : 0,
      geom: encodePolygon(tracedRegion(row), srsId),
    };
    return { table, columns: table === 'cut_outs' ? { kind, ...columns } : columns };
  },
  marks: ({ id, name, kind, at }, srsId) => ({
    table: 'marks',
    columns: { id, name, kind, geom: encodePoint(at, srsId) },
  }),
  elevations: (row) => ({
    table: 'elevations',
    columns: {
      id: row.id,
      name: row.name,
      grid_columns: row.columns,
      grid_rows: row.rows,
      corners: exactJson(row.corners),
      heights_mm: exactJson(row.heightsMm),
    },
  }),
  checks: (row) => ({
    table: 'field_checks',
    columns: {
      id: row.id,
      name: row.name,
      from_x_m: row.from.xM,
      from_y_m: row.from.yM,
      to_x_m: row.to.xM,
      to_y_m: row.to.yM,
      taped_m: row.tapedM,
    },
  }),
  products: (row) => ({
    table: 'products',
    columns: {
      id: row.id,
      name: row.name,
      product_use: row.use,
      rate_l_per_m2: row.rateLPerM2,
      most_rate_l_per_m2: row.mostRateLPerM2,
      least_carrier_l_per_m2: row.leastCarrierLPerM2,
    },
  }),
  applicators: (row) => ({
    table: 'applicators',
    columns: {
      id: row.id,
      name: row.name,
      kind: row.kind,
      capacity_l: row.capacityL,
      carrier_l_per_m2: row.carrierLPerM2,
      swath_m: row.swathM,
      pace_m_per_s: row.paceMPerS,
      step_m: row.stepM,
    },
  }),
  jobs: (row) => ({
    table: 'jobs',
    columns: {
      id: row.id,
      name: row.name,
      zone_ids: row.zoneIds === null ? null : exactJson(row.zoneIds),
      product_id: row.productId,
      applicator_id: row.applicatorId,
      policy: row.policy,
      heading: exactJson(row.heading),
      rounds: row.rounds,
      held_cuts: exactJson(row.heldCuts),
      start_x_m: row.startAt?.xM ?? null,
      start_y_m: row.startAt?.yM ?? null,
      finish_x_m: row.finishAt?.xM ?? null,
      finish_y_m: row.finishAt?.yM ?? null,
      hose: row.hose === null ? null : exactJson(row.hose),
    },
  }),
};

/** A row of the document as columns of the yard file. The row must have passed `checkRow`. */
export function encodeRow<P extends YardPart>(part: P, row: YardRows[P], srsId: number): EncodedRow {
  return ENCODERS[part](row, srsId);
}
