// Bytes out of what the page carries them in: LZMA in its "alone" form, written by signs of 85, and beside it the WebAssembly that
// unpacks it.

const PAGE_BYTES = 65536;
/** Of the head: 5 bytes of properties, then the size as a number of 64 bits. */
const SIZE_AT = 5;

const FIRST_SIGN = 35; // #
const LEFT_OUT = 60; // <

const DAMAGED = "the compiler in this page is damaged";

/** What each sign stands for. */
const DIGITS = Uint8Array.from({ length: 121 }, (_, code) => code - FIRST_SIGN - (code > LEFT_OUT ? 1 : 0));

/** Five signs are four bytes, the highest first; fewer at the end are one byte less than signs. */
export function bytes_of(text) {
  const whole = text.length - (text.length % 5);
  const bytes = new Uint8Array(Math.floor((text.length * 4) / 5));
  const digit = (at) => (at < text.length ? DIGITS[text.charCodeAt(at)] : 84);
  const group = (at) => (((digit(at) * 85 + digit(at + 1)) * 85 + digit(at + 2)) * 85 + digit(at + 3)) * 85 + digit(at + 4);
  const view = new DataView(bytes.buffer);
  for (let at = 0, to = 0; at < whole; at += 5, to += 4) view.setUint32(to, group(at));
  if (whole < text.length) {
    const last = group(whole);
    for (let i = 0; i < text.length - whole - 1; ++i) bytes[(whole / 5) * 4 + i] = last >>> (24 - 8 * i);
  }
  return bytes;
}

/** The bytes of the page, of which so many as are asked for are taken out of their wrapping. */
export class Unpacked {
  #bytes; // where all of them are in the end
  #until; // unpacks until so many are there
  #there;

  /**
   * @param {string} packed
   * @param {string} unpack empty: the bytes are not packed, and stand there by their signs alone
   */
  static async begun(packed, unpack) {
    const from = bytes_of(packed);
    const begun = new Unpacked();
    if (!unpack) {
      begun.#bytes = () => from;
      begun.#until = () => from.length;
      begun.#there = begun.length = from.length;
      return begun;
    }
    const { exports } = (await WebAssembly.instantiate(bytes_of(unpack))).instance;
    const { memory } = exports;
    const room = Number(new DataView(from.buffer).getBigUint64(SIZE_AT, true));
    const to = exports.__heap_base.value;
    const missing = to + room + from.length - memory.buffer.byteLength;
    if (missing > 0) memory.grow(Math.ceil(missing / PAGE_BYTES));
    new Uint8Array(memory.buffer).set(from, to + room);
    if (!exports.unpack_begin(to, room, to + room, from.length)) throw new Error(DAMAGED);
    begun.#bytes = () => new Uint8Array(memory.buffer, to, room);
    begun.#until = exports.unpack_until;
    begun.#there = 0;
    begun.length = room;
    return begun;
  }

  /** The bytes from `begin` to before `end`, as their own. */
  bytes(begin, end) {
    if (end > this.length) throw new Error(DAMAGED);
    if (end > this.#there) {
      this.#there = this.#until(end);
      if (this.#there < end) throw new Error(DAMAGED);
    }
    return this.#bytes().slice(begin, end);
  }
}
