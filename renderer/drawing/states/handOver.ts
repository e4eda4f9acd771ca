import type { Result } from '../../../core/result.ts';
import type { OvalState, Step, TraceState } from '../drawing.ts';
import type { Made } from '../outlineEdits.ts';
import { beginReshape } from './beginReshape.ts';

/** An outline just drawn goes into the yard and stays in hand, selected; one that cannot stand stays being drawn. */
export function handOver(state: TraceState | OvalState, made: Result<Made>): Step {
  if (!made.ok) return { state: { ...state, problem: made.problems[0] }, edits: [] };
  const { id, edit } = made.value;
  return { state: beginReshape(id, state.setAside), edits: [edit], select: { kind: 'outline', id } };
}
