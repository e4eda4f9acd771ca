import { memo } from 'react';
import type { HosePlan, SectionHose } from '../../core/hose/index.ts';
import type { GroundPlan } from '../../core/plan/index.ts';
import type { Selection } from '../drawing/index.ts';
import type { Lens } from './lens.ts';

interface HoseLayerProps {
  readonly plan: GroundPlan;
  readonly lens: Lens;
  readonly selection: Selection;
}

/** How far the hose reaches, and how it lies to the section in hand. */
export const HoseLayer = memo(function HoseLayer({ plan: { hose }, lens, selection }: HoseLayerProps) {
  if (hose === null) return null;
  const section = sectionInHand(hose, selection);
  return (
    <g className="hose">
      <path d={lens.regions(hose.reach)} className="hose-reach" />
      {section !== undefined && section.line.length > 0 && <HoseLine section={section} lens={lens} />}
    </g>
  );
});

function sectionInHand({ sections }: HosePlan, selection: Selection): SectionHose | undefined {
  return selection?.kind === 'section'
    ? sections.find(({ sectionId }) => sectionId === selection.id)
    : undefined;
}

/** The hose as two close lines, a dot at every corner it bends at. */
function HoseLine({ section, lens }: { readonly section: SectionHose; readonly lens: Lens }) {
  const d = lens.path(section.line, false);
  return (
    <g>
      <path d={d} className="hose-line" />
      <path d={d} className="hose-line-within" />
      {section.bends.map(({ at, name }) => {
        const { x, y } = lens.toLayer(at);
        return (
          <circle key={name} cx={x.toFixed(1)} cy={y.toFixed(1)} r="4.5" className="hose-bend">
            <title>{name}</title>
          </circle>
        );
      })}
    </g>
  );
}
