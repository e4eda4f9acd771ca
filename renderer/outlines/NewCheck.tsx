import { useState } from 'react';
import { makeEdit, putRow } from '../../core/edits/index.ts';
import { cornersOf, type NamedPlace, newCheck } from '../../core/fieldCheck/index.ts';
import { distanceM } from '../../core/kernel/index.ts';
import type { Problem } from '../../core/problems.ts';
import { ok } from '../../core/result.ts';
import { parseLength, USUAL_UNITS } from '../../core/units/index.ts';
import type { Yard } from '../../core/yard.ts';
import { useBook, useOpenYard } from '../app/context.ts';
import { ChoiceField } from '../shared/ChoiceField.tsx';
import { FigureField } from '../shared/FigureField.tsx';
import { Folded } from '../shared/Folded.tsx';
import { ProblemLines } from '../shared/ProblemLines.tsx';

/** What is chosen of one end: an outline or a mark by its id, and which of its places. */
interface Chosen {
  readonly id: string;
  readonly place: number;
}

/** A taped distance between two named places, without the pointer. */
export function NewCheck() {
  const { session, view } = useBook();
  const { yard } = useOpenYard();
  const units = yard.details.unitSystem;
  const unit = USUAL_UNITS[units].length;
  const things = [...yard.outlines, ...yard.marks];
  const [from, setFrom] = useState<Chosen>({ id: '', place: 0 });
  const [to, setTo] = useState<Chosen>({ id: '', place: 2 });
  const [taped, setTaped] = useState<{ readonly typed: string; readonly lengthM: number } | null>(null);
  const [problem, setProblem] = useState<Problem | null>(null);
  if (things.length === 0) return null;

  function note(): void {
    const [a, b] = [placeOf(yard, from), placeOf(yard, to)];
    if (a === undefined || b === undefined || distanceM(a.at, b.at) === 0) {
      setProblem({ kind: 'value/missing', where: { field: 'a second place' }, facts: {} });
    } else if (taped === null) {
      setProblem({ kind: 'value/missing', where: { field: 'what the tape read' }, facts: {} });
    } else {
      const said = { id: crypto.randomUUID(), from: a.at, to: b.at, tapedM: taped.lengthM };
      const check = newCheck(yard, said);
      session.edit(makeEdit(`note taped ${check.name}`, putRow(yard, 'checks', check)));
      view.select({ kind: 'check', id: check.id });
      setTaped(null);
      setProblem(null);
    }
  }

  return (
    <Folded title="Or name its ends">
      <EndChoice label="from" yard={yard} chosen={from} onChoose={setFrom} />
      <EndChoice label="to" yard={yard} chosen={to} onChoose={setTo} />
      <FigureField
        label="what the tape read"
        shown={taped?.typed ?? ''}
        unit={unit}
        units={units}
        parse={(typed) => {
          const read = parseLength(typed, 'taped distance', unit);
          return read.ok ? ok({ typed: typed.trim(), lengthM: read.value }) : read;
        }}
        onCommit={setTaped}
      />
      <div className="do-row">
        <button type="button" className="do do-main" onClick={note}>
          note it
        </button>
      </div>
      {problem && <ProblemLines problems={[problem]} units={units} />}
    </Folded>
  );
}

interface EndChoiceProps {
  readonly label: string;
  readonly yard: Yard;
  readonly chosen: Chosen;
  readonly onChoose: (chosen: Chosen) => void;
}

/** First what it belongs to, then which of its corners: one list of all corners of a yard would have no end. */
function EndChoice({ label, yard, chosen, onChoose }: EndChoiceProps) {
  const things = [...yard.outlines, ...yard.marks];
  const thing = things.find(({ id }) => id === chosen.id) ?? things[0];
  const places = placesOf(yard, thing?.id ?? '');
  return (
    <>
      <ChoiceField
        label={label}
        value={thing?.id ?? ''}
        choices={things.map(({ id, name }) => [id, name] as const)}
        onChoose={(id) => onChoose({ id, place: 0 })}
      />
      {places.length > 1 && (
        <ChoiceField
          label={`${label}, which place of it`}
          value={`${Math.min(chosen.place, places.length - 1)}`}
          choices={places.map(({ words, side }, i) => [`${i}`, `${ofItself(words)}, ${side}`] as const)}
          onChoose={(place) => onChoose({ id: thing?.id ?? '', place: Number(place) })}
        />
      )}
    </>
  );
}

function placeOf(yard: Yard, { id, place }: Chosen): NamedPlace | undefined {
  const places = placesOf(yard, id === '' ? (yard.outlines[0]?.id ?? yard.marks[0]?.id ?? '') : id);
  return places[Math.min(place, places.length - 1)];
}

function placesOf(yard: Yard, id: string): readonly NamedPlace[] {
  const outline = yard.outlines.find((each) => each.id === id);
  if (outline !== undefined) return cornersOf(outline);
  const mark = yard.marks.find((each) => each.id === id);
  return mark === undefined ? [] : [{ at: mark.at, words: mark.name, short: mark.name, side: '' }];
}

/** "corner 3 of Lawn" beside the outline's own field is "corner 3". */
function ofItself(words: string): string {
  return words.slice(0, words.lastIndexOf(' of '));
}
