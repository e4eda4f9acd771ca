/**
 * Frames: between places on earth, pixels of a picture and yard metres. In: degrees, coordinates of a named
 * reference system, pixels; out: yard points and back. Method: transverse Mercator about the yard's own middle
 * through a projection library; a similarity for a picture with one known length. Out of scope: measuring.
 */
export { radOfBearing } from './bearing.ts';
export { frameAround } from './frameAround.ts';
export { type KnownLength, picturePointToYard, scalePicture, yardToPicturePoint } from './pictureScale.ts';
export { makeProjector, type Projector } from './projector.ts';
export { lonLatToYard, yardFrameText, yardToLonLat } from './yardFrame.ts';
