import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  createMemoryYard,
  openMemoryYard,
  type YardShelf,
  type YardStore,
} from '../../../../core/yardFile/index.ts';
import { fullYard, SKETCH } from '../../../support/storedYards.ts';
import { anyDeeds, editOf } from '../../../support/anyYards.ts';
import { yardFolder } from '../../../support/yardFolder.ts';
import { valueIn } from '../../../support/yardStoreContract.ts';

test('the yard file and its in-memory twin answer every call alike', () => {
  const place = yardFolder();
  const shelf: YardShelf = new Map();
  let count = 0;
  fc.assert(
    fc.property(anyDeeds, (deeds) => {
      count += 1;
      const name = `yard-${count}`;
      let file: YardStore = valueIn(place.create(name, fullYard(), [SKETCH]));
      let twin: YardStore = valueIn(createMemoryYard(shelf, name, fullYard(), [SKETCH]));
      let older = fullYard();
      deeds.forEach((deed, serial) => {
        if (deed.do === 'reopen') {
          file.close();
          file = valueIn(place.open(name));
          twin = valueIn(openMemoryYard(shelf, name));
        } else if (deed.do === 'edit') {
          // Every fourth edit is made from the yard before last: both must find it stale, or both not.
          const yard = valueIn(twin.readYard());
          const edit = editOf(serial % 4 === 3 ? older : yard, deed.strokes, serial);
          older = yard;
          expect(file.applyEdit(edit, [])).toStrictEqual(twin.applyEdit(edit, []));
        } else {
          expect(file[deed.do]()).toStrictEqual(twin[deed.do]());
        }
        expect(file.history()).toStrictEqual(twin.history());
      });
      const [onFile, inMemory] = [file.readYard(), twin.readYard()];
      file.close();
      expect(onFile).toStrictEqual(inMemory);
    }),
    { numRuns: 40, seed: 20261125 },
  );
  place.leave();
});
