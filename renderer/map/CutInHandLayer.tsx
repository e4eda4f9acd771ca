import { distanceM } from '../../core/kernel/index.ts';
import type { CutSide } from '../../core/sections/index.ts';
import { counted, formatArea } from '../../core/units/index.ts';
import type { UnitSystem } from '../../core/yard.ts';
import { type CutInHand, middle, type Xy } from '../drawing/index.ts';
import type { Lens } from './lens.ts';

/** Below this on the screen, a cut's two sides have no room for their words. */
const SIDES_FROM_PX = 70;
const HANDLE_PX = 7;
const CHOSEN_PX = 9;

interface CutInHandProps {
  readonly inHand: CutInHand;
  readonly lens: Lens;
  readonly units: UnitSystem;
}

/** The cut in hand: its handles, where it was before it was moved, and what lies on both sides of it. */
export function CutInHandLayer({ inHand, lens, units }: CutInHandProps) {
  const { line, was, isHeld, hasHandles, chosen, hover, sides } = inHand;
  const [from, to] = [lens.toLayer(line.from), lens.toLayer(line.to)];
  const moves = was !== null || !hasHandles;
  const sizeOf = (part: typeof chosen): number => (part === chosen || part === hover ? CHOSEN_PX : HANDLE_PX);
  const classOf = (part: typeof chosen): string => (part === chosen ? 'cut-handle chosen' : 'cut-handle');
  const centre = lens.toLayer(middle(line.from, line.to));
  const hasRoom = distanceM(line.from, line.to) / lens.metresPerPx >= SIDES_FROM_PX;
  return (
    <g className={sides === null && moves ? 'cut-in-hand broken' : 'cut-in-hand'}>
      {was && <path d={lens.path([was.from, was.to], false)} className="cut-was" />}
      <path d={lens.path([line.from, line.to], false)} className="cut-halo" />
      <path d={lens.path([line.from, line.to], false)} className={isHeld ? 'cut-line held' : 'cut-line'} />
      {hasHandles && (
        <>
          <circle cx={from.x} cy={from.y} r={sizeOf('from')} className={classOf('from')} />
          <circle cx={to.x} cy={to.y} r={sizeOf('to')} className={classOf('to')} />
          <path d={diamond(centre, sizeOf('middle') + 1)} className={classOf('middle')} />
        </>
      )}
      {sides && hasRoom && (
        <>
          <SideWords side={sides.left} from={from} to={to} leftOf units={units} />
          <SideWords side={sides.right} from={from} to={to} units={units} />
        </>
      )}
    </g>
  );
}

interface SideWordsProps {
  readonly side: CutSide;
  readonly from: Xy;
  readonly to: Xy;
  readonly leftOf?: boolean;
  readonly units: UnitSystem;
}

/** How far beside the line its words stand: more to the side of it than over or under it, for they are wide. */
const BESIDE_PX = { x: 66, y: 40 };

/** The ground on one hand of the cut and its loads, written beside it. */
function SideWords({ side, from, to, leftOf = false, units }: SideWordsProps) {
  const lengthPx = Math.hypot(to.x - from.x, to.y - from.y);
  // On the screen y runs down: seen from `from` to `to`, left is (dy, -dx).
  const turn = leftOf ? 1 : -1;
  const x = (from.x + to.x) / 2 + (turn * BESIDE_PX.x * (to.y - from.y)) / lengthPx;
  const y = (from.y + to.y) / 2 - (turn * BESIDE_PX.y * (to.x - from.x)) / lengthPx;
  return (
    <text x={x} y={y} className="side-words" textAnchor="middle">
      <tspan x={x} dy="-2">
        {formatArea(side.areaM2, units)}
      </tspan>
      <tspan x={x} dy="18" className="side-loads">
        {counted(side.loads, 'load')}
      </tspan>
    </text>
  );
}

function diamond({ x, y }: Xy, reachPx: number): string {
  return `M${x.toFixed(1)} ${(y - reachPx).toFixed(1)}l${reachPx} ${reachPx}l${-reachPx} ${reachPx}l${-reachPx} ${-reachPx}z`;
}
