import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { applyEdit, inverseOf, putRow, removeRow } from '../../core/edits/index.ts';
import type { Problem } from '../../core/problems.ts';
import type { Result } from '../../core/result.ts';
import type { Yard } from '../../core/yard.ts';
import type { NewImage, YardStore } from '../../core/yardFile/index.ts';
import { fullYard, imageOf, moveCorner, point, rectOutline, SKETCH } from './storedYards.ts';
import { anyDeeds, anyYard, editOf } from './anyYards.ts';

/** A place that yards can be put in and opened from. */
export interface YardPlace {
  create(name: string, yard: Yard, images: readonly NewImage[]): Result<YardStore>;
  open(name: string, readOnly?: boolean): Result<YardStore>;
  /** What `saveCopy` takes to put a copy under `name`. */
  path(name: string): string;
  leave(): void;
}

export function valueIn<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(`trouble: ${JSON.stringify(result.problems)}`);
  return result.value;
}

/** The kind of the only problem of a failure; undefined for a success. */
export function kindOf(result: Result<unknown>): Problem['kind'] | undefined {
  return result.ok ? undefined : result.problems[0].kind;
}

/** What every YardStore promises, whatever it keeps its yards in. */
export function describeYardStore(name: string, makePlace: () => YardPlace): void {
  describe(`every yard store keeps its promises: ${name}`, () => {
    let place: YardPlace;
    let store: YardStore;
    const yard = fullYard();

    beforeEach(() => {
      place = makePlace();
      store = valueIn(place.create('garden', yard, [SKETCH]));
    });
    afterEach(() => {
      store.close();
      place.leave();
    });

    const reopen = (): YardStore => {
      store.close();
      store = valueIn(place.open('garden'));
      return store;
    };

    test('a new yard reads back as it was given, before and after reopening', () => {
      expect(valueIn(store.readYard())).toStrictEqual(yard);
      expect(valueIn(reopen().readYard())).toStrictEqual(yard);
    });

    test('any yard comes back exactly, row order included', () => {
      let count = 0;
      fc.assert(
        fc.property(anyYard, (any) => {
          count += 1;
          const made = valueIn(place.create(`any-${count}`, any, []));
          const read = valueIn(made.readYard());
          made.close();
          expect(read).toStrictEqual(any);
        }),
        { numRuns: 25, seed: 20261125 },
      );
    });

    test('a yard is never made over another', () => {
      expect(kindOf(place.create('garden', { ...yard, marks: [] }, []))).toBe('file/exists');
      expect(valueIn(reopen().readYard())).toStrictEqual(yard);
    });

    test('a yard that is not there is not found', () => {
      expect(kindOf(place.open('nowhere'))).toBe('file/not-found');
    });

    test('an edit is what core says it is, and is still there after reopening', () => {
      const edit = moveCorner(yard, 'z1', point(-0.1, 0.3));
      const history = valueIn(store.applyEdit(edit, []));
      expect(history).toStrictEqual({ sequence: 1, undoLabel: 'move corner of zone z1', redoLabel: null });
      expect(valueIn(store.readYard())).toStrictEqual(applyEdit(yard, edit));
      expect(valueIn(reopen().readYard())).toStrictEqual(applyEdit(yard, edit));
      expect(valueIn(store.history())).toStrictEqual(history);
    });

    test('undo and redo work after reopening and give the step they took', () => {
      const edit = moveCorner(yard, 'z1', point(5, 5));
      store.applyEdit(edit, []);
      const undone = valueIn(reopen().undo());
      expect(undone.step).toStrictEqual(inverseOf(edit));
      expect(undone.history).toStrictEqual({ sequence: 2, undoLabel: null, redoLabel: edit.label });
      expect(valueIn(store.readYard())).toStrictEqual(yard);
      const redone = valueIn(reopen().redo());
      expect(redone.step).toStrictEqual(edit);
      expect(redone.history).toStrictEqual({ sequence: 3, undoLabel: edit.label, redoLabel: null });
      expect(valueIn(store.readYard())).toStrictEqual(applyEdit(yard, edit));
    });

    test('with nothing to undo or redo nothing happens', () => {
      const nothing = { step: null, history: { sequence: 0, undoLabel: null, redoLabel: null } };
      expect(valueIn(store.undo())).toStrictEqual(nothing);
      expect(valueIn(store.redo())).toStrictEqual(nothing);
    });

    test('a new edit drops what was undone', () => {
      store.applyEdit(moveCorner(yard, 'z1', point(5, 5)), []);
      store.undo();
      const history = valueIn(store.applyEdit(moveCorner(yard, 'z2', point(-41, 0)), []));
      expect(history.redoLabel).toBeNull();
      expect(valueIn(store.redo()).step).toBeNull();
    });

    test('undo has no limit', () => {
      let now = yard;
      for (let i = 0; i < 120; i += 1) {
        const edit = moveCorner(now, 'z1', point(-i, i / 7));
        store.applyEdit(edit, []);
        now = applyEdit(now, edit);
      }
      expect(valueIn(store.readYard())).toStrictEqual(now);
      for (let i = 0; i < 120; i += 1) expect(valueIn(store.undo()).step).not.toBeNull();
      expect(valueIn(store.readYard())).toStrictEqual(yard);
      expect(valueIn(store.undo()).step).toBeNull();
    });

    test('an edit made from an older state of a row is refused and changes nothing', () => {
      const old = moveCorner(yard, 'z1', point(1, 1));
      const first = moveCorner(yard, 'z1', point(2, 2));
      store.applyEdit(first, []);
      const other = putRow(yard, 'marks', { id: 'm3', kind: 'spigot', name: 'new', at: point(0, 0) });
      expect(kindOf(store.applyEdit({ ...old, changes: [other, ...old.changes] }, []))).toBe(
        'host/stale-edit',
      );
      expect(valueIn(store.readYard())).toStrictEqual(applyEdit(yard, first));
      expect(valueIn(store.history()).sequence).toBe(1);
    });

    test('adding a row that is there, or removing one that is not, is stale', () => {
      const again = { ...putRow(yard, 'outlines', rectOutline('z1', 'zone', 0, 0, 1, 1)), before: null };
      expect(kindOf(store.applyEdit({ label: 'again', changes: [again as never] }, []))).toBe(
        'host/stale-edit',
      );
      const gone = { ...removeRow(yard, 'marks', 'm1'), id: 'm9', before: { ...yard.marks[0], id: 'm9' } };
      expect(kindOf(store.applyEdit({ label: 'gone', changes: [gone as never] }, []))).toBe(
        'host/stale-edit',
      );
    });

    test('an edit that is not an edit is refused and changes nothing', () => {
      const nan = moveCorner(yard, 'z1', point(Number.NaN, 0));
      expect(kindOf(store.applyEdit(nan, []))).toBe('host/bad-request');
      const noDetails = { part: 'details', id: 'yard', index: 0, before: yard.details, after: null };
      expect(kindOf(store.applyEdit({ label: '', changes: [noDetails as never] }, []))).toBe(
        'host/bad-request',
      );
      expect(valueIn(store.readYard())).toStrictEqual(yard);
    });

    test('an outline that becomes another kind keeps its place in the list', () => {
      const bed = { ...(yard.outlines[0] as Yard['outlines'][0]), kind: 'bed' as const };
      const edit = { label: 'a bed after all', changes: [putRow(yard, 'outlines', bed)] };
      store.applyEdit(edit, []);
      expect(valueIn(reopen().readYard()).outlines.map((row) => `${row.id} ${row.kind}`)).toStrictEqual([
        'z1 bed',
        ...yard.outlines.slice(1).map((row) => `${row.id} ${row.kind}`),
      ]);
    });

    test('forty rows put one after another into the same place stay in order', () => {
      let now = yard;
      for (let i = 0; i < 40; i += 1) {
        const row = rectOutline(`n${i}`, i % 2 === 0 ? 'zone' : 'tree', i, 0, 1, 1);
        const edit = { label: '', changes: [{ ...putRow(now, 'outlines', row), index: 2 } as never] };
        store.applyEdit(edit, []);
        now = applyEdit(now, edit);
      }
      expect(valueIn(reopen().readYard())).toStrictEqual(now);
    });

    test('a loose yard that is placed, and back, keeps every coordinate', () => {
      const loose = { ...yard.details, frame: { kind: 'loose' as const } };
      store.applyEdit({ label: 'lift', changes: [putRow(yard, 'details', loose)] }, []);
      expect(valueIn(reopen().readYard())).toStrictEqual({ ...yard, details: loose });
      store.undo();
      expect(valueIn(reopen().readYard())).toStrictEqual(yard);
    });

    test('images come back byte for byte, those of the new yard and those of an edit', () => {
      const photo = imageOf(Uint8Array.of(9, 8, 7, 0, 255));
      store.applyEdit({ label: 'nothing but an image', changes: [] }, [photo, SKETCH]);
      reopen();
      for (const { imageHash, mediaType, bytes } of [SKETCH, photo]) {
        expect(valueIn(store.readImage(imageHash))).toStrictEqual({ mediaType, bytes });
      }
      expect(kindOf(store.readImage('00'.repeat(32)))).toBe('file/damaged');
    });

    test('a read-only opener sees everything and can change nothing', () => {
      store.applyEdit(moveCorner(yard, 'z1', point(5, 5)), []);
      const now = valueIn(store.readYard());
      const reader = valueIn(place.open('garden', true));
      expect(reader.readOnly).toBe(true);
      expect(valueIn(reader.readYard())).toStrictEqual(now);
      expect(kindOf(reader.applyEdit(moveCorner(now, 'z1', point(6, 6)), []))).toBe('file/read-only');
      expect(kindOf(reader.undo())).toBe('file/read-only');
      expect(kindOf(reader.redo())).toBe('file/read-only');
      reader.close();
      expect(valueIn(store.readYard())).toStrictEqual(now);
    });

    test('a copy is whole, has its undo, and goes its own way', () => {
      const edit = moveCorner(yard, 'z1', point(5, 5));
      store.applyEdit(edit, []);
      valueIn(store.saveCopy(place.path('copy')));
      expect(kindOf(store.saveCopy(place.path('copy')))).toBe('file/exists');
      store.applyEdit(moveCorner(applyEdit(yard, edit), 'z2', point(-41, 0)), []);
      const copy = valueIn(place.open('copy'));
      expect(valueIn(copy.readYard())).toStrictEqual(applyEdit(yard, edit));
      expect(valueIn(copy.readImage(SKETCH.imageHash)).bytes).toStrictEqual(SKETCH.bytes);
      expect(valueIn(copy.undo()).step).toStrictEqual(inverseOf(edit));
      copy.close();
    });

    test('any row of edits, undos, redos and reopenings leaves what core computes', () => {
      let count = 0;
      fc.assert(
        fc.property(anyDeeds, (deeds) => {
          count += 1;
          const walked = walk(place, `walk-${count}`, deeds);
          expect(walked.stored).toStrictEqual(walked.computed);
        }),
        { numRuns: 30, seed: 20261125 },
      );
    });
  });
}

/** Carries out deeds on a new store, and beside it with core's edits alone. */
export function walk(
  place: YardPlace,
  name: string,
  deeds: readonly (typeof anyDeeds extends fc.Arbitrary<(infer D)[]> ? D : never)[],
): { stored: unknown; computed: unknown } {
  let yard = fullYard();
  const past: Yard[] = [];
  let future: Yard[] = [];
  let store = valueIn(place.create(name, yard, [SKETCH]));
  let sequence = 0;
  deeds.forEach((deed, serial) => {
    if (deed.do === 'edit') {
      const edit = editOf(yard, deed.strokes, serial);
      past.push(yard);
      yard = applyEdit(yard, edit);
      future = [];
      sequence += 1;
      valueIn(store.applyEdit(edit, []));
    } else if (deed.do === 'reopen') {
      store.close();
      store = valueIn(place.open(name));
    } else {
      const [from, to] = deed.do === 'undo' ? [past, future] : [future, past];
      const next = from.pop();
      const { step } = valueIn(deed.do === 'undo' ? store.undo() : store.redo());
      expect(step === null).toBe(next === undefined);
      if (next === undefined) return;
      to.push(yard);
      yard = next;
      sequence += 1;
    }
  });
  const stored = { yard: valueIn(store.readYard()), sequence: valueIn(store.history()).sequence };
  store.close();
  return { stored, computed: { yard, sequence } };
}
