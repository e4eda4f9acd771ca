import { pictureScaleSigma } from '../../core/frame/index.ts';
import { formatLength, formatSignificant } from '../../core/units/index.ts';
import type { Picture, UnitSystem } from '../../core/yard.ts';

/** How a picture lies in the yard, in a few words: "scaled by 3 lengths, ± 0.35%". */
export function placementWords(picture: Picture, units: UnitSystem): string {
  const { placement } = picture;
  if (placement.kind === 'unscaled') return 'no scale yet: nothing over it has an area';
  if (placement.kind === 'georeferenced') return `knows where it is, ${placement.crs}`;
  const [first, ...others] = placement.lengths;
  const by =
    first && others.length === 0
      ? `a length of ${formatLength(first.lengthM, units)}`
      : `${placement.lengths.length} lengths`;
  const sigma = pictureScaleSigma(picture);
  return `scaled by ${by}${sigma === null ? '' : `, ± ${formatSignificant(sigma * 100, 2)}%`}`;
}
