import type { BrowserWindowConstructorOptions } from 'electron';

/** A window whose page has no way to the system but the preload's bridge. */
export function windowOptions(preloadPath: string): BrowserWindowConstructorOptions {
  return {
    width: 1440,
    height: 920,
    minWidth: 900,
    minHeight: 600,
    title: 'Platpace',
    show: false,
    webPreferences: {
      preload: preloadPath,
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      allowRunningInsecureContent: false,
      webviewTag: false,
      navigateOnDragDrop: false,
      // The spelling dictionary would be fetched from the network.
      spellcheck: false,
    },
  };
}
