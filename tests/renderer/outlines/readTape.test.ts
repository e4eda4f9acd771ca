import { describe, expect, test } from 'vitest';
import { FOOT_M, INCH_M } from '../../../core/units/index.ts';
import { readLegs, readLengths } from '../../../renderer/outlines/readTape.ts';
import { expectNear } from '../../support/expectNear.ts';
import { given, kindsOf } from '../../support/taped.ts';

describe('lengths in one field', () => {
  test('are parted by commas, semicolons or lines, each in its own unit', () => {
    expect(given(readLengths('0, 8.2\n3 m; 250 cm', 'offsets', 'metric'))).toEqual([0, 8.2, 3, 2.5]); // as typed
    const [first = 0, second = 0] = given(readLengths('12 ft 6 in, 8', 'offsets', 'us'));
    expectNear(first, 12 * FOOT_M + 6 * INCH_M, 1e-12, 'm'); // 12 ft 6 in
    expectNear(second, 8 * FOOT_M, 1e-12, 'm'); // a bare number is feet
  });

  test('may end with a comma or an empty line', () => {
    expect(given(readLengths('1, 2,\n\n', 'offsets', 'metric'))).toEqual([1, 2]); // as typed
  });

  test('that cannot be read are named by their number; none at all is missing', () => {
    const refused = readLengths('1, two, 3', 'ray', 'metric');
    expect(refused.ok ? null : refused.problems[0].where).toEqual({ field: 'ray 2' });
    expect(kindsOf(readLengths(' ,\n', 'ray', 'metric'))).toEqual(['value/missing']);
  });
});

describe('legs of a walked chain', () => {
  test('are a line each: a length, then a bearing, a turn or straight on', () => {
    expect(given(readLegs('60 90\n40 < n45e\n40 l90\n20 r15\n5', 'metric'))).toEqual([
      { lengthM: 60, direction: { kind: 'bearing', deg: 90 } }, // as typed
      { lengthM: 40, direction: { kind: 'bearing', deg: 45 } }, // halfway from north to east
      { lengthM: 40, direction: { kind: 'turn', rightDeg: -90 } }, // left is right the other way
      { lengthM: 20, direction: { kind: 'turn', rightDeg: 15 } },
      { lengthM: 5, direction: { kind: 'on' } }, // no direction: straight on
    ]);
  });

  test('that cannot be read are named by their number; none at all is missing', () => {
    const refused = readLegs('60 90\nforty', 'metric');
    expect(refused.ok ? '' : (refused.problems[0].where as { field: string }).field).toContain('leg 2');
    expect(kindsOf(readLegs('', 'us'))).toEqual(['value/missing']);
  });
});
