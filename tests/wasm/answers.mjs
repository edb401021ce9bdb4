// Answers to requests of every kind, against those of `sheerpole editor`.

import fs from "node:fs";
import path from "node:path";

const AT_PLACE = ["complete", "hover", "definition", "references"];
const OF_FILE = ["format", "symbols", "fold", "inlay", "tokens"];
const OF_BOAT = ["findings", "actions", "numbers", "stays", "papers"];
const EVERY = 397; // bytes between two places that are asked about
const BACK_ENDS = ["bench-card", "cut-list", "rig-drawing", "tune-sheet"];

function* requests(boat, bytes) {
  for (const ask of [...OF_BOAT, ...OF_FILE]) yield { ask, boat };
  yield { ask: "papers", boat, only: BACK_ENDS, paper: "letter" };
  yield { ask: "papers", boat, only: ["no-such-back-end"] };
  yield { ask: "set", boat, settings: ["no-such-name=1 mm"] };
  for (let byte = 0; byte < bytes; byte += EVERY) {
    for (const ask of AT_PLACE) yield { ask, boat, at: { byte } };
    yield { ask: "rename", boat, at: { byte }, new_name: "another-name" };
    yield { ask: "actions", boat, range: { begin: { byte }, end: { byte: byte + EVERY } } };
  }
}

/** Trials of the first values that have a name. */
function trials(boat, numbers) {
  return numbers
    .filter((each) => each.property === "" && each.written)
    .slice(0, 3)
    .map((each) => ({ ask: "set", boat, settings: [`${each.of}=${each.written.split(" drawn")[0].split(" mirrored")[0]}`] }));
}

export async function same_answers({ core, native, project, none }) {
  const folder = path.join(project, "examples");
  core.clear();
  core.put_folder(folder, folder + path.sep);
  let count = 0;
  const compare = async (request, faults) => {
    count += 1;
    const ours = core.ask(request);
    const theirs = await native.ask(request);
    if (JSON.stringify(ours) !== JSON.stringify(theirs)) faults.push(`${JSON.stringify(request)}: the answers differ`);
    return ours;
  };
  for (const file of fs.readdirSync(folder).sort()) {
    if (!file.endsWith(".rig")) continue;
    const faults = [];
    const boat = path.join(folder, file);
    for (const request of requests(boat, fs.statSync(boat).size)) await compare(request, faults);
    const numbers = (await compare({ ask: "numbers", boat }, faults)).answer;
    for (const request of trials(boat, numbers)) await compare(request, faults);
    none(`answers of ${file}`, faults);
  }
  const faults = [];
  const first = { ask: "begin", rig: "yawl", line: "rope", measured: "cord", name: "Second Wind", unit: "inches" };
  for (const request of [
    {},
    { ask: "weather", boat: "a.rig" },
    { ask: "findings", boat: path.join(folder, "none.rig") },
    { version: 2 },
    { ask: "starts" },
    first,
    { ...first, numbers: { beam: "3" } },
    { ...first, numbers: { beam: "0.001 mm" } },
    { ...first, measured: "tape", numbers: { beam: "4e4 mm" } },
    { ...first, rig: "raft" },
    { ...first, name: "a\u0007b" },
  ])
    await compare(request, faults);
  none("answers without a boat", faults);
  console.log(`${count} requests`);
  core.clear();
}
