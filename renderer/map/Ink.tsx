import { CheckLines } from './CheckLines.tsx';
import { ChangeLayer } from './ChangeLayer.tsx';
import { CoverLayer, OutsideLayer } from './CoverLayer.tsx';
import { CutInHandLayer } from './CutInHandLayer.tsx';
import { GridLines } from './GridLines.tsx';
import { HandLayer } from './HandLayer.tsx';
import { HoseLayer } from './HoseLayer.tsx';
import { Hatches } from './Hatches.tsx';
import type { Look } from './leafletMap.ts';
import { Marks } from './Marks.tsx';
import { Names } from './Names.tsx';
import { Outlines } from './Outlines.tsx';
import { PlanLayer, SectionGround } from './PlanLayer.tsx';
import type { SketchProps } from './Sketch.tsx';
import { WalkLayer } from './WalkLayer.tsx';

/** Everything that is drawn, from the paper's squares up to the hand. */
export function Ink(props: SketchProps & { readonly look: Look }) {
  const { yard, resolved, plan, planStale, selection, onSelect, preview, look } = props;
  const { lens, sight } = look;
  const units = yard.details.unitSystem;
  const covered = props.coverShown ? plan : null;
  const overPicture = plan === null && yard.pictures.some(({ imageHash }) => props.imageUrls.has(imageHash));
  const className = [
    'ink',
    planStale && 'plan-stale',
    plan !== null && 'walking',
    covered !== null && 'covering',
    preview.walk?.inHand && 'cutting',
    props.change !== null && 'comparing',
    overPicture && 'over-picture',
  ]
    .filter(Boolean)
    .join(' ');
  return (
    <svg className={className} width="1" height="1" aria-label={`Outlines of ${yard.details.name}`}>
      <Hatches />
      <GridLines lens={lens} sight={sight} units={units} />
      {plan !== null && <SectionGround plan={plan} lens={lens} selection={selection} />}
      {covered !== null && <CoverLayer plan={covered} lens={lens} />}
      <Outlines
        yard={yard}
        resolved={resolved}
        lens={lens}
        units={units}
        selection={selection}
        onChoose={onSelect}
      />
      {covered !== null && <OutsideLayer plan={covered} lens={lens} selection={selection} />}
      {plan !== null && <PlanLayer plan={plan} lens={lens} selection={selection} yard={yard} />}
      {plan !== null && <HoseLayer plan={plan} lens={lens} selection={selection} />}
      {preview.walk !== null && <WalkLayer walk={preview.walk} lens={lens} />}
      {props.change !== null && <ChangeLayer change={props.change} lens={lens} />}
      <Marks marks={yard.marks} lens={lens} selection={selection} onChoose={onSelect} />
      <Names yard={yard} resolved={resolved} lens={lens} units={units} selection={selection} plan={plan} />
      {plan === null && (selection?.kind === 'check' || props.drawing.kind === 'tape-between') && (
        <CheckLines checks={yard.checks} lens={lens} units={units} selection={selection} />
      )}
      {preview.walk?.inHand && <CutInHandLayer inHand={preview.walk.inHand} lens={lens} units={units} />}
      <HandLayer preview={preview} lens={lens} sight={sight} units={units} />
    </svg>
  );
}
