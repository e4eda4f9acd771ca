import type { IncomingMessage } from 'node:http';

/** The whole body, or null as soon as it is more than `mostBytes`, whatever its headers say. */
export async function readBody(request: IncomingMessage, mostBytes: number): Promise<Uint8Array | null> {
  if (Number(request.headers['content-length'] ?? 0) > mostBytes) return null;
  const chunks: Buffer[] = [];
  let bytes = 0;
  for await (const chunk of request as AsyncIterable<Buffer>) {
    bytes += chunk.length;
    if (bytes > mostBytes) return null;
    chunks.push(chunk);
  }
  return Buffer.concat(chunks, bytes);
}
