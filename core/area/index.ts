/**
 * Area: how sure an area is. In: regions, and the outlines their edges lie on with how each was placed; out: the
 * gradient of the area to every placed point, a standard deviation, the covariance of two areas, and what makes most of
 * it. Method: first-order propagation from the placed points and the scales of pictures; a point on two outlines is
 * one. Plain areas are `core/kernel`'s. Out of scope: slope, curves (`core/curves` says how they follow their points).
 */
export { type AreaGradient, areaGradient, type GradientTerm } from './areaGradient.ts';
export {
  type AreaError,
  type AreaSpread,
  areaSpread,
  covarianceOf,
  sigmaOf,
  sigmaOfSum,
  spreadOfSum,
  timesSpread,
} from './areaSpread.ts';
export { type Contribution, type Contributor, contributions, tightener } from './contributions.ts';
export { cutLineSource, type Mover, outlineSources, type SourceRing } from './edgeSource.ts';
export { type PlacedPoint, placedPointsOf } from './placedPoints.ts';
export {
  type PictureScale,
  type PointBase,
  pointBaseOf,
  type StatedBy,
  type Sureness,
  type SurenessGround,
  surenessOf,
} from './sureness.ts';
