import { describe, expect, test } from 'vitest';
import { checkRate } from '../../../core/products/index.ts';
import { parseRate } from '../../../core/units/index.ts';
import { flOzPer1000Ft2, productWith } from '../../support/products.ts';

const over = { rateLPerM2: flOzPer1000Ft2(4), mostRateLPerM2: flOzPer1000Ft2(3) };

describe('a rate over the label', () => {
  test('of a pesticide is refused, whatever the reason', () => {
    for (const reason of [null, 'it did not work last time']) {
      const checked = checkRate(productWith({ use: 'pesticide', ...over }), reason);
      expect(checked).toEqual({
        ok: false,
        problems: [
          { kind: 'value/rate-over-label', where: { field: 'Rate of Meadow Iron' }, facts: over }, // the inputs
        ],
      });
    }
  });

  test('of anything else is refused without a reason and a warning with one', () => {
    for (const use of ['fertilizer', 'other'] as const) {
      const product = productWith({ use, ...over });
      expect(checkRate(product, null).ok).toBe(false);
      expect(checkRate(product, '  ').ok).toBe(false);
      const excused = checkRate(product, 'soil test of May');
      expect(excused.ok && excused.value.map((problem) => problem.kind)).toEqual(['value/rate-over-label']);
    }
  });
});

describe('a rate within the label', () => {
  test('passes at the limit itself, and where the label states none', () => {
    const atLimit = productWith({ mostRateLPerM2: flOzPer1000Ft2(3), use: 'pesticide' });
    expect(checkRate(atLimit, null)).toEqual({ ok: true, value: [] });
    expect(checkRate(productWith({ rateLPerM2: 99 }), null)).toEqual({ ok: true, value: [] });
  });

  test('is not tripped by a limit typed another way', () => {
    const rate = parseRate('1.2 fl oz/1000 ft2', 'Rate', null);
    const most = parseRate('12 fl oz/10000 ft2', 'Most', null); // the same, ten times over
    if (!rate.ok || !most.ok) throw new Error('both are plain rates');
    expect(rate.value).toBeGreaterThan(most.value); // by one unit in the last place of a double
    const product = productWith({ use: 'pesticide', rateLPerM2: rate.value, mostRateLPerM2: most.value });
    expect(checkRate(product, null)).toEqual({ ok: true, value: [] });
  });
});

test('a rate that is no amount is named', () => {
  const zero = checkRate(productWith({ rateLPerM2: 0 }), null);
  expect(zero.ok ? '' : zero.problems[0].kind).toBe('value/not-positive');
  const none = checkRate(productWith({ rateLPerM2: Number.NaN }), null);
  expect(none.ok ? '' : none.problems[0].kind).toBe('value/missing');
});
