import { describeYardStore } from '../../../support/yardStoreContract.ts';
import { yardFolder } from '../../../support/yardFolder.ts';

describeYardStore('the GeoPackage on disk', yardFolder);
