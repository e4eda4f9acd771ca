import { Worker } from 'node:worker_threads';
import type { DecodedTiff } from './decodeGeoTiff.ts';

type ThreadMessage =
  | { readonly stage: 'decoding'; readonly pixels: number }
  | { readonly stage: 'done'; readonly decoded: DecodedTiff };

/** For starting the thread and reading tags: well under a second, ten times that on a busy machine. */
const HEADER_LIMIT_MS = 20_000;
/** For decoding and packing, added per pixel: about ten times what an uncompressed picture takes. */
const LIMIT_MS_PER_PIXEL = 0.004;
/** Damaged run lengths can grow a list without end; the thread dies before the app does. */
const MOST_HEAP_MB = 1024;

/**
 * Decodes a GeoTIFF in a thread of its own, so that a file made (or broken) to loop or to swell is stopped
 * at a time and memory limit and the host stays up.
 */
export function readGeoTiff(
  bytes: Uint8Array,
  headerLimitMs = HEADER_LIMIT_MS,
  threadFile = new URL('./geoTiffThread.ts', import.meta.url),
): Promise<DecodedTiff> {
  return new Promise((resolve) => {
    const thread = new Worker(threadFile, {
      workerData: { bytes },
      resourceLimits: { maxOldGenerationSizeMb: MOST_HEAP_MB },
      stdout: true, // the decoder's warnings are about the file, not for our console
      stderr: true,
    });
    const finish = (decoded: DecodedTiff): void => {
      clearTimeout(timer);
      resolve(decoded);
      void thread.terminate();
    };
    const giveUp = (): void => finish({ kind: 'unreadable', detail: 'decoding it does not come to an end' });
    let timer = setTimeout(giveUp, headerLimitMs);
    thread.on('message', (message: ThreadMessage) => {
      if (message.stage === 'done') {
        finish(message.decoded);
        return;
      }
      clearTimeout(timer);
      timer = setTimeout(giveUp, headerLimitMs + message.pixels * LIMIT_MS_PER_PIXEL);
    });
    thread.on('error', (error) =>
      finish({ kind: 'unreadable', detail: `decoding it failed (${error.message})` }),
    );
    thread.on('exit', () => finish({ kind: 'unreadable', detail: 'decoding it stopped early' }));
  });
}
