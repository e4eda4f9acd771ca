import { Defect } from '../../core/result.ts';

/**
 * Plain data and bytes over HTTP, so that what arrives is what Electron's IPC would have brought: every double
 * bit for bit, `Uint8Array` as such, members that are undefined left out.
 *
 * Form: length of the JSON as a 32-bit little-endian number, the JSON in UTF-8, then the bytes one after
 * another. In the JSON `{"$bytes": n}` stands for the next n bytes, `{"$number": "-0"}` for a number JSON cannot
 * write; a member of our own whose name begins with `$` gets one more `$`.
 */
export function encodeWire(value: unknown): Uint8Array<ArrayBuffer> {
  const blobs: Uint8Array[] = [];
  const json = new TextEncoder().encode(JSON.stringify(pack(value, blobs, 0)));
  const whole = new Uint8Array(HEAD_BYTES + json.length + blobs.reduce((sum, blob) => sum + blob.length, 0));
  new DataView(whole.buffer).setUint32(0, json.length, true);
  whole.set(json, HEAD_BYTES);
  let at = HEAD_BYTES + json.length;
  for (const blob of blobs) {
    whole.set(blob, at);
    at += blob.length;
  }
  return whole;
}

export type Decoded = { readonly ok: true; readonly value: unknown } | { readonly ok: false };

/** Reads what `encodeWire` wrote. Anything else is `{ok: false}`: the sender is then not one of ours. */
export function decodeWire(whole: Uint8Array): Decoded {
  if (whole.length < HEAD_BYTES) return { ok: false };
  const jsonBytes = new DataView(whole.buffer, whole.byteOffset).getUint32(0, true);
  const from = HEAD_BYTES + jsonBytes;
  if (from > whole.length) return { ok: false };
  try {
    const text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });
    const blobs = new BlobReader(whole.subarray(from));
    const value = unpack(JSON.parse(text.decode(whole.subarray(HEAD_BYTES, from))), blobs, 0);
    return blobs.isUsedUp() ? { ok: true, value } : { ok: false };
  } catch (error) {
    if (error instanceof WireError || error instanceof SyntaxError || error instanceof TypeError) {
      return { ok: false };
    }
    throw error;
  }
}

const HEAD_BYTES = 4;
/** Nothing the contract carries is nested this deep; without a limit a hostile sender picks our stack depth. */
const MOST_DEPTH = 64;

class WireError extends Error {
  override readonly name = 'WireError';
}

type Json = null | boolean | number | string | readonly Json[] | { readonly [name: string]: Json };

function pack(value: unknown, blobs: Uint8Array[], depth: number): Json {
  if (value === null || typeof value === 'boolean' || typeof value === 'string') return value;
  if (typeof value === 'number') return packNumber(value);
  if (depth >= MOST_DEPTH) throw new Defect('the wire carries nothing nested so deep');
  if (value instanceof Uint8Array) {
    blobs.push(value);
    return { $bytes: value.length };
  }
  if (Array.isArray(value)) return value.map((item) => pack(item, blobs, depth + 1));
  if (typeof value !== 'object' || !isPlain(value)) throw new Defect('the wire carries plain data only');
  const packed: [string, Json][] = [];
  for (const [name, member] of Object.entries(value)) {
    if (member === undefined) continue;
    if (name === '__proto__') throw new Defect('a member may not be named __proto__');
    packed.push([name.startsWith('$') ? `$${name}` : name, pack(member, blobs, depth + 1)]);
  }
  return Object.fromEntries(packed);
}

function packNumber(value: number): Json {
  return Number.isFinite(value) && !Object.is(value, -0)
    ? value
    : { $number: Object.is(value, -0) ? '-0' : String(value) };
}

function isPlain(value: object): boolean {
  const prototype: unknown = Object.getPrototypeOf(value);
  return prototype === null || prototype === Object.prototype;
}

function unpack(json: unknown, blobs: BlobReader, depth: number): unknown {
  if (typeof json !== 'object' || json === null) return json;
  if (depth >= MOST_DEPTH) throw new WireError('nested too deep');
  if (Array.isArray(json)) return json.map((item) => unpack(item, blobs, depth + 1));
  const members = Object.entries(json);
  const [first] = members;
  if (members.length === 1 && first !== undefined) {
    if (first[0] === '$bytes') return blobs.take(first[1]);
    if (first[0] === '$number') return unpackNumber(first[1]);
  }
  return Object.fromEntries(
    members.map(([name, member]) => [ownName(name), unpack(member, blobs, depth + 1)] as const),
  );
}

/** A name that would reach a prototype, and a marker that is none of ours, are refused. */
function ownName(name: string): string {
  if (name === '__proto__') throw new WireError('a member named __proto__');
  if (!name.startsWith('$')) return name;
  if (!name.startsWith('$$')) throw new WireError('an unknown marker');
  return name.slice(1);
}

function unpackNumber(text: unknown): number {
  if (text !== '-0' && text !== 'NaN' && text !== 'Infinity' && text !== '-Infinity') {
    throw new WireError('an unknown number');
  }
  return Number(text);
}

/** Hands out the bytes behind the JSON, each once and in order, so that a few bytes cannot ask for many. */
class BlobReader {
  readonly #bytes: Uint8Array;
  #at = 0;

  constructor(bytes: Uint8Array) {
    this.#bytes = bytes;
  }

  take(length: unknown): Uint8Array {
    const most = this.#bytes.length - this.#at;
    if (typeof length !== 'number' || !Number.isInteger(length) || length < 0 || length > most) {
      throw new WireError('bytes that are not there');
    }
    this.#at += length;
    return this.#bytes.slice(this.#at - length, this.#at);
  }

  isUsedUp(): boolean {
    return this.#at === this.#bytes.length;
  }
}
