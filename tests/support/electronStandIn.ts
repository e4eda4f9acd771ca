import { EventEmitter } from 'node:events';
import type { Electron } from '../../electron/shell/runShell.ts';

type Handler = (event: unknown, argument?: unknown) => unknown;

/** What a page can be told and asked, as far as the shell uses it. */
export class ContentsStandIn extends EventEmitter {
  readonly mainFrame: { url: string } = { url: '' };
  readonly sent: (readonly [string, unknown])[] = [];
  windowOpen: ((details: { url: string }) => { action: string }) | null = null;

  setWindowOpenHandler(handler: (details: { url: string }) => { action: string }): void {
    this.windowOpen = handler;
  }
  send(channel: string, value: unknown): void {
    this.sent.push([channel, value]);
  }
}

/** A window that records how it was made and shows nothing. */
export class WindowStandIn extends EventEmitter {
  readonly webContents = new ContentsStandIn();
  readonly options: Record<string, unknown>;
  loaded: string | null = null;

  constructor(options: Record<string, unknown>) {
    super();
    this.options = options;
  }
  async loadURL(url: string): Promise<void> {
    this.loaded = url;
    this.webContents.mainFrame.url = url;
  }
  show(): void {}
  focus(): void {}
  restore(): void {}
  isMinimized(): boolean {
    return false;
  }
}

/** Electron as far as the shell uses it: does nothing, remembers everything. */
export class ElectronStandIn {
  readonly windows: WindowStandIn[] = [];
  readonly handlers = new Map<string, Handler>();
  readonly switches: string[] = [];
  readonly schemes: unknown[] = [];
  readonly session: Record<string, unknown> = {};
  menu: readonly { readonly label?: string; readonly submenu?: unknown }[] = [];
  pageHandler: ((request: { url: string; method: string }) => Response) | null = null;
  requestFilter: ((details: { url: string }, answer: (said: { cancel: boolean }) => void) => void) | null =
    null;
  chosenPath: string | null = null;
  hasQuit = false;
  readonly app: EventEmitter;
  readonly electron: Electron;

  constructor(isFirstInstance = true) {
    const app = Object.assign(new EventEmitter(), {
      requestSingleInstanceLock: () => isFirstInstance,
      whenReady: async () => {},
      quit: () => {
        this.hasQuit = true;
      },
      showAboutPanel: () => {},
      commandLine: { appendSwitch: (name: string) => this.switches.push(name) },
    });
    this.app = app;
    const made = (options: Record<string, unknown>): WindowStandIn => {
      const window = new WindowStandIn(options);
      this.windows.push(window);
      app.emit('web-contents-created', {}, window.webContents);
      return window;
    };
    const remember = (name: string) => (value: unknown) => {
      this.session[name] = value;
    };
    const parts = {
      app,
      BrowserWindow: new Proxy(WindowStandIn, { construct: (_class, [options]) => made(options) }),
      dialog: {
        showOpenDialog: async () => ({
          canceled: this.chosenPath === null,
          filePaths: this.chosenPath === null ? [] : [this.chosenPath],
        }),
      },
      ipcMain: { handle: (channel: string, handler: Handler) => this.handlers.set(channel, handler) },
      Menu: {
        buildFromTemplate: (template: ElectronStandIn['menu']) => template,
        setApplicationMenu: (menu: ElectronStandIn['menu']) => {
          this.menu = menu;
        },
      },
      protocol: {
        registerSchemesAsPrivileged: (schemes: unknown[]) => this.schemes.push(...schemes),
        handle: (_scheme: string, handler: ElectronStandIn['pageHandler']) => {
          this.pageHandler = handler;
        },
      },
      session: {
        defaultSession: {
          setPermissionRequestHandler: remember('permissionRequest'),
          setPermissionCheckHandler: remember('permissionCheck'),
          setDevicePermissionHandler: remember('devicePermission'),
          webRequest: {
            onBeforeRequest: (filter: ElectronStandIn['requestFilter']) => {
              this.requestFilter = filter;
            },
          },
        },
      },
    };
    // Electron's own types have hundreds of members; those the shell touches are here.
    this.electron = parts as unknown as Electron;
  }
}
