// What the worker of the compiler does: takes it out of its wrapping, and passes on what the page says. `SheerpoleCore` is the factory
// of build/wasm.
import { Unpacked } from "./unpacked.js";

/** So much is unpacked before the browser is given it to compile. */
const PIECE = 1 << 18;

/** The texts of the licences come last, and nobody waits for them: so long after the start they are taken out as well. */
const LICENCES_AFTER_MS = 5000;

let core;
let licences = () => "";

/** Takes something out the first time that it is asked for, and lets go of what it came from. */
function once(take) {
  let taken;
  return () => {
    if (take) taken = take();
    take = null;
    return taken;
  };
}

/** Where the parts stand that come one behind the other, each with its length before it. */
function* parts_in(unpacked) {
  for (let at = 0; at < unpacked.length; ) {
    const { buffer } = unpacked.bytes(at, at + 4);
    const begin = at + 4;
    at = begin + new DataView(buffer).getUint32(0, true);
    yield { begin, end: at };
  }
}

/** The WebAssembly, compiled while the rest of it is still unpacked. */
async function compiled(unpacked, { begin, end }) {
  let at = begin;
  const pieces = new ReadableStream({
    pull(into) {
      const until = Math.min(at + PIECE, end);
      into.enqueue(unpacked.bytes(at, until));
      at = until;
      if (at === end) into.close();
    },
  });
  try {
    return await WebAssembly.compileStreaming(new Response(pieces, { headers: { "Content-Type": "application/wasm" } }));
  } catch {
    // A browser that cannot do it so compiles it in one; what is damaged is told from here.
    return WebAssembly.compile(unpacked.bytes(begin, end));
  }
}

async function start(packed, unpack) {
  const unpacked = await Unpacked.begun(packed, unpack);
  const parts = parts_in(unpacked);
  const script = parts.next().value;
  const url = URL.createObjectURL(new Blob([unpacked.bytes(script.begin, script.end)], { type: "text/javascript" }));
  self.importScripts(url);
  URL.revokeObjectURL(url);
  core = await self.SheerpoleCore({ wasmModule: compiled(unpacked, parts.next().value) });
  licences = once(() => {
    const { begin, end } = parts.next().value;
    return new TextDecoder().decode(unpacked.bytes(begin, end));
  });
  setTimeout(() => {
    try {
      licences();
    } catch {
      // Who asks for them is told.
    }
  }, LICENCES_AFTER_MS);
}

self.onmessage = async ({ data: { id, what, values } }) => {
  try {
    let result;
    if (what === "start") await start(...values);
    else if (what === "licences") result = licences();
    else result = core[what](...values);
    self.postMessage({ id, result });
  } catch (fault) {
    self.postMessage({ id, fault: String(fault?.message ?? fault) });
  }
};
