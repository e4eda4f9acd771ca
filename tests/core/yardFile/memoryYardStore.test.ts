import { createMemoryYard, openMemoryYard, type YardShelf } from '../../../core/yardFile/index.ts';
import { describeYardStore } from '../../support/yardStoreContract.ts';

describeYardStore('the in-memory twin', () => {
  const shelf: YardShelf = new Map();
  return {
    create: (name, yard, images) => createMemoryYard(shelf, name, yard, images),
    open: (name, readOnly) => openMemoryYard(shelf, name, readOnly),
    path: (name) => name,
    leave: () => shelf.clear(),
  };
});
