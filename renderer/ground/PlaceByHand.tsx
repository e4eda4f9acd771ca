import { type ReactNode, useState } from 'react';
import { placeOfMiddle, placeYardEdit } from '../../core/edits/index.ts';
import { readPlace } from '../../core/crs/index.ts';
import { formatPlace } from '../../core/earth/index.ts';
import type { LonLat } from '../../core/spaces.ts';
import { formatAngle, parseAngle } from '../../core/units/index.ts';
import { useBook, useOpenYard } from '../app/context.ts';
import { FigureField } from '../shared/FigureField.tsx';

interface PlaceByHandProps {
  /** Other ways to place it, on the same line as the button. */
  readonly children: ReactNode;
}

/** The place of the yard's middle and a turn, typed; nothing happens before the button is pressed. */
export function PlaceByHand({ children }: PlaceByHandProps) {
  const { session } = useBook();
  const { yard } = useOpenYard();
  const units = yard.details.unitSystem;
  const [typed, setTyped] = useState<LonLat | null>(null);
  const [turnDeg, setTurnDeg] = useState(0);
  const origin = typed ?? placeOfMiddle(yard);

  function place(): void {
    if (origin === null) return;
    session.edit(placeYardEdit(yard, { origin, turnDeg }));
    setTyped(null);
    setTurnDeg(0);
  }

  return (
    <>
      <FigureField
        label="latitude, longitude of its middle"
        size="place"
        shown={origin === null ? '' : formatPlace(origin)}
        units={units}
        parse={(text) => readPlace(text, 'its middle')}
        onCommit={setTyped}
      />
      <FigureField
        label="turned clockwise by"
        shown={formatAngle(turnDeg)}
        units={units}
        parse={(text) => parseAngle(text, 'turned clockwise by')}
        onCommit={setTurnDeg}
      />
      <div className="do-row">
        <button
          type="button"
          className="do"
          disabled={origin === null || (typed === null && turnDeg === 0)}
          onClick={place}
        >
          lay it there
        </button>
        {children}
      </div>
    </>
  );
}
