import { expect, test } from 'vitest';
import { hoseWords, type SectionHose, snagsOf } from '../../../core/hose/index.ts';

const at = { xM: 0, yM: 0 };
const GROUND = { spigots: [{ id: 's', name: 'front spigot', at }], lengthM: 15.24 };
const bend = (name: string, maySnag = false) => ({ at, outlineId: 'h', name, turnRad: 1, maySnag });
const LAID: SectionHose = {
  sectionId: 'A1',
  spigotId: 's',
  neededM: 12.1,
  isBeyond: false,
  bySpigot: [],
  line: [],
  lengthM: 0,
  bends: [],
  overWetM: 0,
};

test('how the hose lies is one line: from where, how much, round what', () => {
  expect(hoseWords(LAID, GROUND, 'us')).toBe('hose from front spigot, 40 ft'); // 12.1 / 0.3048 = 39.7, rounded up
  const bent = { ...LAID, bends: [bend('SE corner of house'), bend('NE corner of house')] };
  expect(hoseWords(bent, GROUND, 'metric')).toBe(
    'hose from front spigot, 12.1 m, bends at SE corner of house and NE corner of house',
  );
});

test('a section beyond the hose says by how much, and one no hose gets to says that', () => {
  const beyond = { ...LAID, neededM: 18.9, isBeyond: true };
  expect(hoseWords(beyond, GROUND, 'us')).toBe('hose from front spigot, 63 ft, 13 ft more than the hose'); // 62.01 and 12.01, up
  expect(hoseWords({ ...LAID, spigotId: null, neededM: null }, GROUND, 'us')).toBe(
    'no hose gets to all of it',
  );
});

test('corners where the hose may catch are told once', () => {
  const sections = [
    { ...LAID, bends: [bend('SE corner of house', true), bend('W side of pond')] },
    { ...LAID, bends: [bend('SE corner of house', true)] },
  ];
  expect(snagsOf({ sections })).toEqual(['SE corner of house']);
});
