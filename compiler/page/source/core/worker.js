// Stands behind the core in its worker: passes on what the page says. `SheerpoleCore` is the factory of build/wasm.
let core;

self.onmessage = async ({ data: { id, what, values } }) => {
  try {
    let result;
    if (what === "start") core = await self.SheerpoleCore(values[0] ? { wasmBinary: values[0] } : {});
    else result = core[what](...values);
    self.postMessage({ id, result });
  } catch (fault) {
    self.postMessage({ id, fault: String(fault?.message ?? fault) });
  }
};
