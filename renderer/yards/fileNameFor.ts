/** Longest name we make; leaves room for the extension under the 255 bytes most file systems allow. */
const MOST_CHARACTERS = 80;

/** A file name, without extension, that every desktop file system takes, made from a yard's name. */
export function fileNameFor(yardName: string): string {
  const plain = yardName
    .normalize('NFC')
    // Windows forbids the first set; control characters are never wanted.
    .replace(/[<>:"/\\|?*\p{Cc}]/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/^\.+|[. ]+$/g, '');
  return [...plain].slice(0, MOST_CHARACTERS).join('').trim() || 'New yard';
}
