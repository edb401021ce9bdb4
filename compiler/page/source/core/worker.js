// What the worker of the compiler does: takes it out of its wrapping, and passes on what the page says. `SheerpoleCore` is the factory
// of build/wasm.
import { unpacked } from "./unpacked.js";

let core;
let licences = "";

/** What stands one behind the other, each with its length before it. */
function parts_of(bytes) {
  const parts = [];
  for (let at = 0; at < bytes.length; ) {
    const length = new DataView(bytes.buffer, bytes.byteOffset + at).getUint32(0, true);
    parts.push(bytes.subarray(at + 4, at + 4 + length));
    at += 4 + length;
  }
  return parts;
}

async function start(packed, unpack) {
  const [script, texts, wasmBinary] = parts_of(await unpacked(packed, unpack));
  const url = URL.createObjectURL(new Blob([script], { type: "text/javascript" }));
  self.importScripts(url);
  URL.revokeObjectURL(url);
  core = await self.SheerpoleCore({ wasmBinary });
  licences = new TextDecoder().decode(texts);
}

self.onmessage = async ({ data: { id, what, values } }) => {
  try {
    let result;
    if (what === "start") await start(...values);
    else if (what === "licences") result = licences;
    else result = core[what](...values);
    self.postMessage({ id, result });
  } catch (fault) {
    self.postMessage({ id, fault: String(fault?.message ?? fault) });
  }
};
