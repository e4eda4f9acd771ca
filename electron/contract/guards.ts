import { z } from 'zod';
import { type Result, ok, trouble } from '../../core/result.ts';
import { editShape, imageShape, longText, newImages, textUpTo, yardShape } from './guardYard.ts';
import { sheetPages } from './guardSheet.ts';
import type { HostApi, HostMethod } from './HostApi.ts';

/** The one argument of a host method. */
export type Ask<M extends HostMethod> = Parameters<HostApi[M]>[0];

/** A path as long as any system takes it; what lies there is the host's to find out. */
const path = textUpTo(32_767).min(1).refine(hasNoNul, 'holds a NUL');
/** One name in a folder, so that a name never becomes a way out of it. */
const fileName = textUpTo(200)
  .min(1)
  .refine((name) => !/[/\\]/.test(name) && name !== '.' && name !== '..', 'is not a plain file name')
  .refine(hasNoNul, 'holds a NUL');
const yard = z.string().regex(/^[A-Za-z0-9_-]{1,64}$/);
const bytes = z.custom<Uint8Array>((value) => value instanceof Uint8Array, 'is not bytes');
/** It becomes part of a file name, so nothing but digits and dashes. */
const day = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);
const dateTime = z.string().regex(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}(\.\d{1,9})?)?(Z|[+-]\d{2}:\d{2})?$/);

/** What may come through the host's door, one shape a method; an argument of any other shape is refused. */
const SHAPES: { readonly [M in HostMethod]: z.ZodType<Ask<M>> } = {
  greet: z.strictObject({}),
  listFolder: z.strictObject({ folder: path.nullable() }),
  openYard: z.strictObject({ path }),
  readYard: z.strictObject({ path }),
  keepCopy: z.strictObject({ yard, day }),
  createYard: z.strictObject({
    folder: path.nullable(),
    fileName,
    document: yardShape,
    images: newImages,
  }),
  closeYard: z.strictObject({ yard }),
  applyEdit: z.strictObject({
    yard,
    edit: editShape,
    sequence: z.int().nonnegative(),
    images: newImages,
  }),
  undo: z.strictObject({ yard }),
  redo: z.strictObject({ yard }),
  readImage: z.strictObject({ yard, imageHash: imageShape.shape.imageHash }),
  draftYard: z.strictObject({ fileName, bytes }),
  draftImport: z.strictObject({ fileName, bytes, yard }),
  makePdf: z.strictObject({ yard, title: longText, madeAt: dateTime, pages: sheetPages }),
  makeGeoJson: z.strictObject({ yard }),
};

/**
 * Checks the argument of a host call from an untrusted window.
 * Problems: host/bad-request, saying which member is wrong
 */
export function guard<M extends HostMethod>(method: M, argument: unknown): Result<Ask<M>> {
  const parsed = SHAPES[method].safeParse(argument);
  if (parsed.success) return ok(parsed.data as Ask<M>);
  const [issue] = parsed.error.issues;
  const where = [method, ...(issue?.path ?? []).map(String)].join('.').slice(0, 200);
  const detail = `${where}: ${(issue?.message ?? 'not as expected').slice(0, 200)}`;
  return trouble({ kind: 'host/bad-request', where: {}, facts: { detail } });
}

function hasNoNul(value: string): boolean {
  return !value.includes('\0');
}
