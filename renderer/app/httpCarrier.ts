import { ALIVE_PATH, HOST_PATH, type HostBridge, WIRE_MEDIA_TYPE } from '../../electron/contract/channels.ts';
import { decodeWire, encodeWire } from '../../electron/contract/wire.ts';

/** The host over the loopback server that served this page. Throws when it does not answer. */
export function httpCarrier(): HostBridge {
  // Held for the life of the page: the server takes its end for the window's end.
  // The listener keeps it from being collected as garbage; it reconnects by itself.
  new EventSource(ALIVE_PATH).addEventListener('error', () => {});
  return {
    async ask(method, argument) {
      const answer = await fetch(HOST_PATH + method, {
        method: 'POST',
        headers: { 'content-type': WIRE_MEDIA_TYPE },
        body: encodeWire(argument),
      });
      if (answer.headers.get('content-type') !== WIRE_MEDIA_TYPE)
        throw new Error(`answered ${answer.status}`);
      const decoded = decodeWire(new Uint8Array(await answer.arrayBuffer()));
      if (!decoded.ok) throw new Error('the answer cannot be read');
      return decoded.value;
    },
    // Only a shell with a menu of its own opens files unasked.
    onOpenPath() {},
  };
}
