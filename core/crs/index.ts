/**
 * Coordinate systems by name: in: codes, well-known text, places as typed; out: WGS 84 degrees and back. Method: a
 * projection library and a list of the systems known by code. The list is large: what needs only the yard's own frame
 * imports core/earth and never this folder.
 */
export { makeProjector, type Projector } from './projector.ts';
export { readPlace } from './readPlace.ts';
