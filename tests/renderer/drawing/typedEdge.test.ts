import { describe, expect, test } from 'vitest';
import { readTypedEdge } from '../../../renderer/drawing/typedEdge.ts';

function edge(text: string, units: 'us' | 'metric' = 'metric') {
  const read = readTypedEdge(text, units);
  return read?.ok && read.value.kind === 'run'
    ? read.value.edge
    : read?.ok === false
      ? read.problems[0].kind
      : read;
}

describe('words for how an edge runs', () => {
  test.each([
    ['straight', { kind: 'straight' }],
    [' Smooth ', { kind: 'smooth' }],
    ['arc', { kind: 'arc', via: null }],
    ['arc 12 left', { kind: 'radius', radiusM: 12, side: 'left', long: false }],
    ['arc 12 m r long', { kind: 'radius', radiusM: 12, side: 'right', long: true }],
  ] as const)('%s', (text, expected) => {
    expect(edge(text)).toEqual(expected);
  });

  test('a bare radius is in the unit of the foot line', () => {
    // 1 ft = 0.3048 m, exact by definition
    expect(edge('arc 10 left', 'us')).toEqual({
      kind: 'radius',
      radiusM: 10 * 0.3048,
      side: 'left',
      long: false,
    });
    expect(edge('arc 10 ft right')).toMatchObject({ radiusM: 10 * 0.3048 });
  });

  test.each(['12', '0,0', '12 l90', 'arch', ''])('"%s" is read as a figure', (text) => {
    expect(edge(text)).toBeNull();
  });

  test('what is missing or no length is said', () => {
    expect(edge('arc 12')).toBe('value/missing');
    expect(edge('arc wide left')).toBe('value/not-a-number');
  });
});
