/**
 * A process to be killed: opens the yard file named in its argument and edits it without end, printing the
 * count of each edit once the store has said that it is done. Run by killed.test.ts.
 */
import { writeSync } from 'node:fs';
import { flushCompileCache } from 'node:module';
import { applyEdit } from '../../core/edits/index.ts';
import { openYardFile } from '../../electron/host/yardFile/index.ts';
import { editAt } from './editSeries.ts';

// Kept now, since this process will not come to its end: the next life then starts in a third of the time.
flushCompileCache();

const opened = openYardFile(process.argv[2] ?? '');
if (!opened.ok) throw new Error(JSON.stringify(opened.problems));
const read = opened.value.readYard();
const history = opened.value.history();
if (!read.ok || !history.ok) throw new Error('the yard cannot be read');

let yard = read.value;
for (let count = history.value.sequence + 1; ; count += 1) {
  const edit = editAt(yard, count);
  const applied = opened.value.applyEdit(edit, []);
  if (!applied.ok) throw new Error(JSON.stringify(applied.problems));
  yard = applyEdit(yard, edit);
  writeSync(1, `${count}\n`);
}
