import { expect, test } from 'vitest';
import { MIGRATIONS, SCHEMA_VERSION } from '../../../../core/yardFile/index.ts';

test('migrations are numbered from 1 without gaps, and the last is the version we write', () => {
  expect(MIGRATIONS.map(({ version }) => version)).toStrictEqual(MIGRATIONS.map((_, i) => i + 1));
  expect(SCHEMA_VERSION).toBe(MIGRATIONS.at(-1)?.version);
});
