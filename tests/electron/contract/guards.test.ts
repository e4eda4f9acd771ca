import { describe, expect, test } from 'vitest';
import { makeEdit, putRow } from '../../../core/edits/index.ts';
import { problemText } from '../../../core/problemText.ts';
import { HOST_METHODS } from '../../../electron/contract/channels.ts';
import { guard } from '../../../electron/contract/guards.ts';
import type { HostMethod } from '../../../electron/contract/HostApi.ts';
import { fullYard, SKETCH } from '../../support/storedYards.ts';

const YARD = fullYard();
const [OUTLINE] = YARD.outlines;
if (OUTLINE === undefined) throw new Error('the yard of the tests has no outline');
const EDIT = makeEdit('rename', putRow(YARD, 'outlines', { ...OUTLINE, name: 'Back' }));
const PAGE = {
  widthMm: 210,
  heightMm: 297,
  marks: [
    {
      kind: 'path',
      subpaths: [{ points: [{ xMm: 1, yMm: 2 }], closed: true }],
      fill: [0, 9, 255],
      stroke: null,
    },
    {
      kind: 'clip',
      subpaths: [],
      marks: [
        { kind: 'clip', subpaths: [], marks: [] },
        {
          kind: 'picture',
          imageHash: SKETCH.imageHash,
          corners: [
            { xMm: 0, yMm: 0 },
            { xMm: 1, yMm: 0 },
            { xMm: 0, yMm: 1 },
          ],
          opacity: 0.5,
        },
      ],
    },
    {
      kind: 'text',
      at: { xMm: 1, yMm: 1 },
      text: 'Load 1',
      sizeMm: 3,
      face: 'bold',
      align: 'left',
      colour: [0, 0, 0],
      turnDeg: 90,
    },
  ],
} as const;

/** One argument of each method as the window sends it. */
const FAIR: { readonly [M in HostMethod]: Record<string, unknown> } = {
  greet: {},
  listFolder: { folder: null },
  openYard: { path: '/yards/Maple Court.gpkg' },
  readYard: { path: '/yards/Maple Court 2026-05-01.gpkg' },
  keepCopy: { yard: 'h1', day: '2026-05-01' },
  createYard: { folder: null, fileName: 'Maple Court', document: YARD, images: [SKETCH] },
  closeYard: { yard: 'h1' },
  applyEdit: { yard: 'h1', edit: EDIT, sequence: 3, images: [] },
  undo: { yard: 'h1' },
  redo: { yard: 'h1' },
  readImage: { yard: 'h1', imageHash: SKETCH.imageHash },
  draftYard: { fileName: 'plan.png', bytes: new Uint8Array([1]) },
  draftImport: { yard: 'h1', fileName: 'plan.png', bytes: new Uint8Array([1]) },
  makePdf: { yard: 'h1', title: 'Maple Court', madeAt: '2026-05-01T08:00:00Z', pages: [PAGE] },
  makeGeoJson: { yard: 'h1' },
};

test.each(HOST_METHODS)('%s takes what the window sends, unchanged', (method) => {
  expect(guard(method, FAIR[method])).toEqual({ ok: true, value: FAIR[method] }); // what went in
});

/** The problem a refused argument brings; undefined when it was let through. */
function refusal(method: HostMethod, argument: unknown): string | undefined {
  const checked = guard(method, argument);
  return checked.ok ? undefined : checked.problems[0].kind;
}

describe.each(HOST_METHODS)('%s refuses', (method) => {
  test.each([
    ['nothing', undefined],
    ['null', null],
    ['text', 'greet'],
    ['a list', []],
    ['a function', () => FAIR[method]],
    ['a member it does not know', { ...FAIR[method], extra: 1 }],
    ['a member named __proto__', { ...FAIR[method], ['__proto__']: null, ...JSON.parse('{"__proto__":{}}') }],
  ])('%s', (_name, argument) => {
    expect(refusal(method, argument)).toBe('host/bad-request'); // the door's one answer
  });

  test('an argument with any one member missing', () => {
    for (const name of Object.keys(FAIR[method])) {
      const { [name]: _left, ...rest } = FAIR[method];
      expect(refusal(method, rest), `without ${name}`).toBe('host/bad-request'); // the door's one answer
    }
  });
});

const at = (xM: number) => ({ ...YARD.marks[0], at: { xM, yM: 0 } });
const withOutline = (row: object) => ({ ...YARD, outlines: [{ ...OUTLINE, ...row }] });
const corners = (...list: object[]) => ({ kind: 'corners', corners: list });
const circle = (radiusM: unknown) => ({ kind: 'circle', centre: { xM: 0, yM: 0 }, radiusM });
const [ELEVATION] = YARD.elevations;
const [CHECK] = YARD.checks;
const withDetails = (row: object) => ({ ...YARD, details: { ...YARD.details, ...row } });
const change = (part: object) => ({
  ...FAIR.applyEdit,
  edit: { label: 'x', changes: [{ ...EDIT.changes[0], ...part }] },
});

describe('a hostile argument is refused', () => {
  test.each<[string, HostMethod, object]>([
    ['a path with a NUL', 'openYard', { path: '/yards/a\0.gpkg' }],
    ['an empty path', 'openYard', { path: '' }],
    ['a path of a megabyte', 'openYard', { path: 'a'.repeat(1_000_000) }],
    ['a path with a NUL to read', 'readYard', { path: '/yards/a\0.gpkg' }],
    ['a day that climbs out', 'keepCopy', { yard: 'h1', day: '../../2026' }],
    ['a day that runs on', 'keepCopy', { yard: 'h1', day: '2026-05-01/../a' }],
    ['a day on two lines', 'keepCopy', { yard: 'h1', day: '2026-05-01\n' }],
    ['a path that is a list', 'openYard', { path: ['/yards/a.gpkg'] }],
    ['a file name that climbs out', 'createYard', { ...FAIR.createYard, fileName: '../a' }],
    ['a file name that climbs out on Windows', 'createYard', { ...FAIR.createYard, fileName: '..\\a' }],
    ['a file name that is the folder above', 'createYard', { ...FAIR.createYard, fileName: '..' }],
    ['a handle that is a path', 'undo', { yard: '../../etc/passwd' }],
    ['a handle that is an object', 'undo', { yard: { toString: () => 'h1' } }],
    ['a hash that is SQL', 'readImage', { yard: 'h1', imageHash: "' OR 1=1 --" }],
    ['a sequence that is no number', 'applyEdit', { ...FAIR.applyEdit, sequence: Number.NaN }],
    ['a sequence below zero', 'applyEdit', { ...FAIR.applyEdit, sequence: -1 }],
    ['a sequence with a fraction', 'applyEdit', { ...FAIR.applyEdit, sequence: 0.5 }],
    ['an edit of a part there is none of', 'applyEdit', change({ part: '__proto__' })],
    ['an edit with neither before nor after', 'applyEdit', change({ before: null, after: null })],
    ['an edit whose row is of another part', 'applyEdit', change({ after: YARD.jobs[0] })],
    [
      'an edit of a NaN corner',
      'applyEdit',
      change({ after: { ...OUTLINE, outer: corners({ xM: Number.NaN, yM: 0 }) } }),
    ],
    ['a corner at infinity', 'createYard', { ...FAIR.createYard, document: { ...YARD, marks: [at(1 / 0)] } }],
    [
      'a corner that is text',
      'createYard',
      { ...FAIR.createYard, document: withOutline({ outer: corners({ xM: '1', yM: 0 }) }) },
    ],
    [
      'an outline of an unknown kind',
      'createYard',
      { ...FAIR.createYard, document: withOutline({ kind: 'pool' }) },
    ],
    ['half a character', 'createYard', { ...FAIR.createYard, document: withDetails({ name: '\ud800' }) }],
    [
      'a name of a megabyte',
      'createYard',
      { ...FAIR.createYard, document: withDetails({ name: 'a'.repeat(1e6) }) },
    ],
    [
      'a date that is a sentence',
      'createYard',
      { ...FAIR.createYard, document: withDetails({ groundDate: 'today' }) },
    ],
    [
      'a frame north of the pole',
      'createYard',
      {
        ...FAIR.createYard,
        document: withDetails({ frame: { kind: 'placed', origin: { lonDeg: 0, latDeg: 91 } } }),
      },
    ],
    ['an image that is text', 'createYard', { ...FAIR.createYard, images: [{ ...SKETCH, bytes: 'PNG' }] }],
    [
      'an image that is a script',
      'createYard',
      { ...FAIR.createYard, images: [{ ...SKETCH, mediaType: 'text/html' }] },
    ],
    ['more images than a yard has', 'createYard', { ...FAIR.createYard, images: Array(101).fill(SKETCH) }],
    ['bytes that are a plain list', 'draftYard', { fileName: 'a.png', bytes: [1, 2, 3] }],
    ['a page of no width', 'makePdf', { ...FAIR.makePdf, pages: [{ ...PAGE, widthMm: 0 }] }],
    ['a page wider than paper', 'makePdf', { ...FAIR.makePdf, pages: [{ ...PAGE, widthMm: 1e9 }] }],
    [
      'a colour past white',
      'makePdf',
      { ...FAIR.makePdf, pages: [{ ...PAGE, marks: [{ ...PAGE.marks[0], fill: [0, 0, 256] }] }] },
    ],
    [
      'clips nested without end',
      'makePdf',
      { ...FAIR.makePdf, pages: [{ ...PAGE, marks: [clipsNested(5_000)] }] },
    ],
    ['a date that runs on', 'makePdf', { ...FAIR.makePdf, madeAt: `2026-05-01T08:00:00.${'0'.repeat(99)}Z` }],
  ])('%s', (_name, method, argument) => {
    expect(refusal(method, argument)).toBe('host/bad-request'); // the door's one answer
  });
});

function clipsNested(depth: number): object {
  let clip: object = { kind: 'clip', subpaths: [], marks: [] };
  for (let level = 0; level < depth; level += 1) clip = { kind: 'clip', subpaths: [], marks: [clip] };
  return clip;
}

describe('a yard with a hostile curve, slope, grid or check is refused', () => {
  test.each<[string, object]>([
    ['an outline that is a bare list of corners', withOutline({ outer: [{ xM: 0, yM: 0 }] })],
    [
      'an edge that runs in a spiral',
      withOutline({ outer: corners({ xM: 0, yM: 0, run: { kind: 'spiral' } }) }),
    ],
    ['an arc through nothing', withOutline({ outer: corners({ xM: 0, yM: 0, run: { kind: 'arc' } }) })],
    [
      'an arc through no number',
      withOutline({ outer: corners({ xM: 0, yM: 0, run: { kind: 'arc', via: { xM: 0, yM: Number.NaN } } }) }),
    ],
    [
      'a smooth edge that says more',
      withOutline({ outer: corners({ xM: 0, yM: 0, run: { kind: 'smooth', a: 1 } }) }),
    ],
    ['a strip of no number', withOutline({ outer: corners({ xM: 0, yM: 0, keepOffM: Number.NaN }) })],
    ['a circle without end', withOutline({ outer: circle(Number.POSITIVE_INFINITY) })],
    ['a circle whose radius is text', withOutline({ holes: [circle('5')] })],
    ['an ellipse without a bearing', withOutline({ outer: { ...circle(1), kind: 'ellipse' } })],
    [
      'more corners than an outline has',
      withOutline({ outer: { kind: 'corners', corners: Array(500_001).fill({ xM: 0, yM: 0 }) } }),
    ],
    ['corners placed by dowsing', withOutline({ placing: { by: 'dowsing', pictureId: null, sigmaM: null } })],
    ['a strip all round that is text', withOutline({ keepOffM: '1' })],
    ['a slope of no number', withOutline({ slope: { kind: 'grade', grade: Number.NaN } })],
    ['a slope by a grid without a name', withOutline({ slope: { kind: 'elevation', elevationId: '' } })],
    ['a claim that is a number', withOutline({ claimsOverlaps: 1 })],
    ['a rule there is none of', withDetails({ overlapRule: 'mine' })],
    ['amounts by eye', withDetails({ amountsBy: 'eye' })],
    ['a grid that does not fill its rows', { ...YARD, elevations: [{ ...ELEVATION, rows: 4 }] }],
    [
      'a grid of half millimetres',
      { ...YARD, elevations: [{ ...ELEVATION, heightsMm: [0, 0.5, 0, 0, 0, 0] }] },
    ],
    ['a check of no number', { ...YARD, checks: [{ ...CHECK, tapedM: Number.NaN }] }],
    ['a check that begins nowhere', { ...YARD, checks: [{ ...CHECK, from: null }] }],
  ])('%s', (_, document) => {
    expect(refusal('createYard', { ...FAIR.createYard, document })).toBe('host/bad-request'); // the door's one answer
  });
});

test('the refusal says which member is wrong, in a few words and never with the hostile text whole', () => {
  const checked = guard('openYard', { path: '/a', [`<script>${'x'.repeat(10_000)}`]: 1 });
  if (checked.ok) throw new Error('let through');
  const said = problemText(checked.problems[0], 'us');
  expect(said.what).toContain('openYard');
  expect(said.what.length).toBeLessThan(500); // two caps of 200 characters and the sentence round them
});
