import { makeEdit, putRow } from '../../core/edits/index.ts';
import { distanceM } from '../../core/kernel/index.ts';
import type { YardPoint } from '../../core/spaces.ts';
import type { Job, Yard } from '../../core/yard.ts';
import { useBook, useOpenYard, useSessionState, useViewState } from '../app/context.ts';
import type { WalkEnd } from '../drawing/index.ts';
import { ChoiceField } from '../shared/ChoiceField.tsx';
import { Folded } from '../shared/Folded.tsx';

const ANYWHERE = 'anywhere';
const SUITS_WALK = 'wherever suits the walk';
const ON_SKETCH = 'on the sketch';
/** A place this near to a mark is the mark. */
const SAME_M = 0.01;

const ENDS: readonly { readonly end: WalkEnd; readonly label: string }[] = [
  { end: 'start', label: 'starts at' },
  { end: 'finish', label: 'finishes at' },
];

/** Where the person comes from and wants to end up. */
export function StartPart({ job }: { readonly job: Job }) {
  const { yard } = useOpenYard();
  const set = ENDS.filter(({ end }) => placeOf(job, end) !== null);
  const words = set.map(({ end, label }) => `${label} ${wordsOf(yard, placeOf(job, end))}`).join(', ');
  return (
    <Folded title="Start and finish" aside={words || SUITS_WALK}>
      {ENDS.map(({ end, label }) => (
        <EndChoice key={end} end={end} label={label} job={job} />
      ))}
    </Folded>
  );
}

function EndChoice({
  end,
  label,
  job,
}: {
  readonly end: WalkEnd;
  readonly label: string;
  readonly job: Job;
}) {
  const { session, view } = useBook();
  const { yard } = useOpenYard();
  const { file } = useSessionState();
  const { drawing } = useViewState();
  const at = placeOf(job, end);
  const mark = markAt(yard, at);
  const isPlacing = drawing.kind === 'place-end' && drawing.end === end;
  const put = (to: YardPoint | null): void => {
    const part = end === 'start' ? { startAt: to } : { finishAt: to };
    session.edit(makeEdit(`place the ${end}`, putRow(yard, 'jobs', { ...job, ...part })));
  };

  function choose(value: string): void {
    if (value === ON_SKETCH) view.take({ kind: 'place-end', end });
    else put(yard.marks.find(({ id }) => id === value)?.at ?? null);
  }

  return (
    <>
      <ChoiceField
        label={label}
        value={at === null ? ANYWHERE : (mark?.id ?? ON_SKETCH)}
        choices={[
          [ANYWHERE, SUITS_WALK],
          ...yard.marks.map(({ id, name }) => [id, name] as const),
          [ON_SKETCH, 'a place on the sketch'],
        ]}
        onChoose={choose}
      />
      {file?.readOnly === false && (
        <div className="do-row">
          <button
            type="button"
            className="do"
            aria-pressed={isPlacing}
            onClick={() => view.take({ kind: 'place-end', end })}
          >
            place the {end} on the sketch
          </button>
        </div>
      )}
    </>
  );
}

function placeOf({ startAt, finishAt }: Job, end: WalkEnd): YardPoint | null {
  return end === 'start' ? startAt : finishAt;
}

function markAt(yard: Yard, at: YardPoint | null) {
  return at === null ? undefined : yard.marks.find((mark) => distanceM(mark.at, at) <= SAME_M);
}

function wordsOf(yard: Yard, at: YardPoint | null): string {
  return markAt(yard, at)?.name ?? 'a place on the sketch';
}
