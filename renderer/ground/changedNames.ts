import type { KindChange } from '../../core/compare/index.ts';
import { OUTLINE_WORDS } from '../drawing/index.ts';

/** What there is now and was not before, and the other way round, each in a sentence; zones have their own rows. */
export function changedNames(kinds: readonly KindChange[]): readonly string[] {
  const named = (list: 'appeared' | 'vanished'): readonly string[] =>
    kinds
      .filter(({ kind }) => kind !== 'zone')
      .flatMap((change) => change[list].map(({ name }) => `${name} (${OUTLINE_WORDS[change.kind]})`));
  const [appeared, vanished] = [named('appeared'), named('vanished')];
  return [
    ...(appeared.length > 0 ? [`New: ${appeared.join(', ')}.`] : []),
    ...(vanished.length > 0 ? [`Gone: ${vanished.join(', ')}.`] : []),
  ];
}
