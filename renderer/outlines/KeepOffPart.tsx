import { makeEdit, putRow } from '../../core/edits/index.ts';
import { lengthFigure } from '../../core/units/index.ts';
import type { Outline } from '../../core/yard.ts';
import { useBook, useOpenYard } from '../app/context.ts';
import { FigureField } from '../shared/FigureField.tsx';
import { readStripWidth } from './readStripWidth.ts';

/** The strip of turf left untreated all round the outline in hand. */
export function KeepOffPart({ outline }: { readonly outline: Outline }) {
  const { session } = useBook();
  const { yard } = useOpenYard();
  const units = yard.details.unitSystem;
  const unit = lengthFigure(0, units).unit;
  const place = outline.kind === 'zone' ? 'inside its edge' : 'outside its edge';
  return (
    <>
      <FigureField
        label="keep off all round it"
        shown={outline.keepOffM === null ? '' : lengthFigure(outline.keepOffM, units).text}
        unit={unit}
        note={outline.keepOffM === null ? 'nothing kept off' : `left untreated, ${place}`}
        units={units}
        parse={(typed) => readStripWidth(typed, units)}
        onCommit={(keepOffM) =>
          session.edit(
            makeEdit(`keep off ${outline.name}`, putRow(yard, 'outlines', { ...outline, keepOffM })),
          )
        }
      />
      {outline.kind === 'water' && (
        <p className="said">
          States ask for 10 to 25 ft (3 to 8 m) from water; the product’s label or a local rule may ask for
          more, and they govern. Platpace does not check this width against them.
        </p>
      )}
    </>
  );
}
