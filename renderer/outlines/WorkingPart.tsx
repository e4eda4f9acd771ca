import { useMemo } from 'react';
import { areaFigure } from '../../core/units/index.ts';
import type { UnitSystem } from '../../core/yard.ts';
import {
  areaWorking,
  BALANCE_WORDS,
  roundingWords,
  shownText,
  slopeWords,
  type TakenWorking,
  twiceWords,
  workedText,
  workingText,
} from '../../core/zones/index.ts';
import { useOpenYard } from '../app/context.ts';
import { Ledger } from '../shared/Ledger.tsx';
import { EdgeLedgers, FormulaLines } from '../shared/EdgeLedgers.tsx';
import { WorkingFold } from '../shared/WorkingFold.tsx';
import { SigmaLedger, TightenLine } from './SigmaPart.tsx';

/** How the area of the zone in hand comes about. */
export function WorkingPart({ zoneId }: { readonly zoneId: string }) {
  const { yard, resolved } = useOpenYard();
  // With no areas there is nothing to work out; what stands in the way is said above.
  if (resolved === null) return null;
  const text = (): string => {
    const working = areaWorking(resolved, yard, zoneId);
    return working === undefined ? '' : workingText(working);
  };
  return (
    <WorkingFold
      aside="how its area comes about"
      of={resolved}
      text={text}
      always={<TightenLine zoneId={zoneId} />}
    >
      {() => <OpenWorking zoneId={zoneId} />}
    </WorkingFold>
  );
}

/** Worked out only while it is open: it takes an overlay for each outline near. */
function OpenWorking({ zoneId }: { readonly zoneId: string }) {
  const { yard, resolved } = useOpenYard();
  const working = useMemo(
    () => (resolved === null ? undefined : areaWorking(resolved, yard, zoneId)),
    [resolved, yard, zoneId],
  );
  if (working === undefined) return null;
  const { units } = working;
  const unit = areaFigure(0, units).unit;
  return (
    <>
      <FormulaLines working={working} />
      <EdgeLedgers rings={working.rings} units={units} />
      <TakenLedger title="owned by another zone" taken={working.owned} units={units} />
      <TakenLedger title="cut out" taken={working.cutOut} units={units} />
      <TakenLedger title="keep-offs, strips and check plots" taken={working.leftOut} units={units} />
      <Ledger
        caption="The balance, worked and shown"
        columns={[
          { head: 'balance', align: 'left' },
          { head: `worked ${unit}`, align: 'right' },
          { head: `shown ${unit}`, align: 'right' },
        ]}
        rows={working.balance.map(({ item, worked, shown }) => ({
          key: item,
          cells: [BALANCE_WORDS[item], workedText(worked, units), shownText(shown, units)],
        }))}
      />
      {roundingWords(working).map((words) => (
        <p key={words} className="said">
          {words}
        </p>
      ))}
      {working.slope !== null &&
        slopeWords(working.slope, units).map((words) => (
          <p key={words} className="said">
            {words}
          </p>
        ))}
      <SigmaLedger sigma={working.sigma} units={units} />
    </>
  );
}

interface TakenProps {
  readonly title: string;
  readonly taken: TakenWorking;
  readonly units: UnitSystem;
}

function TakenLedger({ title, taken, units }: TakenProps) {
  if (taken.shapes.length === 0) return null;
  const unit = areaFigure(0, units).unit;
  const rows = taken.shapes.map(({ name, ownArea, takes }, i) => ({
    key: `${i}`,
    cells: [name, workedText(ownArea, units), workedText(takes, units)],
  }));
  const twice = {
    key: 'twice',
    cells: [twiceWords(taken, units), '', workedText(-taken.countedTwice, units)],
  };
  return (
    <Ledger
      caption={`What is taken: ${title}`}
      columns={[
        { head: title, align: 'left' },
        { head: `own ${unit}`, align: 'right' },
        { head: `takes ${unit}`, align: 'right' },
      ]}
      rows={taken.countedTwice === 0 ? rows : [...rows, twice]}
      sum={['together', '', workedText(taken.together, units)]}
    />
  );
}
