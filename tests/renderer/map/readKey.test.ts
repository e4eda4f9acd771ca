import { describe, expect, test } from 'vitest';
import { readKey } from '../../../renderer/map/readKey.ts';
import { Hand, trace, yardOf } from '../../support/drawing.ts';

const centre = { xM: 7, yM: 8 };
const idle = { state: new Hand(yardOf()).state, centre, stepM: 0.5, fineStepM: 0.05 };
const tracing = { ...idle, state: new Hand(yardOf()).do(trace()).state };

describe('keys of the sketch', () => {
  test('with nothing in hand the arrows slide the sketch, up towards the north', () => {
    const ask = readKey('ArrowUp', false, idle);
    expect(ask).toMatchObject({ kind: 'slide', rightPx: 0 });
    expect(ask?.kind === 'slide' && ask.downPx < 0).toBe(true);
  });

  test('with a tool the arrows move the crosshair, Shift by less', () => {
    expect(readKey('ArrowUp', false, tracing)).toEqual({
      kind: 'input',
      input: { kind: 'arrow', eastM: 0, northM: 0.5, from: centre }, // one step north
    });
    expect(readKey('ArrowLeft', true, tracing)).toMatchObject({ input: { eastM: -0.05 } }); // one fine step west
  });

  test('plus and minus zoom, Home shows all', () => {
    expect(readKey('+', false, idle)).toMatchObject({ kind: 'zoom', by: 0.5 });
    expect(readKey('-', false, idle)).toMatchObject({ kind: 'zoom', by: -0.5 });
    expect(readKey('Home', false, idle)).toEqual({ kind: 'fit' });
  });

  test.each([
    ['Enter', 'typed'],
    [' ', 'place'],
    ['Backspace', 'back'],
    ['Delete', 'remove'],
    ['Escape', 'escape'],
    ['PageDown', 'next-corner'],
    ['PageUp', 'previous-corner'],
  ])('%j says %s', (key, kind) => {
    expect(readKey(key, false, tracing)).toMatchObject({ kind: 'input', input: { kind } });
  });

  test('a key that means nothing here is left to others', () => {
    expect(readKey('q', false, tracing)).toBeNull();
  });
});
