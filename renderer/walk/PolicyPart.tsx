import { makeEdit, putRow } from '../../core/edits/index.ts';
import type { GroundPlan, PolicyFigures } from '../../core/plan/index.ts';
import { counted, formatArea, formatLength } from '../../core/units/index.ts';
import type { Job, SectionPolicy, UnitSystem } from '../../core/yard.ts';
import { useBook, useOpenYard } from '../app/context.ts';
import type { Ask } from '../planning/Question.ts';
import { useAnswer } from '../planning/useAnswer.ts';
import { Folded } from '../shared/Folded.tsx';
import { Ledger } from '../shared/Ledger.tsx';
import { ProblemLines } from '../shared/ProblemLines.tsx';

const POLICIES = [
  ['even', 'even loads in each zone'],
  ['fewest', 'full loads, from zone to zone'],
] as const satisfies readonly (readonly [SectionPolicy, string])[];

/** How the ground is shared out in loads. */
export function PolicyPart({ job, ground }: { readonly job: Job; readonly ground: GroundPlan | null }) {
  const [, words] = POLICIES.find(([policy]) => policy === job.policy) ?? POLICIES[0];
  const aside = ground === null ? words : `${words}, ${ground.loads.length}`;
  return (
    <Folded title="Loads" aside={aside}>
      <OpenPolicies job={job} />
    </Folded>
  );
}

type Both = readonly [PolicyFigures, PolicyFigures];

const askPolicies: Ask<Both> = async (work, yard, jobId) => work.policies(yard, jobId);

/** Both ways side by side. They are worked out only while this is open. */
function OpenPolicies({ job }: { readonly job: Job }) {
  const { session } = useBook();
  const { yard } = useOpenYard();
  const { value, problems, stale } = useAnswer(askPolicies, yard, job.id);
  const units = yard.details.unitSystem;
  const choose = (policy: SectionPolicy): void =>
    session.edit(makeEdit('choose how loads are shared out', putRow(yard, 'jobs', { ...job, policy })));
  return (
    <>
      <fieldset className="do-row">
        <legend className="unseen">how loads are shared out</legend>
        {POLICIES.map(([policy, words]) => (
          <label key={policy} className="tick">
            <input
              type="radio"
              name="policy"
              checked={job.policy === policy}
              onChange={() => choose(policy)}
            />
            {words}
          </label>
        ))}
      </fieldset>
      <ProblemLines problems={stale ? [] : problems} units={units} />
      {value !== null && (
        <Ledger
          caption="What each way of sharing out comes to"
          columns={[
            { head: stale ? 'from before the change' : 'comes to', align: 'left' },
            { head: 'even', align: 'right' },
            { head: 'full', align: 'right' },
          ]}
          rows={rowsOf(value, units)}
        />
      )}
      {value === null && stale && <p className="said">Working out what each comes to</p>}
    </>
  );
}

function rowsOf(both: Both, units: UnitSystem) {
  const row = (name: string, of: (figures: PolicyFigures) => string) => {
    const [even, fewest] = both;
    return { key: name, cells: [name, of(even), of(fewest)] };
  };
  return [
    row('loads', ({ loads }) => `${loads}`),
    row('sections', ({ sections }) => `${sections}`),
    row('largest load', ({ largestLoadM2 }) => formatArea(largestLoadM2, units)),
    row('smallest load', ({ smallestLoadM2 }) => formatArea(smallestLoadM2, units)),
    row('room left in it', ({ unusedM2 }) => formatArea(unusedM2, units)),
    row('cut lines', ({ cutLengthM }) => formatLength(cutLengthM, units)),
    row('to set', ({ flags }) => counted(flags, 'flag')),
  ];
}
