import { type CheckedDistance, fieldCheck, scaleHint, verdictWords } from '../../core/fieldCheck/index.ts';
import { fineLengthFigure } from '../../core/units/index.ts';
import type { UnitSystem } from '../../core/yard.ts';
import { useBook, useOpenYard, useViewState } from '../app/context.ts';
import { Ledger } from '../shared/Ledger.tsx';
import { PagePart } from '../shared/PageHead.tsx';
import { NewCheck } from './NewCheck.tsx';
import { scaleHintWords } from './scaleHintWords.ts';
import { SelectedCheck } from './SelectedCheck.tsx';

/** Distances taped on the ground, held against the map. */
export function FieldCheckPart() {
  const { view } = useBook();
  const { drawing, selection } = useViewState();
  const { yard } = useOpenYard();
  const units = yard.details.unitSystem;
  const { unit } = fineLengthFigure(0, units);
  const checked = yard.checks.map((check) => fieldCheck(yard, check));
  const inHand = checked.find(({ check }) => selection?.kind === 'check' && check.id === selection.id);
  const hint = scaleHint(checked);
  return (
    <PagePart title="Checked by tape" aside="the map held against the ground">
      {checked.length > 0 && (
        <Ledger
          caption={`Taped distances against the map, in ${unit}`}
          columns={[
            { head: 'from, to', align: 'left' },
            { head: `map ${unit}`, align: 'right' },
            { head: 'taped', align: 'right' },
            { head: 'taped − map', align: 'right' },
            { head: 'within twice the ±?', align: 'left' },
          ]}
          rows={checked.map((each) => ({
            key: each.check.id,
            selected: each === inHand,
            onSelect: () => view.select({ kind: 'check', id: each.check.id }),
            cells: [
              each.check.name,
              fineLengthFigure(each.mapM, units).text,
              fineLengthFigure(each.check.tapedM, units).text,
              <Difference key="difference" checked={each} units={units} />,
              <Verdict key="verdict" checked={each} />,
            ],
          }))}
        />
      )}
      {hint && <p className="said">{scaleHintWords(hint)}</p>}
      {inHand && <SelectedCheck key={inHand.check.id} checked={inHand} />}
      <div className="do-row">
        <button
          type="button"
          className="do"
          aria-pressed={drawing.kind === 'tape-between'}
          onClick={() => view.take({ kind: 'tape-between' })}
        >
          point out a distance
        </button>
      </div>
      <NewCheck />
    </PagePart>
  );
}

interface CellProps {
  readonly checked: CheckedDistance;
  readonly units: UnitSystem;
}

function Difference({ checked: { differenceM, sigmaM }, units }: CellProps) {
  const text = fineLengthFigure(differenceM, units).text;
  return (
    <>
      {text.startsWith('-') || differenceM === 0 ? text : `+${text}`}
      {sigmaM !== null && <span className="plus-minus"> ± {fineLengthFigure(sigmaM, units).text}</span>}
    </>
  );
}

/** In words, with a sign before them for the eye that runs down the column. */
function Verdict({ checked }: { readonly checked: CheckedDistance }) {
  const { verdict, endsFound } = checked;
  const words = verdictWords(checked);
  if (endsFound && verdict === 'inside') return `✓ ${words}`;
  if (endsFound && verdict === 'not-stated') return `– ${words}`;
  return <span className="verdict-outside">{`${endsFound ? '✗' : '?'} ${words}`}</span>;
}
