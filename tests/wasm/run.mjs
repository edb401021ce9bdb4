// node tests/wasm/run.mjs SHEERPOLE CORE FOLDER: whether the WebAssembly CORE and the native program SHEERPOLE say and write the
// same, byte for byte. FOLDER is emptied and holds the native papers afterwards. The last line is "N passed, N failed".

import fs from "node:fs";
import path from "node:path";
import { same_answers } from "./answers.mjs";
import { Core } from "./core.mjs";
import { Native } from "./native.mjs";
import { same_papers } from "./papers.mjs";
import { same_starts } from "./starts.mjs";
import { stays_whole } from "./stays_whole.mjs";

const [program, core_file, into] = process.argv.slice(2);
if (into === undefined) {
  console.error("usage: node tests/wasm/run.mjs SHEERPOLE CORE FOLDER");
  process.exit(2);
}

let passed = 0;
let failed = 0;

/** One check; its faults are shown, the first of them. */
function none(what, faults) {
  if (faults.length === 0) {
    passed += 1;
    return;
  }
  failed += 1;
  console.log(`FAILED ${what}: ${faults.length} of them`);
  for (const fault of faults.slice(0, 5)) console.log(`  ${fault}`);
}

const project = path.resolve(import.meta.dirname ?? path.dirname(new URL(import.meta.url).pathname), "../..");
fs.rmSync(into, { recursive: true, force: true });
fs.mkdirSync(into, { recursive: true });
const native = new Native(path.resolve(program));
const context = { core: await Core.load(path.resolve(core_file)), core_file: path.resolve(core_file), native, project, into: path.resolve(into), none };
try {
  for (const subject of [same_starts, same_papers, same_answers, stays_whole]) {
    const from = Date.now();
    try {
      await subject(context);
    } catch (fault) {
      none(subject.name, [fault.stack ?? String(fault)]);
    }
    console.log(`${subject.name}: ${((Date.now() - from) / 1000).toFixed(1)} s`);
  }
} finally {
  native.close();
}
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 && passed > 0 ? 0 : 1;
