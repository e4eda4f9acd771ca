import { memo } from 'react';
import { type SwathInk, swathInk } from '../../core/passes/index.ts';
import type { GroundPlan } from '../../core/plan/index.ts';
import type { InkDepth } from '../../core/sheet/index.ts';
import type { Selection } from '../drawing/index.ts';
import type { Lens } from './lens.ts';

interface CoverProps {
  readonly plan: GroundPlan;
  readonly lens: Lens;
}

/**
 * How the passes cover the ground: every swath piece is a wash of the same thin ink, so that ground darkens by as many as
 * lie on it, as it is counted. Where none lies the hatch of missed ground is left standing.
 */
export const CoverLayer = memo(function CoverLayer({ plan, lens }: CoverProps) {
  const { pieces } = inkOf(plan);
  const ground = lens.regions(plan.sections.map(({ region }) => region));
  const washes = pieces.map((rings) => lens.rings(rings));
  return (
    <g className="cover">
      <defs>
        <clipPath id="cover-ground">
          <path d={ground} clipRule="evenodd" />
        </clipPath>
      </defs>
      <path d={ground} fillRule="evenodd" className="cover-missed" />
      <g clipPath="url(#cover-ground)">
        <path d={washes.join('')} className="cover-paper" />
        {washes.map((d, place) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: pieces have no name, and the same plan has the same pieces
          <path key={place} d={d} className="cover-wash" />
        ))}
      </g>
    </g>
  );
});

/** What stands over the beds and walls: the ground treated outside, wherever it falls, and the section in hand. */
export const OutsideLayer = memo(function OutsideLayer(
  props: CoverProps & { readonly selection: Selection },
) {
  const { plan, lens, selection } = props;
  const inHand = plan.sections.find(({ id }) => selection?.kind === 'section' && selection.id === id);
  return (
    <g className="cover">
      <path d={lens.regions(inkOf(plan).outside)} fillRule="evenodd" className="cover-outside" />
      {inHand && <path d={lens.regions([inHand.region])} className="cover-in-hand" />}
    </g>
  );
});

/** A piece of each depth of ink, for the words that say what it is; its hatch is the sketch's. */
export function CoverSwatch({ of }: { readonly of: InkDepth | 'outside' }) {
  return (
    <svg className="cover-swatch" width="26" height="14" aria-hidden="true">
      <rect x="1" y="1" width="24" height="12" className={SWATCH[of]} />
      {Array.from({ length: of === 'outside' ? 0 : of }, (_, wash) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: washes of the same ink
        <rect key={wash} x="1" y="1" width="24" height="12" className="cover-wash" />
      ))}
      <rect x="1" y="1" width="24" height="12" className="cover-swatch-edge" />
    </svg>
  );
}

const SWATCH = {
  0: 'cover-missed',
  1: 'cover-paper',
  2: 'cover-paper',
  3: 'cover-paper',
  outside: 'cover-outside',
} as const;

const KNOWN = new WeakMap<GroundPlan, SwathInk>();

/** Made once for each plan, whichever layer asks first. */
function inkOf(plan: GroundPlan): SwathInk {
  const known = KNOWN.get(plan);
  if (known !== undefined) return known;
  const { sections, passes, request, coverage } = plan;
  const ink = swathInk({ sections, passes, swathM: request.swathM }, coverage);
  KNOWN.set(plan, ink);
  return ink;
}
