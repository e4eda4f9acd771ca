import { describe, expect, test } from 'vitest';
import { tracedRing } from '../../../core/curves/index.ts';
import type { Ring } from '../../../core/spaces.ts';
import { isAsTraced } from '../../../core/yardFile/asTraced.ts';
import {
  decodePolygon,
  decodeRow,
  encodePolygon,
  encodeRow,
  ROW_TABLES,
} from '../../../core/yardFile/index.ts';
import { fullYard, point } from '../../support/storedYards.ts';

const ROUND = tracedRing({ kind: 'circle', centre: point(12.3, -4.5), radiusM: 5 });
const moved = (ring: Ring, at: number, byM: number): Ring =>
  ring.map((corner, i) => (i === at ? point(corner.xM + byM, corner.yM) : corner));

describe('geometry that is still what was traced', () => {
  test.each<[string, Ring]>([
    ['as it was written', ROUND],
    ['begun at another corner', [...ROUND.slice(7), ...ROUND.slice(0, 7)]],
    ['run the other way about', [...ROUND].reverse()],
    [
      'rounded to millimetres',
      ROUND.map(({ xM, yM }) => point(Math.round(xM * 1e3) / 1e3, Math.round(yM * 1e3) / 1e3)),
    ],
    ['with a corner more on an edge', [...ROUND, point(12.3 + 5.001, -4.5 - 0.01)]],
    ['a corner in the east 4.9 mm farther out', moved(ROUND, 0, 0.0049)],
  ])('%s', (_, drawn) => {
    expect(isAsTraced([drawn], [ROUND])).toBe(true);
  });
});

describe('geometry that somebody moved', () => {
  test.each<[string, readonly Ring[]]>([
    ['a corner in the east 5.1 mm farther out', [moved(ROUND, 0, 0.0051)]],
    ['a corner taken away: the edge cuts across', [[...ROUND.slice(0, 3), ...ROUND.slice(9)]]],
    ['a corner put far out', [[...ROUND, point(40, 0)]]],
    ['a hole cut in it', [ROUND, ROUND]],
    ['nothing left of it', [[]]],
    ['no ring at all', []],
  ])('%s', (_, drawn) => {
    expect(isAsTraced(drawn, [ROUND])).toBe(false);
  });
});

test('places beyond all measure compare when nothing changed', () => {
  const far = [point(1e308, -1e308), point(-1e308, 1e308), point(0, 1e308)];
  expect(isAsTraced([far], [far])).toBe(true);
});

test('a curved outline whose geometry was moved in a GIS comes back as what was moved, with plain corners', () => {
  const outline = fullYard().outlines.find(({ id }) => id === 'z3');
  if (outline === undefined) throw new Error('no z3');
  const { columns } = encodeRow('outlines', outline, -1);
  const table = ROW_TABLES.find(({ name }) => name === 'zones');
  if (table === undefined) throw new Error('no zones');
  const region = decodePolygon(columns.geom as Uint8Array);
  if (!region.ok) throw new Error(region.detail);
  const { outer, holes } = region.value;
  const slid = { outer: moved(outer, 0, 0.25), holes };
  expect(decodeRow(table, { ...columns, geom: encodePolygon(slid, -1) })).toStrictEqual({
    ok: true,
    value: {
      ...outline,
      outer: { kind: 'corners', corners: slid.outer },
      holes: holes.map((corners) => ({ kind: 'corners', corners })),
    },
  });
});
