import { hasFixedGround, loosenYardEdit, placeOfMiddle } from '../../core/edits/index.ts';
import { readPlace } from '../../core/crs/index.ts';
import { formatPlace } from '../../core/earth/index.ts';
import { useBook, useOpenYard, useViewState } from '../app/context.ts';
import type { Tool } from '../drawing/index.ts';
import { PagePart } from '../shared/PageHead.tsx';
import { KnownPlaces } from './KnownPlaces.tsx';
import { PlaceByHand } from './PlaceByHand.tsx';

/** Where the yard lies on earth: by points with known places, by its middle and a turn, by hand, or nowhere. */
export function PlacePart() {
  const { session, view } = useBook();
  const { drawing } = useViewState();
  const { yard } = useOpenYard();
  const { frame } = yard.details;
  const place = placeOfMiddle(yard);
  const fixed = hasFixedGround(yard);
  // Its corners are degrees of a file: without the earth they would be a drawing like any other.
  const tied = yard.pictures.some(({ placement }) => placement.kind === 'georeferenced');
  /** Pressed again, a tool is put down. */
  const take = (tool: Tool) => (): void =>
    view.input({ kind: 'take', tool: drawing.kind === tool.kind ? { kind: 'select' } : tool });
  const ways = (
    <>
      <button
        type="button"
        className="do"
        aria-pressed={drawing.kind === 'place-yard'}
        onClick={take({ kind: 'place-yard', readPlace })}
      >
        place it by points
      </button>
      <button
        type="button"
        className="do"
        aria-pressed={drawing.kind === 'move-yard'}
        onClick={take({ kind: 'move-yard' })}
      >
        {frame.kind === 'loose' ? 'turn it by hand' : 'move and turn it by hand'}
      </button>
      {frame.kind === 'placed' && (
        <button
          type="button"
          className="do"
          disabled={tied}
          onClick={() => session.edit(loosenYardEdit(yard))}
        >
          take it off the earth
        </button>
      )}
    </>
  );
  return (
    <PagePart
      title="Its place"
      aside={place === null ? 'a loose yard: nowhere on earth yet' : formatPlace(place)}
    >
      {fixed ? (
        <>
          <p className="said">
            {tied
              ? 'A picture that knows its place stays there and ties the yard to the earth; what is drawn moves over it.'
              : 'The elevation grid stays where it is; what is drawn moves over it.'}
          </p>
          <div className="do-row">{ways}</div>
        </>
      ) : (
        <PlaceByHand key={frame.kind}>{ways}</PlaceByHand>
      )}
      {drawing.kind === 'place-yard' && <KnownPlaces drawing={drawing} />}
    </PagePart>
  );
}
