import { expect, test } from 'vitest';
import { clearGround } from '../../../core/hose/clearGround.ts';
import { hoseWarnings, type HosedSection } from '../../../core/hose/hoseWarnings.ts';
import { hoseWays } from '../../../core/hose/hoseWays.ts';

const SPIGOT = { id: 's', name: 'front', at: { xM: 0, yM: 0 } };
const HOSE = { spigots: [SPIGOT], lengthM: 20, clearanceM: 0, barriers: [], obstacles: [] };
const ALL = [hoseWays(clearGround(HOSE), SPIGOT)];

function section(sectionId: string, neededM: number): HosedSection {
  const bySpigot = [{ spigotId: 's', neededM }];
  const isBeyond = neededM > HOSE.lengthM;
  const laid = { line: [], lengthM: 0, bends: [], overWetM: 0 };
  return { hosed: { sectionId, spigotId: 's', neededM, isBeyond, bySpigot, ...laid }, lines: [] };
}

test('sections beyond the hose are told together, with what the farthest of them takes', () => {
  expect(hoseWarnings(HOSE, ALL, [section('A1', 25), section('A2', 12), section('A3', 31)])).toEqual([
    {
      kind: 'plan/hose-too-short',
      where: { thing: 'A1 and A3' },
      facts: { lengthM: 20, neededM: 31, isAll: false },
    },
  ]);
});

test('of a hose that gets everywhere there is nothing to tell', () => {
  expect(hoseWarnings(HOSE, ALL, [section('A1', 19), section('A2', 20)])).toEqual([]);
});
