import { memo } from 'react';
import type { Picture } from '../../core/yard.ts';
import { pictureCorners, type Quad } from '../drawing/index.ts';
import type { Lens } from './lens.ts';
import { pictureMatrix } from './pictureMatrix.ts';

interface PictureLayerProps {
  readonly pictures: readonly Picture[];
  readonly imageUrls: ReadonlyMap<string, string>;
  readonly lens: Lens;
  /** Paled, where the ink on it counts more than the picture. */
  readonly pale: boolean;
}

/** The base pictures, each laid down by its four corners. */
export const PictureLayer = memo(function PictureLayer(props: PictureLayerProps) {
  const { pictures, imageUrls, lens, pale } = props;
  return (
    <>
      {pictures.map((picture) => {
        const url = imageUrls.get(picture.imageHash);
        if (url === undefined) return null;
        const quad = pictureCorners(picture).map((corner) => lens.toLayer(corner)) as unknown as Quad;
        return (
          <img
            key={picture.id}
            src={url}
            alt={picture.name}
            draggable={false}
            className={pale ? 'base-picture pale' : 'base-picture'}
            style={{
              width: picture.widthPx,
              height: picture.heightPx,
              transform: pictureMatrix(picture.widthPx, picture.heightPx, quad),
            }}
          />
        );
      })}
    </>
  );
});
