/**
 * Importers: from a file a person picked to a draft. In: a file's name and bytes, never a path; out: a new yard or
 * an edit of an open one, the pictures to keep with it, and plain sentences on what was read. Method: the kind is
 * told by content; what may loop runs in a thread with a limit; anything broken refuses the file and is named.
 * Out of scope: writing anything.
 */
export { draftImport, draftYard } from './draftYard.ts';
export { type FoundKind, fileKindOf } from './fileKind.ts';
export { MOST_GEOJSON_BYTES } from './geoJson/readGeoJson.ts';
