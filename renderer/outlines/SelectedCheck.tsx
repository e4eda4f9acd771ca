import { makeEdit, putRow } from '../../core/edits/index.ts';
import { type CheckedDistance, tapeSigmaM } from '../../core/fieldCheck/index.ts';
import { fineLengthFigure, parseLength, USUAL_UNITS } from '../../core/units/index.ts';
import type { FieldCheck } from '../../core/yard.ts';
import { useBook, useOpenYard } from '../app/context.ts';
import { FigureField } from '../shared/FigureField.tsx';
import { parseName } from '../shared/parseName.ts';
import { TakeAway } from './TakeAway.tsx';

/** The taped distance in hand: what it lies between, what the tape read, and taking it away. */
export function SelectedCheck({ checked }: { readonly checked: CheckedDistance }) {
  const { session } = useBook();
  const { yard } = useOpenYard();
  const units = yard.details.unitSystem;
  const { check, from, to } = checked;
  const put = (label: string, part: Partial<FieldCheck>): void =>
    session.edit(makeEdit(label, putRow(yard, 'checks', { ...check, ...part })));
  return (
    <>
      <FigureField
        label="name"
        size="wide"
        shown={check.name}
        units={units}
        parse={parseName}
        onCommit={(name) => put(`rename ${check.name}`, { name })}
      />
      <div className="line">
        <span>between</span>
        <span>
          {from.words} and {to.words}
        </span>
      </div>
      <FigureField
        label="the tape read"
        shown={fineLengthFigure(check.tapedM, units).text}
        unit={USUAL_UNITS[units].length}
        units={units}
        parse={(typed) => parseLength(typed, 'taped distance', USUAL_UNITS[units].length)}
        onCommit={(tapedM) => put(`mend taped ${check.name}`, { tapedM })}
      />
      <div className="line">
        <span>of that the tape’s own</span>
        <span>
          ± {fineLengthFigure(tapeSigmaM(check.tapedM), units).text} {USUAL_UNITS[units].length}{' '}
          <span className="note">usual, no source</span>
        </span>
      </div>
      <TakeAway part="checks" id={check.id} name={check.name} />
    </>
  );
}
