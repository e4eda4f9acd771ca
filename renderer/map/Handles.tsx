import {
  type Handle,
  handlePlace,
  handlesOf,
  type Preview,
  type Reshaping,
  type Xy,
} from '../drawing/index.ts';
import type { YardPoint } from '../../core/spaces.ts';
import type { Traced } from '../../core/yard.ts';
import type { Lens, Sight } from './lens.ts';

/** An edge shorter than this on the screen has no room for its length or for a middle handle. */
export const SHORT_EDGE_PX = 40;

interface PlacedProps {
  readonly traced: NonNullable<Preview['traced']>;
  readonly lens: Lens;
  readonly sight: Sight;
}

/** Points set so far; the first is filled, for it closes. */
export function PlacedPoints({ traced, lens, sight }: PlacedProps) {
  const first = traced.corners[0];
  return (
    <g>
      <path d={shapes(traced.corners, square8, lens, sight)} className="corner" />
      <path d={shapes(traced.vias, diamond6, lens, sight)} className="corner" />
      {first && <path d={square(lens.toLayer(first), 8)} className="corner chosen" />}
    </g>
  );
}

interface HandlesProps {
  readonly reshaping: Reshaping;
  readonly lens: Lens;
  readonly sight: Sight;
}

/**
 * Squares on the corners, diamonds on the points of arcs and on what sizes a circle or an ellipse, a ring round its
 * centre; a small plus in the middle of each edge long enough to take another corner.
 */
export function Handles({ reshaping, lens, sight }: HandlesProps) {
  const { rings, hover, chosen } = reshaping;
  const hovered = hover && handlePlace(rings, hover);
  const chosenAt = chosen && handlePlace(rings, chosen);
  const own = rings.flatMap((ring) => handlesOf(ring).own);
  const places = (of: readonly Handle['of'][]) =>
    own.filter((one) => of.includes(one.of)).map(({ place }) => place);
  return (
    <g>
      <path d={rings.map((ring) => edgeMiddles(ring, lens, sight)).join('')} className="edge-handle" />
      <path d={shapes(places(['corner']), square8, lens, sight)} className="corner" />
      <path d={shapes(places(SIZES), diamond6, lens, sight)} className="corner" />
      <path d={shapes(places(['centre']), ring6, lens, sight)} className="corner" />
      {hover && hovered && (
        <path
          d={large(hover.of, lens.toLayer(hovered))}
          className={hover.of === 'edge' ? 'edge-handle hover' : 'corner'}
        />
      )}
      {chosen && chosenAt && <path d={large(chosen.of, lens.toLayer(chosenAt))} className="corner chosen" />}
    </g>
  );
}

/** What bends or sizes: points of arcs, the rim, the ends of an ellipse. */
const SIZES: readonly Handle['of'][] = ['via', 'rim', 'length-end', 'width-end'];

function large(of: Handle['of'], at: Xy): string {
  if (of === 'edge') return ringedPlus(at, 7);
  if (of === 'corner') return square(at, 11);
  return of === 'centre' ? circle(at, 8) : diamond(at, 8);
}

const square8 = (at: Xy): string => square(at, 8);
const diamond6 = (at: Xy): string => diamond(at, 6);
const ring6 = (at: Xy): string => circle(at, 6);

/** Corners closer together than this on the screen share a handle: more would be a smear, and slow. */
const CROWDED_PX = 7;

/** One path for all of a kind, since an outline may have thousands of corners. */
function shapes(points: readonly YardPoint[], drawn: (at: Xy) => string, lens: Lens, sight: Sight): string {
  let d = '';
  let lastX = Number.NEGATIVE_INFINITY;
  let lastY = Number.NEGATIVE_INFINITY;
  for (const point of points) {
    const at = lens.toLayer(point);
    if (Math.abs(at.x - lastX) < CROWDED_PX && Math.abs(at.y - lastY) < CROWDED_PX) continue;
    if (!inSight(at, sight)) continue;
    d += drawn(at);
    lastX = at.x;
    lastY = at.y;
  }
  return d;
}

function edgeMiddles(traced: Traced, lens: Lens, sight: Sight): string {
  if (traced.kind !== 'corners') return '';
  const { corners } = traced;
  let d = '';
  for (const { at, place } of handlesOf(traced).edges) {
    const corner = corners[at] ?? place;
    const from = lens.toLayer(corner);
    const to = lens.toLayer(corners[(at + 1) % corners.length] ?? corner);
    const long = Math.hypot(to.x - from.x, to.y - from.y) >= SHORT_EDGE_PX;
    const middle = lens.toLayer(place);
    if (long && inSight(middle, sight)) d += ringedPlus(middle, 5);
  }
  return d;
}

function square({ x, y }: Xy, sizePx: number): string {
  return `M${(x - sizePx / 2).toFixed(1)} ${(y - sizePx / 2).toFixed(1)}h${sizePx}v${sizePx}h${-sizePx}z`;
}

function diamond({ x, y }: Xy, reachPx: number): string {
  return `M${x.toFixed(1)} ${(y - reachPx).toFixed(1)}l${reachPx} ${reachPx}l${-reachPx} ${reachPx}l${-reachPx} ${-reachPx}z`;
}

function circle({ x, y }: Xy, radiusPx: number): string {
  const half = `a${radiusPx} ${radiusPx} 0 1 0`;
  return `M${(x - radiusPx).toFixed(1)} ${y.toFixed(1)}${half} ${2 * radiusPx} 0${half} ${-2 * radiusPx} 0z`;
}

/** A circle with a plus in it. */
function ringedPlus({ x, y }: Xy, radiusPx: number): string {
  const ring = `m${-radiusPx} 0a${radiusPx} ${radiusPx} 0 1 0 ${2 * radiusPx} 0a${radiusPx} ${radiusPx} 0 1 0 ${-2 * radiusPx} 0`;
  const centre = `M${x.toFixed(1)} ${y.toFixed(1)}`;
  return `${centre}${ring}${centre}m-3 0h6m-3 -3v6`;
}

function inSight(at: Xy, sight: Sight): boolean {
  return at.x >= sight.left && at.x <= sight.right && at.y >= sight.top && at.y <= sight.bottom;
}
