declare const unit: unique symbol;
type Branded<U extends string> = number & { readonly [unit]: U };

/** A number that knows its unit. Made only by the functions below, so that a litre cannot pass for a kilogram. */
export type Metres = Branded<'m'>;
export type SquareMetres = Branded<'m2'>;
export type Litres = Branded<'l'>;
export type Kilograms = Branded<'kg'>;
export type Seconds = Branded<'s'>;
export type MetresPerSecond = Branded<'m/s'>;
export type LitresPerM2 = Branded<'l/m2'>;
/** Compass bearing or turn in degrees, clockwise. */
export type Degrees = Branded<'deg'>;

/** Says of a plain number that it is metres. The makers below do the same for their units. */
export function metres(lengthM: number): Metres {
  return lengthM as Metres;
}
export function squareMetres(areaM2: number): SquareMetres {
  return areaM2 as SquareMetres;
}
export function litres(volumeL: number): Litres {
  return volumeL as Litres;
}
export function kilograms(massKg: number): Kilograms {
  return massKg as Kilograms;
}
export function seconds(timeS: number): Seconds {
  return timeS as Seconds;
}
export function metresPerSecond(speedMPerS: number): MetresPerSecond {
  return speedMPerS as MetresPerSecond;
}
export function litresPerM2(rateLPerM2: number): LitresPerM2 {
  return rateLPerM2 as LitresPerM2;
}
export function degrees(angleDeg: number): Degrees {
  return angleDeg as Degrees;
}
