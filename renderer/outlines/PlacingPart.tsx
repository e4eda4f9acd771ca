import { pointBaseOf } from '../../core/area/index.ts';
import { makeEdit, putRow } from '../../core/edits/index.ts';
import { lengthFigure } from '../../core/units/index.ts';
import type { Outline, Placing, Yard } from '../../core/yard.ts';
import { useBook, useOpenYard } from '../app/context.ts';
import { ChoiceField } from '../shared/ChoiceField.tsx';
import { FigureField } from '../shared/FigureField.tsx';
import { pointSigmaFigure, pointSigmaText, readPointSigma } from '../shared/readSigma.ts';

const BY_WORDS: Readonly<Record<Placing['by'], string>> = {
  hand: 'by hand',
  picture: 'over a picture',
  tape: 'by tape',
  gps: 'by GPS',
};

/** How the corners of the outline in hand were found, and how sure they are. */
export function PlacingPart({ outline }: { readonly outline: Outline }) {
  const { session } = useBook();
  const { yard } = useOpenYard();
  const { placing } = outline;
  const units = yard.details.unitSystem;
  const put = (part: Partial<Placing>): void =>
    session.edit(
      makeEdit(
        `how ${outline.name} was found`,
        putRow(yard, 'outlines', { ...outline, placing: { ...placing, ...part } }),
      ),
    );
  // A picture without a scale measures nothing.
  const pictures = yard.pictures.filter(({ placement }) => placement.kind !== 'unscaled');
  const ways = (['hand', 'picture', 'tape', 'gps'] as const).filter(
    (by) => by !== 'picture' || pictures.length > 0 || placing.by === 'picture',
  );
  return (
    <>
      <ChoiceField<Placing['by']>
        label="its corners were found"
        value={placing.by}
        choices={ways.map((by) => [by, BY_WORDS[by]] as const)}
        onChoose={(by) => put({ by, pictureId: by === 'picture' ? (pictures[0]?.id ?? null) : null })}
      />
      {placing.by === 'picture' && pictures.length > 1 && (
        <ChoiceField<string>
          label="the picture"
          value={placing.pictureId ?? ''}
          choices={pictures.map(({ id, name }) => [id, name] as const)}
          onChoose={(pictureId) => put({ pictureId })}
        />
      )}
      <FigureField
        label="a corner of it is within ±"
        shown={placing.sigmaM === null ? '' : pointSigmaFigure(placing.sigmaM, units)}
        unit={lengthFigure(0, units).unit}
        note={placing.sigmaM === null ? baseWords(outline, yard) : 'one standard deviation'}
        units={units}
        parse={(typed) => readPointSigma(typed, units)}
        onCommit={(sigmaM) => put({ sigmaM })}
      />
    </>
  );
}

/** What holds where the outline says nothing. */
function baseWords(outline: Outline, yard: Yard): string {
  const { by, sigmaM, scale } = pointBaseOf(outline, yard);
  if (sigmaM === null) return 'not stated, so its areas carry no ±';
  const text = pointSigmaText(sigmaM, yard.details.unitSystem);
  const picture = yard.pictures.find(({ id }) => id === scale?.pictureId)?.name ?? '';
  if (by === 'picture') return `as ${picture} says: ${text}`;
  return by === 'pixel' ? `one pixel of ${picture}: ${text}` : `as the yard says: ${text}`;
}
