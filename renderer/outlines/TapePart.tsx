import { useState } from 'react';
import { makeEdit, newOutline, putRow } from '../../core/edits/index.ts';
import { ok, type Result } from '../../core/result.ts';
import { parseAngle, parseLength, parseOffset, USUAL_UNITS } from '../../core/units/index.ts';
import { OUTLINE_KINDS, type OutlineKind, type UnitSystem } from '../../core/yard.ts';
import { useBook, useOpenYard } from '../app/context.ts';
import { nextName, OUTLINE_WORDS } from '../drawing/index.ts';
import { ChoiceField } from '../shared/ChoiceField.tsx';
import { FigureField } from '../shared/FigureField.tsx';
import { LinesField } from '../shared/LinesField.tsx';
import { Folded } from '../shared/Folded.tsx';
import { ProblemLines } from '../shared/ProblemLines.tsx';
import {
  TAPE_FIGURES,
  type TapedFigure,
  type TapeField,
  type TapeFigureName,
  type Typed,
} from './tapeFigures.ts';
import { placingSigmaM, readWithin, USUAL_WITHIN, withinNote } from './tapedWithin.ts';
import { TapeTie } from './TapeTie.tsx';

type Figure = TapeFigureName | 'tie';
const FIGURES = Object.keys(TAPE_FIGURES) as readonly TapeFigureName[];
const CHOICES: readonly (readonly [Figure, string])[] = [
  ...FIGURES.map((name) => [name, TAPE_FIGURES[name].words] as const),
  ['tie', 'landmark by two tapes'],
];

/** Ground that was measured by tape rather than seen: its lengths are typed and it is drawn to scale. */
export function TapePart() {
  const [figure, setFigure] = useState<Figure>('rectangle');
  return (
    <Folded title="Draw by tape" aside="figures, offsets, ties, chains, rays">
      <ChoiceField<Figure> label="figure" value={figure} choices={CHOICES} onChoose={setFigure} />
      {figure === 'tie' ? <TapeTie /> : <FigureForm key={figure} name={figure} />}
    </Folded>
  );
}

/** What may be typed and where the figure stands, with what it comes to under it. */
function FigureForm({ name }: { readonly name: TapeFigureName }) {
  const { session, view } = useBook();
  const { yard } = useOpenYard();
  const units = yard.details.unitSystem;
  const figure = TAPE_FIGURES[name];
  const [kind, setKind] = useState<OutlineKind>('zone');
  const [typed, setTyped] = useState<Typed>({ east: '0', north: '0', bearing: '90' });
  const [within, setWithin] = useState(USUAL_WITHIN[units]);
  const [asked, setAsked] = useState(false);
  const put = (label: string) => (text: string) => setTyped((before) => ({ ...before, [label]: text }));
  const taped = tape(name, typed, units);
  const complete = figure.fields.every(
    (field) => field.kind === 'maybe' || (typed[field.label] ?? '') !== '',
  );

  function draw(): void {
    setAsked(true);
    if (!taped.ok) return;
    const id = crypto.randomUUID();
    const { outer, cornerSigmaM } = taped.value;
    const stated = readWithin(within, units);
    const sigmaM = placingSigmaM(stated.ok ? stated.value : null, cornerSigmaM);
    const placing = { by: 'tape', pictureId: null, sigmaM } as const;
    const row = newOutline({ id, kind, name: nextName(yard, kind), outer, placing });
    session.edit(makeEdit(`draw ${row.name} by tape`, putRow(yard, 'outlines', row)));
    view.select({ kind: 'outline', id });
  }

  return (
    <>
      <ChoiceField<OutlineKind>
        label="drawn as"
        value={kind}
        choices={OUTLINE_KINDS.map((each) => [each, OUTLINE_WORDS[each]] as const)}
        onChoose={setKind}
      />
      {figure.fields.map((field) => (
        <TypedField
          key={field.label}
          field={field}
          units={units}
          shown={typed[field.label] ?? ''}
          onCommit={put(field.label)}
        />
      ))}
      <PlaceField
        label={`${figure.standsOn}, east`}
        shown={typed.east ?? ''}
        units={units}
        onCommit={put('east')}
      />
      <PlaceField
        label={`${figure.standsOn}, north`}
        shown={typed.north ?? ''}
        units={units}
        onCommit={put('north')}
      />
      {figure.bearingOf !== null && (
        <FigureField
          label={figure.bearingOf}
          shown={typed.bearing ?? ''}
          unit="°"
          units={units}
          parse={asTyped((text) => parseAngle(text, 'bearing'))}
          onCommit={put('bearing')}
        />
      )}
      <FigureField
        label="taped within ±"
        shown={within}
        unit={USUAL_UNITS[units].length}
        note={withinNote(within, units)}
        units={units}
        parse={asTyped((text) => readWithin(text, units))}
        onCommit={setWithin}
      />
      {/* Above what it comes to: lines that appear as a field is left would move it from under the pointer. */}
      <div className="do-row">
        <button type="button" className="do do-main" onClick={draw}>
          draw it
        </button>
      </div>
      {taped.ok &&
        taped.value.lines.map(([label, text]) => (
          <div className="line" key={label}>
            <span>{label}</span>
            <span>{text}</span>
          </div>
        ))}
      {taped.ok && taped.value.said !== '' && <p className="said">{taped.value.said}</p>}
      {(complete || asked) && (
        <ProblemLines problems={taped.ok ? taped.value.cautions : taped.problems} units={units} />
      )}
    </>
  );
}

interface TypedFieldProps {
  readonly field: TapeField;
  readonly shown: string;
  readonly units: UnitSystem;
  readonly onCommit: (typed: string) => void;
}

function TypedField({ field: { label, kind }, shown, units, onCommit }: TypedFieldProps) {
  const unit = USUAL_UNITS[units].length;
  if (kind === 'lengths' || kind === 'legs') {
    const example =
      kind === 'legs' ? '60 90\n40 l90\n60 l90\n40 l90' : label === 'spacing' ? '10' : '0, 8.5, 12, 9, 0';
    const rows = kind === 'legs' ? 5 : label === 'spacing' ? 1 : 2;
    return <LinesField label={label} shown={shown} example={example} rows={rows} onCommit={onCommit} />;
  }
  return (
    <FigureField
      label={label}
      shown={shown}
      unit={unit}
      note={kind === 'maybe' ? 'or in the middle' : undefined}
      units={units}
      parse={asTyped((text) =>
        kind === 'size'
          ? parseLength(text, label, unit)
          : text.trim() === ''
            ? ok(null)
            : parseOffset(text, label, unit),
      )}
      onCommit={onCommit}
    />
  );
}

interface PlaceFieldProps {
  readonly label: string;
  readonly shown: string;
  readonly units: UnitSystem;
  readonly onCommit: (typed: string) => void;
}

function PlaceField({ label, shown, units, onCommit }: PlaceFieldProps) {
  const unit = USUAL_UNITS[units].length;
  return (
    <FigureField
      label={label}
      shown={shown}
      unit={unit}
      units={units}
      parse={asTyped((text) => parseOffset(text, label, unit))}
      onCommit={onCommit}
    />
  );
}

/** Keeps what was typed, once it can be read: a length of 12 ft 6 in stays written as it was. */
function asTyped(read: (typed: string) => Result<unknown>): (typed: string) => Result<string> {
  return (typed) => {
    const value = read(typed);
    return value.ok ? ok(typed.trim()) : value;
  };
}

/** The figure at its place, from what was typed so far. */
function tape(name: TapeFigureName, typed: Typed, units: UnitSystem): Result<TapedFigure> {
  const unit = USUAL_UNITS[units].length;
  const east = parseOffset(typed.east ?? '', 'east', unit);
  if (!east.ok) return east;
  const north = parseOffset(typed.north ?? '', 'north', unit);
  if (!north.ok) return north;
  const bearing = parseAngle(typed.bearing ?? '', 'bearing');
  if (!bearing.ok) return bearing;
  const place = { at: { xM: east.value, yM: north.value }, bearingDeg: bearing.value };
  return TAPE_FIGURES[name].draw(typed, place, units);
}
