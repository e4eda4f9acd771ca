import { expect, test } from 'vitest';
import { boxesOverlap } from '../../../core/sheet/drawing.ts';
import { emptyRoom } from '../../../core/sheet/labelRoom.ts';
import { labelMarks, labelOutlines, labelSections, labelZones } from '../../../core/sheet/mapLabels.ts';
import { viewOf } from '../../../core/sheet/mapView.ts';
import { handMadePlan } from '../../support/handMadePlan.ts';
import { LONG_NAMES, THREE_ZONES } from '../../support/handMadeYards.ts';
import { textMarksOf, textsOf } from '../../support/sheetPages.ts';

const { yard, plan } = handMadePlan(THREE_ZONES);
const BOX = { xMm: 10, yMm: 10, widthMm: 190, heightMm: 200 };
const VIEW = viewOf({ minXM: 0, minYM: 0, maxXM: 40, maxYM: 30 }, BOX, 240);

test('every section of an overview has its id', () => {
  expect(textsOf(labelSections(VIEW, emptyRoom(BOX), plan.ground.sections, null))).toEqual([
    'A1',
    'A2',
    'A3',
    'B1',
    'C1',
  ]);
});

test("on a section's own map its id is larger than its neighbours'", () => {
  const marks = textMarksOf(labelSections(VIEW, emptyRoom(BOX), plan.ground.sections, ['A2']));
  const [own, ...neighbours] = marks;
  expect(own?.text).toBe('A2');
  expect(neighbours).toHaveLength(4); // the other sections of the fixture
  for (const neighbour of neighbours) expect(neighbour.sizeMm).toBeLessThan(own?.sizeMm ?? 0);
});

test('all labels of a map keep off each other', () => {
  const room = emptyRoom(BOX);
  labelSections(VIEW, room, plan.ground.sections, null);
  labelMarks(VIEW, room, yard.marks);
  labelOutlines(VIEW, room, yard.outlines);
  labelZones(VIEW, room, plan.ground.resolved.zones);
  // 5 sections, 2 marks, 7 cut-outs and check plots, 3 zones in the fixture
  expect(room.taken).toHaveLength(17);
  room.taken.forEach((box, i) => {
    for (const other of room.taken.slice(i + 1)) expect(boxesOverlap(box, other)).toBe(false);
  });
});

test('a name that does not fit its outline goes beside it with a leader', () => {
  const [leader, ...rest] = labelOutlines(
    VIEW,
    emptyRoom(BOX),
    yard.outlines.filter((outline) => outline.name === 'border'),
  );
  expect(leader?.kind === 'path' ? leader.subpaths[0]?.points.length : 0).toBe(2); // a straight leader
  expect(textsOf(rest)).toEqual(['border']);
});

test('a name with no room in or beside its outline is shortened', () => {
  const long = handMadePlan(LONG_NAMES).yard;
  const view = viewOf({ minXM: 0, minYM: 0, maxXM: 41, maxYM: 18 }, BOX, 300);
  for (const words of textsOf(labelOutlines(view, emptyRoom(BOX), long.outlines.slice(2, 4)))) {
    expect(words.endsWith('…')).toBe(true);
  }
});

test('a mark off the map is not named on it', () => {
  const far = yard.marks.map((mark) => ({ ...mark, at: { xM: 900, yM: 900 } }));
  expect(labelMarks(VIEW, emptyRoom(BOX), far)).toEqual([]);
});
