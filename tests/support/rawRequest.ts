import { connect } from 'node:net';

export interface RawAnswer {
  readonly status: number;
  readonly head: string;
  readonly body: Buffer;
}

/**
 * Sends an HTTP request exactly as written, so that a test can send what no well-bred client would (a path
 * with `..` in it, another Host). One request, one connection.
 */
export function rawRequest(
  port: number,
  firstLine: string,
  headers: Readonly<Record<string, string>>,
  body: Uint8Array = new Uint8Array(),
): Promise<RawAnswer> {
  return new Promise((resolve, reject) => {
    const socket = connect(port, '127.0.0.1');
    const chunks: Buffer[] = [];
    const lines = [firstLine, ...Object.entries(headers).map(([name, value]) => `${name}: ${value}`)];
    socket.on('connect', () => {
      socket.write(`${lines.join('\r\n')}\r\nConnection: close\r\n\r\n`);
      socket.write(body);
    });
    socket.on('data', (chunk) => chunks.push(chunk));
    // A server that refuses a body closes before all of it is sent; what it said is what counts.
    socket.on('error', (error) => (chunks.length > 0 ? finish() : reject(error)));
    socket.on('end', finish);
    function finish(): void {
      const whole = Buffer.concat(chunks);
      const border = whole.indexOf('\r\n\r\n');
      const head = whole.subarray(0, border).toString('latin1');
      socket.destroy();
      resolve({ status: Number(head.split(' ', 2)[1]), head, body: whole.subarray(border + 4) });
    }
  });
}
