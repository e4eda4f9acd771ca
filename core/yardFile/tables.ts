import type { YardPart } from '../edits/index.ts';
import type { Mark, Outline, OutlineKind } from '../yard.ts';

/** A table of the yard file that holds rows of the yard document. */
export interface RowTable {
  readonly name: string;
  readonly part: YardPart;
  /** Geometry type of a feature table; null for a table of attributes. */
  readonly geometry: 'POLYGON' | 'POINT' | null;
  /** The columns this program reads and writes, `sort_order` and areas apart. A GIS may have added others. */
  readonly columns: readonly string[];
}

const OUTLINE = { part: 'outlines', geometry: 'POLYGON' } as const;
/** What every outline carries beside its kind. */
const OUTLINE_COLUMNS = [
  'id',
  'name',
  'traced',
  'placed_by',
  'picture_id',
  'corner_sigma_m',
  'keep_off_m',
  'slope',
  'claims_overlaps',
  'blocks_hose',
  'geom',
] as const;
const LIST = { geometry: null } as const;

export const ROW_TABLES = [
  {
    ...LIST,
    name: 'yard_details',
    part: 'details',
    columns: [
      'name',
      'ground_date',
      'unit_system',
      'frame_kind',
      'origin_lon_deg',
      'origin_lat_deg',
      'corner_sigma_m',
      'overlap_rule',
      'amounts_by',
    ],
  },
  {
    ...LIST,
    name: 'pictures',
    part: 'pictures',
    columns: [
      'id',
      'name',
      'image_hash',
      'media_type',
      'width_px',
      'height_px',
      'placement',
      'attribution',
      'corner_sigma_m',
      'scale_sigma',
    ],
  },
  { ...OUTLINE, name: 'zones', columns: OUTLINE_COLUMNS },
  { ...OUTLINE, name: 'cut_outs', columns: ['kind', ...OUTLINE_COLUMNS] },
  { ...OUTLINE, name: 'keep_offs', columns: OUTLINE_COLUMNS },
  { ...OUTLINE, name: 'check_plots', columns: OUTLINE_COLUMNS },
  { name: 'marks', part: 'marks', geometry: 'POINT', columns: ['id', 'name', 'kind', 'geom'] },
  {
    ...LIST,
    name: 'elevations',
    part: 'elevations',
    columns: ['id', 'name', 'grid_columns', 'grid_rows', 'corners', 'heights_mm'],
  },
  {
    ...LIST,
    name: 'field_checks',
    part: 'checks',
    columns: ['id', 'name', 'from_x_m', 'from_y_m', 'to_x_m', 'to_y_m', 'taped_m'],
  },
  {
    ...LIST,
    name: 'products',
    part: 'products',
    columns: ['id', 'name', 'product_use', 'rate_l_per_m2', 'most_rate_l_per_m2', 'least_carrier_l_per_m2'],
  },
  {
    ...LIST,
    name: 'applicators',
    part: 'applicators',
    columns: ['id', 'name', 'kind', 'capacity_l', 'carrier_l_per_m2', 'swath_m', 'pace_m_per_s', 'step_m'],
  },
  {
    ...LIST,
    name: 'jobs',
    part: 'jobs',
    columns: [
      'id',
      'name',
      'zone_ids',
      'product_id',
      'applicator_id',
      'policy',
      'heading',
      'rounds',
      'held_cuts',
      'start_x_m',
      'start_y_m',
      'finish_x_m',
      'finish_y_m',
      'hose',
    ],
  },
] as const satisfies readonly RowTable[];

export type RowTableName = (typeof ROW_TABLES)[number]['name'];

/** The tables a GIS draws. */
export const FEATURE_TABLES: readonly RowTable[] = ROW_TABLES.filter((table) => table.geometry !== null);

/** The tables that hold the rows of one part; outlines lie in four, one for each idea. */
export function tablesOf(part: YardPart): readonly (RowTable & { readonly name: RowTableName })[] {
  return ROW_TABLES.filter((table) => table.part === part);
}

/** Where an outline of a kind is kept. */
export function outlineTable(kind: OutlineKind): RowTableName {
  if (kind === 'zone') return 'zones';
  if (kind === 'keep-off') return 'keep_offs';
  return kind === 'check-plot' ? 'check_plots' : 'cut_outs';
}

/** What a feature's kind is when its table alone says it; null when the column `kind` does. */
export function kindOfTable(table: string): Outline['kind'] | Mark['kind'] | null {
  if (table === 'zones') return 'zone';
  if (table === 'keep_offs') return 'keep-off';
  return table === 'check_plots' ? 'check-plot' : null;
}
