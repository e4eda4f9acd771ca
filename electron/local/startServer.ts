import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { ALIVE_PATH, HOST_PATH, MOST_REQUEST_BYTES, WIRE_MEDIA_TYPE } from '../contract/channels.ts';
import { decodeWire, encodeWire } from '../contract/wire.ts';
import type { Door } from '../host/openDoor.ts';
import { PAGE_HEADERS } from '../host/page/pageHeaders.ts';
import { readPageFile } from '../host/page/readPageFile.ts';
import { type Caller, Gate } from './Gate.ts';
import { LivePages } from './LivePages.ts';
import { readBody } from './readBody.ts';

export interface ServerParts {
  readonly door: Door;
  /** The folder of the built page. */
  readonly pageRoot: string;
  /** Every page that was open is gone. */
  readonly onPagesGone: () => void;
  readonly mostRequestBytes?: number;
  readonly goneAfterMs?: number;
}

export interface LocalServer {
  readonly gate: Gate;
  readonly pages: LivePages;
  close(): Promise<void>;
}

/**
 * Serves the built page and the host's door on 127.0.0.1, at a port the system picks. Nothing is answered to
 * anyone but the window that came in by the first address (see `Gate`).
 */
export async function startServer(parts: ServerParts): Promise<LocalServer> {
  const server = createServer();
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(0, '127.0.0.1', resolve);
  });
  const gate = new Gate((server.address() as AddressInfo).port);
  const pages = new LivePages(parts.onPagesGone, parts.goneAfterMs);
  server.on('request', (request, response) => {
    answer(parts, gate, pages, request, response).catch(() => response.destroy());
  });
  return {
    gate,
    pages,
    close: () =>
      new Promise((resolve) => {
        pages.close();
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

async function answer(
  parts: ServerParts,
  gate: Gate,
  pages: LivePages,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  for (const [name, value] of Object.entries(PAGE_HEADERS)) response.setHeader(name, value);
  const caller = callerOf(request);
  if (!gate.isOurSite(caller)) return say(response, 403, 'Not from here.');
  // Never resolved by `new URL`, which would take "//name/" for another machine and swallow "..".
  const [path = '', query = ''] = (request.url ?? '').split('?', 2);
  const isReading = caller.method === 'GET' || caller.method === 'HEAD';

  const key = new URLSearchParams(query).get('key');
  if (isReading && path === '/' && key !== null) {
    const cookie = gate.enter(key);
    if (cookie === null) return say(response, 403, 'This address has been used. Start Platpace again.');
    response.writeHead(303, { location: '/', 'set-cookie': cookie }).end();
    return;
  }
  if (!gate.hasPass(caller)) return say(response, 403, 'Open the address that Platpace printed.');

  if (path.startsWith(HOST_PATH)) {
    if (caller.method !== 'POST') return say(response, 405, 'Ask by POST.');
    return answerHost(parts, path.slice(HOST_PATH.length), request, response);
  }
  if (!isReading) return say(response, 405, 'Only for reading.');
  if (path === ALIVE_PATH) return pages.hold(response);
  const file = readPageFile(parts.pageRoot, path);
  if (file === undefined) return say(response, 404, 'Nothing here.');
  response.writeHead(200, { 'content-type': file.mediaType, 'content-length': file.bytes.length });
  response.end(caller.method === 'HEAD' ? undefined : file.bytes);
}

async function answerHost(
  parts: ServerParts,
  method: string,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  // A page of another site can send a form's media types without asking, but never this one.
  if (request.headers['content-type'] !== WIRE_MEDIA_TYPE) return say(response, 415, 'Not in our form.');
  const body = await readBody(request, parts.mostRequestBytes ?? MOST_REQUEST_BYTES);
  if (body === null) {
    response.setHeader('connection', 'close');
    return say(response, 413, 'Too much at once.');
  }
  const decoded = decodeWire(body);
  if (!decoded.ok) return say(response, 400, 'Not in our form.');
  const result = encodeWire(await parts.door(method, decoded.value));
  response.writeHead(200, { 'content-type': WIRE_MEDIA_TYPE, 'content-length': result.length });
  response.end(result);
}

function callerOf(request: IncomingMessage): Caller {
  const { host, origin, cookie, 'sec-fetch-site': fetchSite } = request.headers;
  return {
    method: request.method ?? '',
    host,
    origin,
    cookie,
    fetchSite: Array.isArray(fetchSite) ? fetchSite.join() : fetchSite,
  };
}

function say(response: ServerResponse, status: number, words: string): void {
  response.writeHead(status, { 'content-type': 'text/plain; charset=utf-8' }).end(`${words}\n`);
}
