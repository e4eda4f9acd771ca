/**
 * Frames: between places on earth, pixels of a picture and yard metres. In: degrees, coordinates of a named
 * reference system, pixels; out: yard points and back. Method: transverse Mercator about the yard's own middle
 * through a projection library; by least squares, where a yard lies by known places and the scale of a picture by
 * known lengths. Out of scope: measuring.
 */
export { bearingOfWay, radOfBearing, wholeBearing } from './bearing.ts';
export { frameAround } from './frameAround.ts';
export {
  fitScale,
  type LengthFit,
  lengthsDisagree,
  pictureScaleSigma,
  pixelSizeM,
  type ScaleFit,
  TAPE_ENDS_SIGMA_M,
} from './pictureScale.ts';
export { type KnownPlace, placeByPoints, scaleMisfit, type YardPlacing } from './placeByPoints.ts';
export { makeProjector, type Projector } from './projector.ts';
export { formatPlace, readPlace } from './readPlace.ts';
export { fitRigid, movePoint, type PointPair, type RigidFit, type RigidMotion } from './rigidMotion.ts';
export { lonLatToYard, yardFrameText, yardToLonLat } from './yardFrame.ts';
