import { expect, test } from 'vitest';
import { tracedRing } from '../../../core/curves/index.ts';
import { YARD_PARTS } from '../../../core/edits/index.ts';
import { rowsOf } from '../../../core/edits/index.ts';
import { decodePolygon, encodeRow, ROW_TABLES } from '../../../core/yardFile/index.ts';
import { fullYard } from '../../support/storedYards.ts';

const YARD = fullYard();

test('every row fills exactly the columns of its table', () => {
  for (const part of YARD_PARTS) {
    for (const row of rowsOf(YARD, part)) {
      const { table, columns } = encodeRow(part, row, -1);
      const known = ROW_TABLES.find(({ name }) => name === table);
      expect(known?.part).toBe(part);
      expect(Object.keys(columns).sort()).toStrictEqual([...(known?.columns ?? [])].sort());
    }
  }
});

test('an outline lies in the table of its kind, under the frame’s srs_id', () => {
  const bed = YARD.outlines[1];
  if (bed === undefined) throw new Error('the yard has no bed');
  const { table, columns } = encodeRow('outlines', bed, 100_000);
  expect(table).toBe('cut_outs');
  expect(columns).toMatchObject({ id: 'b1', kind: 'bed', name: 'bed b1' });
  const geom = columns.geom as Uint8Array;
  expect(new DataView(geom.buffer, geom.byteOffset).getInt32(4, true)).toBe(100_000);
  expect(decodePolygon(geom)).toStrictEqual({ ok: true, value: { outer: tracedRing(bed.outer), holes: [] } });
});

test('what is not stated is an empty field, and lists are JSON', () => {
  expect(encodeRow('jobs', YARD.jobs[0] as never, -1).columns).toMatchObject({
    zone_ids: '["z1","z2"]',
    heading: '{"kind":"best"}',
    start_x_m: null,
    hose: null,
  });
  expect(encodeRow('jobs', YARD.jobs[1] as never, -1).columns.zone_ids).toBeNull();
  const loose = { ...YARD.details, frame: { kind: 'loose' as const } };
  expect(encodeRow('details', loose, -1).columns).toMatchObject({
    frame_kind: 'loose',
    origin_lon_deg: null,
  });
});

test('a curved outline lies there as it was traced, beside the ring other programs draw', () => {
  const oak = YARD.outlines.find(({ id }) => id === 't1');
  if (oak === undefined) throw new Error('no t1');
  const { columns } = encodeRow('outlines', oak, -1);
  expect(JSON.parse(columns.traced as string)).toStrictEqual({ outer: oak.outer, holes: [] });
  expect(decodePolygon(columns.geom as Uint8Array)).toStrictEqual({
    ok: true,
    value: { outer: tracedRing(oak.outer), holes: [] },
  });
});
