import { memo } from 'react';
import type { ResolvedYard } from '../../core/zones/index.ts';
import type { Lens } from './lens.ts';

interface SharedGroundProps extends Pick<ResolvedYard, 'overlaps' | 'strips'> {
  readonly lens: Lens;
}

/** What lies on the zones and is drawn by nobody: ground in two of them, and the strips kept off along edges. */
export const SharedGround = memo(function SharedGround({ overlaps, strips, lens }: SharedGroundProps) {
  return (
    <g className="shared-ground">
      {overlaps.map(({ ownerId, otherId, regions }) => (
        <path
          key={`${ownerId} ${otherId}`}
          d={lens.regions(regions)}
          className="zone-overlap"
          fillRule="evenodd"
        />
      ))}
      {strips.map(({ outlineId, regions }) => (
        <path key={outlineId} d={lens.regions(regions)} className="keep-off-strip" fillRule="evenodd" />
      ))}
    </g>
  );
});
