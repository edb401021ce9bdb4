// What a page has of the compiler: SheerpoleCore() of the built file gives a promise of an object with these.
//   put(name, bytes)   a text, as bytes or as a string; one of the same name is replaced
//   drop(name)         takes it away
//   ask(request)       a request of docs/service as JSON text; gives the answer as JSON text
// A fault of the compiler, or memory that runs out, is an Error whose message says so; what is left is then of no use, and the
// page makes another SheerpoleCore().

{
  const encoder = new TextEncoder();
  const decoder = new TextDecoder();
  let said = "";
  Module["print"] = () => {};
  Module["printErr"] = (line) => {
    said += line + "\n";
  };

  // From the module that a page promises as `wasmModule`, compiled as it came; else straight from the bytes inside this file: a page
  // that forbids every request forbids that of a data address too.
  Module["instantiateWasm"] = (imports, receive) => {
    const module = Module["wasmModule"] || WebAssembly.compile(tryParseAsDataURI(wasmBinaryFile));
    Promise.resolve(module)
      .then((it) => WebAssembly.instantiate(it, imports))
      .then(
        (instance) => receive(instance),
        (fault) => readyPromiseReject(fault),
      );
    return {};
  };

  const bytesOf = (text) => (typeof text === "string" ? encoder.encode(text) : text);

  /** Hands the bytes over one behind the other and calls; what the compiler says of a fault of its own becomes the error's words. */
  const call = (work, ...parts) => {
    said = "";
    try {
      let at = Module["_sheerpole_room"](parts.reduce((sum, part) => sum + part.length, 0));
      for (const part of parts) {
        HEAPU8.set(part, at);
        at += part.length;
      }
      return work();
    } catch (error) {
      const words = error instanceof Error ? error.message : "a fault of the compiler, or memory has run out";
      throw new Error(said.trim() || words, { cause: error });
    }
  };

  Module["put"] = (name, text) => {
    const path = bytesOf(name);
    call(() => Module["_sheerpole_put"](path.length), path, bytesOf(text));
  };
  Module["drop"] = (name) => call(() => Module["_sheerpole_drop"](), bytesOf(name));
  Module["ask"] = (request) =>
    call(() => {
      const length = Module["_sheerpole_ask"]();
      const from = Module["_sheerpole_answer"]();
      return decoder.decode(HEAPU8.subarray(from, from + length));
    }, bytesOf(request));
}
