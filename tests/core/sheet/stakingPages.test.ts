import { expect, test } from 'vitest';
import { stakingPages } from '../../../core/sheet/stakingPages.ts';
import { settingSteps, stakingTable } from '../../../core/staking/index.ts';
import { MANY_SECTIONS, SMALL_SQUARE, THREE_ZONES } from '../../support/handMadeYards.ts';
import { contextOf } from '../../support/sheetContexts.ts';
import { textsOf } from '../../support/sheetPages.ts';

test('the whole table stands on the pages of flags, nothing of it shortened', () => {
  for (const yard of [THREE_ZONES, MANY_SECTIONS]) {
    const context = contextOf(yard);
    const words = stakingPages(context).flatMap(({ marks }) => textsOf(marks));
    const { flags, lines } = stakingTable(context.staking, context.units);
    expect(flags.length).toBeGreaterThan(0);
    for (const flag of flags) {
      expect(words).toContain(flag.letter);
      for (const step of settingSteps(flag)) {
        expect(words).toContain(step.tape);
        expect(words).toContain(step.words);
      }
    }
    for (const { from, to, length } of lines) {
      expect(words).toContain(`${from}–${to}`);
      expect(words).toContain(length);
    }
  }
});

test('it says to have buried lines marked before a stake is driven', () => {
  const words = stakingPages(contextOf(THREE_ZONES))
    .flatMap(({ marks }) => textsOf(marks))
    .join(' ');
  expect(words).toContain('have buried lines marked');
});

test('a plan without cuts has no page of flags', () => {
  expect(stakingPages(contextOf(SMALL_SQUARE))).toEqual([]);
});
