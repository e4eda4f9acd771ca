/**
 * How the yard file came to look as it does: numbered steps, one change each, never edited once released. The
 * first makes the tables. In: nothing; out: SQL for the adapter to run in one transaction. A file whose
 * version is below the newest is taken there step by step, after a safety copy; one above it is refused.
 */
import type { Migration } from './migration.ts';
import { V001_FIRST_TABLES } from './v001FirstTables.ts';

export type { Migration };

/** All steps, in order; versions count up from 1 without gaps. */
export const MIGRATIONS: readonly Migration[] = [V001_FIRST_TABLES];

/** The version this program writes and the newest it reads. */
export const SCHEMA_VERSION = MIGRATIONS.length;
