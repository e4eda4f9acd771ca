/**
 * What a yard file means: its tables, geometry codec and versions, and the `YardStore` interface behind which
 * any storage stands. Pure: the adapter in `electron/host/yardFile` only binds and runs.
 */
export type { EditHistory, HistoryStep, NewImage, StoredImage, YardStore } from './YardStore.ts';
