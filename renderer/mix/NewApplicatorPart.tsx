import { useState } from 'react';
import { USUAL_STEP_M } from '../../core/applicators/index.ts';
import { makeEdit, putRow } from '../../core/edits/index.ts';
import { parseCarrier, parseLength, parseSpeed, parseVolume, USUAL_UNITS } from '../../core/units/index.ts';
import type { Applicator } from '../../core/yard.ts';
import { useBook, useOpenYard } from '../app/context.ts';
import { ChoiceField } from '../shared/ChoiceField.tsx';
import { PagePart } from '../shared/PageHead.tsx';
import { APPLICATOR_KINDS } from './applicatorKinds.ts';
import { withFirstJob } from './firstJob.ts';
import { NewRow } from './NewRow.tsx';

/** A sprayer that is not in this yard's shed yet. */
export function NewApplicatorPart({ makeId }: { readonly makeId: () => string }) {
  const { session } = useBook();
  const { yard } = useOpenYard();
  const [kind, setKind] = useState<Applicator['kind']>('hose-end');
  const units = yard.details.unitSystem;
  const us = units === 'us';
  const usual = USUAL_UNITS[units];
  const volumeUnit = kind === 'tank' ? usual.tank : usual.product;
  const read = {
    capacity: (typed: string) => parseVolume(typed, 'what it holds', volumeUnit),
    carrier: (typed: string) => parseCarrier(typed, 'what it puts down', usual.carrier),
    swath: (typed: string) => parseLength(typed, 'swath', usual.length),
    pace: (typed: string) => parseSpeed(typed, 'walking pace', usual.speed),
  };
  const fields = [
    {
      key: 'capacity',
      label: kind === 'hose-end' ? 'its bottle holds, undiluted' : 'its tank holds, mixed',
      unit: volumeUnit,
      example: kind === 'hose-end' ? (us ? '32' : '950') : us ? '4' : '15',
      parse: read.capacity,
    },
    {
      key: 'carrier',
      label: kind === 'hose-end' ? 'water it puts down' : 'mix it puts down',
      unit: usual.carrier,
      example: us ? '2' : '8',
      parse: read.carrier,
    },
    {
      key: 'swath',
      label: 'swath that counts',
      unit: usual.length,
      example: us ? '6' : '1.8',
      parse: read.swath,
    },
    { key: 'pace', label: 'walking pace', unit: usual.speed, example: us ? '2' : '0.6', parse: read.pace },
  ];

  function add(typed: Readonly<Record<string, string>>): void {
    const capacity = read.capacity(typed.capacity ?? '');
    const carrier = read.carrier(typed.carrier ?? '');
    const swath = read.swath(typed.swath ?? '');
    const pace = read.pace(typed.pace ?? '');
    if (!capacity.ok || !carrier.ok || !swath.ok || !pace.ok) return;
    const applicator: Applicator = {
      id: makeId(),
      name: kind === 'hose-end' ? 'Hose-end sprayer' : 'Tank sprayer',
      kind,
      capacityL: capacity.value,
      carrierLPerM2: carrier.value,
      swathM: swath.value,
      paceMPerS: pace.value,
      stepM: USUAL_STEP_M,
    };
    const job = withFirstJob(yard, { applicator }, makeId);
    session.edit(makeEdit(`add ${applicator.name}`, putRow(yard, 'applicators', applicator), ...job));
  }

  return (
    <PagePart title="A sprayer" aside="measured with water first">
      <ChoiceField label="kind" value={kind} choices={APPLICATOR_KINDS} onChoose={setKind} />
      <NewRow key={kind} fields={fields} units={units} addWords="add this sprayer" onAdd={add} />
    </PagePart>
  );
}
