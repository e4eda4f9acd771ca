import type { Ring, YardPoint } from '../../core/spaces.ts';
import { formatArea, formatLength } from '../../core/units/index.ts';
import type { UnitSystem } from '../../core/yard.ts';
import { type Dimension, handlePlace, type Preview, type Reshaping, type Xy } from '../drawing/index.ts';
import { insidePlace } from './labels.ts';
import type { Lens, Sight } from './lens.ts';
import { BrokenRings } from './Outlines.tsx';
import { readableDeg } from './readableDeg.ts';

/** An edge shorter than this on the screen has no room for its length or for a middle handle. */
const SHORT_EDGE_PX = 40;

const AREA_TEXT_PX = 22;

interface HandLayerProps {
  readonly preview: Preview;
  readonly lens: Lens;
  readonly sight: Sight;
  readonly units: UnitSystem;
}

/** What the hand is doing: rubber band, lengths, corner handles, the crosshair. Orange, because it is in hand. */
export function HandLayer({ preview, lens, sight, units }: HandLayerProps) {
  const { traced, rubber, closing, broken, crossing, dimensions, aim, reshaping, pointedLength, pointed } =
    preview;
  return (
    <g className="hand">
      {traced && traced.corners.length > 0 && (
        <>
          <path d={lens.path([...traced.corners, ...rubber.slice(1)], true)} className="traced-ground" />
          <path d={lens.path(traced.corners, false)} className="traced" />
        </>
      )}
      <path d={lens.path(closing, false)} className="closing" />
      <path d={lens.path(rubber, false)} className="rubber" />
      <BrokenRings rings={broken} lens={lens} />
      <path d={lens.path(pointedLength, false)} className="pointed-length" />
      {pointedLength.map((at, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the first end and the second
        <LengthEnd key={i} at={lens.toLayer(at)} />
      ))}
      {pointed.map((at, i) => (
        <PointedPlace key={`${at.xM} ${at.yM}`} at={lens.toLayer(at)} number={i + 1} />
      ))}
      {dimensions.map((dimension) => (
        <DimensionLine key={keyOf(dimension)} dimension={dimension} lens={lens} units={units} />
      ))}
      {traced && <Corners ring={traced.corners} lens={lens} sight={sight} />}
      {reshaping && <Handles reshaping={reshaping} lens={lens} sight={sight} />}
      {traced && preview.areaM2 !== null && (
        <AreaText
          corners={[...traced.corners, ...rubber.slice(1)]}
          areaM2={preview.areaM2}
          lens={lens}
          units={units}
        />
      )}
      {crossing && <CrossingMark at={lens.toLayer(crossing)} />}
      {aim && <Crosshair at={lens.toLayer(aim.at)} words={aim.words} />}
    </g>
  );
}

function keyOf({ from, to }: Dimension): string {
  return `${from.xM} ${from.yM} ${to.xM} ${to.yM}`;
}

interface DimensionLineProps {
  readonly dimension: Dimension;
  readonly lens: Lens;
  readonly units: UnitSystem;
}

/** A length written along its edge, between two ticks, a little to its right-hand side. */
export function DimensionLine({ dimension, lens, units }: DimensionLineProps) {
  const a = lens.toLayer(dimension.from);
  const b = lens.toLayer(dimension.to);
  const lengthPx = Math.hypot(b.x - a.x, b.y - a.y);
  if (lengthPx < SHORT_EDGE_PX) return null;
  const turnDeg = (Math.atan2(b.y - a.y, b.x - a.x) * 180) / Math.PI;
  const readDeg = readableDeg(turnDeg);
  const upsideDown = readDeg !== turnDeg;
  const half = lengthPx / 2;
  return (
    <g
      className="dimension"
      transform={`translate(${((a.x + b.x) / 2).toFixed(1)} ${((a.y + b.y) / 2).toFixed(1)}) rotate(${readDeg.toFixed(2)})`}
    >
      <g transform={`translate(0 ${upsideDown ? -18 : 18})`}>
        <path d={`M${-half} 0H${half}M${-half} -6V6M${half} -6V6`} className="dimension-line" />
        <text textAnchor="middle" dominantBaseline="central">
          {formatLength(dimension.lengthM, units)}
        </text>
      </g>
    </g>
  );
}

interface CornersProps {
  readonly ring: Ring;
  readonly lens: Lens;
  readonly sight: Sight;
}

/** Corners set so far; the first is filled, for it closes. */
function Corners({ ring, lens, sight }: CornersProps) {
  const first = ring[0];
  return (
    <g>
      <path d={squares(ring, lens, sight)} className="corner" />
      {first && <path d={square(lens.toLayer(first), 8)} className="corner chosen" />}
    </g>
  );
}

interface HandlesProps {
  readonly reshaping: Reshaping;
  readonly lens: Lens;
  readonly sight: Sight;
}

/** Squares on the corners; a small plus in the middle of each edge long enough to take another corner. */
function Handles({ reshaping, lens, sight }: HandlesProps) {
  const { rings, hover, chosen } = reshaping;
  const hovered = hover && handlePlace(rings, hover);
  const chosenAt = chosen && handlePlace(rings, chosen);
  return (
    <g>
      <path d={rings.map((ring) => edgeMiddles(ring, lens, sight)).join('')} className="edge-handle" />
      <path d={rings.map((ring) => squares(ring, lens, sight)).join('')} className="corner" />
      {hover && hovered && (
        <path
          d={hover.of === 'edge' ? ringedPlus(lens.toLayer(hovered), 7) : square(lens.toLayer(hovered), 11)}
          className={hover.of === 'edge' ? 'edge-handle hover' : 'corner'}
        />
      )}
      {chosenAt && <path d={square(lens.toLayer(chosenAt), 11)} className="corner chosen" />}
    </g>
  );
}

/** Corners closer together than this on the screen share a square: more would be a smear, and slow. */
const CROWDED_PX = 7;

/** One path for all squares, since an outline may have thousands of corners. */
function squares(ring: Ring, lens: Lens, sight: Sight): string {
  let d = '';
  let lastX = Number.NEGATIVE_INFINITY;
  let lastY = Number.NEGATIVE_INFINITY;
  for (const corner of ring) {
    const at = lens.toLayer(corner);
    if (Math.abs(at.x - lastX) < CROWDED_PX && Math.abs(at.y - lastY) < CROWDED_PX) continue;
    if (!inSight(at, sight)) continue;
    d += square(at, 8);
    lastX = at.x;
    lastY = at.y;
  }
  return d;
}

function edgeMiddles(ring: Ring, lens: Lens, sight: Sight): string {
  let d = '';
  for (const [i, corner] of ring.entries()) {
    const from = lens.toLayer(corner);
    const to = lens.toLayer(ring[(i + 1) % ring.length] ?? corner);
    const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
    const long = Math.hypot(to.x - from.x, to.y - from.y) >= SHORT_EDGE_PX;
    if (long && inSight(middle, sight)) d += ringedPlus(middle, 5);
  }
  return d;
}

function square({ x, y }: Xy, sizePx: number): string {
  return `M${(x - sizePx / 2).toFixed(1)} ${(y - sizePx / 2).toFixed(1)}h${sizePx}v${sizePx}h${-sizePx}z`;
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

interface AreaTextProps {
  readonly corners: readonly YardPoint[];
  readonly areaM2: number;
  readonly lens: Lens;
  readonly units: UnitSystem;
}

function AreaText({ corners, areaM2, lens, units }: AreaTextProps) {
  const { x, y } = lens.toLayer(insidePlace({ outer: corners, holes: [] }, AREA_TEXT_PX * lens.metresPerPx));
  return (
    <text x={x} y={y} className="area-in-hand" textAnchor="middle" dominantBaseline="central">
      {formatArea(areaM2, units)}
    </text>
  );
}

/** What it snapped to stands beside it, where the eye is. */
function Crosshair({ at, words }: { readonly at: Xy; readonly words: string }) {
  return (
    <g transform={`translate(${at.x.toFixed(2)} ${at.y.toFixed(2)})`} className="crosshair">
      <path d="M-16 0H-4M4 0H16M0 -16V-4M0 4V16" />
      {words !== '' && <circle r="8" />}
      {words !== '' && (
        <text x="14" y="-14" className="snap-words">
          {words}
        </text>
      )}
    </g>
  );
}

function CrossingMark({ at }: { readonly at: Xy }) {
  return (
    <g transform={`translate(${at.x.toFixed(2)} ${at.y.toFixed(2)})`} className="crossing">
      <circle r="13" />
      <path d="M-5 -5L5 5M-5 5L5 -5" />
    </g>
  );
}

/** A point whose place on earth is or will be known, numbered as in the columns. */
function PointedPlace({ at, number }: { readonly at: Xy; readonly number: number }) {
  return (
    <>
      <LengthEnd at={at} />
      <text x={at.x + 12} y={at.y - 9} className="pointed-number">
        {number}
      </text>
    </>
  );
}

function LengthEnd({ at }: { readonly at: Xy }) {
  return (
    <g transform={`translate(${at.x.toFixed(2)} ${at.y.toFixed(2)})`} className="length-end">
      <circle r="7" />
      <path d="M-11 0H11M0 -11V11" />
    </g>
  );
}
