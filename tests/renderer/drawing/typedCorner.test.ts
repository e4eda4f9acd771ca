import { describe, expect, test } from 'vitest';
import type { YardPoint } from '../../../core/spaces.ts';
import { readTypedCorner } from '../../../renderer/drawing/typedCorner.ts';
import { points } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

const east = points([0, 0], [10, 0]);

function read(text: string, chain = east, aim: YardPoint | null = null, units: 'us' | 'metric' = 'metric') {
  return readTypedCorner(text, chain, aim, units);
}

function expectAt(
  text: string,
  xM: number,
  yM: number,
  ...more: [typeof east?, (YardPoint | null)?, 'us'?]
): void {
  const at = read(text, ...more);
  if (!at.ok) throw new Error(`${text}: ${at.problems[0].kind}`);
  expectNear(at.value.xM, xM, 1e-9, 'm');
  expectNear(at.value.yM, yM, 1e-9, 'm');
}

describe('a typed corner', () => {
  test('coordinates run east and north of the origin and may be negative', () => {
    expectAt('0,0', 0, 0, []);
    expectAt('-2.5, 4', -2.5, 4, []); // as typed
    expectAt('10,20', 3.048, 6.096, [], null, 'us'); // feet: x 0.3048
    expectAt('3 m, 4 m', 3, 4, [], null, 'us'); // a unit that is typed counts
  });

  test('@ counts from the last corner', () => {
    expectAt('@3,-2', 13, -2); // (10, 0) + (3, -2)
  });

  test('a length and a bearing run by the compass', () => {
    expectAt('5 0', 10, 5); // north
    expectAt('5 90', 15, 0); // east
    expectAt('5 < 180', 10, -5); // south
    expectAt('5<270', 5, 0); // west
    expectAt('5 sw', 10 - 5 * Math.SQRT1_2, -5 * Math.SQRT1_2); // 225°
  });

  test('a turn counts from the last edge', () => {
    expectAt('5 l90', 10, 5); // the last edge runs east: left is north
    expectAt('5 r90', 10, -5); // right is south
    expectAt('5 R 45', 10 + 5 * Math.SQRT1_2, -5 * Math.SQRT1_2); // south-east
  });

  test('a bare length runs to the pointer, without one straight on', () => {
    expectAt('5', 13, 4, east, { xM: 40, yM: 40 }); // (30, 40) away: 3-4-5
    expectAt('5', 15, 0); // on along the last edge
  });

  test('feet and inches are one length; two bare numbers are a length and a bearing', () => {
    expectAt('12 ft 6 in', 10 + 12.5 * 0.3048, 0, east, null, 'us'); // 12.5 ft
    expectAt(
      '12 6',
      10 + 12 * 0.3048 * Math.sin(Math.PI / 30),
      12 * 0.3048 * Math.cos(Math.PI / 30),
      east,
      null,
      'us',
    ); // 6° = π/30
  });

  test('what is missing is said', () => {
    expect(read('5', [])).toMatchObject({ ok: false, problems: [{ kind: 'value/missing' }] });
    expect(read('@1,1', [])).toMatchObject({ ok: false, problems: [{ kind: 'value/missing' }] });
    expect(read('5 l90', points([0, 0]))).toMatchObject({ ok: false, problems: [{ kind: 'value/missing' }] });
    expect(read('5', points([0, 0]))).toMatchObject({ ok: false, problems: [{ kind: 'value/missing' }] });
  });

  test('what cannot be read is refused', () => {
    for (const text of ['north', '5 far', '1,2,3', ',', '@', '< 90', '-5', '1e999 90', '5 < 9000']) {
      expect(read(text).ok, text).toBe(false);
    }
  });
});
