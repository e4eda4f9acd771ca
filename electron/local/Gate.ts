import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';

/** What the gate looks at in a request. */
export interface Caller {
  readonly method: string;
  readonly host: string | undefined;
  readonly origin: string | undefined;
  readonly fetchSite: string | undefined;
  readonly cookie: string | undefined;
}

/**
 * Who may talk to the loopback server: only the window that was given the first address. Other pages in the
 * same browser, other accounts on the machine and names that resolve to it are kept out. The key in the first
 * address works once and is exchanged for a cookie that no script can read and no other site can send.
 * A class because the key is spent.
 */
export class Gate {
  /** The one name this server answers to; another one is somebody's name pointed at this machine. */
  readonly #host: string;
  readonly #cookieName: string;
  readonly #pass = randomBytes(32).toString('base64url');
  #key: string | null = randomBytes(32).toString('base64url');

  constructor(port: number) {
    this.#host = `127.0.0.1:${port}`;
    // Cookies are shared by all ports of a machine: two running Platpaces must not overwrite each other's.
    this.#cookieName = `platpace-${port}`;
  }

  get origin(): string {
    return `http://${this.#host}`;
  }

  /** The address to open first; null once it has been used. */
  get firstAddress(): string | null {
    return this.#key === null ? null : `${this.origin}/?key=${this.#key}`;
  }

  /** Whether the request comes from our page or from a person's own opening of an address, cookie apart. */
  isOurSite(caller: Caller): boolean {
    if (caller.host !== this.#host) return false;
    const isReading = caller.method === 'GET' || caller.method === 'HEAD';
    if (caller.origin === undefined ? !isReading : caller.origin !== this.origin) return false;
    return (
      caller.fetchSite === undefined || caller.fetchSite === 'same-origin' || caller.fetchSite === 'none'
    );
  }

  hasPass(caller: Caller): boolean {
    const pairs = (caller.cookie ?? '').split(';').map((pair) => pair.trim().split('='));
    const given = pairs.find(([name]) => name === this.#cookieName)?.[1];
    return given !== undefined && isSameSecret(given, this.#pass);
  }

  /** Spends the key. @returns the `set-cookie` line, or null when the key is wrong or already spent */
  enter(key: string): string | null {
    if (this.#key === null || !isSameSecret(key, this.#key)) return null;
    this.#key = null;
    return `${this.#cookieName}=${this.#pass}; Path=/; HttpOnly; SameSite=Strict`;
  }
}

/** In a time that tells nothing of how much was right; hashed first because the lengths may differ. */
function isSameSecret(given: string, secret: string): boolean {
  const digest = (text: string) => createHash('sha256').update(text).digest();
  return timingSafeEqual(digest(given), digest(secret));
}
