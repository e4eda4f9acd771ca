import { describe, expect, test } from 'vitest';
import { tracedRing } from '../../../core/curves/index.ts';
import { signedAreaM2 } from '../../../core/kernel/index.ts';
import { SQUARE_FOOT_M2 } from '../../../core/units/index.ts';
import {
  TAPE_FIGURES,
  type TapedFigure,
  type TapeFigureName,
  type Typed,
} from '../../../renderer/outlines/tapeFigures.ts';
import { expectNear } from '../../support/expectNear.ts';
import { AWAY, EAST, given, kindsOf } from '../../support/taped.ts';

function taped(name: TapeFigureName, typed: Typed): TapedFigure {
  return given(TAPE_FIGURES[name].draw(typed, AWAY, 'metric'));
}

function areaM2(name: TapeFigureName, typed: Typed): number {
  return signedAreaM2(tracedRing(taped(name, typed).outer));
}

describe('a figure typed by its lengths', () => {
  test('is drawn to scale', () => {
    expectNear(areaM2('rectangle', { length: '30', width: '20' }), 600, 1e-8, 'm²'); // 30 × 20
    // Heron's formula: s = 21, √(21·8·7·6) = 84
    const sides = { 'first side': '13', 'second side': '14', 'third side': '15' };
    expectNear(areaM2('sides', sides), 84, 1e-8, 'm²');
    expectNear(areaM2('height', { base: '50', height: '80' }), 2000, 1e-8, 'm²'); // ½ × 50 × 80
    const trapezoid = { 'first side': '30', 'far side': '50', across: '20' };
    expectNear(areaM2('trapezoid', trapezoid), 800, 1e-8, 'm²'); // (30 + 50) / 2 × 20
  });

  test('in feet is drawn in feet', () => {
    const figure = given(TAPE_FIGURES.rectangle.draw({ length: '50', width: '300 in' }, EAST, 'us'));
    expectNear(signedAreaM2(tracedRing(figure.outer)) / SQUARE_FOOT_M2, 1250, 1e-8, 'ft²'); // 50 × 25
    expect(figure.lines[0]?.[1]).toMatch(/^1,250 ft²/); // the same
  });

  test('a circle and an ellipse stay what they are', () => {
    expect(taped('circle', { radius: '4' }).outer).toEqual({ kind: 'circle', centre: AWAY.at, radiusM: 4 }); // as typed
    expect(taped('ellipse', { length: '23', width: '17' }).outer).toEqual({
      kind: 'ellipse',
      centre: AWAY.at,
      halfLengthM: 11.5, // half of 23
      halfWidthM: 8.5, // half of 17
      bearingDeg: AWAY.bearingDeg,
    });
    expect(taped('ellipse', { length: '23', width: '17' }).lines[0]?.[1]).toMatch(/^307\.1 m²/); // π/4 × 23 × 17
  });

  test('that lacks a length says which', () => {
    const refused = TAPE_FIGURES.rectangle.draw({ length: '30' }, EAST, 'metric');
    expect(refused.ok ? null : refused.problems[0].where).toEqual({ field: 'width' });
    expect(kindsOf(TAPE_FIGURES.circle.draw({ radius: '0' }, EAST, 'metric'))).toEqual([
      'value/not-positive',
    ]);
  });
});

describe('ground measured by several lines', () => {
  test('offsets are drawn by the trapezoidal rule, with Simpson’s beside it', () => {
    // surveying lecture notes, softecksblog.in, Surveying 13: 460.75 m² and 461.167 m²
    const nine = { offsets: '3.15, 4.3, 8.2, 5.6, 6.85, 7.6, 4.2, 5.6, 4.3', spacing: '10' };
    expectNear(areaM2('offsets', nine), 460.75, 1e-8, 'm²');
    const lines = taped('offsets', nine).lines.map(([, text]) => text);
    expect(lines[0]).toMatch(/^460\.[78] m²/); // 460.75 to a tenth, either way
    expect(lines[1]).toMatch(/^461\.2 m²/); // 461.167 to a tenth
  });

  test('offsets at unequal spacings have no Simpson’s rule', () => {
    expect(taped('offsets', { offsets: '2, 4, 1', spacing: '3, 5' }).lines).toHaveLength(1);
  });

  test('rays are drawn straight from one to the next, with what the other two ways make of them', () => {
    const rays = '7.1 8.9 9.7 10.9 12.4 11.7 11.8 9.9 6.8 8.2 9.7 10.4 12 11.4 8.9 8'.replaceAll(' ', ',');
    const { lines, said } = taped('rays', { 'rays, clockwise': rays });
    // rays of a trade installation sheet, deploy.abcdocz.com/doc/187946:
    expect(lines.map(([, text]) => text.split(' ')[0])).toEqual([
      '303.3', // ½ sin 22.5° × Σ of neighbours' products, 1,584.93 by hand
      '314.8', // π × mean of the squares
      '305.6', // π × (157.8 / 16)²
    ]);
    expect(said).toContain('variance');
  });

  test('a walked chain says its misclosure, its precision and how sure its corners are', () => {
    const chain = taped('chain', { legs: '10 90\n10 l90\n10 l90\n10.4 l90' });
    const lines = new Map(chain.lines);
    expect(lines.get('walked')).toBe('40.40 m'); // 10 + 10 + 10 + 10.4
    expect(lines.get('misclosure')).toBe('0.40 m, 1 in 101'); // 10.4 − 10, and 40.4 / 0.4
    expectNear(chain.cornerSigmaM, 0.4 * Math.sqrt(15 / 16 / 12), 1e-9, 'm'); // e √((1 − 1/n²) / 12), n = 4
    expect(chain.said).toContain('compass rule');
  });

  test('a chain that closes claims no accuracy of its own', () => {
    const chain = taped('chain', { legs: '10 90\n10 l90\n10 l90\n10 l90' });
    expect(new Map(chain.lines).get('misclosure')).toBe('none');
    expect(chain.cornerSigmaM).toBe(0); // nothing is missing at the end
  });
});
