/**
 * The yard file on disk: core/yardFile bound to SQLite (better-sqlite3). In: paths, yards, edits; out: a
 * `YardStore` or problems of the file/ family. Method: a rollback journal, one transaction an edit, one
 * writer by a lock of the operating system; a file is read through and checked before anything is written to
 * it. Out of scope: what the columns mean (core/yardFile), where yards are kept and who asks (the handlers).
 */
export { createYardFile } from './createYardFile.ts';
export { type OpenOptions, openYardFile } from './openYardFile.ts';
