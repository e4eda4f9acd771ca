import { expect, test } from 'vitest';
import { plainSpelling } from '../../../core/units/readTerms.ts';
import { AREA_NAMES, LENGTH_NAMES, SPEED_NAMES, VOLUME_NAMES } from '../../../core/units/unitNames.ts';
import { AREA_UNITS, LENGTH_UNITS, SPEED_UNITS, VOLUME_UNITS } from '../../../core/units/unitTables.ts';

test('every unit is understood by the name it is printed with', () => {
  const tables = [
    [LENGTH_UNITS, LENGTH_NAMES],
    [AREA_UNITS, AREA_NAMES],
    [VOLUME_UNITS, VOLUME_NAMES],
    [SPEED_UNITS, SPEED_NAMES],
  ] as const;
  for (const [units, names] of tables) {
    for (const unit of Object.keys(units)) {
      const spelling = plainSpelling(unit).replace('/', ' per ');
      expect((names as Record<string, string>)[spelling]).toBe(unit); // its own name
    }
  }
});

test('every spelling is one that plain spelling leaves alone', () => {
  const spellings = [LENGTH_NAMES, AREA_NAMES, VOLUME_NAMES, SPEED_NAMES].flatMap(Object.keys);
  for (const spelling of spellings) expect(plainSpelling(spelling)).toBe(spelling);
});
