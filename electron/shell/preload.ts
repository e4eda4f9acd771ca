import { contextBridge, ipcRenderer } from 'electron';
import {
  BRIDGE_NAME,
  channelOf,
  type HostBridge,
  isHostMethod,
  OPEN_PATH_CHANNEL,
} from '../contract/channels.ts';

/** Forwards between window and host; knows nothing of what it carries. No event object reaches the page. */
const bridge: HostBridge = {
  ask(method, argument) {
    // A page could name any channel otherwise.
    if (!isHostMethod(method)) return Promise.reject(new Error('no such method'));
    return ipcRenderer.invoke(channelOf(method), argument);
  },
  onOpenPath(listener) {
    ipcRenderer.on(OPEN_PATH_CHANNEL, (_event, path: unknown) => listener(String(path)));
  },
};

contextBridge.exposeInMainWorld(BRIDGE_NAME, bridge);
