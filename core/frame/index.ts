/**
 * Frame: directions, motions and picture scale in yard metres. In: bearings, points, known lengths of a picture; out:
 * directions, the turn and shift or the scale that fits best, by least squares. Out of scope: where on earth a yard
 * lies (core/earth), measuring.
 */
export { bearingOfWay, radOfBearing, wholeBearing } from './bearing.ts';
export {
  fitScale,
  type LengthFit,
  lengthsDisagree,
  pictureScaleSigma,
  pixelSizeM,
  type ScaleFit,
  TAPE_ENDS_SIGMA_M,
} from './pictureScale.ts';
export { fitRigid, movePoint, type PointPair, type RigidFit, type RigidMotion } from './rigidMotion.ts';
