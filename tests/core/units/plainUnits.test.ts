import { expect, test } from 'vitest';
import { areaFigure, areaStepM2, areaUnitM2, lengthFigure, lengthUnitM } from '../../../core/units/index.ts';

const SYSTEMS = ['us', 'metric'] as const;

test('the plain units are the foot and the metre, and their squares', () => {
  expect(SYSTEMS.map(lengthUnitM)).toEqual([0.3048, 1]); // the international foot
  expect(SYSTEMS.map(areaUnitM2)).toEqual([0.09290304, 1]); // 0.3048²
});

test('they are the units figures are shown in', () => {
  for (const units of SYSTEMS) {
    expect(Number(lengthFigure(7 * lengthUnitM(units), units).text)).toBe(7); // the input
    expect(Number(areaFigure(7 * areaUnitM2(units), units).text)).toBe(7); // the input
  }
});

test('one step of an area is the least that changes its figure', () => {
  for (const units of SYSTEMS) {
    const figure = (steps: number) => areaFigure(steps * areaStepM2(units), units).text;
    expect(figure(20.4)).toBe(figure(20)); // below half a step more
    expect(figure(20.6)).toBe(figure(21)); // above half a step more
    expect(figure(21)).not.toBe(figure(20));
  }
});
