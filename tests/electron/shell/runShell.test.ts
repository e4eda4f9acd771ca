import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { ok } from '../../../core/result.ts';
import { channelOf, HOST_METHODS, OPEN_PATH_CHANNEL } from '../../../electron/contract/channels.ts';
import { PAGE_ADDRESS } from '../../../electron/shell/page.ts';
import { runShell } from '../../../electron/shell/runShell.ts';
import { ElectronStandIn, type WindowStandIn } from '../../support/electronStandIn.ts';
import { fakeHost } from '../../support/fakeHost.ts';
import { fullYard } from '../../support/storedYards.ts';

let pageRoot: string;
let stand: ElectronStandIn;
let asked: (readonly [string, unknown])[];
let hasClosed: boolean;

async function start(isFirstInstance = true): Promise<void> {
  stand = new ElectronStandIn(isFirstInstance);
  runShell(stand.electron, {
    host: {
      api: fakeHost(fullYard()),
      close: () => {
        hasClosed = true;
      },
    },
    door: async (method, argument) => {
      asked.push([method, argument]);
      return ok('answered');
    },
    pageRoot,
    preloadPath: '/app/preload.cjs',
  });
  await vi.waitFor(() => expect(isFirstInstance ? stand.windows.length : 1).toBe(1));
}

beforeEach(async () => {
  pageRoot = mkdtempSync(join(tmpdir(), 'platpace-shell-'));
  writeFileSync(join(pageRoot, 'index.html'), '<!doctype html>the page');
  asked = [];
  hasClosed = false;
  await start();
});

afterEach(() => rmSync(pageRoot, { recursive: true }));

function window(): WindowStandIn {
  const [only] = stand.windows;
  if (only === undefined) throw new Error('no window was opened');
  return only;
}

/** Whether the page is kept from doing what the event is about. */
function isPrevented(name: string, url = ''): boolean {
  let isStopped = false;
  const preventDefault = () => {
    isStopped = true;
  };
  window().webContents.emit(name, { url, preventDefault });
  return isStopped;
}

describe('the window', () => {
  test('has every switch that keeps a page from the system as it should be', () => {
    expect(window().options.webPreferences).toEqual({
      // Electron's security checklist, items 2 to 11, and no dictionary fetched from the network.
      preload: '/app/preload.cjs',
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      allowRunningInsecureContent: false,
      webviewTag: false,
      navigateOnDragDrop: false,
      spellcheck: false,
    });
  });

  test('shows the page, and cannot be led away from it', () => {
    expect(window().loaded).toBe(PAGE_ADDRESS);
    expect(isPrevented('will-navigate', 'https://yard.example/')).toBe(true);
    expect(isPrevented('will-navigate', 'file:///etc/passwd')).toBe(true);
    expect(isPrevented('will-navigate', 'platpace://other/')).toBe(true);
    expect(isPrevented('will-navigate', PAGE_ADDRESS)).toBe(false);
    expect(isPrevented('will-redirect')).toBe(true);
    expect(isPrevented('will-attach-webview')).toBe(true);
  });

  test('opens no other', () => {
    expect(window().webContents.windowOpen?.({ url: PAGE_ADDRESS })).toEqual({ action: 'deny' }); // Electron's word
  });

  test('is given no camera, place or device', () => {
    const request = stand.session.permissionRequest as (c: unknown, p: string, answer: unknown) => void;
    const answer = vi.fn();
    request({}, 'geolocation', answer);
    expect(answer).toHaveBeenCalledExactlyOnceWith(false);
    expect((stand.session.permissionCheck as () => boolean)()).toBe(false);
    expect((stand.session.devicePermission as () => boolean)()).toBe(false);
  });

  test.each([
    ['https://yard.example/a.js', true],
    ['http://127.0.0.1/', true],
    ['ws://127.0.0.1/', true],
    ['file:///etc/passwd', true],
    ['platpace://book/assets/a.js', false],
    ['blob:platpace://book/1', false],
  ])('a request to %s is refused: %s', (url, isRefused) => {
    const answer = vi.fn();
    stand.requestFilter?.({ url }, answer);
    expect(answer).toHaveBeenCalledExactlyOnceWith({ cancel: isRefused });
  });
});

describe('the page', () => {
  test('comes with its policy, from its folder only', async () => {
    const page = stand.pageHandler?.({ url: PAGE_ADDRESS, method: 'GET' });
    expect(await page?.text()).toBe('<!doctype html>the page'); // as written above
    expect(page?.headers.get('content-security-policy')).toContain("script-src 'self'");
    for (const url of [
      'platpace://book/../secret',
      'platpace://book/%2e%2e%2fsecret.json',
      'platpace://other/',
    ]) {
      expect(stand.pageHandler?.({ url, method: 'GET' }).status, url).toBe(404); // RFC 9110, 15.5.5
    }
  });

  test('has an origin of its own, registered before anything is shown', () => {
    expect(stand.schemes).toEqual([
      // An origin needs a standard scheme; workers and blobs need a secure one (Electron, protocol).
      { scheme: 'platpace', privileges: { standard: true, secure: true, supportFetchAPI: true } },
    ]);
  });
});

describe('the host', () => {
  const ask = (method: string, event: unknown) =>
    stand.handlers.get(`platpace:${method}`)?.(event, { yard: 'h1' });

  test('can be asked every method of the contract and nothing else', () => {
    expect([...stand.handlers.keys()].sort()).toEqual(HOST_METHODS.map(channelOf).sort()); // the contract
  });

  test('answers the page', async () => {
    const { webContents } = window();
    const event = { sender: webContents, senderFrame: webContents.mainFrame };
    expect(await ask('undo', event)).toEqual(ok('answered')); // what the door of this test says
    expect(asked).toEqual([['undo', { yard: 'h1' }]]); // as asked
  });

  test('answers no frame within the page, no other page and no frame that is gone', async () => {
    const { webContents } = window();
    const strangers = [
      { sender: webContents, senderFrame: { url: PAGE_ADDRESS } },
      { sender: webContents, senderFrame: null },
      { sender: { mainFrame: { url: 'https://yard.example/' } }, senderFrame: null },
    ];
    const elsewhere = { url: 'https://yard.example/' };
    for (const event of [...strangers, { sender: { mainFrame: elsewhere }, senderFrame: elsewhere }]) {
      expect(await ask('undo', event)).toMatchObject({ ok: false, problems: [{ kind: 'host/bad-request' }] });
    }
    expect(asked).toEqual([]); // nothing reached the door
  });

  test('is closed at the end', () => {
    stand.app.emit('window-all-closed');
    expect(stand.hasQuit).toBe(true);
    stand.app.emit('will-quit');
    expect(hasClosed).toBe(true);
  });
});

describe('a yard file named from outside', () => {
  const sent = () => window().webContents.sent;

  test('by the menu is opened', async () => {
    window().webContents.emit('did-finish-load');
    stand.chosenPath = '/yards/a.gpkg';
    const items = stand.menu.flatMap((menu) => menu.submenu as { label?: string; click?: () => void }[]);
    items.find(({ label }) => label?.startsWith('Open a yard'))?.click?.();
    await vi.waitFor(() => expect(sent()).toEqual([[OPEN_PATH_CHANNEL, '/yards/a.gpkg']])); // as chosen
  });

  test('by a second start reaches the first window, whole', () => {
    window().webContents.emit('did-finish-load');
    stand.app.emit('second-instance', {}, ['electron', '--flag', 'main.mjs', 'b.gpkg'], '/home/pat');
    expect(sent()).toEqual([[OPEN_PATH_CHANNEL, resolve('/home/pat/b.gpkg')]]); // the folder it was named in
  });

  test('by the system before the page is there waits for it, and is opened once', () => {
    const preventDefault = vi.fn();
    stand.app.emit('open-file', { preventDefault }, '/yards/c.gpkg');
    expect(preventDefault).toHaveBeenCalledOnce();
    expect(sent()).toEqual([]); // nobody is there to hear it
    window().webContents.emit('did-finish-load');
    window().webContents.emit('did-finish-load');
    expect(sent()).toEqual([[OPEN_PATH_CHANNEL, '/yards/c.gpkg']]); // once
  });
});

test('a second instance ends at once and opens nothing', async () => {
  await start(false);
  expect(stand.hasQuit).toBe(true);
  expect(stand.windows).toEqual([]); // the first instance has the window
  expect(stand.handlers.size).toBe(0); // nor a door
});

test('nothing calls home: the switches are set before the app is ready', () => {
  expect(stand.switches).toContain('disable-background-networking');
  expect(stand.switches).toContain('disable-component-update');
});
