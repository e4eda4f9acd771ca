import { expect, test } from 'vitest';
import { channelOf, HOST_METHODS, isHostMethod } from '../../../electron/contract/channels.ts';

test('every method has a channel of its own', () => {
  const channels = HOST_METHODS.map(channelOf);
  expect(new Set(channels).size).toBe(HOST_METHODS.length);
  expect(channels).toContain('platpace:openYard'); // the prefix and a name of the contract
});

test.each(['', 'constructor', '__proto__', 'toString', 'hasOwnProperty', 'OpenYard', 'openYard '])(
  '%j is no method, though every object has something by some such name',
  (name) => {
    expect(isHostMethod(name)).toBe(false);
  },
);
