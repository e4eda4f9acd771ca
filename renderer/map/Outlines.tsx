import { memo } from 'react';
import type { Ring } from '../../core/spaces.ts';
import { formatArea } from '../../core/units/index.ts';
import type { Outline, OutlineKind, UnitSystem, Yard } from '../../core/yard.ts';
import type { ResolvedYard } from '../../core/zones/index.ts';
import { OUTLINE_WORDS, type Selection } from '../drawing/index.ts';
import { fitsIn, labelPlace } from './labels.ts';
import type { Lens } from './lens.ts';

/** Ground first, then what lies on it, then what stands on it: the order of the ink. */
const DRAWN: readonly OutlineKind[] = [
  'zone',
  'keep-off',
  'bed',
  'tree',
  'water',
  'hardscape',
  'building',
  'check-plot',
];

interface OutlinesProps {
  readonly yard: Yard;
  readonly resolved: ResolvedYard | null;
  readonly lens: Lens;
  readonly units: UnitSystem;
  readonly selection: Selection;
  readonly onChoose: (selection: Selection) => void;
  /** false where sections carry the letters instead. */
  readonly zoneNames: boolean;
}

/** Every outline of the yard in its own ink and hatch. */
export function Outlines(props: OutlinesProps) {
  const { yard, resolved, lens, units, selection, onChoose, zoneNames } = props;
  const ordered = [...yard.outlines].sort((a, b) => DRAWN.indexOf(a.kind) - DRAWN.indexOf(b.kind));
  return (
    <g>
      {ordered.map((outline) => (
        <OutlineShape
          key={outline.id}
          outline={outline}
          lens={lens}
          areaText={areaText(outline, resolved, units)}
          selected={selection?.kind === 'outline' && selection.id === outline.id}
          onChoose={onChoose}
        />
      ))}
      <g className="labels">
        {ordered.map((outline) =>
          outline.kind === 'zone' && !zoneNames ? null : (
            <OutlineLabel
              key={outline.id}
              outline={outline}
              lens={lens}
              areaText={outline.kind === 'zone' ? areaText(outline, resolved, units) : ''}
              selected={selection?.kind === 'outline' && selection.id === outline.id}
            />
          ),
        )}
      </g>
    </g>
  );
}

function areaText(outline: Outline, resolved: ResolvedYard | null, units: UnitSystem): string {
  const zone = resolved?.zones.find(({ zoneId }) => zoneId === outline.id);
  return zone ? formatArea(zone.treatedAreaM2, units) : '';
}

interface ShapeProps {
  readonly outline: Outline;
  readonly lens: Lens;
  readonly areaText: string;
  readonly selected: boolean;
}

const OutlineShape = memo(function OutlineShape(
  props: ShapeProps & { readonly onChoose: (selection: Selection) => void },
) {
  const { outline, lens, areaText: area, selected, onChoose } = props;
  const said = `${OUTLINE_WORDS[outline.kind]} ${outline.name}${area ? `, ${area}` : ''}`;
  return (
    // biome-ignore lint/a11y/useSemanticElements: a button cannot stand inside a drawing
    <path
      d={lens.rings([outline.outer, ...outline.holes])}
      className={`outline outline-${outline.kind}${selected ? ' selected' : ''}`}
      fillRule="evenodd"
      role="button"
      tabIndex={0}
      aria-label={said}
      aria-pressed={selected}
      onKeyDown={(event) => {
        if (selected || (event.key !== 'Enter' && event.key !== ' ')) return;
        event.preventDefault();
        event.stopPropagation();
        onChoose({ kind: 'outline', id: outline.id });
      }}
    />
  );
});

const OutlineLabel = memo(function OutlineLabel({ outline, lens, areaText: area, selected }: ShapeProps) {
  const words = outline.name;
  if (!fitsIn(outline.outer, lens, words.length) && !selected) return null;
  const { x, y } = lens.toLayer(labelPlace(outline));
  const className = outline.kind === 'zone' ? 'zone-name' : 'thing-name';
  return (
    <text x={x} y={y} className={className} textAnchor="middle" dominantBaseline="central">
      {area ? (
        <>
          <tspan x={x} dy="-0.35em">
            {words}
          </tspan>
          <tspan x={x} dy="1.35em" className="zone-area">
            {area}
          </tspan>
        </>
      ) : (
        words
      )}
    </text>
  );
});

/** An outline that cannot stand: drawn broken, its hatch left out, until it is mended. */
export function BrokenRings({ rings, lens }: { readonly rings: readonly Ring[]; readonly lens: Lens }) {
  return <path d={lens.rings(rings)} className="broken" />;
}
