// The compiler, as the page sees it: texts put by name, and one question at a time answered in JSON (docs/service, version 1).
// It lives in a worker, so that a finger is never waited for.

/**
 * @typedef {object} Compiler
 * @property {(name: string, bytes: Uint8Array) => Promise<void>} put a text by its name
 * @property {(name: string) => Promise<void>} drop
 * @property {() => Promise<string>} licences those of what is compiled into it
 * @property {(request: object) => Promise<any>} ask a request of version 1; the `answer` of what comes back
 */

/** What the service refused to answer: a fault of the page, or something that this compiler does not know. */
export class NotAnswered extends Error {}

/** Unwraps what comes back. */
function answer_of(request, answered) {
  if (answered.answers === "error") throw new NotAnswered(`${request.ask}: ${answered.message}`);
  return "answer" in answered ? answered.answer : answered;
}

/** @param {(what: string, ...values: any[]) => Promise<any>} call */
function speaking(bare_call) {
  let pending = 0;
  // Told to whoever waits for the page, a reader of screens or a test.
  const call = async (...values) => {
    document.body.dataset.busy = String(++pending);
    try {
      return await bare_call(...values);
    } finally {
      if (--pending === 0) delete document.body.dataset.busy;
    }
  };
  return {
    put: (name, bytes) => call("put", name, bytes),
    drop: (name) => call("drop", name),
    licences: () => call("licences"),
    async ask(request) {
      const whole = { version: 1, ...request };
      return answer_of(whole, JSON.parse(await call("ask", JSON.stringify(whole))));
    },
  };
}

/** The core that is inlined in the page, in a worker made of what stands beside it. */
async function in_worker(document) {
  const text = (id) => document.getElementById(id)?.textContent.trim() ?? "";
  const worker = new Worker(URL.createObjectURL(new Blob([text("core-worker")], { type: "text/javascript" })));
  const waiting = new Map();
  let count = 0;
  worker.onmessage = ({ data }) => {
    const { done, failed } = waiting.get(data.id);
    waiting.delete(data.id);
    "fault" in data ? failed(new Error(data.fault)) : done(data.result);
  };
  worker.onerror = (event) => waiting.forEach(({ failed }) => failed(new Error(event.message)));
  const call = (what, ...values) =>
    new Promise((done, failed) => {
      waiting.set(++count, { done, failed });
      worker.postMessage({ id: count, what, values });
    });
  await call("start", text("core-packed"), text("core-unpack"));
  return call;
}

async function bare_compiler(document, window) {
  if (document.getElementById("core-packed")) return in_worker(document);
  const { sheerpole_bridge } = window;
  if (!sheerpole_bridge) throw new Error("this page was built without a compiler");
  const base64 = (bytes) => btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(""));
  return async (what, name, bytes) => what === "licences" ? "" : sheerpole_bridge(what, name, bytes ? base64(bytes) : "");
}

/**
 * Starts the compiler: the one that is inlined, else the one that a test has put beside the page. What is asked before it has
 * started is answered then.
 * @returns {Compiler & {started: Promise<any>}} started: fails when it does not
 */
export function start_compiler(document, window) {
  const started = bare_compiler(document, window);
  started.catch(() => {}); // told to whoever asks
  return { ...speaking(async (...values) => (await started)(...values)), started };
}
