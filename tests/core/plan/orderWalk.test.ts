import { expect, test } from 'vitest';
import { orderWalk, type PackedGround } from '../../../core/plan/orderWalk.ts';
import { oneLoadEach } from '../../support/oneLoadEach.ts';
import type { Section } from '../../../core/sections/index.ts';
import { rect, region } from '../../support/builders.ts';

function square(id: string, xM: number, yM = 0): Section {
  return {
    id,
    zoneId: id.replace(/\d+$/, ''),
    zoneName: id,
    region: region(rect(xM, yM, 10, 10)),
    areaM2: 100,
  };
}

const ANYWHERE = { startAt: null, finishAt: null };
/** Four squares in a row, named out of order, cut from each other. */
const ROW: Section[] = [square('A1', 20), square('A2', 0), square('A3', 30), square('A4', 10)];
const GROUND: PackedGround = {
  sections: ROW,
  cutLines: [['A2', 'A4', 10] as const, ['A4', 'A1', 20] as const, ['A1', 'A3', 30] as const].map(
    ([left, right, xM], cut) => {
      return { from: { xM, yM: 0 }, to: { xM, yM: 10 }, between: [left, right] as const, cut };
    },
  ),
  loads: oneLoadEach(ROW),
};

function westOf(ground: PackedGround): number[] {
  return ground.sections.map(({ region }) => region.outer[0]?.xM ?? Number.NaN);
}

test('sections are walked from neighbour to neighbour and named in that order', () => {
  const walked = orderWalk(GROUND, { startAt: { xM: 0, yM: 5 }, finishAt: null }, null);
  expect(westOf(walked)).toEqual([0, 10, 20, 30]); // west to east from the start
  expect(walked.sections.map(({ id }) => id)).toEqual(['A1', 'A2', 'A3', 'A4']); // rising on the way
  expect(walked.loads.map(({ number, sectionIds }) => [number, sectionIds])).toEqual([
    [1, ['A1']],
    [2, ['A2']],
    [3, ['A3']],
    [4, ['A4']],
  ]); // one a section
  expect(walked.cutLines.map(({ between }) => between)).toEqual([
    ['A1', 'A2'],
    ['A2', 'A3'],
    ['A3', 'A4'],
  ]); // the same squares by their new names
});

test('the walk ends where the person wants to be', () => {
  const walked = orderWalk(GROUND, { startAt: null, finishAt: { xM: 0, yM: 5 } }, null);
  expect(westOf(walked)).toEqual([30, 20, 10, 0]); // home is in the west
});

test('the sections of one load follow each other, in whichever zones they lie', () => {
  const sections = [square('A1', 0), square('B1', 40), square('A2', 20), square('C1', 60)];
  const loads = [
    { number: 1, sectionIds: ['A1', 'C1'], areaM2: 200 },
    { number: 2, sectionIds: ['B1'], areaM2: 100 },
    { number: 3, sectionIds: ['A2'], areaM2: 100 },
  ];
  const walked = orderWalk({ sections, cutLines: [], loads }, ANYWHERE, null);
  const shared = walked.loads.find(({ sectionIds }) => sectionIds.length === 2);
  expect(shared?.areaM2).toBe(200); // as given
  expect(walked.loads.map(({ number }) => number)).toEqual([1, 2, 3]); // rising
  expect(walked.loads.flatMap(({ sectionIds }) => sectionIds)).toEqual(walked.sections.map(({ id }) => id)); // in walking order
  expect(new Set(walked.sections.map(({ id }) => id))).toEqual(new Set(['A1', 'A2', 'B1', 'C1'])); // renumbered within zones
});

test('with a hose the farthest comes first, spigot by spigot', () => {
  const needs = [
    { sectionId: 'A1', spigotId: 'west', neededM: 25, nearestM: 15 },
    { sectionId: 'A2', spigotId: 'west', neededM: 5, nearestM: 0 },
    { sectionId: 'A3', spigotId: 'east', neededM: 9, nearestM: 0 },
    { sectionId: 'A4', spigotId: 'west', neededM: 15, nearestM: 5 },
  ];
  const walked = orderWalk(GROUND, { startAt: { xM: 0, yM: 5 }, finishAt: null }, needs);
  expect(westOf(walked)).toEqual([20, 10, 0, 30]); // 25, 15, 5 m from the west one, then the east one's
});
