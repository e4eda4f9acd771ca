import type { MenuItemConstructorOptions } from 'electron';

export interface MenuActions {
  openYard(): void;
  about(): void;
}

/**
 * The menu. Undo and redo are missing on purpose: they belong to the page, which keeps one history for the
 * yard and another for the text being typed.
 */
export function menuTemplate(actions: MenuActions, isMac: boolean): MenuItemConstructorOptions[] {
  return [
    ...(isMac ? [{ role: 'appMenu' } as const] : []),
    {
      label: '&Yard',
      submenu: [
        { label: 'Open a yard file…', accelerator: 'CmdOrCtrl+O', click: actions.openYard },
        { type: 'separator' },
        { label: isMac ? 'Close the window' : 'Put the book away', role: isMac ? 'close' : 'quit' },
      ],
    },
    {
      label: '&Text',
      submenu: [
        { label: 'Cut', role: 'cut' },
        { label: 'Copy', role: 'copy' },
        { label: 'Paste', role: 'paste' },
        { label: 'Select everything', role: 'selectAll' },
      ],
    },
    {
      label: '&Page',
      submenu: [
        { label: 'Larger', role: 'zoomIn' },
        { label: 'Smaller', role: 'zoomOut' },
        { label: 'Actual size', role: 'resetZoom' },
        { type: 'separator' },
        { label: 'Fill the screen', role: 'togglefullscreen' },
      ],
    },
    { label: '&Help', submenu: [{ label: 'About Platpace', click: actions.about }] },
  ];
}
