// Bytes out of what the page carries them in: LZMA in its "alone" form, written by signs of 85, and beside it the WebAssembly that
// unpacks it.

const PAGE_BYTES = 65536;
/** Of the head: 5 bytes of properties, then the size as a number of 64 bits. */
const SIZE_AT = 5;

const FIRST_SIGN = 35; // #
const LEFT_OUT = 60; // <

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

/**
 * @param {string} packed
 * @param {string} unpack empty: the bytes are not packed, and stand there by their signs alone
 */
export async function unpacked(packed, unpack) {
  const from = bytes_of(packed);
  if (!unpack) return from;
  const { exports } = (await WebAssembly.instantiate(bytes_of(unpack))).instance;
  const { memory } = exports;
  const room = Number(new DataView(from.buffer).getBigUint64(SIZE_AT, true));
  const to = exports.__heap_base.value;
  const missing = to + room + from.length - memory.buffer.byteLength;
  if (missing > 0) memory.grow(Math.ceil(missing / PAGE_BYTES));
  new Uint8Array(memory.buffer).set(from, to + room);
  if (exports.unpack(to, room, to + room, from.length) !== room) throw new Error("the compiler in this page is damaged");
  return new Uint8Array(memory.buffer, to, room).slice();
}
