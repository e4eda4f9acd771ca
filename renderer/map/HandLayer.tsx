import type { YardPoint } from '../../core/spaces.ts';
import { formatArea, formatLength } from '../../core/units/index.ts';
import type { UnitSystem } from '../../core/yard.ts';
import type { Dimension, Preview, Xy } from '../drawing/index.ts';
import { Handles, PlacedPoints, SHORT_EDGE_PX } from './Handles.tsx';
import { insidePlace } from './labels.ts';
import type { Lens, Sight } from './lens.ts';
import { BrokenRings } from './Outlines.tsx';
import { readableDeg } from './readableDeg.ts';

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
          <path d={lens.path(traced.ground, true)} className="traced-ground" />
          <path d={lens.path(traced.line, false)} className="traced" />
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
      {traced && <PlacedPoints traced={traced} lens={lens} sight={sight} />}
      {reshaping && <Handles reshaping={reshaping} lens={lens} sight={sight} />}
      {traced && preview.areaM2 !== null && (
        <AreaText corners={traced.ground} areaM2={preview.areaM2} lens={lens} units={units} />
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
function DimensionLine({ dimension, lens, units }: DimensionLineProps) {
  const a = lens.toLayer(dimension.from);
  const b = lens.toLayer(dimension.to);
  const lengthPx = Math.hypot(b.x - a.x, b.y - a.y);
  const { curve } = dimension;
  if (lengthPx < SHORT_EDGE_PX && curve === undefined) return null;
  const turnDeg = (Math.atan2(b.y - a.y, b.x - a.x) * 180) / Math.PI;
  const readDeg = readableDeg(turnDeg);
  const upsideDown = readDeg !== turnDeg;
  const half = lengthPx / 2;
  if (curve !== undefined) {
    const { x, y } = lens.toLayer(curve.at);
    const radius = curve.radiusM === null ? '' : `, r ${formatLength(curve.radiusM, units)}`;
    return (
      <g
        className="dimension"
        transform={`translate(${x.toFixed(1)} ${y.toFixed(1)}) rotate(${readDeg.toFixed(2)})`}
      >
        <text y={upsideDown ? -22 : 22} textAnchor="middle" dominantBaseline="central">
          {`${formatLength(dimension.lengthM, units)}${radius}`}
        </text>
      </g>
    );
  }
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
