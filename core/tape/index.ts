/**
 * Tape: ground that was measured on foot, drawn to scale. In: lengths, bearings and where the figure stands;
 * out: its ring in yard metres, its circle or ellipse, or a point, with what the measuring itself says about its error. Method:
 * plane geometry in the yard frame; a figure begins at its first corner, its first side runs on the bearing
 * and it lies to the left of that side. Out of scope: areas worked out beside the drawing, and reading text.
 */
export { type Leg, type LegDirection, type WalkedChain, walkedChain } from './chain.ts';
export { circle, ellipse } from './ellipse.ts';
export { type OffsetAreas, offsetAreas } from './offsetRules.ts';
export { offsetsFromBaseline } from './offsets.ts';
export type { Place } from './place.ts';
export { type RayGround, raysFromStake } from './rays.ts';
export { rectangle } from './rectangle.ts';
export { type TrapezoidSizes, trapezoid } from './trapezoid.ts';
export { triangleByHeight, triangleBySides } from './triangle.ts';
export { type Tie, type TieSide, twoTapes } from './twoTapes.ts';
