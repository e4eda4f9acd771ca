import type { HostApi, HostMethod } from './HostApi.ts';

/** Every method of the host, complete by type; the order is of no meaning. */
const EVERY_METHOD: { readonly [M in keyof HostApi]: true } = {
  greet: true,
  listFolder: true,
  openYard: true,
  readYard: true,
  keepCopy: true,
  createYard: true,
  closeYard: true,
  applyEdit: true,
  undo: true,
  redo: true,
  readImage: true,
  draftYard: true,
  draftImport: true,
  makePdf: true,
  makeGeoJson: true,
};

export const HOST_METHODS = Object.keys(EVERY_METHOD) as readonly HostMethod[];

export function isHostMethod(name: string): name is HostMethod {
  return Object.hasOwn(EVERY_METHOD, name);
}

/** The IPC channel a method is asked on. */
export function channelOf(method: HostMethod): string {
  return `platpace:${method}`;
}

/** The shell tells the window to open a yard file: the one thing that goes the other way. */
export const OPEN_PATH_CHANNEL = 'platpace:open-path';

/** Where the window finds the preload's bridge. */
export const BRIDGE_NAME = 'platpaceBridge';

/** What the preload puts in the window: it forwards and knows nothing of what it carries. */
export interface HostBridge {
  ask(method: HostMethod, argument: unknown): Promise<unknown>;
  onOpenPath(listener: (path: string) => void): void;
}

/** HTTP: a method is asked by POST to this path and its name; argument and answer are in `wire.ts` form. */
export const HOST_PATH = '/host/';
/** HTTP: the window keeps a stream open here for as long as it lives; the server ends when the last one does. */
export const ALIVE_PATH = '/alive';
export const WIRE_MEDIA_TYPE = 'application/x-platpace-wire';

/** The most that goes through the door in one request, arguments and pictures together. */
export const MOST_REQUEST_BYTES = 512 * 1024 * 1024;
