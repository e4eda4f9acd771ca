import type { App, Session, WebContents } from 'electron';
import { PAGE_ADDRESS, PAGE_SCHEME } from './page.ts';

/** What the page itself may load; everything else is refused before it leaves. */
const OWN_SCHEMES = [`${PAGE_SCHEME}:`, 'blob:', 'data:', 'devtools:'];

/** Chromium's own calls home, off; to be set before the app is ready. */
const QUIET_SWITCHES = [
  'disable-background-networking',
  'disable-component-update',
  'disable-domain-reliability',
  'disable-sync',
  'no-pings',
];

export function quieten(app: App): void {
  for (const name of QUIET_SWITCHES) app.commandLine.appendSwitch(name);
}

/** No page of ours asks for the camera, the place or a device: every such request is refused. */
export function lockSession(session: Session): void {
  session.setPermissionRequestHandler((_contents, _permission, answer) => answer(false));
  session.setPermissionCheckHandler(() => false);
  session.setDevicePermissionHandler(() => false);
  session.webRequest.onBeforeRequest((details, answer) => {
    answer({ cancel: !OWN_SCHEMES.some((scheme) => details.url.startsWith(scheme)) });
  });
}

/** The page stays the page: no link, script or dropped file leads away from it or opens another. */
export function lockContents(contents: WebContents): void {
  contents.on('will-navigate', (event) => {
    if (event.url !== PAGE_ADDRESS) event.preventDefault();
  });
  contents.on('will-redirect', (event) => event.preventDefault());
  contents.on('will-attach-webview', (event) => event.preventDefault());
  contents.setWindowOpenHandler(() => ({ action: 'deny' }));
}
