import { boxesMeet, nearBox, type RingBounds, ringBounds, sweepLayers } from '../kernel/index.ts';
import type { Region, Ring } from '../spaces.ts';
import type { UntreatedGround } from '../zones/index.ts';
import { byKind, OUTSIDE_KINDS, type OutsideKind } from './coverage.ts';
import type { SwathPiece } from './swathPieces.ts';

/** A layer of the sweep, and what being in it says of the ground. */
interface Layer {
  readonly rings: readonly Ring[];
  readonly is: 'swath' | 'counted' | 'treated' | OutsideKind;
}

/**
 * Ground that swaths reach off the treated ground, by what lies there.
 *
 * @param swaths those asked about
 * @param counted swaths whose ground outside was counted before
 * @param treated all treated regions
 */
export function outsideOnto(
  swaths: readonly SwathPiece[],
  counted: readonly SwathPiece[],
  treated: readonly Region[],
  untreated: readonly UntreatedGround[],
): Record<OutsideKind, number> {
  const box = boxOf(swaths);
  const near = (regions: readonly Region[], is: Layer['is']): Layer[] =>
    nearBox(
      regions.filter(({ outer }) => boxesMeet(ringBounds(outer), box)),
      box,
    ).map(({ outer, holes }) => ({ rings: [outer, ...holes], is }));
  const layers: Layer[] = [
    ...swaths.map(({ rings }): Layer => ({ rings, is: 'swath' })),
    ...counted.map(({ rings }): Layer => ({ rings, is: 'counted' })),
    ...near(treated, 'treated'),
    ...untreated.flatMap(({ kind, regions }) => near(regions, kind)),
  ];
  const depths = { swath: 0, counted: 0, treated: 0, ...byKind(() => 0) };
  const outsideM2 = byKind(() => 0);
  sweepLayers(
    layers.map(({ rings }) => rings),
    {
      cross(layer, isIn) {
        depths[(layers[layer] as Layer).is] += isIn ? 1 : -1;
      },
      add(areaM2) {
        if (depths.swath === 0 || depths.counted > 0 || depths.treated > 0) return;
        outsideM2[OUTSIDE_KINDS.find((kind) => depths[kind] > 0) ?? 'elsewhere'] += areaM2;
      },
    },
  );
  return outsideM2;
}

export function boxOf(pieces: readonly SwathPiece[]): RingBounds {
  let [minXM, minYM, maxXM, maxYM] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { bounds } of pieces) {
    minXM = Math.min(minXM, bounds.minXM);
    minYM = Math.min(minYM, bounds.minYM);
    maxXM = Math.max(maxXM, bounds.maxXM);
    maxYM = Math.max(maxYM, bounds.maxYM);
  }
  return { minXM, minYM, maxXM, maxYM };
}
