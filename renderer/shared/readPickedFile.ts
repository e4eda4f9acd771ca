import type { ImportAsk } from '../../electron/contract/HostApi.ts';

/** The file a person picked, read whole; null when none was. The field is cleared so that it can be picked again. */
export async function readPickedFile(input: HTMLInputElement): Promise<ImportAsk | null> {
  const picked = input.files?.[0];
  if (!picked) return null;
  const bytes = new Uint8Array(await picked.arrayBuffer());
  input.value = '';
  return { fileName: picked.name, bytes };
}
