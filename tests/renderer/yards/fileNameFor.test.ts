import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fileNameFor } from '../../../renderer/yards/fileNameFor.ts';

test('a yard keeps its name as far as file systems allow', () => {
  expect(fileNameFor('7 Larkfield Lane')).toBe('7 Larkfield Lane');
  expect(fileNameFor('Front / back: "lawn"')).toBe('Front back lawn');
  expect(fileNameFor('..')).toBe('New yard');
});

test('no name whatever leads out of the folder or ends in a dot or a space', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 200 }), (name) => {
      const made = fileNameFor(name);
      expect(made).not.toMatch(/[<>:"/\\|?*\p{Cc}]|^\.|[. ]$|^$/u);
      expect([...made].length).toBeLessThanOrEqual(80); // the limit the file states
    }),
  );
});
