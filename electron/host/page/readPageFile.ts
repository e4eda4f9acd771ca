import { readFileSync, realpathSync, statSync } from 'node:fs';
import { extname, join, sep } from 'node:path';

export interface PageFile {
  readonly mediaType: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

const MEDIA_TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
  '.json': 'application/json',
};

/**
 * One file of the built page, by the path of its address ('/' is the page itself). Undefined for anything
 * that is not a plain file of a known type inside `root`, however the path tries to get out of it.
 */
export function readPageFile(root: string, addressPath: string): PageFile | undefined {
  const name = plainPath(addressPath);
  if (name === undefined) return undefined;
  const path = join(root, name === '/' ? 'index.html' : name);
  const mediaType = MEDIA_TYPES[extname(path)];
  if (mediaType === undefined || !statSync(path, { throwIfNoEntry: false })?.isFile()) return undefined;
  // A link inside the folder could still point out of it.
  if (!realpathSync(path).startsWith(realpathSync(root) + sep)) return undefined;
  return { mediaType, bytes: new Uint8Array(readFileSync(path)) };
}

/** The decoded path, when every part of it is a plain name. */
function plainPath(addressPath: string): string | undefined {
  let path: string;
  try {
    path = decodeURIComponent(addressPath);
  } catch {
    return undefined;
  }
  if (path === '/') return path;
  return /^(\/[A-Za-z0-9_-][A-Za-z0-9._-]*)+$/.test(path) ? path : undefined;
}
