import { useState } from 'react';
import { makeEdit, putRow } from '../../core/edits/index.ts';
import { type TieSide, twoTapes } from '../../core/tape/index.ts';
import { formatLength, formatNumber, parseLength, USUAL_UNITS } from '../../core/units/index.ts';
import { useBook, useOpenYard } from '../app/context.ts';
import { nextName } from '../drawing/index.ts';
import { ChoiceField } from '../shared/ChoiceField.tsx';
import { FigureField } from '../shared/FigureField.tsx';
import { ProblemLines } from '../shared/ProblemLines.tsx';
import { ok } from '../../core/result.ts';

interface Tape {
  readonly typed: string;
  readonly lengthM: number;
}

/** A point from two marks by a tape to each, made a landmark. */
export function TapeTie() {
  const { session, view } = useBook();
  const { yard } = useOpenYard();
  const units = yard.details.unitSystem;
  const unit = USUAL_UNITS[units].length;
  const [ids, setIds] = useState<readonly [string, string]>(['', '']);
  const [tapes, setTapes] = useState<readonly [Tape | null, Tape | null]>([null, null]);
  const [side, setSide] = useState<TieSide>('left');
  const first = yard.marks.find(({ id }) => id === ids[0]) ?? yard.marks[0];
  const second =
    yard.marks.find(({ id }) => id === ids[1] && id !== first?.id) ??
    yard.marks.find(({ id }) => id !== first?.id);
  if (first === undefined || second === undefined) {
    return <p className="said">Place two landmarks to pull tapes from, such as two corners of the house.</p>;
  }
  const [one, two] = tapes;
  const tie = one && two ? twoTapes(first.at, second.at, one.lengthM, two.lengthM, side) : null;
  const choices = yard.marks.map(({ id, name }) => [id, name] as const);
  const parse = (field: string) => (typed: string) => {
    const read = parseLength(typed, field, unit);
    return read.ok ? ok({ typed: typed.trim(), lengthM: read.value }) : read;
  };

  function make(): void {
    if (!tie?.ok) return;
    const id = crypto.randomUUID();
    const row = { id, kind: 'landmark', name: nextName(yard, 'landmark'), at: tie.value.at } as const;
    session.edit(makeEdit(`place ${row.name} by two tapes`, putRow(yard, 'marks', row)));
    view.select({ kind: 'mark', id });
  }

  return (
    <>
      <ChoiceField
        label="first tape from"
        value={first.id}
        choices={choices}
        onChoose={(id) => setIds([id, second.id])}
      />
      <FigureField
        label="first tape"
        shown={one?.typed ?? ''}
        unit={unit}
        units={units}
        parse={parse('first tape')}
        onCommit={(tape) => setTapes(([, b]) => [tape, b])}
      />
      <ChoiceField
        label="second tape from"
        value={second.id}
        choices={choices.filter(([id]) => id !== first.id)}
        onChoose={(id) => setIds([first.id, id])}
      />
      <FigureField
        label="second tape"
        shown={two?.typed ?? ''}
        unit={unit}
        units={units}
        parse={parse('second tape')}
        onCommit={(tape) => setTapes(([a]) => [a, tape])}
      />
      <ChoiceField<TieSide>
        label="seen from the first to the second, it lies"
        value={side}
        choices={[
          ['left', 'to the left'],
          ['right', 'to the right'],
        ]}
        onChoose={setSide}
      />
      <div className="do-row">
        <button type="button" className="do do-main" onClick={make}>
          make it a landmark
        </button>
      </div>
      {tie?.ok && (
        <>
          <div className="line">
            <span>east and north of the origin</span>
            <span>
              {formatLength(tie.value.at.xM, units)}, {formatLength(tie.value.at.yM, units)}
            </span>
          </div>
          <div className="line">
            <span>an error of a tape moves it</span>
            <span>{formatNumber(tie.value.timesError, 1)} times as far</span>
          </div>
        </>
      )}
      {tie && <ProblemLines problems={tie.ok ? tie.value.cautions : tie.problems} units={units} />}
    </>
  );
}
