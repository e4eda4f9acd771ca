import type { ServerResponse } from 'node:http';

/** A reload closes one stream and opens the next; a slow machine takes a few seconds over it. */
const GONE_AFTER_MS = 8_000;
/** So that a connection cut without a word is noticed. */
const BEAT_MS = 15_000;

/**
 * The pages that are open, each by a stream it holds. Timers in a hidden page are slowed by the browser and
 * say nothing; the end of its connection does. A class because it owns timers.
 */
export class LivePages {
  readonly #streams = new Set<ServerResponse>();
  readonly #onGone: () => void;
  readonly #goneAfterMs: number;
  #goneTimer: ReturnType<typeof setTimeout> | undefined;
  #hadAny = false;

  /** @param onGone called when there was a page and none has been there for a while */
  constructor(onGone: () => void, goneAfterMs = GONE_AFTER_MS) {
    this.#onGone = onGone;
    this.#goneAfterMs = goneAfterMs;
  }

  get hadAny(): boolean {
    return this.#hadAny;
  }

  hold(response: ServerResponse): void {
    this.#hadAny = true;
    clearTimeout(this.#goneTimer);
    this.#streams.add(response);
    response.writeHead(200, { 'content-type': 'text/event-stream' });
    response.write(':\n\n');
    const beat = setInterval(() => response.write(':\n\n'), BEAT_MS);
    response.on('close', () => {
      clearInterval(beat);
      this.#streams.delete(response);
      if (this.#streams.size === 0) this.#goneTimer = setTimeout(this.#onGone, this.#goneAfterMs);
    });
  }

  close(): void {
    clearTimeout(this.#goneTimer);
    for (const stream of this.#streams) {
      stream.removeAllListeners('close');
      stream.destroy();
    }
  }
}
