import type { Protocol } from 'electron';
import { PAGE_HEADERS } from '../host/page/pageHeaders.ts';
import { readPageFile } from '../host/page/readPageFile.ts';

/** A scheme of our own: the page has an origin, which `file:` pages have not, and can reach no other file. */
export const PAGE_SCHEME = 'platpace';
const PAGE_ORIGIN = `${PAGE_SCHEME}://book`;
export const PAGE_ADDRESS = `${PAGE_ORIGIN}/`;

/** To be called before the app is ready. */
export function registerPageScheme(protocol: Protocol): void {
  protocol.registerSchemesAsPrivileged([
    { scheme: PAGE_SCHEME, privileges: { standard: true, secure: true, supportFetchAPI: true } },
  ]);
}

/** Serves the built page, and nothing outside its folder. */
export function servePage(protocol: Protocol, pageRoot: string): void {
  protocol.handle(PAGE_SCHEME, (request) => {
    const { host, pathname } = new URL(request.url);
    const file = host === 'book' && request.method === 'GET' ? readPageFile(pageRoot, pathname) : undefined;
    if (file === undefined) return new Response('Nothing here.', { status: 404, headers: PAGE_HEADERS });
    return new Response(file.bytes, { headers: { ...PAGE_HEADERS, 'content-type': file.mediaType } });
  });
}

export function isPageAddress(address: string): boolean {
  return address === PAGE_ADDRESS || address.startsWith(`${PAGE_ADDRESS}index.html`);
}
