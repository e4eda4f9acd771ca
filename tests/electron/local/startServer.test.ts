import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { HOST_PATH, WIRE_MEDIA_TYPE } from '../../../electron/contract/channels.ts';
import { decodeWire, encodeWire } from '../../../electron/contract/wire.ts';
import { openDoor } from '../../../electron/host/openDoor.ts';
import { type LocalServer, startServer } from '../../../electron/local/startServer.ts';
import { fakeHost } from '../../support/fakeHost.ts';
import { rawRequest } from '../../support/rawRequest.ts';
import { fullYard } from '../../support/storedYards.ts';

const MOST_BYTES = 10_000;
let folder: string;
let server: LocalServer;
let port: number;
let cookie: string;
let goneCount: number;

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'platpace-page-'));
  const pageRoot = join(folder, 'page');
  mkdirSync(join(pageRoot, 'assets'), { recursive: true });
  writeFileSync(join(pageRoot, 'index.html'), '<!doctype html>the page');
  writeFileSync(join(pageRoot, 'assets', 'a.js'), 'let a;');
  writeFileSync(join(folder, 'secret.json'), 'secret');
  symlinkSync(join(folder, 'secret.json'), join(pageRoot, 'link.json'));
  goneCount = 0;
  server = await startServer({
    door: openDoor(fakeHost(fullYard()), () => {}),
    pageRoot,
    onPagesGone: () => {
      goneCount += 1;
    },
    mostRequestBytes: MOST_BYTES,
    goneAfterMs: 50,
  });
  port = Number(new URL(server.gate.origin).port);
});

afterEach(async () => {
  await server.close();
  rmSync(folder, { recursive: true });
});

function host(): Record<string, string> {
  return { Host: `127.0.0.1:${port}` };
}

/** Goes in by the first address, as the window does. */
async function enter(): Promise<void> {
  const { pathname, search } = new URL(server.gate.firstAddress ?? '');
  const answer = await rawRequest(port, `GET ${pathname}${search} HTTP/1.1`, host());
  cookie = /^set-cookie: ([^;]+)/im.exec(answer.head)?.[1] ?? '';
}

function asWindow(): Record<string, string> {
  return { ...host(), Cookie: cookie, 'Sec-Fetch-Site': 'same-origin' };
}

function ask(method: string, argument: unknown, headers: Record<string, string> = {}) {
  const body = encodeWire(argument);
  return rawRequest(
    port,
    `POST ${HOST_PATH}${method} HTTP/1.1`,
    {
      ...asWindow(),
      Origin: server.gate.origin,
      'Content-Type': WIRE_MEDIA_TYPE,
      'Content-Length': String(body.length),
      ...headers,
    },
    body,
  );
}

describe('the window that was given the first address', () => {
  beforeEach(enter);

  test('gets the page and its parts', async () => {
    const page = await rawRequest(port, 'GET / HTTP/1.1', asWindow());
    expect([page.status, page.body.toString()]).toEqual([200, '<!doctype html>the page']); // as written above
    const part = await rawRequest(port, 'GET /assets/a.js HTTP/1.1', asWindow());
    expect([part.status, part.body.toString()]).toEqual([200, 'let a;']); // as written above
    expect(part.head).toMatch(/content-type: text\/javascript/i);
  });

  test('gets answers from the host', async () => {
    const answer = await ask('greet', {});
    expect(answer.status).toBe(200); // RFC 9110, 15.3.1
    const greeting = { version: 'test', yardsFolder: 'yards', startPath: null }; // what the stand-in host says
    expect(decodeWire(answer.body)).toEqual({ ok: true, value: { ok: true, value: greeting } });
  });

  test('is told to load nothing from elsewhere and no inline script, and no other page is let in', async () => {
    const { head } = await rawRequest(port, 'GET / HTTP/1.1', asWindow());
    const policy = /^content-security-policy: (.*)$/im.exec(head)?.[1] ?? '';
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("script-src 'self'");
    expect(policy).not.toMatch(/unsafe|https?:|\*/);
    expect(head).not.toMatch(/access-control-allow/i);
    expect(head).toMatch(/x-content-type-options: nosniff/i);
  });

  test('holds a cookie that no script reads and no other site sends', async () => {
    await server.close();
    server = await startServer({
      door: openDoor(fakeHost(fullYard()), () => {}),
      pageRoot: folder,
      onPagesGone: () => {},
    });
    port = Number(new URL(server.gate.origin).port);
    const { search } = new URL(server.gate.firstAddress ?? '');
    const { status, head } = await rawRequest(port, `GET /${search} HTTP/1.1`, host());
    expect(status).toBe(303); // RFC 9110, 15.4.4: go on to the page itself, without the key
    expect(head).toMatch(/^set-cookie: platpace-\d+=[^;]+; Path=\/; HttpOnly; SameSite=Strict\r?$/im);
    expect(head).toMatch(/^location: \/\r?$/im);
  });

  test('is refused by words, not by silence, when the host does not know what it asks', async () => {
    const answer = await ask('__proto__', {});
    const decoded = decodeWire(answer.body);
    expect(decoded).toMatchObject({ value: { ok: false, problems: [{ kind: 'host/bad-request' }] } });
    const hostile = decodeWire((await ask('undo', { yard: '../a' })).body);
    expect(hostile).toMatchObject({ value: { ok: false, problems: [{ kind: 'host/bad-request' }] } });
  });
});

describe('the key in the first address', () => {
  test('works once', async () => {
    const { search } = new URL(server.gate.firstAddress ?? '');
    await enter();
    expect(server.gate.firstAddress).toBeNull();
    const again = await rawRequest(port, `GET /${search} HTTP/1.1`, host());
    expect(again.status).toBe(403); // RFC 9110, 15.5.4
    expect(again.head).not.toMatch(/set-cookie/i);
  });

  test.each(['', 'x', 'A'.repeat(43), 'A'.repeat(100_00)])('is not guessed: %.20s', async (key) => {
    const answer = await rawRequest(port, `GET /?key=${key} HTTP/1.1`, host());
    expect(answer.status).toBe(403); // RFC 9110, 15.5.4
    expect(server.gate.firstAddress).not.toBeNull(); // a wrong guess does not lock the window out
  });
});

describe('refused, though it is the right address', () => {
  beforeEach(enter);

  test.each([
    ['no cookie', () => ({ Cookie: '' })],
    ['a wrong cookie', () => ({ Cookie: `${cookie.slice(0, -1)}${cookie.endsWith('A') ? 'B' : 'A'}` })],
    ['a cookie that is too short', () => ({ Cookie: cookie.slice(0, -1) })],
    ['another name for this machine', () => ({ Host: `localhost:${port}` })],
    ['a name of somebody else’s that points here', () => ({ Host: `yard.example:${port}` })],
    ['no port', () => ({ Host: '127.0.0.1' })],
    ['a page of another origin', () => ({ Origin: 'http://yard.example' })],
    ['a page of another port', () => ({ Origin: `http://127.0.0.1:${port + 1}` })],
    ['a page without an origin', () => ({ Origin: 'null' })],
    ['a page of another site, by what the browser says', () => ({ 'Sec-Fetch-Site': 'cross-site' })],
    ['a page of another port, by what the browser says', () => ({ 'Sec-Fetch-Site': 'same-site' })],
  ])('%s', async (_name, headers) => {
    expect((await ask('greet', {}, headers())).status).toBe(403); // RFC 9110, 15.5.4
    const page = await rawRequest(port, 'GET / HTTP/1.1', { ...asWindow(), ...headers() });
    expect(page.status).toBe(403); // RFC 9110, 15.5.4
  });

  test('a call that does not say where it comes from', async () => {
    const body = encodeWire({});
    const headers = { ...asWindow(), 'Content-Type': WIRE_MEDIA_TYPE, 'Content-Length': String(body.length) };
    const answer = await rawRequest(port, `POST ${HOST_PATH}greet HTTP/1.1`, headers, body);
    expect(answer.status).toBe(403); // RFC 9110, 15.5.4
  });

  test('a call by any method but POST, and a write to a page', async () => {
    for (const method of ['GET', 'HEAD', 'PUT', 'DELETE', 'OPTIONS']) {
      const headers = { ...asWindow(), Origin: server.gate.origin };
      const answer = await rawRequest(port, `${method} ${HOST_PATH}greet HTTP/1.1`, headers);
      expect(answer.status, method).toBe(405); // RFC 9110, 15.5.6
      expect(answer.head).not.toMatch(/access-control-allow/i);
    }
    const post = await rawRequest(port, 'POST / HTTP/1.1', {
      ...asWindow(),
      Origin: server.gate.origin,
      'Content-Length': '0',
    });
    expect(post.status).toBe(405); // RFC 9110, 15.5.6
  });

  test.each(['text/plain', 'application/json', 'application/x-www-form-urlencoded'])(
    'a call in the form of %s',
    async (type) => {
      expect((await ask('greet', {}, { 'Content-Type': type })).status).toBe(415); // RFC 9110, 15.5.16
    },
  );

  test('a call whose body is not in our form', async () => {
    const headers = { ...asWindow(), Origin: server.gate.origin, 'Content-Type': WIRE_MEDIA_TYPE };
    const body = new TextEncoder().encode('{"a": 1}');
    const sized = { ...headers, 'Content-Length': String(body.length) };
    const answer = await rawRequest(port, `POST ${HOST_PATH}greet HTTP/1.1`, sized, body);
    expect(answer.status).toBe(400); // RFC 9110, 15.5.1
  });

  test('a body over the cap, whether it says so or not', async () => {
    const large = { fileName: 'a.png', bytes: new Uint8Array(MOST_BYTES) };
    expect((await ask('draftYard', large)).status).toBe(413); // RFC 9110, 15.5.14
    const chunk = `${MOST_BYTES.toString(16)}\r\n${'a'.repeat(MOST_BYTES)}\r\n`;
    const answer = await rawRequest(
      port,
      `POST ${HOST_PATH}draftYard HTTP/1.1`,
      {
        ...asWindow(),
        Origin: server.gate.origin,
        'Content-Type': WIRE_MEDIA_TYPE,
        'Transfer-Encoding': 'chunked',
      },
      new TextEncoder().encode(`${chunk}${chunk}0\r\n\r\n`),
    );
    expect(answer.status).toBe(413); // RFC 9110, 15.5.14
  });

  test.each([
    '/../secret.json',
    '/assets/../../secret.json',
    '/%2e%2e/secret.json',
    '/..%2fsecret.json',
    '/assets/..%5c..%5csecret.json',
    '//secret.json',
    '/%00/secret.json',
    '/%',
    '/link.json',
    '/assets',
    '/assets/',
    '/.hidden.json',
    'http://yard.example/index.html',
  ])('the path %s', async (path) => {
    const answer = await rawRequest(port, `GET ${path} HTTP/1.1`, asWindow());
    expect(answer.status).toBe(404); // RFC 9110, 15.5.5
    expect(answer.body.toString()).not.toContain('secret');
  });
});

test('the end of the last page is noticed, and a reload is not taken for it', async () => {
  await enter();
  const open = async () => {
    const aborter = new AbortController();
    const headers = { cookie };
    await fetch(`${server.gate.origin}/alive`, { headers, signal: aborter.signal });
    return () => aborter.abort();
  };
  const closeFirst = await open();
  closeFirst();
  const closeSecond = await open();
  await wait(150);
  expect(goneCount).toBe(0); // the second page is there
  closeSecond();
  await wait(300);
  expect(goneCount).toBe(1); // told once
});

test('only this machine can reach it', async () => {
  const { networkInterfaces } = await import('node:os');
  const others = Object.values(networkInterfaces())
    .flatMap((addresses) => addresses ?? [])
    .filter((address) => !address.internal && address.family === 'IPv4');
  for (const { address } of others) {
    await expect(fetch(`http://${address}:${port}/`)).rejects.toThrow();
  }
  expect(new URL(server.gate.origin).hostname).toBe('127.0.0.1'); // RFC 1122, 3.2.1.3: loopback
});

function wait(ms: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms));
}
