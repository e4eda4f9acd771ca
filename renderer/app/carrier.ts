import { BRIDGE_NAME, type HostBridge } from '../../electron/contract/channels.ts';
import { httpCarrier } from './httpCarrier.ts';

/** The one place that knows there are two carriers: Electron's bridge when the preload put it there, else HTTP. */
export function takeCarrier(): HostBridge {
  const bridge = (globalThis as { [BRIDGE_NAME]?: HostBridge })[BRIDGE_NAME];
  return bridge ?? httpCarrier();
}
