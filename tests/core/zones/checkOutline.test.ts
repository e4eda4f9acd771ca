import { expect, test } from 'vitest';
import type { Outline } from '../../../core/yard.ts';
import { checkOutline } from '../../../core/zones/index.ts';
import { outline, points, rect } from '../../support/builders.ts';

test('a sound outline is handed back, and again when asked again', () => {
  const bed = outline('bed', 'roses', rect(0, 0, 3, 2), rect(1, 0.5, 1, 1));
  expect(checkOutline(bed)).toEqual({ ok: true, value: bed });
  expect(checkOutline(bed)).toEqual({ ok: true, value: bed });
});

test('all that is wrong with its rings is said, under its name, each time', () => {
  const bed = outline('bed', 'roses', points([0, 0], [2, 2], [2, 0], [0, 2]), points([1, 1]));
  for (let asked = 0; asked < 2; asked++) {
    expect(checkOutline(bed)).toMatchObject({
      ok: false,
      problems: [
        { kind: 'shape/self-crossing', where: { outlineId: 'roses', name: 'roses', at: { xM: 1, yM: 1 } } },
        { kind: 'shape/too-few-points', where: { outlineId: 'roses' }, facts: { points: 1 } },
      ],
    });
  }
});

test.each([Number.NaN, -0.3, 2.01, 1e300])('a slope of %d is none that ground can have', (grade) => {
  const bank: Outline = { ...outline('zone', 'bank', rect(0, 0, 3, 2)), slope: { kind: 'grade', grade } };
  expect(checkOutline(bank)).toMatchObject({
    ok: false,
    problems: [{ kind: 'shape/no-grade', where: { outlineId: 'bank' }, facts: { mostGrade: 2 } }],
  });
});

test('the steepest slope that may be typed stands, and so does level ground', () => {
  for (const grade of [0, 2]) {
    const bank: Outline = { ...outline('zone', 'bank', rect(0, 0, 3, 2)), slope: { kind: 'grade', grade } };
    expect(checkOutline(bank).ok).toBe(true);
  }
});

test('an arc through a place that is none is said, not taken as straight', () => {
  for (const xM of [Number.NaN, Number.POSITIVE_INFINITY]) {
    const [first, ...more] = rect(0, 0, 3, 2);
    const bent = { ...first, xM: 0, yM: 0, run: { kind: 'arc', via: { xM, yM: -1 } } } as const;
    const bed: Outline = {
      ...outline('bed', 'roses', rect(0, 0, 3, 2)),
      outer: { kind: 'corners', corners: [bent, ...more] },
    };
    expect(checkOutline(bed)).toMatchObject({
      ok: false,
      problems: [{ kind: 'shape/not-finite', where: { outlineId: 'roses' } }],
    });
  }
});

test('a circle or an ellipse without a size is said by its size, not as corners at one place', () => {
  const pond: Outline = {
    ...outline('water', 'pond', rect(0, 0, 3, 2)),
    outer: { kind: 'circle', centre: { xM: 0, yM: 0 }, radiusM: 0 },
  };
  expect(checkOutline(pond)).toMatchObject({
    ok: false,
    problems: [{ kind: 'shape/no-size', where: { outlineId: 'pond' }, facts: { size: 'radius' } }],
  });
});
