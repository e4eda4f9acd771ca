import { expect, test } from 'vitest';
import { folderOf } from '../../../renderer/ground/folderOf.ts';

test.each([
  ['/home/a/yards/Lot.gpkg', '/home/a/yards'], // up to the last separator
  ['C:\\Users\\a\\Lot.gpkg', 'C:\\Users\\a'], // the same with the other separator
  ['/Lot.gpkg', '/'], // the root is its own separator
  ['C:\\Lot.gpkg', 'C:\\'], // a drive alone would mean where one is on it
])('%s lies in %s', (path, folder) => {
  expect(folderOf(path)).toBe(folder);
});
