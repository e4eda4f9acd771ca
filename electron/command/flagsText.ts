import type { GroundPlan } from '../../core/plan/index.ts';
import { checkWords, settingWords, stakeCuts, stakingTable } from '../../core/staking/index.ts';
import type { Yard } from '../../core/yard.ts';

/** How the cut lines are flagged, a flag and a line of them each on its own line; nothing where there are none. */
export function flagsText(yard: Yard, plan: GroundPlan): string {
  if (plan.cutLines.length === 0) return '';
  const units = yard.details.unitSystem;
  const { flags, lines } = stakingTable(stakeCuts(yard, plan, units), units);
  const flagLines = flags.map((flag) => `${flag.letter}: ${settingWords(flag)}`);
  const cutLines = lines.map(({ from, to, between, length, checks }) =>
    [`${from}-${to} parts ${between.join(' | ')}, ${length}`, ...checks.map(checkWords)].join('; check '),
  );
  return ['', 'flags, set in this order', ...flagLines, '', 'lines', ...cutLines, ''].join('\n');
}
