import { describe, expect, test } from 'vitest';
import { fileKindOf } from '../../../../electron/host/importers/fileKind.ts';
import { smallGeoTiff } from '../../../support/tiffFile.ts';

const text = (words: string): Uint8Array => new TextEncoder().encode(words);

describe('what a file is', () => {
  test.each([
    ['a TIFF', smallGeoTiff(), 'tiff'],
    ['a PNG', Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a), 'png'],
    ['a JPEG', Uint8Array.of(0xff, 0xd8, 0xff, 0xe0), 'jpeg'],
    ['a WebP', text('RIFF\0\0\0\0WEBPVP8 '), 'webp'],
    ['GeoJSON', text(' \n{"type":"Point"}'), 'geojson'],
    ['GeoJSON behind a byte order mark', Uint8Array.of(0xef, 0xbb, 0xbf, 0x7b), 'geojson'],
  ] as const)('is told by its bytes whatever its name says: %s', (_, bytes, kind) => {
    expect(fileKindOf('holiday.pdf', bytes)).toEqual({ kind });
  });

  test.each([
    ['an empty file', new Uint8Array(), 'empty'],
    ['a PDF', text('%PDF-1.7'), 'PDF'],
    ['a zip', text('PK\u0003\u0004'), 'zip'],
    ['a yard file', text('SQLite format 3\0'), 'yard file'],
    ['anything else', text('0\nSECTION\n'), 'neither'],
  ])('says what was found instead: %s', (_, bytes, said) => {
    const found = fileKindOf('plan.dxf', bytes);
    expect(found.kind).toBeNull();
    expect('found' in found && found.found).toContain(said);
  });

  test('takes a text named .geojson at its word, so that what is wrong in it gets said', () => {
    expect(fileKindOf('yard.GeoJSON', text('oops'))).toEqual({ kind: 'geojson' });
  });
});
