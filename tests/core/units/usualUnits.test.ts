import { expect, test } from 'vitest';
import {
  areaFigure,
  carrierFigure,
  carrierUnitFor,
  lengthFigure,
  rateFigure,
  speedFigure,
  USUAL_UNITS,
  volumeUnitFor,
} from '../../../core/units/index.ts';

test('a bare number is read in the unit that is printed', () => {
  for (const units of ['us', 'metric'] as const) {
    expect(USUAL_UNITS[units]).toEqual({
      length: lengthFigure(1, units).unit, // each from its formatter
      area: areaFigure(1, units).unit,
      speed: speedFigure(1, units).unit,
      rate: rateFigure(1, units).unit,
      carrier: carrierFigure(1, units).unit,
      product: volumeUnitFor(0.1, units),
      tank: carrierUnitFor(units),
    });
  }
});
