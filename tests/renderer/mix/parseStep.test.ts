import { expect, test } from 'vitest';
import { parseStep } from '../../../renderer/mix/parseStep.ts';
import { expectNear } from '../../support/expectNear.ts';

function stepM(typed: string): number {
  const read = parseStep(typed, 'ft', 'us');
  return read.ok ? read.value : Number.NaN;
}

test('a step is a length', () => {
  expectNear(stepM('2.5'), 0.762, 1e-9, 'm'); // 2.5 x 0.3048
  expectNear(stepM('75 cm'), 0.75, 1e-9, 'm'); // in its own unit
});

test('or it is counted over a taped length', () => {
  expectNear(stepM('20 steps in 50 ft'), 0.762, 1e-9, 'm'); // 50 x 0.3048 / 20
  expectNear(stepM('1 step over 2 ft 6 in'), 0.762, 1e-9, 'm'); // 30 x 0.0254
});

test('what no one walks is refused with the bounds', () => {
  expect(parseStep('20', 'ft', 'us')).toMatchObject({
    ok: false,
    problems: [{ kind: 'value/out-of-range' }],
  }); // 6 m
  expect(parseStep('0 steps in 50 ft', 'ft', 'us').ok).toBe(false); // no step at all
  expect(parseStep('some', 'ft', 'us').ok).toBe(false); // no figure
});
