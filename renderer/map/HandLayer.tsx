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
  const { traced, rubber, closing, broken, crossing, dimensions, aim, reshaping, pointedLength } = preview;
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

function Corners({ ring, lens, sight }: CornersProps) {
  return (
    <g>
      {ring.map((corner, i) => {
        const at = lens.toLayer(corner);
        if (!inSight(at, sight)) return null;
        const className = i === 0 ? 'corner first' : 'corner';
        // biome-ignore lint/suspicious/noArrayIndexKey: a corner is its place in the ring
        return <rect key={i} x={at.x - 4} y={at.y - 4} width="8" height="8" className={className} />;
      })}
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
  const is = (handle: typeof hover, of: 'corner' | 'edge', ring: number, at: number): boolean =>
    handle !== null && handle.of === of && handle.ring === ring && handle.at === at;
  return (
    <g>
      {rings.map((ring, r) =>
        ring.map((corner, i) => {
          const at = lens.toLayer(corner);
          const after = lens.toLayer(ring[(i + 1) % ring.length] ?? corner);
          const size = is(chosen, 'corner', r, i) || is(hover, 'corner', r, i) ? 11 : 8;
          const long = Math.hypot(after.x - at.x, after.y - at.y) >= SHORT_EDGE_PX;
          const edgeAt = long ? handlePlace(rings, { of: 'edge', ring: r, at: i }) : undefined;
          const mid = edgeAt && lens.toLayer(edgeAt);
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: a corner is its place in the ring
            <g key={i}>
              {mid && inSight(mid, sight) && (
                <g
                  transform={`translate(${mid.x.toFixed(1)} ${mid.y.toFixed(1)})`}
                  className={is(hover, 'edge', r, i) ? 'edge-handle hover' : 'edge-handle'}
                >
                  <circle r={is(hover, 'edge', r, i) ? 7 : 5} />
                  <path d="M-3 0H3M0 -3V3" />
                </g>
              )}
              {inSight(at, sight) && (
                <rect
                  x={at.x - size / 2}
                  y={at.y - size / 2}
                  width={size}
                  height={size}
                  className={is(chosen, 'corner', r, i) ? 'corner chosen' : 'corner'}
                />
              )}
            </g>
          );
        }),
      )}
    </g>
  );
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

function LengthEnd({ at }: { readonly at: Xy }) {
  return (
    <g transform={`translate(${at.x.toFixed(2)} ${at.y.toFixed(2)})`} className="length-end">
      <circle r="7" />
      <path d="M-11 0H11M0 -11V11" />
    </g>
  );
}
