import { expect, test } from 'vitest';
import { emptyYard } from '../../../core/edits/index.ts';
import type { Yard } from '../../../core/yard.ts';
import { tracingWords } from '../../../renderer/ground/tracingWords.ts';

function yardOf(cornerSigmaM: number | null): Yard {
  const yard = emptyYard('Yard', { kind: 'loose' }, 'metric', '2026-05-01');
  return { ...yard, details: { ...yard.details, cornerSigmaM } };
}

test('the strip that says nothing is twice the spread of both states’ corners', () => {
  expect(tracingWords(yardOf(0.03), yardOf(0.04)).join()).toContain('some 0.10 m'); // 2 √(0.03² + 0.04²)
  expect(tracingWords(yardOf(null), yardOf(0.05)).join()).toContain('some 0.10 m'); // 2 · 0.05
});

test('nothing is said where nothing is known of the corners', () => {
  expect(tracingWords(yardOf(null), yardOf(null))).toEqual([]);
});
