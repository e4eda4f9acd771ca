/**
 * Yard file: what a yard on disk means, without a driver. It is an OGC GeoPackage 1.3 with feature tables a
 * GIS draws and tables of our own beside them. In: rows of the yard document, or columns and bytes of a file
 * that may be damaged or hostile; out: columns, SQL and GeoPackage geometry, or checked rows. `YardStore` is
 * the whole storage interface; `memoryYardStore` is its twin without a disk. Method: one encoder and one
 * decoder a table, one form check that every row passes on its way in and out. Out of scope: running SQL,
 * locks, paths (electron/host/yardFile); whether a shape or a rate makes sense (core/zones, core/products).
 */
export { checkEdit, checkRow, checkYard } from './checkRow.ts';
export { decodePoint, decodePolygon, type Envelope, envelopeOf } from './decodeGeometry.ts';
export { decodeRow, fromJson } from './decodeRow.ts';
export { encodePoint, encodePolygon, withSrsId } from './encodeGeometry.ts';
export { type EncodedRow, encodeRow, type SqlRow, type SqlValue } from './encodeRow.ts';
export { exactJson } from './exactJson.ts';
export {
  createMemoryYard,
  type MemoryYard,
  openMemoryYard,
  type YardShelf,
} from './memoryYardStore.ts';
export { MIGRATIONS, type Migration, SCHEMA_VERSION } from './migrations/index.ts';
export { type Reading, readAs, type Unreadable, unreadable } from './reading.ts';
export { sameData } from './sameData.ts';
export { freshSortKey, SORT_STRIDE, sortKeyBetween } from './sortKey.ts';
export { LOOSE_SRS_ID, PLACED_SRS_ID, type SpatialFrame, spatialFrameOf, srsIdOf } from './spatialFrame.ts';
export {
  FEATURE_TABLES,
  outlineTable,
  ROW_TABLES,
  type RowTable,
  type RowTableName,
  tablesOf,
} from './tables.ts';
export type { EditHistory, HistoryStep, NewImage, StoredImage, YardStore } from './YardStore.ts';
