import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { putRow, rowsOf, YARD_PARTS, type YardPart } from '../../../core/edits/index.ts';
import { checkEdit, checkRow, checkYard } from '../../../core/yardFile/index.ts';
import { fullYard, moveCorner, point } from '../../support/storedYards.ts';
import { anyDeeds, anyYard, editOf } from '../../support/anyYards.ts';

const YARD = fullYard();

test('every yard and every edit the other tests make is in order', () => {
  fc.assert(
    fc.property(anyYard, anyDeeds, (yard, deeds) => {
      expect(checkYard(yard)).toBeNull();
      for (const deed of deeds)
        if (deed.do === 'edit') expect(checkEdit(editOf(yard, deed.strokes, 1))).toBeNull();
    }),
    { seed: 20261125 },
  );
});

test('anything at all put in the place of a member is refused, or is as good', () => {
  for (const part of YARD_PARTS) {
    for (const row of rowsOf(YARD, part)) {
      for (const name of Object.keys(row)) {
        expect(checkRow(part, { ...row, [name]: undefined }), `${part}.${name}`).not.toBeNull();
        expect(checkRow(part, { ...row, [name]: Number.NaN }), `${part}.${name}`).not.toBeNull();
        const { [name as keyof typeof row]: _gone, ...without } = row;
        expect(checkRow(part, without), `${part}.${name}`).toBe(`has no ${name}`);
      }
      expect(checkRow(part, { ...row, more: 1 })).toBe('has an unknown more');
    }
  }
});

test('a place on earth is within its degrees', () => {
  const at = (lonDeg: number, latDeg: number) =>
    checkRow('details', { ...YARD.details, frame: { kind: 'placed', origin: { lonDeg, latDeg } } });
  expect(at(-180, 90)).toBeNull();
  expect(at(180, -90)).toBeNull();
  expect(at(-86, 999)).toContain('latDeg is beyond 90°');
  expect(at(361, 40)).toContain('lonDeg is beyond 180°');
});

test('junk of every kind is refused without a throw', () => {
  fc.assert(
    fc.property(fc.anything(), (junk) => {
      for (const part of YARD_PARTS) expect(checkRow(part, junk)).not.toBeNull();
      expect(checkYard(junk)).not.toBeNull();
      expect(checkEdit(junk)).not.toBeNull();
      expect(checkEdit({ label: '', changes: [junk] })).not.toBeNull();
    }),
    { seed: 20261125 },
  );
});

test('an id twice in one part is told by the name of the part', () => {
  expect(checkYard({ ...YARD, marks: [...YARD.marks, YARD.marks[0]] })).toBe(
    'the yard: marks has an id twice',
  );
});

test.each([
  ['neither before nor after', { part: 'marks', id: 'm', index: 0, before: null, after: null }],
  ['adds or removes the details', { ...putRow(YARD, 'details', YARD.details), before: null }],
  ['adds or removes the details', { ...putRow(YARD, 'details', YARD.details), after: null }],
  ['another id', { ...putRow(YARD, 'marks', YARD.marks[0] as never), id: 'other' }],
  ['index is below 0', { ...putRow(YARD, 'marks', YARD.marks[0] as never), index: -1 }],
  ['index is not a whole number', { ...putRow(YARD, 'marks', YARD.marks[0] as never), index: 0.5 }],
  ['part is none of', { ...putRow(YARD, 'marks', YARD.marks[0] as never), part: 'images' }],
  ['xM is not a finite number', moveCorner(YARD, 'z1', point(Number.POSITIVE_INFINITY, 0)).changes[0]],
])('an edit is refused: %s', (why, change) => {
  expect(checkEdit({ label: 'x', changes: [change] })).toContain(why);
});

test('text with half a character, which UTF-8 cannot hold, is refused', () => {
  expect(checkRow('marks', { ...YARD.marks[0], name: 'a\ud83d' })).toBe('name holds half a character');
  expect(checkRow('marks', { ...YARD.marks[0], name: 'a\ud83d\ude00' })).toBeNull();
});

describe('a row is refused for', () => {
  const [outline, elevation, check] = [YARD.outlines[0], YARD.elevations[0], YARD.checks[0]];
  const corner = (more: object) => ({ outer: { kind: 'corners', corners: [{ xM: 0, yM: 0, ...more }] } });
  const circle = { kind: 'circle', centre: { xM: 0, yM: 0 }, radiusM: 1 };
  test.each<[string, YardPart, object]>([
    ['outer is none of corners, circle, ellipse', 'outlines', { ...outline, outer: [] }],
    ['run is none of arc, smooth', 'outlines', { ...outline, ...corner({ run: { kind: 'toString' } }) }],
    ['run via is not a record', 'outlines', { ...outline, ...corner({ run: { kind: 'arc', via: null } }) }],
    ['run has an unknown via', 'outlines', { ...outline, ...corner({ run: { kind: 'smooth', via: null } }) }],
    ['keepOffM is not a finite number', 'outlines', { ...outline, ...corner({ keepOffM: null }) }],
    ['run is none of arc, smooth', 'outlines', { ...outline, ...corner({ run: undefined }) }],
    ['radiusM is not a finite number', 'outlines', { ...outline, outer: { ...circle, radiusM: 1 / 0 } }],
    ['has no halfLengthM', 'outlines', { ...outline, outer: { ...circle, kind: 'ellipse' } }],
    ['holes entry 1 is none of', 'outlines', { ...outline, holes: [[{ xM: 0, yM: 0 }]] }],
    [
      'placing by is none of',
      'outlines',
      { ...outline, placing: { by: 'eye', pictureId: null, sigmaM: null } },
    ],
    ['slope grade is not a finite', 'outlines', { ...outline, slope: { kind: 'grade', grade: '1' } }],
    ['claimsOverlaps is none of', 'outlines', { ...outline, claimsOverlaps: 1 }],
    ['does not have 6 heights', 'elevations', { ...elevation, heightsMm: [1] }],
    ['is less than one cell', 'elevations', { ...elevation, columns: 1, rows: 6 }],
    ['columns is not a whole number', 'elevations', { ...elevation, columns: 2.5 }],
    ['heightsMm entry 1 is not a whole number', 'elevations', { ...elevation, heightsMm: [0.5] }],
    ['tapedM is not a finite number', 'checks', { ...check, tapedM: null }],
    ['overlapRule is none of', 'details', { ...YARD.details, overlapRule: 'mine' }],
    ['amountsBy is none of', 'details', { ...YARD.details, amountsBy: '' }],
  ])('%s', (why, part, row) => {
    expect(checkRow(part, row)).toContain(why);
  });
});
