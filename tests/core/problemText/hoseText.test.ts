import { expect, test } from 'vitest';
import { hoseText, isHoseTrouble } from '../../../core/problemText/hoseText.ts';

test('trouble with the hose is told from other trouble of a plan', () => {
  expect(isHoseTrouble({ kind: 'plan/no-spigot', where: { thing: 'The hose' }, facts: {} })).toBe(true);
  expect(isHoseTrouble({ kind: 'plan/nothing-to-treat', where: { thing: 'lawn' }, facts: {} })).toBe(false);
});

test('a hose too short says how long a longer one has to be, rounded up to what there is to buy', () => {
  const facts = { lengthM: 15.24, neededM: 18.7, isAll: false };
  const { what, mend } = hoseText({ kind: 'plan/hose-too-short', where: { thing: 'A3' }, facts }, 'us');
  expect(what).toBe('Beyond the hose: A3. It takes 62 ft and there are 50.0 ft: 12 ft are missing.'); // 61.4 and 11.4 ft, up
  expect(mend).toContain('62 ft');
  const all = hoseText(
    { kind: 'plan/hose-too-short', where: { thing: 'A3' }, facts: { ...facts, isAll: true } },
    'metric',
  );
  expect(all.what).toContain('Every section');
});

test('a gate closed by what the hose keeps off is mended by keeping off less', () => {
  const where = { thing: 'A3' };
  const facts = { clearanceM: 0.3, isByClearance: true };
  expect(hoseText({ kind: 'plan/hose-no-way', where, facts }, 'metric').mend).toContain('less than 0.30 m');
  expect(hoseText({ kind: 'plan/spigot-shut-in', where, facts }, 'metric').mend).toContain('0.30 m');
});
