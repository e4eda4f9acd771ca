import { tracedRing } from '../../core/curves/index.ts';
import type { YardPoint } from '../../core/spaces.ts';
import type { Yard } from '../../core/yard.ts';
import { pictureCorners } from '../drawing/index.ts';

/** Everything that should be in sight when the whole yard is; an empty yard shows a plot to begin on. */
export function placesOf(yard: Yard): readonly YardPoint[] {
  const places = [
    ...yard.outlines.flatMap(({ outer }) => tracedRing(outer)),
    ...yard.marks.map(({ at }) => at),
    ...yard.pictures.flatMap((picture) => pictureCorners(picture)),
  ];
  return places.length >= 2
    ? places
    : [
        { xM: -20, yM: -15 },
        { xM: 20, yM: 15 },
      ];
}
