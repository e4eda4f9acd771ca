import type { IpcMain, IpcMainInvokeEvent } from 'electron';
import { trouble } from '../../core/result.ts';
import { channelOf, HOST_METHODS } from '../contract/channels.ts';
import type { Door } from '../host/openDoor.ts';
import { isPageAddress } from './page.ts';

/** Binds every host method to its channel. Only the top frame of a page of ours is listened to. */
export function bindDoor(ipcMain: IpcMain, door: Door): void {
  for (const method of HOST_METHODS) {
    ipcMain.handle(channelOf(method), async (event, argument: unknown) => {
      if (isOurPage(event)) return door(method, argument);
      return trouble({ kind: 'host/bad-request', where: {}, facts: { detail: 'not from the page' } });
    });
  }
}

/** A frame that was navigated away or removed while it asked has no frame left: refused as well. */
function isOurPage({ sender, senderFrame }: IpcMainInvokeEvent): boolean {
  return senderFrame !== null && senderFrame === sender.mainFrame && isPageAddress(senderFrame.url);
}
