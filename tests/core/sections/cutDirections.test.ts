import { expect, test } from 'vitest';
import { cutDirections } from '../../../core/sections/cutDirections.ts';
import { moved, rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

test('along and square to the lanes come first, and only they count as aligned', () => {
  const directions = cutDirections(region(rect(0, 0, 10, 4)), Math.PI / 6, 12);
  const [along, across] = directions;
  expectNear(along?.normal.x ?? Number.NaN, 0.5, 1e-12, ''); // sin 30°: the normal of a line at 30°
  expectNear(across?.normal.x ?? Number.NaN, Math.sqrt(3) / 2, 1e-12, ''); // sin 120°
  expect(directions.filter((direction) => direction.aligned).length).toBe(2); // along and square
});

test('no direction is tried twice within two degrees', () => {
  const directions = cutDirections(region(moved(rect(0, 0, 10, 4), 0.01, 3, 4)), 0, 12);
  for (const [i, a] of directions.entries()) {
    for (const b of directions.slice(i + 1)) {
      const alike = Math.abs(a.normal.x * b.normal.x + a.normal.y * b.normal.y);
      expect(alike).toBeLessThan(Math.cos(Math.PI / 90 - 1e-9)); // the stated two degrees
    }
  }
});

test('the long edges of turned ground are among the directions', () => {
  const directions = cutDirections(region(moved(rect(0, 0, 10, 4), 0.4, 0, 0)), 0, 0);
  const nearest = Math.max(
    ...directions.map(({ normal }) => Math.abs(normal.x * Math.sin(0.4) - normal.y * Math.cos(0.4))),
  );
  expectNear(nearest, 1, 1e-12, ''); // the normal of an edge at 0.4 rad is (sin 0.4, -cos 0.4)
});
