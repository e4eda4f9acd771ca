import { makeEdit, putRow } from '../../core/edits/index.ts';
import {
  carrierFigure,
  fineLengthFigure,
  lengthFigure,
  parseCarrier,
  parseLength,
  parseSpeed,
  parseVolume,
  speedFigure,
  volumeFigure,
} from '../../core/units/index.ts';
import type { Applicator } from '../../core/yard.ts';
import { useBook, useOpenYard } from '../app/context.ts';
import { ChoiceField } from '../shared/ChoiceField.tsx';
import { FigureField } from '../shared/FigureField.tsx';
import { PagePart } from '../shared/PageHead.tsx';
import { APPLICATOR_KINDS } from './applicatorKinds.ts';
import { parseStep } from './parseStep.ts';
import { parseName } from '../shared/parseName.ts';

/** The sprayer in hand: what it holds, what it puts down, how wide and how fast. */
export function ApplicatorPart({ applicator }: { readonly applicator: Applicator }) {
  const { session } = useBook();
  const { yard } = useOpenYard();
  const units = yard.details.unitSystem;
  const put = (label: string, part: Partial<Applicator>): void =>
    session.edit(makeEdit(label, putRow(yard, 'applicators', { ...applicator, ...part })));
  const capacity = volumeFigure(applicator.capacityL, units);
  const carrier = carrierFigure(applicator.carrierLPerM2, units);
  const swath = lengthFigure(applicator.swathM, units);
  const stepLength = fineLengthFigure(applicator.stepM, units);
  const pace = speedFigure(applicator.paceMPerS, units);

  return (
    <PagePart title="Sprayer" aside="measured with water, not guessed">
      <FigureField
        label="name"
        size="wide"
        shown={applicator.name}
        units={units}
        parse={parseName}
        onCommit={(name) => put(`rename ${applicator.name}`, { name })}
      />
      <ChoiceField
        label="kind"
        value={applicator.kind}
        choices={APPLICATOR_KINDS}
        onChoose={(kind) => put(`change the kind of ${applicator.name}`, { kind })}
      />
      <FigureField
        label={applicator.kind === 'hose-end' ? 'its bottle holds, undiluted' : 'its tank holds, mixed'}
        shown={capacity.text}
        unit={capacity.unit}
        units={units}
        parse={(typed) => parseVolume(typed, 'what it holds', capacity.unit)}
        onCommit={(capacityL) => put(`change what ${applicator.name} holds`, { capacityL })}
      />
      <FigureField
        label={applicator.kind === 'hose-end' ? 'water it puts down' : 'mix it puts down'}
        shown={carrier.text}
        unit={carrier.unit}
        units={units}
        parse={(typed) => parseCarrier(typed, 'what it puts down', carrier.unit)}
        onCommit={(carrierLPerM2) => put(`change the carrier of ${applicator.name}`, { carrierLPerM2 })}
      />
      <FigureField
        label="swath that counts"
        shown={swath.text}
        unit={swath.unit}
        units={units}
        parse={(typed) => parseLength(typed, 'swath', swath.unit)}
        onCommit={(swathM) => put(`change the swath of ${applicator.name}`, { swathM })}
      />
      <FigureField
        label="walking pace"
        shown={pace.text}
        unit={pace.unit}
        units={units}
        parse={(typed) => parseSpeed(typed, 'walking pace', pace.unit)}
        onCommit={(paceMPerS) => put(`change the pace with ${applicator.name}`, { paceMPerS })}
      />
      <FigureField
        label="length of one step"
        shown={stepLength.text}
        unit={stepLength.unit}
        note={`or type: 20 steps in ${units === 'us' ? '50 ft' : '15 m'}`}
        units={units}
        parse={(typed) => parseStep(typed, stepLength.unit, units)}
        onCommit={(stepM) => put(`change the step with ${applicator.name}`, { stepM })}
      />
    </PagePart>
  );
}
