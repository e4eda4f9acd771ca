import { makeEdit, putRow } from '../../core/edits/index.ts';
import { blocksHose } from '../../core/hose/index.ts';
import type { Outline } from '../../core/yard.ts';
import { useBook, useOpenYard } from '../app/context.ts';
import { ChoiceField } from '../shared/ChoiceField.tsx';

type Said = 'usual' | 'yes' | 'no';

/** Whether a hose is dragged over the outline in hand or goes round it; a zone is what it is dragged for. */
export function HoseCrossing({ outline }: { readonly outline: Outline }) {
  const { session } = useBook();
  const { yard } = useOpenYard();
  if (outline.kind === 'zone') return null;
  const usual = blocksHose({ kind: outline.kind, blocksHose: null }) ? 'yes' : 'no';
  const put = (said: boolean | null): void =>
    session.edit(
      makeEdit(
        `say if a hose goes round ${outline.name}`,
        putRow(yard, 'outlines', { ...outline, blocksHose: said }),
      ),
    );
  return (
    <ChoiceField<Said>
      label="a hose goes round it"
      value={outline.blocksHose === null ? 'usual' : outline.blocksHose ? 'yes' : 'no'}
      choices={[
        ['usual', `as usual for its kind: ${usual}`],
        ['yes', 'yes'],
        ['no', 'no, it is dragged over'],
      ]}
      onChoose={(choice) => put(choice === 'usual' ? null : choice === 'yes')}
    />
  );
}
