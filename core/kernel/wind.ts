import type { YardPoint } from '../spaces.ts';
import type { RingBounds } from './measure.ts';

/** One of the eight winds. */
export interface Wind {
  readonly name: string;
  readonly letters: string;
}

/** Clockwise from north. */
const WINDS: readonly Wind[] = [
  { name: 'north', letters: 'N' },
  { name: 'north-east', letters: 'NE' },
  { name: 'east', letters: 'E' },
  { name: 'south-east', letters: 'SE' },
  { name: 'south', letters: 'S' },
  { name: 'south-west', letters: 'SW' },
  { name: 'west', letters: 'W' },
  { name: 'north-west', letters: 'NW' },
];

/** To which wind a place lies from the middle of a box, which counts as square: a corner is a corner. */
export function windIn(box: RingBounds, { xM, yM }: YardPoint): Wind {
  // A box without width or height has its middle everywhere across.
  const across = (2 * xM - box.minXM - box.maxXM) / (box.maxXM - box.minXM || 1);
  const up = (2 * yM - box.minYM - box.maxYM) / (box.maxYM - box.minYM || 1);
  const eighths = Math.round(Math.atan2(across, up) / (Math.PI / 4));
  return WINDS[(eighths + 8) % 8] as Wind;
}
