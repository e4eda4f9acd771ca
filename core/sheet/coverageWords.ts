import type { LoadUse } from '../plan/index.ts';
import type { OutsideKind } from '../passes/index.ts';
import { formatArea, formatPercent, formatSpeed, type UnitSystem } from '../units/index.ts';
import type { CoverageFigures } from './coverageFigures.ts';

const ONTO_WORDS: Readonly<Record<OutsideKind, string>> = {
  water: 'water',
  hardscape: 'hardscape',
  building: 'a building',
  bed: 'beds',
  tree: 'tree rings',
  'keep-off': 'keep-off strips',
  'check-plot': 'check plots',
  elsewhere: 'other ground',
};

/** "1.2 m² onto beds, 0.3 m² onto other ground"; '' when nothing shown falls outside. */
export function outsideWords({ outsideOnto }: CoverageFigures, units: UnitSystem): string {
  return outsideOnto
    .map(({ kind, areaM2 }) => `${formatArea(areaM2, units)} onto ${ONTO_WORDS[kind]}`)
    .join(', ');
}

/** What each row of the coverage is called, where the ground is walked once or twice. */
export function coveredWords(rounds: 1 | 2) {
  return rounds === 1
    ? { once: 'once', short: '', twice: 'twice or more', missed: 'missed' }
    : {
        once: 'by both rounds: the whole rate',
        short: 'by one round: half the rate',
        twice: 'more often: above the rate',
        missed: 'missed',
      };
}

/** Sweeping less than this beyond the mix does not show at the bottle. */
const LEAST_TOLD = 0.005;
/** Beyond this the load is worth a warning. */
const MOST_QUIET = 0.1;

/** What the passes sweep against what the loads are mixed for, of the load where it is most; and whether to warn. */
export function loadUseWords(
  uses: readonly LoadUse[],
  units: UnitSystem,
): { readonly text: string; readonly warns: boolean } | null {
  const [first, ...more] = uses;
  if (first === undefined) return null;
  const worst = more.reduce((most, use) => (use.ratio > most.ratio ? use : most), first);
  const beyond = worst.ratio - 1;
  if (!(beyond >= LEAST_TOLD)) return null;
  const pace = formatSpeed(worst.lastingPaceMPerS, units);
  const swept = `The passes of load ${worst.number} sweep ${formatPercent(beyond)} more ground than it is mixed for`;
  const lasts = `walked at ${pace} it lasts to its last pass`;
  const warns = beyond > MOST_QUIET;
  return {
    text: warns
      ? `${swept}: ${lasts}, or it runs empty before. A wider section, or one with fewer beds, overlaps less.`
      : `${swept}: ${lasts}.`,
    warns,
  };
}
