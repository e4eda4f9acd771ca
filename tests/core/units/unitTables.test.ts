import { expect, test } from 'vitest';
import { RATE_UNITS, SPEED_UNITS } from '../../../core/units/unitTables.ts';

test('paces follow from their definitions', () => {
  expect(SPEED_UNITS.mph).toBeCloseTo(0.44704, 14); // 1,609.344 m in 3,600 s
  expect(SPEED_UNITS['km/h'] * 3.6).toBeCloseTo(1, 15); // 1,000 m in 3,600 s
});

test('label rates follow from volume and ground', () => {
  expect(RATE_UNITS['fl oz per 1,000 ft²'] / RATE_UNITS['mL per 100 m²']).toBeCloseTo(31.832682, 6); // GNU Units 2.22
  expect(RATE_UNITS['gal per 1,000 ft²'] / RATE_UNITS['L per 100 m²']).toBeCloseTo(4.0745833, 7); // GNU Units 2.22
});
