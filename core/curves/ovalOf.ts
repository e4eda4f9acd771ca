import type { Traced } from '../yard.ts';
import type { Oval } from './ovalRing.ts';

/** A traced circle or ellipse by its axes. A circle's rim is taken hold of in the east. */
export function ovalOf(traced: Exclude<Traced, { kind: 'corners' }>): Oval {
  const { centre } = traced;
  return traced.kind === 'circle'
    ? { centre, halfAlongM: traced.radiusM, halfAcrossM: traced.radiusM, bearingDeg: 90 }
    : {
        centre,
        halfAlongM: traced.halfLengthM,
        halfAcrossM: traced.halfWidthM,
        bearingDeg: traced.bearingDeg,
      };
}
