import { makeEdit, putRow } from '../../core/edits/index.ts';
import type { GroundPlan } from '../../core/plan/index.ts';
import { formatAngle, parseAngle } from '../../core/units/index.ts';
import type { Job, LaneHeading } from '../../core/yard.ts';
import { useBook, useOpenYard } from '../app/context.ts';
import { ChoiceField } from '../shared/ChoiceField.tsx';
import { FigureField } from '../shared/FigureField.tsx';
import { Folded } from '../shared/Folded.tsx';
import {
  bearingsInShort,
  bearingsOfOtherJobs,
  bearingWords,
  firstLaneDeg,
  headingFor,
  LANE_CHOICES,
  type LaneChoice,
  laneChoiceOf,
} from './laneChoice.ts';

const ROUNDS = [
  ['1', 'once'],
  ['2', 'twice, at half the rate'],
] as const;

/** Which way the lanes run, and whether the ground is walked once or twice. */
export function LanesPart({ job, ground }: { readonly job: Job; readonly ground: GroundPlan | null }) {
  const { session } = useBook();
  const { yard } = useOpenYard();
  const { heading, rounds } = job;
  const others = bearingsOfOtherJobs(yard, job);
  const put = (label: string, part: Partial<Job>): void =>
    session.edit(makeEdit(label, putRow(yard, 'jobs', { ...job, ...part })));
  const turn = (to: LaneHeading): void => put('turn the lanes', { heading: to });

  const [, chosenWords] =
    LANE_CHOICES.find(([choice]) => choice === laneChoiceOf(heading)) ?? LANE_CHOICES[0];
  const asideWords = [
    chosenWords,
    ...(ground === null ? [] : [bearingsInShort(ground)]),
    ...(rounds === 2 ? ['walked twice'] : []),
  ].join(', ');

  return (
    <Folded title="Lanes" aside={asideWords}>
      <ChoiceField<LaneChoice>
        label="lanes run"
        value={laneChoiceOf(heading)}
        choices={LANE_CHOICES}
        onChoose={(choice) => turn(headingFor(choice, firstLaneDeg(ground), others[0]?.deg ?? null))}
      />
      {heading.kind === 'picked' && (
        <Bearing label="bearing" deg={heading.deg} onCommit={(deg) => turn({ kind: 'picked', deg })} />
      )}
      {heading.kind === 'turned' && (
        <Bearing
          label="last time’s bearing"
          deg={heading.lastDeg}
          onCommit={(lastDeg) => turn({ ...heading, lastDeg })}
        />
      )}
      {heading.kind === 'turned' && others.length > 0 && (
        <div className="do-row">
          <span>last time was</span>
          {others.map(({ name, deg }) => (
            <button
              key={name}
              type="button"
              className="do"
              aria-pressed={deg === heading.lastDeg}
              onClick={() => turn({ ...heading, lastDeg: deg })}
            >
              {name}, {formatAngle(deg)}
            </button>
          ))}
        </div>
      )}
      <ChoiceField
        label="walked"
        value={rounds === 2 ? '2' : '1'}
        choices={ROUNDS}
        onChoose={(times) => put('walk once or twice', { rounds: times === '2' ? 2 : 1 })}
      />
      {rounds === 2 && (
        <p className="said">
          Set the spreader or dial to half. The second time is square to the first: about twice the walk, and
          no stripes.
        </p>
      )}
      {ground !== null && <p className="said">{bearingWords(ground)}</p>}
    </Folded>
  );
}

interface BearingProps {
  readonly label: string;
  readonly deg: number;
  readonly onCommit: (deg: number) => void;
}

function Bearing({ label, deg, onCommit }: BearingProps) {
  const { yard } = useOpenYard();
  return (
    <FigureField
      label={label}
      shown={formatAngle(deg)}
      note="from north, clockwise"
      units={yard.details.unitSystem}
      parse={(typed) => parseAngle(typed, label)}
      onCommit={onCommit}
    />
  );
}
