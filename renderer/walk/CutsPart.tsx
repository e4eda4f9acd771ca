import { useState } from 'react';
import { makeEdit, putRow } from '../../core/edits/index.ts';
import { distanceM } from '../../core/kernel/index.ts';
import { type GroundPlan, leastLoads } from '../../core/plan/index.ts';
import type { Problem } from '../../core/problems.ts';
import { holdCut, isSameLine, joinSections, letAllCutsGo, letCutGo } from '../../core/sections/index.ts';
import { counted, formatTape } from '../../core/units/index.ts';
import type { Job } from '../../core/yard.ts';
import { useBook, useOpenYard, useSessionState, useViewState } from '../app/context.ts';
import {
  cutsOf,
  loadAreaM2Of,
  type NamedCut,
  plannedCutsOf,
  treatedOf,
  type WalkContext,
} from '../drawing/index.ts';
import { Ledger } from '../shared/Ledger.tsx';
import { PagePart } from '../shared/PageHead.tsx';
import { ProblemLines } from '../shared/ProblemLines.tsx';
import { pairsAlong, sectionsAlong } from './cutSections.ts';

const makeId = (): string => crypto.randomUUID();

/** The lines between sections, which of them stay where they are, and what that costs. */
export function CutsPart({ job, ground }: { readonly job: Job; readonly ground: GroundPlan | null }) {
  const { session, view } = useBook();
  const { yard } = useOpenYard();
  const { file } = useSessionState();
  const { selection, drawing } = useViewState();
  const units = yard.details.unitSystem;
  const mayEdit = file?.readOnly === false;
  const walk: WalkContext = { job, plan: ground, mayEdit };
  const cuts = cutsOf(walk);
  const inHand = selection?.kind === 'cut' ? cuts.find(({ id }) => id === selection.id) : undefined;
  if (cuts.length === 0 && ground === null) return null;
  return (
    <PagePart title="Cuts" aside={ground && loadWords(ground)}>
      {cuts.length > 0 && (
        <Ledger
          caption="Cuts between sections"
          columns={[
            { head: 'between', align: 'left' },
            { head: 'length', align: 'right' },
            { head: 'place', align: 'left' },
          ]}
          rows={cuts.map((cut) => ({
            key: cut.id,
            selected: cut === inHand,
            onSelect: () => view.select({ kind: 'cut', id: cut.id }),
            cells: [
              ground === null ? 'not planned' : sectionsAlong(cut, ground),
              formatTape(distanceM(cut.from, cut.to), units),
              cut.heldId === null ? 'the plan’s' : 'held',
            ],
          }))}
        />
      )}
      {mayEdit && inHand && <CutInHand key={inHand.id} cut={inHand} walk={walk} />}
      {mayEdit && (
        <div className="do-row">
          <button
            type="button"
            className="do"
            aria-pressed={drawing.kind === 'add-cut'}
            disabled={ground === null}
            onClick={() => view.take({ kind: 'add-cut' })}
          >
            add a cut
          </button>
          {job.heldCuts.length > 0 && (
            <button
              type="button"
              className="do"
              onClick={() => {
                view.select(null);
                session.edit(makeEdit('let all cuts go', putRow(yard, 'jobs', letAllCutsGo(job))));
              }}
            >
              let all go
            </button>
          )}
        </div>
      )}
    </PagePart>
  );
}

/** What can be done to the cut that is selected. */
function CutInHand({ cut, walk }: { readonly cut: NamedCut; readonly walk: WalkContext }) {
  const { session, view } = useBook();
  const { yard } = useOpenYard();
  const [problem, setProblem] = useState<Problem | null>(null);
  const { job, plan } = walk;
  const put = (label: string, to: Job): void => {
    if (to !== job) session.edit(makeEdit(label, putRow(yard, 'jobs', to)));
  };

  function hold(): void {
    const to = holdCut(job, cut, plannedCutsOf(walk), makeId);
    const held = to.heldCuts.find((each) => isSameLine(each, cut));
    put('hold a cut', to);
    view.select(held ? { kind: 'cut', id: held.id } : null);
  }

  function letGo(): void {
    if (cut.heldId === null) return;
    view.select(null);
    put('let a cut go', letCutGo(job, cut.heldId));
  }

  function join(pair: readonly [string, string]): void {
    if (plan === null) return;
    const { sections, cuts, cutLines } = plan;
    const planned = {
      sections,
      cuts,
      cutLines,
      treatedOf: (zoneId: string) => treatedOf(walk, zoneId),
      loadAreaM2Of: (zoneId: string) => loadAreaM2Of(plan, zoneId),
    };
    const joined = joinSections(job, pair, planned, makeId);
    setProblem(joined.ok ? null : joined.problems[0]);
    if (!joined.ok) return;
    view.select(null);
    put(`join ${pair.join(' and ')}`, joined.value);
  }

  return (
    <>
      <div className="do-row">
        {cut.heldId === null ? (
          <button type="button" className="do" onClick={hold}>
            hold it here
          </button>
        ) : (
          <button type="button" className="do" onClick={letGo}>
            let it go
          </button>
        )}
        {plan !== null &&
          pairsAlong(cut, plan).map((pair) => (
            <button key={pair.join()} type="button" className="do" onClick={() => join(pair)}>
              join {pair[0]} and {pair[1]}
            </button>
          ))}
        <span className="note">or drag it on the sketch; the plan cuts the rest anew</span>
      </div>
      {problem && <ProblemLines problems={[problem]} units={yard.details.unitSystem} />}
    </>
  );
}

/** "6 loads, the ground would fill 5". */
function loadWords(ground: GroundPlan): string {
  const loads = ground.loads.length;
  const least = leastLoads(ground);
  return loads > least
    ? `${counted(loads, 'load')}, the ground would fill ${least}`
    : `${counted(loads, 'load')}, the fewest there can be`;
}
