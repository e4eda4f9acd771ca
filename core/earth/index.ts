/**
 * Earth: between places on earth and yard metres. In: degrees, points of a yard whose places are known; out: yard
 * points and places. Method: transverse Mercator about the yard's own middle through a projection library; where a yard
 * lies by known places, by least squares of a turn and a shift. Out of scope: other coordinate systems (core/crs).
 */
export { formatPlace } from './formatPlace.ts';
export { frameAround } from './frameAround.ts';
export { type KnownPlace, placeByPoints, scaleMisfit, type YardPlacing } from './placeByPoints.ts';
export { lonLatToYard, yardFrameText, yardToLonLat } from './yardFrame.ts';
