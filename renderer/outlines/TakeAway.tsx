import { makeEdit, removeRow } from '../../core/edits/index.ts';
import { useBook, useOpenYard } from '../app/context.ts';

interface TakeAwayProps {
  readonly part: 'outlines' | 'marks' | 'checks';
  readonly id: string;
  readonly name: string;
}

/** Takes the thing in hand out of the yard, and out of the hand. */
export function TakeAway({ part, id, name }: TakeAwayProps) {
  const { session, view } = useBook();
  const { yard } = useOpenYard();

  function takeAway(): void {
    const remove = removeRow(yard, part, id);
    view.select(null);
    if (remove) session.edit(makeEdit(`take away ${name}`, remove));
  }

  return (
    <div className="do-row">
      <button type="button" className="do" onClick={takeAway}>
        take it away
      </button>
    </div>
  );
}
