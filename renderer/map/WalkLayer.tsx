import type { WalkEnd, WalkPreview, Xy } from '../drawing/index.ts';
import type { Lens } from './lens.ts';

interface WalkLayerProps {
  readonly walk: WalkPreview;
  readonly lens: Lens;
}

/** What a hand has settled of the walk: the cuts it holds, where it starts and finishes. */
export function WalkLayer({ walk, lens }: WalkLayerProps) {
  const { cuts, startAt, finishAt, inHand } = walk;
  // The one in hand is drawn where the hand has it.
  const still = cuts.filter(
    ({ heldId, from }) => heldId !== null && from !== (inHand?.was ?? inHand?.line)?.from,
  );
  return (
    <g className="walk-hand">
      {still.map((cut) => (
        <g key={cut.id}>
          <path d={lens.path([cut.from, cut.to], false)} className="held-cut" />
          <Dot at={lens.toLayer(cut.from)} />
          <Dot at={lens.toLayer(cut.to)} />
        </g>
      ))}
      {startAt && <WalkEndSign end="start" at={lens.toLayer(startAt)} />}
      {finishAt && <WalkEndSign end="finish" at={lens.toLayer(finishAt)} />}
    </g>
  );
}

/** The sign of a held cut: a dot at either end, as a pin head. */
function Dot({ at }: { readonly at: Xy }) {
  return <circle cx={at.x.toFixed(1)} cy={at.y.toFixed(1)} r="5.5" className="held-dot" />;
}

/** Where the walk starts: a ring with a wedge pointing on; where it finishes: a ring with a square. */
function WalkEndSign({ end, at }: { readonly end: WalkEnd; readonly at: Xy }) {
  return (
    <g transform={`translate(${at.x.toFixed(1)} ${at.y.toFixed(1)})`} className="walk-end">
      <circle r="10.5" />
      <path d={end === 'start' ? 'M-3.5 -5.5L6 0L-3.5 5.5Z' : 'M-4 -4H4V4H-4Z'} />
      <text y="25" textAnchor="middle">
        {end}
      </text>
    </g>
  );
}
