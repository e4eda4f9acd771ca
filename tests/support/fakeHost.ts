import { applyEdit, type Edit, inverseOf } from '../../core/edits/index.ts';
import type { Problem } from '../../core/problems.ts';
import { ok, type Result, trouble } from '../../core/result.ts';
import type { Yard } from '../../core/yard.ts';
import type { EditHistory, HistoryStep } from '../../core/yardFile/index.ts';
import type { HostApi } from '../../electron/contract/HostApi.ts';

/** A host that keeps one yard in memory and answers a moment later, as a real one does. */
export interface FakeHost extends HostApi {
  /** The document as this host has it on its disk. */
  onDisk: Yard;
  /** Set to refuse the next edit. */
  refuseNext: Problem | null;
}

export function fakeHost(yard: Yard): FakeHost {
  const done: Edit[] = [];
  const undone: Edit[] = [];
  let sequence = 0;
  const history = (): EditHistory => ({
    sequence,
    undoLabel: done.at(-1)?.label ?? null,
    redoLabel: undone.at(-1)?.label ?? null,
  });
  const soon = async <T>(make: () => Result<T>): Promise<Result<T>> => {
    await Promise.resolve();
    return make();
  };
  const never = () => Promise.resolve(trouble({ kind: 'host/unreachable', where: {}, facts: {} }));
  const host: FakeHost = {
    onDisk: yard,
    refuseNext: null,
    greet: () => soon(() => ok({ version: 'test', yardsFolder: 'yards', startPath: null })),
    listFolder: never,
    openYard: () =>
      soon(() =>
        ok({
          yard: 'handle',
          path: 'test.gpkg',
          fileName: 'test.gpkg',
          readOnly: false,
          document: host.onDisk,
          history: history(),
        }),
      ),
    readYard: () => soon(() => ok(host.onDisk)),
    keepCopy: never,
    createYard: never,
    closeYard: () => soon(() => ok(null)),
    applyEdit: ({ edit, sequence: madeOn }) =>
      soon(() => {
        const refused = host.refuseNext;
        host.refuseNext = null;
        if (refused) return trouble(refused);
        if (madeOn !== sequence) return trouble({ kind: 'host/stale-edit', where: {}, facts: {} });
        host.onDisk = applyEdit(host.onDisk, edit);
        done.push(edit);
        undone.length = 0;
        sequence += 1;
        return ok(history());
      }),
    undo: () => soon(() => turn(done, undone, inverseOf)),
    redo: () => soon(() => turn(undone, done, (edit) => edit)),
    readImage: never,
    draftYard: never,
    draftImport: never,
    makePdf: never,
    makeGeoJson: never,
  };
  function turn(from: Edit[], to: Edit[], way: (edit: Edit) => Edit): Result<HistoryStep> {
    const edit = from.pop();
    if (edit === undefined) return ok({ step: null, history: history() });
    to.push(edit);
    sequence += 1;
    const step = way(edit);
    host.onDisk = applyEdit(host.onDisk, step);
    return ok({ step, history: history() });
  }
  return host;
}
