import fc from 'fast-check';
import { expect, test } from 'vitest';
import { carrierFromCatch, flowLPerS, paceForCarrier } from '../../../core/applicators/index.ts';
import {
  FOOT_M,
  formatCarrier,
  GALLON_L,
  litres,
  litresPerM2,
  metres,
  metresPerSecond,
  QUART_L,
  SQUARE_FOOT_M2,
  squareMetres,
} from '../../../core/units/index.ts';
import { galPer1000Ft2 } from '../../support/products.ts';

test('what is caught over a test area is the carrier volume', () => {
  // NC Cooperative Extension, hose-end sprayer calibration: 1.25 gal over 250 ft² is 5.0 gal/1,000 ft²
  const hoseEnd = carrierFromCatch(litres(1.25 * GALLON_L), squareMetres(250 * SQUARE_FOOT_M2));
  expect(hoseEnd / galPer1000Ft2(1)).toBeCloseTo(5, 12); // the above
  // page citing Iowa State University Extension: 1 qt over 200 ft² is 1.25 gal/1,000 ft²
  const plot = carrierFromCatch(litres(QUART_L), squareMetres(200 * SQUARE_FOOT_M2));
  expect(formatCarrier(plot, 'us')).toBe('1.25 gal per 1,000 ft²'); // the above
});

test('flow, swath and pace make the carrier volume', () => {
  // NC Cooperative Extension, hose-end sprayer calibration: 250 ft² in 20 s at 5 gal/1,000 ft² is 3.75 gal/min
  const hoseEnd = flowLPerS(
    litresPerM2(galPer1000Ft2(5)),
    metres(5 * FOOT_M),
    metresPerSecond((50 / 20) * FOOT_M),
  );
  expect((hoseEnd * 60) / GALLON_L).toBeCloseTo(3.75, 12); // the above, as a 5 ft swath over 50 ft
  // NC Cooperative Extension (Buhler), spray gun calibration: 5 ft swath, 200 ft in 78 s, 5.25 gal/1,000 ft²
  const gun = flowLPerS(
    litresPerM2(galPer1000Ft2(5.25)),
    metres(5 * FOOT_M),
    metresPerSecond((200 / 78) * FOOT_M),
  );
  expect((gun * 60) / GALLON_L).toBeCloseTo(4.038, 3); // computed from the above: 5.25 gal in 78 s
});

test('the pace for a carrier volume is the one that puts it down', () => {
  const size = fc.double({ min: 0.01, max: 10, noNaN: true });
  fc.assert(
    fc.property(size, size, size, (carrier, swath, pace) => {
      const flow = flowLPerS(litresPerM2(carrier), metres(swath), metresPerSecond(pace));
      expect(paceForCarrier(flow, metres(swath), litresPerM2(carrier)) / pace).toBeCloseTo(1, 12); // the pace put in
    }),
  );
});
