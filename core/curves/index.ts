/**
 * Curves: from an outline as traced to the ring of corners it is computed with. In: corners with straight, arc
 * and smooth edges, circles, ellipses; out: open rings in yard metres whose area is that of the curves, and how they
 * follow the points that were placed. Method: corners up to 2 mm off the curve, placed so that no area is lost. Out of
 * scope: overlays, drawing.
 */
export { type Arc, arcOf } from './arc.ts';
export { arcByRadius } from './arcByRadius.ts';
export { figureProblems } from './figureProblems.ts';
export { movedTraced, type Similarity } from './movedTraced.ts';
export { MOST_OFF_CURVE_M } from './offCurve.ts';
export { moveOwnPoint, type OwnPoint, ownPoints } from './ownPoints.ts';
export { reversedTraced } from './reversedTraced.ts';
export { ringSensitivity, type VertexMove } from './ringSensitivity.ts';
export { isPlain, straight } from './straight.ts';
export { edgeOfVertex, edgePath, outlineRings, tracedRegion, tracedRing } from './tracedRing.ts';
export { uncrossed } from './uncrossed.ts';
