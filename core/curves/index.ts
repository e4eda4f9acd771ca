/**
 * Curves: from an outline as traced to the ring of corners it is computed with. In: corners with straight, arc
 * and smooth edges, circles, ellipses; out: open rings in yard metres whose area is that of the curves. Method:
 * corners up to 2 mm off the curve, placed so that no area is lost. Out of scope: overlays, drawing.
 */
export { movedTraced, type Similarity } from './movedTraced.ts';
export { isPlain, straight } from './straight.ts';
export { type Arc, arcOf } from './arc.ts';
export { edgeOfVertex, edgePath, outlineRings, tracedRegion, tracedRing } from './tracedRing.ts';
