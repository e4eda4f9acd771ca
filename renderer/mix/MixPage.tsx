import { useMemo } from 'react';
import { sheetFigures } from '../../core/sheet/index.ts';
import { useOpenYard, usePlanState } from '../app/context.ts';
import { jobInHand } from '../shared/jobInHand.ts';
import { YardHead } from '../shared/YardHead.tsx';
import { PlanNews } from '../shared/PlanNews.tsx';
import { ApplicatorPart } from './ApplicatorPart.tsx';
import { CautionsPart } from './CautionsPart.tsx';
import { JobPart } from './JobPart.tsx';
import { MixLedger } from './MixLedger.tsx';
import { NewApplicatorPart } from './NewApplicatorPart.tsx';
import { NewProductPart } from './NewProductPart.tsx';
import { ProductPart } from './ProductPart.tsx';
import { ZoneAmounts } from './ZoneAmounts.tsx';

const makeId = (): string => crypto.randomUUID();

/** What is put down, with what, and how much of it goes into each load. */
export function MixPage() {
  const { yard } = useOpenYard();
  const { plan } = usePlanState();
  const units = yard.details.unitSystem;
  const figures = useMemo(() => plan && sheetFigures(plan, units), [plan, units]);
  const job = jobInHand(yard);
  const product = yard.products.find((row) => row.id === job?.productId) ?? yard.products[0];
  const applicator = yard.applicators.find((row) => row.id === job?.applicatorId) ?? yard.applicators[0];
  return (
    <>
      <YardHead title="Mix" about={product?.name} />
      <PlanNews />
      {figures && <ZoneAmounts figures={figures} units={units} />}
      {figures && applicator && <MixLedger figures={figures} applicator={applicator} units={units} />}
      {job && <JobPart job={job} />}
      {product ? <ProductPart product={product} /> : <NewProductPart makeId={makeId} />}
      {applicator ? <ApplicatorPart applicator={applicator} /> : <NewApplicatorPart makeId={makeId} />}
      {product && applicator && <CautionsPart product={product} applicator={applicator} />}
    </>
  );
}
