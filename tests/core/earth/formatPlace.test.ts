import { expect, test } from 'vitest';
import { formatPlace } from '../../../core/earth/index.ts';

test('a place is shown with its halves named by letters, and no sign', () => {
  expect(formatPlace({ latDeg: 39.9, lonDeg: -86.2 })).toBe('39.900000° N, 86.200000° W'); // north and west by their signs
  expect(formatPlace({ latDeg: -41.28651, lonDeg: 174.7762 })).toBe('41.286510° S, 174.776200° E'); // south and east by theirs
});
