import { makeProjector, type Projector } from '../../../../core/crs/index.ts';
import type { TiffPlace } from './tiffPlace.ts';

type Globe = Pick<Projector, 'toLonLat' | 'fromLonLat'>;

/**
 * From a TIFF's coordinates to the globe and back: by the EPSG code when it is known, else by what the file's own
 * keys spell out; null when neither is understood. Heights and pictures are placed alike.
 */
export function tiffGlobe({ epsg, definition }: TiffPlace, fileName: string): Globe | null {
  const byCode = epsg === null ? null : makeProjector(epsg, fileName);
  if (byCode?.ok) return byCode.value;
  if (definition === null) return null;
  const byKeys = makeProjector(definition.proj, fileName);
  if (!byKeys.ok) return null;
  const { unitX, unitY } = definition;
  return {
    toLonLat: (x, y) => byKeys.value.toLonLat(x * unitX, y * unitY),
    fromLonLat: (at) => {
      const [x, y] = byKeys.value.fromLonLat(at);
      return [x / unitX, y / unitY];
    },
  };
}
