import { useMemo } from 'react';
import type { Outline } from '../../core/yard.ts';
import { checkOutline, outlineSumWords, outlineText, outlineWorking } from '../../core/zones/index.ts';
import { useOpenYard } from '../app/context.ts';
import { EdgeLedgers, FormulaLines } from '../shared/EdgeLedgers.tsx';
import { WorkingFold } from '../shared/WorkingFold.tsx';

/** How the own area of the outline in hand comes about, whatever its kind; a zone has more to it. */
export function OutlineWorkingPart({ outline }: { readonly outline: Outline }) {
  const { details } = useOpenYard().yard;
  // What stands in the way of its area is said above.
  if (!checkOutline(outline).ok) return null;
  return (
    <WorkingFold
      aside="how its own area comes about"
      of={outline}
      text={() => outlineText(outlineWorking(outline, details))}
    >
      {() => <OpenWorking outline={outline} />}
    </WorkingFold>
  );
}

function OpenWorking({ outline }: { readonly outline: Outline }) {
  const { details } = useOpenYard().yard;
  const working = useMemo(() => outlineWorking(outline, details), [outline, details]);
  return (
    <>
      <FormulaLines working={working} />
      <EdgeLedgers rings={working.rings} units={working.units} />
      <p className="said">{outlineSumWords(working)}</p>
    </>
  );
}
