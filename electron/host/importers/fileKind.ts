/** What a brought file is, told by its first bytes; the name only breaks a tie. */
export type FileKind = 'tiff' | 'png' | 'jpeg' | 'webp' | 'geojson';

/** The kind, or in a few words what was found instead. */
export type FoundKind = { readonly kind: FileKind } | { readonly kind: null; readonly found: string };

const PNG_SIGNATURE = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];

/** Kinds people try that are not read, each with the bytes it begins with. */
const NAMED_STRANGERS: readonly { readonly begins: readonly number[]; readonly found: string }[] = [
  { begins: [...'%PDF'].map(codeOf), found: 'a PDF' },
  { begins: [...'GIF8'].map(codeOf), found: 'a GIF picture' },
  { begins: [...'BM'].map(codeOf), found: 'a BMP picture' },
  { begins: [...'PK'].map(codeOf), found: 'a zip archive' },
  {
    begins: [...'SQLite format 3'].map(codeOf),
    found: 'a database; open a yard file instead of importing it',
  },
  { begins: [...'<'].map(codeOf), found: 'an XML or web page file' },
];

export function fileKindOf(fileName: string, bytes: Uint8Array): FoundKind {
  if (bytes.length === 0) return { kind: null, found: 'nothing, the file is empty' };
  if (isTiff(bytes)) return { kind: 'tiff' };
  if (beginsWith(bytes, PNG_SIGNATURE)) return { kind: 'png' };
  if (beginsWith(bytes, [0xff, 0xd8, 0xff])) return { kind: 'jpeg' };
  if (beginsWith(bytes, [...'RIFF'].map(codeOf)) && beginsWith(bytes.subarray(8), [...'WEBP'].map(codeOf))) {
    return { kind: 'webp' };
  }
  const first = firstInkedByte(bytes);
  if (first === codeOf('{') || first === codeOf('[')) return { kind: 'geojson' };
  const stranger = NAMED_STRANGERS.find((each) => beginsWith(bytes, each.begins));
  if (stranger !== undefined) return { kind: null, found: stranger.found };
  // A text that begins with neither bracket is still told what is wrong in it when its name promises JSON.
  if (/\.(geo)?json$/i.test(fileName)) return { kind: 'geojson' };
  return { kind: null, found: 'neither a picture nor outlines' };
}

/** Classic and big TIFF, either byte order. */
function isTiff(bytes: Uint8Array): boolean {
  const little = bytes[0] === 0x49 && bytes[1] === 0x49;
  const big = bytes[0] === 0x4d && bytes[1] === 0x4d;
  const version = little ? bytes[2] : bytes[3];
  const rest = little ? bytes[3] : bytes[2];
  return (little || big) && rest === 0 && (version === 42 || version === 43);
}

function beginsWith(bytes: Uint8Array, start: readonly number[]): boolean {
  return start.every((byte, at) => bytes[at] === byte);
}

/** The first byte past a UTF-8 byte order mark and white space. */
function firstInkedByte(bytes: Uint8Array): number | undefined {
  const from = beginsWith(bytes, [0xef, 0xbb, 0xbf]) ? 3 : 0;
  return bytes.subarray(from).find((byte) => byte > 0x20);
}

function codeOf(character: string): number {
  return character.charCodeAt(0);
}
