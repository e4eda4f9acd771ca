import { useMemo, useState } from 'react';
import { areaFigure, formatNumber, lengthFigure } from '../../core/units/index.ts';
import type { UnitSystem } from '../../core/yard.ts';
import {
  type AreaWorking,
  areaWorking,
  BALANCE_WORDS,
  frameWords,
  type RingWorking,
  ringSumWords,
  roundingWords,
  shownText,
  type TakenWorking,
  TWICE_WORDS,
  workedText,
  workingText,
} from '../../core/zones/index.ts';
import { useOpenYard } from '../app/context.ts';
import { Ledger } from '../shared/Ledger.tsx';
import { PagePart } from '../shared/PageHead.tsx';
import { copyText } from './copyText.ts';
import { SigmaLedger, TightenLine } from './SigmaPart.tsx';

/** How the area of the zone in hand comes about, to be checked by hand or copied; closed until asked for. */
export function WorkingPart({ zoneId }: { readonly zoneId: string }) {
  const [open, setOpen] = useState(false);
  const { resolved } = useOpenYard();
  // With no areas there is nothing to work out; what stands in the way is said above.
  if (resolved === null) return null;
  return (
    <PagePart title="Working" aside="how its area comes about">
      <TightenLine zoneId={zoneId} />
      <div className="do-row">
        <button type="button" className="do" aria-expanded={open} onClick={() => setOpen(!open)}>
          {open ? 'hide' : 'show the working'}
        </button>
        {open && <CopyButton zoneId={zoneId} />}
      </div>
      {open && <OpenWorking zoneId={zoneId} />}
    </PagePart>
  );
}

function useWorking(zoneId: string): AreaWorking | undefined {
  const { yard, resolved } = useOpenYard();
  return useMemo(
    () => (resolved === null ? undefined : areaWorking(resolved, yard, zoneId)),
    [resolved, yard, zoneId],
  );
}

function CopyButton({ zoneId }: { readonly zoneId: string }) {
  const working = useWorking(zoneId);
  const [said, setSaid] = useState<{ readonly of: AreaWorking; readonly words: string } | null>(null);
  if (working === undefined) return null;
  return (
    <>
      <button
        type="button"
        className="do"
        onClick={async () => {
          const done = await copyText(workingText(working));
          setSaid({ of: working, words: done ? 'copied' : 'this window could not copy' });
        }}
      >
        copy
      </button>
      <span className="note" role="status">
        {said?.of === working ? said.words : ''}
      </span>
    </>
  );
}

function OpenWorking({ zoneId }: { readonly zoneId: string }) {
  const working = useWorking(zoneId);
  if (working === undefined) return null;
  const { units } = working;
  const unit = areaFigure(0, units).unit;
  return (
    <>
      <p className="said">
        {frameWords(working)}. A = ½ Σ (xᵢ yᵢ₊₁ − xᵢ₊₁ yᵢ), x east, y north. Digits are for checking the sums,
        not a claim of accuracy.
      </p>
      {working.rings.map((ring, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: rings have no name but their place
        <RingLedgers key={i} ring={ring} units={units} name={i === 0 ? 'edge' : `hole ${i}`} />
      ))}
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
      <SigmaLedger sigma={working.sigma} units={units} />
    </>
  );
}

interface RingProps {
  readonly ring: RingWorking;
  readonly units: UnitSystem;
  readonly name: string;
}

/** Two narrow ledgers rather than one that is wider than the page. */
function RingLedgers({ ring, units, name }: RingProps) {
  const length = lengthFigure(0, units).unit;
  const corner = (value: number): string => formatNumber(value, ring.cornerDecimals);
  const product = (value: number): string => formatNumber(value, ring.productDecimals);
  return (
    <>
      <Ledger
        caption={`Corners of the ${name}`}
        columns={[
          { head: `${name}: corner`, align: 'left' },
          { head: `x east ${length}`, align: 'right' },
          { head: `y north ${length}`, align: 'right' },
        ]}
        rows={ring.corners.map(({ east, north }, i) => ({
          key: `${i}`,
          cells: [i + 1, corner(east), corner(north)],
        }))}
      />
      <Ledger
        caption={`Products of the ${name}`}
        columns={[
          { head: 'i', align: 'left' },
          { head: 'xᵢ yᵢ₊₁', align: 'right' },
          { head: 'xᵢ₊₁ yᵢ', align: 'right' },
        ]}
        rows={ring.corners.map(({ eastByNextNorth, nextEastByNorth }, i) => ({
          key: `${i}`,
          cells: [i + 1, product(eastByNextNorth), product(nextEastByNorth)],
        }))}
        sum={['Σ', product(ring.eastByNextNorthSum), product(ring.nextEastByNorthSum)]}
      />
      <p className="said">{ringSumWords(ring, units)}</p>
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
    cells: [TWICE_WORDS, '', workedText(-taken.countedTwice, units)],
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
