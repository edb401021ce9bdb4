// Bytes out of what the page carries them in: base 64 of LZMA in its "alone" form, and beside it the WebAssembly that unpacks that.

const PAGE_BYTES = 65536;
/** Of the head: 5 bytes of properties, then the size as a number of 64 bits. */
const SIZE_AT = 5;

function bytes_of(base64) {
  const signs = atob(base64);
  const bytes = new Uint8Array(signs.length);
  for (let i = 0; i < signs.length; ++i) bytes[i] = signs.charCodeAt(i);
  return bytes;
}

/**
 * @param {string} packed
 * @param {string} unpack empty: the bytes are not packed, and stand there in base 64 alone
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
