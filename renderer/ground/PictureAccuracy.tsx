import { makeEdit, putRow } from '../../core/edits/index.ts';
import { pictureScaleSigma, pixelSizeM } from '../../core/frame/index.ts';
import { formatSignificant, lengthFigure } from '../../core/units/index.ts';
import type { Picture } from '../../core/yard.ts';
import { useBook, useOpenYard } from '../app/context.ts';
import { FigureField } from '../shared/FigureField.tsx';
import {
  pointSigmaFigure,
  pointSigmaText,
  readPointSigma,
  readScaleSigma,
  scaleSigmaText,
} from '../shared/readSigma.ts';

/** How well a corner is pointed at on a picture, and how sure its scale is. */
export function PictureAccuracy({ picture }: { readonly picture: Picture }) {
  const { session } = useBook();
  const { yard } = useOpenYard();
  const units = yard.details.unitSystem;
  const { cornerSigmaM, scaleSigma, placement } = picture;
  const put = (part: Partial<Picture>): void =>
    session.edit(makeEdit(`how sure ${picture.name} is`, putRow(yard, 'pictures', { ...picture, ...part })));
  if (placement.kind === 'unscaled') return null;
  const pixelM = pixelSizeM(picture);
  const measured = pictureScaleSigma({ ...picture, scaleSigma: null });
  return (
    <>
      <FigureField
        label="a corner on it is within ±"
        shown={cornerSigmaM === null ? '' : pointSigmaFigure(cornerSigmaM, units)}
        unit={lengthFigure(0, units).unit}
        note={
          cornerSigmaM === null && pixelM !== null
            ? `one pixel: ${pointSigmaText(pixelM, units)}`
            : 'one standard deviation'
        }
        units={units}
        parse={(typed) => readPointSigma(typed, units)}
        onCommit={(sigmaM) => put({ cornerSigmaM: sigmaM })}
      />
      <FigureField
        label="its scale is within ±"
        shown={scaleSigma === null ? '' : formatSignificant(100 * scaleSigma, 3)}
        unit="%"
        note={
          scaleSigma !== null
            ? 'one standard deviation'
            : measured === null
              ? 'not stated, so in no ±'
              : `as its known lengths say: ${scaleSigmaText(measured)}`
        }
        units={units}
        parse={readScaleSigma}
        onCommit={(sigma) => put({ scaleSigma: sigma })}
      />
    </>
  );
}
