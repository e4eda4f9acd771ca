import type { BrowserWindow } from 'electron';
import { OPEN_PATH_CHANNEL } from '../contract/channels.ts';
import type { Host } from '../host/makeHost.ts';
import type { Door } from '../host/openDoor.ts';
import { bindDoor } from './bindDoor.ts';
import { lockContents, lockSession, quieten } from './lockDown.ts';
import { menuTemplate } from './menu.ts';
import { PAGE_ADDRESS, registerPageScheme, servePage } from './page.ts';
import { windowOptions } from './windowOptions.ts';
import { yardArgument } from './yardArgument.ts';

export type Electron = typeof import('electron');

export interface ShellParts {
  readonly host: Host;
  readonly door: Door;
  readonly pageRoot: string;
  readonly preloadPath: string;
}

/**
 * The app in Electron: one window, one instance. A second start hands its yard file to the first and ends.
 * All that is known of yards is a path to pass on to the page.
 */
export function runShell(electron: Electron, parts: ShellParts): void {
  const { app, BrowserWindow, dialog, ipcMain, Menu, protocol, session } = electron;
  let window: BrowserWindow | null = null;
  /** Named by the system before the page was there to hear of it. */
  let waitingPath: string | null = null;
  let isPageThere = false;

  if (!app.requestSingleInstanceLock()) {
    app.quit();
    return;
  }
  quieten(app);
  registerPageScheme(protocol);
  bindDoor(ipcMain, parts.door);

  function tellPage(path: string): void {
    if (window === null || !isPageThere) {
      waitingPath = path;
      return;
    }
    window.webContents.send(OPEN_PATH_CHANNEL, path);
    if (window.isMinimized()) window.restore();
    window.focus();
  }

  async function chooseYard(): Promise<void> {
    if (window === null) return;
    const filters = [{ name: 'Yard files', extensions: ['gpkg'] }];
    const chosen = await dialog.showOpenDialog(window, { filters, properties: ['openFile'] });
    const [path] = chosen.filePaths;
    if (!chosen.canceled && path !== undefined) tellPage(path);
  }

  function openWindow(): void {
    const opened = new BrowserWindow(windowOptions(parts.preloadPath));
    window = opened;
    opened.once('ready-to-show', () => opened.show());
    opened.once('closed', () => {
      window = null;
      isPageThere = false;
    });
    opened.webContents.on('did-finish-load', () => {
      isPageThere = true;
      if (waitingPath !== null) tellPage(waitingPath);
      waitingPath = null;
    });
    void opened.loadURL(PAGE_ADDRESS);
  }

  app.on('web-contents-created', (_event, contents) => lockContents(contents));
  app.on('second-instance', (_event, argv, workingFolder) => {
    const path = yardArgument(argv, workingFolder);
    if (path !== null) tellPage(path);
    else window?.focus();
  });
  app.on('open-file', (event, path) => {
    event.preventDefault();
    tellPage(path);
  });
  app.on('window-all-closed', () => app.quit());
  app.on('will-quit', () => parts.host.close());

  void app.whenReady().then(() => {
    lockSession(session.defaultSession);
    servePage(protocol, parts.pageRoot);
    const actions = { openYard: () => void chooseYard(), about: () => app.showAboutPanel() };
    Menu.setApplicationMenu(Menu.buildFromTemplate(menuTemplate(actions, process.platform === 'darwin')));
    openWindow();
  });
}
