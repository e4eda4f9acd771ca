import { makeEdit, removeRow } from '../../core/edits/index.ts';
import { lengthsDisagree } from '../../core/frame/index.ts';
import { useBook, useOpenYard } from '../app/context.ts';
import { ProblemLines } from '../shared/ProblemLines.tsx';
import type { Picture } from '../../core/yard.ts';
import { KnownLengths } from './KnownLengths.tsx';
import { PictureAccuracy } from './PictureAccuracy.tsx';
import { placementWords } from './placementWords.ts';

/** A picture traced over: how it lies in the yard, its known lengths, and what can be done with it. */
export function PictureLines({ picture }: { readonly picture: Picture }) {
  const { session, view } = useBook();
  const { yard } = useOpenYard();
  const units = yard.details.unitSystem;
  const { placement } = picture;
  const remove = removeRow(yard, 'pictures', picture.id);
  const wild = lengthsDisagree(picture);
  return (
    <>
      <div className="line">
        <span>{picture.name}</span>
        <span className="note">{placementWords(picture, units)}</span>
      </div>
      {placement.kind === 'scaled' && placement.lengths.length > 1 && (
        <KnownLengths picture={picture} lengths={placement.lengths} />
      )}
      <PictureAccuracy picture={picture} />
      {wild && <ProblemLines problems={[wild]} units={units} />}
      <div className="do-row">
        {placement.kind !== 'georeferenced' && (
          <button
            type="button"
            className="do"
            onClick={() => view.take({ kind: 'scale-picture', pictureId: picture.id })}
          >
            {placement.kind === 'unscaled' ? 'set its scale by a known length' : 'add a known length'}
          </button>
        )}
        {remove && (
          <button
            type="button"
            className="do"
            onClick={() => session.edit(makeEdit(`take away ${picture.name}`, remove))}
          >
            take it away
          </button>
        )}
      </div>
    </>
  );
}
