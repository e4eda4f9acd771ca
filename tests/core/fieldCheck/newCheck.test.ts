import { expect, test } from 'vitest';
import { newCheck } from '../../../core/fieldCheck/index.ts';
import { outline, rect } from '../../support/builders.ts';

test('a new check is named by what its ends lie on', () => {
  const lawn = outline('zone', 'Lawn', rect(0, 0, 10, 8));
  const tap = { id: 't', kind: 'spigot', name: 'Tap', at: { xM: 20, yM: 0 } } as const;
  const said = { id: 'c', from: { xM: 10, yM: 8 }, to: tap.at, tapedM: 12.8 };
  const check = newCheck({ outlines: [lawn], marks: [tap] }, said);
  expect(check).toEqual({ ...said, name: 'Lawn 3 to Tap' }); // its third corner as drawn, and the mark
  const across = { ...said, to: { xM: 0, yM: 0 } };
  expect(newCheck({ outlines: [lawn], marks: [tap] }, across).name).toBe('Lawn 3 to 1'); // one outline, named once
});
