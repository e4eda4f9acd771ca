import { parentPort, workerData } from 'node:worker_threads';
import { decodeGeoTiff } from './decodeGeoTiff.ts';

/** The decoding thread of `readGeoTiff`: bytes in by workerData, messages out. */
const { bytes } = workerData as { readonly bytes: Uint8Array };
const decoded = await decodeGeoTiff(bytes, (pixels) =>
  parentPort?.postMessage({ stage: 'decoding', pixels }),
);
parentPort?.postMessage({ stage: 'done', decoded });
