import { useState } from 'react';
import { makeEdit, putRow } from '../../core/edits/index.ts';
import { type CheckedDistance, tapeSigmaM } from '../../core/fieldCheck/index.ts';
import type { Problem } from '../../core/problems.ts';
import { fineLengthFigure, parseLength, USUAL_UNITS } from '../../core/units/index.ts';
import type { FieldCheck } from '../../core/yard.ts';
import { useBook, useOpenYard } from '../app/context.ts';
import { FigureField } from '../shared/FigureField.tsx';
import { parseName } from '../shared/parseName.ts';
import { ProblemLines } from '../shared/ProblemLines.tsx';
import { checkAsLength } from './checkAsLength.ts';
import { TakeAway } from './TakeAway.tsx';

/** The taped distance in hand: what it lies between, what the tape read, and taking it away. */
export function SelectedCheck({ checked }: { readonly checked: CheckedDistance }) {
  const { session, view } = useBook();
  const { yard } = useOpenYard();
  const units = yard.details.unitSystem;
  const { check, from, to, pictureId } = checked;
  const [problem, setProblem] = useState<Problem | null>(null);
  const put = (label: string, part: Partial<FieldCheck>): void =>
    session.edit(makeEdit(label, putRow(yard, 'checks', { ...check, ...part })));
  const picture = yard.pictures.find(({ id, placement }) => id === pictureId && placement.kind === 'scaled');

  function scale(): void {
    if (picture === undefined) return;
    const edit = checkAsLength(yard, picture, check);
    if (!edit.ok) {
      setProblem(edit.problems[0]);
      return;
    }
    view.select(null);
    session.edit(edit.value);
  }

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
          <span className="note">a usual figure, not yours</span>
        </span>
      </div>
      {picture && (
        <div className="do-row">
          <button type="button" className="do" onClick={scale}>
            scale {picture.name} by it
          </button>
          <span className="note">with the lengths it has; it is a check no longer</span>
        </div>
      )}
      {problem && <ProblemLines problems={[problem]} units={units} />}
      <TakeAway part="checks" id={check.id} name={check.name} />
    </>
  );
}
