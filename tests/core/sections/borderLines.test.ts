import { expect, test } from 'vitest';
import { borderLines } from '../../../core/sections/borderLines.ts';
import type { Section } from '../../../core/sections/index.ts';
import { rect, region } from '../../support/builders.ts';
import { expectNear } from '../../support/expectNear.ts';

function section(id: string, ...box: [number, number, number, number]): Section {
  return { id, zoneId: 'z', zoneName: 'Front', region: region(rect(...box)), areaM2: box[2] * box[3] };
}

test('a border is given in as many parts as it has neighbours, each with left and right', () => {
  const sections = [section('A1', 0, 0, 5, 10), section('A2', 5, 0, 5, 4), section('A3', 5, 4, 5, 6)];
  const lines = borderLines(
    [
      [
        { xM: 5, yM: 0 },
        { xM: 5, yM: 10 },
      ],
    ],
    sections,
  );
  // Worked by hand: walking north along x = 5 the west lies left.
  expect(lines.map((line) => line.between)).toEqual([
    ['A1', 'A2'],
    ['A1', 'A3'],
  ]);
  expectNear(lines[0]?.to.yM ?? Number.NaN, 4, 1e-12, 'm'); // where A2 ends
  expectNear(lines[1]?.from.yM ?? Number.NaN, 4, 1e-12, 'm'); // where A3 begins
});

test('where a cut runs along the edge of the ground there is no border', () => {
  const sections = [section('A1', 0, 0, 4, 4), section('A2', 0, 4, 10, 4)];
  const lines = borderLines(
    [
      [
        { xM: 0, yM: 4 },
        { xM: 10, yM: 4 },
      ],
    ],
    sections,
  );
  expect(lines.length).toBe(1);
  expectNear(lines[0]?.to.xM ?? Number.NaN, 4, 1e-12, 'm'); // worked by hand: A1 is 4 m wide
  expect(lines[0]?.between).toEqual(['A2', 'A1']); // walking east the north lies left
});
