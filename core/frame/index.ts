/**
 * Frames: between places on earth, pixels of a picture and yard metres. In: degrees, coordinates of a named
 * reference system, pixels; out: yard points and back. Method: transverse Mercator about the yard's own middle
 * through a projection library; the scale of a picture from its known lengths by least squares. Out of scope: measuring.
 */
export { radOfBearing } from './bearing.ts';
export { frameAround } from './frameAround.ts';
export {
  fitScale,
  type LengthFit,
  lengthsDisagree,
  pictureScaleSigma,
  pixelSizeM,
  type ScaleFit,
} from './pictureScale.ts';
export { makeProjector, type Projector } from './projector.ts';
export { lonLatToYard, yardFrameText, yardToLonLat } from './yardFrame.ts';
