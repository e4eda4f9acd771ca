import { makeEdit, putRow } from '../../core/edits/index.ts';
import { USUAL_CLEARANCE_M } from '../../core/hose/index.ts';
import type { GroundPlan } from '../../core/plan/index.ts';
import {
  formatEnough,
  formatLength,
  lengthFigure,
  parseLength,
  USUAL_UNITS,
} from '../../core/units/index.ts';
import type { Job, JobHose, Yard } from '../../core/yard.ts';
import { useBook, useOpenYard } from '../app/context.ts';
import { ChoiceField } from '../shared/ChoiceField.tsx';
import { FigureField } from '../shared/FigureField.tsx';
import { Folded } from '../shared/Folded.tsx';
import { HoseLedger } from './HoseLedger.tsx';
import { readClearance, spigotChoice, spigotsOf, usualHose } from './hoseChoice.ts';

/** Whether a hose is dragged, how long it is, from where, and what it comes to. */
export function HosePart({ job, ground }: { readonly job: Job; readonly ground: GroundPlan | null }) {
  const { session } = useBook();
  const { yard } = useOpenYard();
  const { hose } = job;
  const units = yard.details.unitSystem;
  const put = (label: string, to: JobHose | null): void =>
    session.edit(makeEdit(label, putRow(yard, 'jobs', { ...job, hose: to })));
  return (
    <Folded title="Hose" aside={asideWords(yard, job, ground)}>
      <ChoiceField<'none' | 'hose'>
        label="dragged behind"
        value={hose === null ? 'none' : 'hose'}
        choices={[
          ['none', 'no hose'],
          ['hose', 'a hose from a spigot'],
        ]}
        onChoose={(choice) =>
          choice === 'none' ? put('leave the hose', null) : put('take a hose', hose ?? usualHose(units))
        }
      />
      {hose !== null && <HoseFields yard={yard} hose={hose} onPut={put} />}
      {ground?.request.hose && ground.hose && (
        <HoseLedger asked={ground.request.hose} hose={ground.hose} units={units} />
      )}
      {hose !== null && isHoseEnd(yard, job) && (
        <p className="said">
          Fit a vacuum breaker at the spigot, and never leave the end of the hose under water: a drop in
          pressure can draw product into the house supply.
        </p>
      )}
    </Folded>
  );
}

interface HoseFieldsProps {
  readonly yard: Yard;
  readonly hose: JobHose;
  readonly onPut: (label: string, hose: JobHose) => void;
}

function HoseFields({ yard, hose, onPut }: HoseFieldsProps) {
  const units = yard.details.unitSystem;
  const unit = lengthFigure(0, units).unit;
  const spigots = spigotsOf(yard);
  return (
    <>
      <FigureField
        label="its length"
        shown={lengthFigure(hose.lengthM, units).text}
        unit={unit}
        units={units}
        parse={(typed) => parseLength(typed, 'length of the hose', USUAL_UNITS[units].length)}
        onCommit={(lengthM) => onPut('change the hose’s length', { ...hose, lengthM })}
      />
      <FigureField
        label="keeps off corners by"
        shown={lengthFigure(hose.clearanceM, units).text}
        unit={unit}
        note={hose.clearanceM === USUAL_CLEARANCE_M ? 'usual' : undefined}
        units={units}
        parse={(typed) => readClearance(typed, units)}
        onCommit={(clearanceM) => onPut('keep the hose off corners', { ...hose, clearanceM })}
      />
      {spigots.length === 0 ? (
        <p className="said">No spigot is marked yet: put one on the Outlines page, where the tap is.</p>
      ) : (
        <fieldset className="do-row">
          <legend className="unseen">spigots of this job</legend>
          <span aria-hidden="true">from</span>
          {spigots.map(({ id, name }) => (
            <label key={id} className="tick">
              <input
                type="checkbox"
                checked={hose.spigotIds === null || hose.spigotIds.includes(id)}
                onChange={() => onPut('choose spigots', { ...hose, spigotIds: spigotChoice(yard, hose, id) })}
              />
              {name}
            </label>
          ))}
        </fieldset>
      )}
    </>
  );
}

function isHoseEnd(yard: Yard, { applicatorId }: Job): boolean {
  return yard.applicators.some(({ id, kind }) => id === applicatorId && kind === 'hose-end');
}

function asideWords(yard: Yard, { hose }: Job, ground: GroundPlan | null): string {
  if (hose === null) return 'no hose';
  const units = yard.details.unitSystem;
  const length = formatLength(hose.lengthM, units);
  const shortestM = ground?.hose?.shortestHoseM;
  if (shortestM === undefined || shortestM === null) return length;
  return `${length}, ${formatEnough(shortestM, units)} needed`;
}
