import type { MadeFile } from '../../electron/contract/HostApi.ts';

/** Hands a made file to the window's own way of saving. */
export function download(made: MadeFile): void {
  const url = URL.createObjectURL(new Blob([new Uint8Array(made.bytes)], { type: made.mediaType }));
  const link = document.createElement('a');
  link.href = url;
  link.download = made.fileName;
  link.click();
  // The save is taken up after the click returns; a minute is ample and the bytes are then let go.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}
