import { resolve } from 'node:path';
import { expect, test } from 'vitest';
import { yardArgument } from '../../../electron/shell/yardArgument.ts';

test('the yard file of a command line is found among switches, from the folder it was named in', () => {
  const path = yardArgument(['electron', '--no-sandbox', 'dist/shell/main.mjs', 'Maple.GPKG'], '/home/pat');
  expect(path).toBe(resolve('/home/pat/Maple.GPKG')); // named in /home/pat
  expect(yardArgument(['electron', 'dist/shell/main.mjs'], '/home/pat')).toBeNull();
  expect(yardArgument(['electron', '--open=a.gpkg'], '/home/pat')).toBeNull();
});
