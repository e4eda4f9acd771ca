import { bearingOfWay } from '../../core/frame/index.ts';
import type { Pass } from '../../core/passes/index.ts';
import type { JobPlan } from '../../core/plan/index.ts';
import { passCounts, sheetFigures } from '../../core/sheet/index.ts';
import {
  formatAngle,
  formatNumber,
  formatTime,
  lengthFigure,
  sum,
  volumeFigure,
} from '../../core/units/index.ts';
import type { Applicator, UnitSystem } from '../../core/yard.ts';
import { useViewState } from '../app/context.ts';
import { Folded } from '../shared/Folded.tsx';
import { Ledger } from '../shared/Ledger.tsx';

interface PassLedgerProps {
  readonly plan: JobPlan;
  readonly kind: Applicator['kind'];
  readonly units: UnitSystem;
}

/** The passes of the section in hand, as they are counted out: length, steps, time and what is left in the bottle. */
export function PassLedger(props: PassLedgerProps) {
  const { selection } = useViewState();
  const { sections } = props.plan.ground;
  const id = selection?.kind === 'section' ? selection.id : sections[0]?.id;
  return (
    <Folded title="Passes" aside={id === undefined ? undefined : `of ${id}, one by one`}>
      {id !== undefined && <OpenLedger {...props} id={id} />}
    </Folded>
  );
}

function OpenLedger({ plan, kind, units, id }: PassLedgerProps & { readonly id: string }) {
  const figures = sheetFigures(plan, units);
  const load = figures.loads.find(({ section }) => section.id === id)?.load;
  if (load === undefined) return null;
  const counts = passCounts(plan, figures, kind, load, units);
  const own = counts.passes.filter(({ pass }) => pass.sectionId === id);
  const { request } = plan.ground;
  const onM = sum(own.map(({ pass }) => pass.lengthM));
  return (
    <Ledger
      caption={`Passes of ${id} in walking order`}
      columns={[
        { head: 'pass', align: 'left' },
        { head: 'runs', align: 'right' },
        { head: lengthFigure(0, units).unit, align: 'right' },
        { head: 'steps', align: 'right' },
        { head: 'time', align: 'right' },
        { head: `left, ${counts.unit}`, align: 'right' },
      ]}
      rows={own.map(({ pass, steps, timeS, leftL }) => ({
        key: `${pass.order}`,
        cells: [
          <PassName key="name" pass={pass} rounds={request.rounds} />,
          pass.kind === 'lane' ? formatAngle(bearingOf(pass)) : '',
          lengthFigure(pass.lengthM, units).text,
          formatNumber(steps, 0),
          formatTime(timeS),
          volumeFigure(leftL, units, counts.unit).text,
        ],
      }))}
      sum={[
        'on',
        '',
        lengthFigure(onM, units).text,
        formatNumber(Math.round(onM / request.stepM), 0),
        formatTime(onM / request.paceMPerS),
        '',
      ]}
    />
  );
}

function PassName({ pass, rounds }: { readonly pass: Pass; readonly rounds: 1 | 2 }) {
  const kind = pass.kind === 'perimeter' ? 'edge' : 'lane';
  return (
    <>
      {pass.order} <span className="note">{rounds === 2 ? `${kind}, round ${pass.round}` : kind}</span>
    </>
  );
}

/** Of the way from its first point to its last, in whole degrees. */
function bearingOf({ line }: Pass): number {
  const [from, to] = [line[0], line.at(-1)];
  return from === undefined || to === undefined
    ? 0
    : Math.round(bearingOfWay(to.xM - from.xM, to.yM - from.yM)) % 360;
}
