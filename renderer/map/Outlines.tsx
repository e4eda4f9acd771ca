import { memo } from 'react';
import { outlineRings } from '../../core/curves/index.ts';
import type { Ring } from '../../core/spaces.ts';
import { formatArea } from '../../core/units/index.ts';
import type { Outline, OutlineKind, UnitSystem, Yard } from '../../core/yard.ts';
import type { ResolvedYard } from '../../core/zones/index.ts';
import { OUTLINE_WORDS, type Selection } from '../drawing/index.ts';
import type { Lens } from './lens.ts';
import { SharedGround } from './SharedGround.tsx';
import { shownTreatedM2 } from '../shared/shownArea.ts';

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
}

/** Every outline of the yard in its own ink and hatch. */
export const Outlines = memo(function Outlines(props: OutlinesProps) {
  const { yard, resolved, lens, units, selection, onChoose } = props;
  const ordered = [...yard.outlines].sort((a, b) => DRAWN.indexOf(a.kind) - DRAWN.indexOf(b.kind));
  const zones = ordered.filter(({ kind }) => kind === 'zone');
  const others = ordered.filter(({ kind }) => kind !== 'zone');
  const drawn = (outline: Outline) => (
    <OutlineShape
      key={outline.id}
      outline={outline}
      lens={lens}
      areaText={areaText(outline, resolved, units)}
      selected={selection?.kind === 'outline' && selection.id === outline.id}
      onChoose={onChoose}
    />
  );
  return (
    <g>
      {zones.map(drawn)}
      {resolved !== null && (
        <SharedGround overlaps={resolved.overlaps} strips={resolved.strips} lens={lens} />
      )}
      {others.map(drawn)}
    </g>
  );
});

function areaText(outline: Outline, resolved: ResolvedYard | null, units: UnitSystem): string {
  const treatedM2 = shownTreatedM2(resolved, units, outline.id);
  return treatedM2 === undefined ? '' : formatArea(treatedM2, units);
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
      d={lens.rings(outlineRings(outline))}
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

/** An outline that cannot stand: drawn broken, its hatch left out, until it is mended. */
export function BrokenRings({ rings, lens }: { readonly rings: readonly Ring[]; readonly lens: Lens }) {
  return <path d={lens.rings(rings)} className="broken" />;
}
