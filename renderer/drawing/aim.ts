import type { DrawingContext, Pointing } from './drawing.ts';
import { type Snap, type SnapAsk, snapPoint, unsnapped } from './snap.ts';
import { snapIndexOf } from './snapIndex.ts';

/** Where a pointer points: drawn to what it is near, or just where it is while a key holds it free. */
export function aimOf(
  { at, reachM, free }: Pointing,
  context: DrawingContext,
  more: Pick<SnapAsk, 'chain' | 'closes'> = { chain: [] },
): Snap {
  return free ? unsnapped(at) : snapPoint(snapIndexOf(context.yard), { at, reachM, except: null, ...more });
}
