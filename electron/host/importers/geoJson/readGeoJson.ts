import { ok, type Result, trouble } from '../../../../core/result.ts';
import type { BroughtFeatures } from '../brought.ts';
import { crsOf } from './crsMember.ts';
import { FeatureReader, isMembers } from './FeatureReader.ts';
import { kindOf } from './kindOf.ts';
import { parseJson } from './parseJson.ts';
import { yardMemberOf } from './yardMember.ts';

/** Outlines of a yard are kilobytes; a file past this is some whole town. */
export const MOST_GEOJSON_BYTES = 40_000_000;

/**
 * Reads outlines and marks from GeoJSON (RFC 7946, and the `crs` member of its forerunner): a bare geometry, a
 * feature or a collection. `kind` and `name` are read from the properties; a polygon without a kind is a zone,
 * a point without one a landmark. Anything broken refuses the file and is named; nothing is mended unasked.
 * Problems: file/too-large, file/unreadable, file/unknown-crs, file/broken-ring,
 * file/coordinates-out-of-range, file/nothing-in-it
 */
export function readGeoJson(fileName: string, bytes: Uint8Array): Result<BroughtFeatures> {
  const where = { fileName };
  if (bytes.byteLength > MOST_GEOJSON_BYTES) {
    const facts = { bytes: bytes.byteLength, mostBytes: MOST_GEOJSON_BYTES };
    return trouble({ kind: 'file/too-large', where, facts });
  }
  const parsed = parseJson(bytes);
  if (!parsed.ok) return trouble({ kind: 'file/unreadable', where, facts: { detail: parsed.detail } });
  const root = parsed.value;
  if (!isMembers(root) || typeof root.type !== 'string') {
    const detail = 'it is JSON but not GeoJSON, it has no type';
    return trouble({ kind: 'file/unreadable', where, facts: { detail } });
  }
  const crs = crsOf(root, fileName);
  if ('unknown' in crs) return trouble({ kind: 'file/unknown-crs', where, facts: { crs: crs.unknown } });

  const reader = new FeatureReader(fileName, crs.toLonLat);
  if (root.type === 'FeatureCollection') {
    if (!Array.isArray(root.features)) {
      const detail = 'its list of features is missing';
      return trouble({ kind: 'file/unreadable', where, facts: { detail } });
    }
    for (const [index, feature] of root.features.entries()) {
      if (reader.isOver) break;
      reader.readFeature(feature, index);
    }
  } else if (root.type === 'Feature') reader.readFeature(root, 0);
  else reader.readGeometry(root, kindOf({}), null, 'its only feature');

  const [first, ...more] = reader.problems;
  if (first !== undefined) return trouble(first, ...more);
  if (reader.outlines.length + reader.marks.length === 0) {
    return trouble({ kind: 'file/nothing-in-it', where, facts: {} });
  }
  const crsNotes =
    crs.name === 'WGS84' ? [] : [`Its coordinates are in ${crs.name} and were brought to WGS84.`];
  const { outlines, marks } = reader;
  return ok({ outlines, marks, yard: yardMemberOf(root), notes: [...crsNotes, ...reader.notes] });
}
