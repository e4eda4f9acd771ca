import { memo } from 'react';
import type { GroundChange } from '../../core/compare/index.ts';
import type { Lens } from './lens.ts';

/** Ground lost and gained between two states of the yard. */
export type DrawnChange = Pick<GroundChange, 'lost' | 'gained'>;

interface ChangeLayerProps {
  readonly change: DrawnChange;
  readonly lens: Lens;
}

/** Lost ground under minus signs in a broken edge, gained ground under plus signs in a whole one. */
export const ChangeLayer = memo(function ChangeLayer({ change, lens }: ChangeLayerProps) {
  return (
    <g className="change">
      <ChangeHatches />
      <path d={lens.regions(change.lost)} fillRule="evenodd" className="change-lost">
        <title>ground lost</title>
      </path>
      <path d={lens.regions(change.gained)} fillRule="evenodd" className="change-gained">
        <title>ground gained</title>
      </path>
    </g>
  );
});

/** A piece of each hatch, for the words that say what they are. */
export function ChangeSwatch({ of }: { readonly of: 'lost' | 'gained' }) {
  return (
    <svg className="change-swatch" width="34" height="16" aria-hidden="true">
      <ChangeHatches />
      <rect x="1" y="1" width="32" height="14" className={`change-${of}`} />
    </svg>
  );
}

/** Signs rather than lines: every line hatch is taken by a kind of outline, and these say themselves what they mean. */
function ChangeHatches() {
  return (
    <defs>
      <pattern id="hatch-lost" width="14" height="14" patternUnits="userSpaceOnUse">
        <rect width="14" height="14" className="hatch-change-paper" />
        <path d="M1 4H7M8 11H14" className="hatch-lost" />
      </pattern>
      <pattern id="hatch-gained" width="14" height="14" patternUnits="userSpaceOnUse">
        <rect width="14" height="14" className="hatch-change-paper" />
        <path d="M1 4H7M4 1V7M8 11H14M11 8V14" className="hatch-gained" />
      </pattern>
    </defs>
  );
}
