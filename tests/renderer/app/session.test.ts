import { describe, expect, test } from 'vitest';
import { makeEdit, putRow } from '../../../core/edits/index.ts';
import type { Mark, Yard } from '../../../core/yard.ts';
import { Session } from '../../../renderer/app/session.ts';
import { newYard } from '../../../renderer/yards/newYard.ts';
import { fakeHost } from '../../support/fakeHost.ts';

const mark = (id: string, xM: number): Mark => ({
  id,
  kind: 'landmark',
  name: `post ${id}`,
  at: { xM, yM: 0 },
});

const put = (session: Session, row: Mark): void =>
  session.edit(makeEdit(`put ${row.name}`, putRow(session.snapshot().yard as Yard, 'marks', row)));

const places = (yard: Yard | null): string[] => (yard?.marks ?? []).map(({ id, at }) => `${id}${at.xM}`);

async function opened() {
  const host = fakeHost(newYard('Test yard', '2026-05-12', 'us'));
  const session = new Session(host);
  await session.open('test.gpkg');
  return { host, session };
}

describe('a window with an open yard', () => {
  test('shows an edit at once and has it on disk when settled', async () => {
    const { host, session } = await opened();
    put(session, mark('a', 1));
    put(session, mark('b', 2));
    expect(places(session.snapshot().yard)).toEqual(['a1', 'b2']);
    expect(session.snapshot().saving).toBe('saving');
    await session.settled();
    expect(places(host.onDisk)).toEqual(['a1', 'b2']);
    expect(session.snapshot().saving).toBe('saved');
    expect(session.snapshot().history.undoLabel).toBe('put post b');
  });

  test('undoes and redoes what is on disk', async () => {
    const { host, session } = await opened();
    put(session, mark('a', 1));
    put(session, mark('a', 5));
    session.undo();
    await session.settled();
    expect(places(session.snapshot().yard)).toEqual(['a1']);
    session.undo();
    session.redo();
    session.redo();
    session.redo();
    await session.settled();
    expect(places(session.snapshot().yard)).toEqual(['a5']);
    expect(places(host.onDisk)).toEqual(['a5']);
  });

  test('keeps an edit made while an undo is under way, when it still fits', async () => {
    const { host, session } = await opened();
    put(session, mark('a', 1));
    put(session, mark('b', 2));
    session.undo();
    put(session, mark('c', 3));
    await session.settled();
    expect(places(host.onDisk)).toEqual(['a1', 'c3']);
    expect(session.snapshot().yard).toEqual(host.onDisk);
  });

  test('drops an edit of what the undo took away', async () => {
    const { host, session } = await opened();
    put(session, mark('a', 1));
    session.undo();
    put(session, mark('a', 9));
    await session.settled();
    expect(places(host.onDisk)).toEqual([]);
    expect(session.snapshot().yard).toEqual(host.onDisk);
    expect(session.snapshot().saving).toBe('saved');
  });

  test('goes back to what is on disk when the disk is full, and says so', async () => {
    const { host, session } = await opened();
    put(session, mark('a', 1));
    await session.settled();
    host.refuseNext = { kind: 'file/disk-full', where: { fileName: 'test.gpkg' }, facts: {} };
    put(session, mark('b', 2));
    put(session, mark('c', 3));
    await session.settled();
    expect(places(session.snapshot().yard)).toEqual(['a1']);
    expect(session.snapshot().yard).toEqual(host.onDisk);
    expect(session.snapshot().saving).toBe('failed');
    expect(session.snapshot().notices).toMatchObject([
      { kind: 'problem', problem: { kind: 'file/disk-full' } },
    ]);
  });
});
