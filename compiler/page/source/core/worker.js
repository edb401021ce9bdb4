// What the worker of the compiler does: takes it out of its wrapping, and passes on what the page says. `SheerpoleCore` is the factory
// of build/wasm.
import { unpacked } from "./unpacked.js";

let core;

async function start(packed, unpack) {
  const bytes = await unpacked(packed, unpack);
  const length = new DataView(bytes.buffer, bytes.byteOffset).getUint32(0, true);
  const script = URL.createObjectURL(new Blob([bytes.subarray(4, 4 + length)], { type: "text/javascript" }));
  self.importScripts(script);
  URL.revokeObjectURL(script);
  core = await self.SheerpoleCore({ wasmBinary: bytes.subarray(4 + length) });
}

self.onmessage = async ({ data: { id, what, values } }) => {
  try {
    let result;
    if (what === "start") await start(...values);
    else result = core[what](...values);
    self.postMessage({ id, result });
  } catch (fault) {
    self.postMessage({ id, fault: String(fault?.message ?? fault) });
  }
};
