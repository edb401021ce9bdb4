// Every paper of the examples, of the rigs of tests/golden and of the first files, against the bytes that `sheerpole build` writes.

import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { first_files } from "./starts.mjs";

/** `[{name, text}]` of the back ends that `build` runs when none is named. */
function core_papers(core, boat, usual) {
  const answered = core.ask({ ask: "papers", boat, only: usual });
  if (answered.answers === "error") throw new Error(answered.message);
  return (answered.answer ?? []).flatMap((each) => {
    if (each.fault !== "") throw new Error(`${each.back_end}: ${each.fault}`);
    return each.files;
  });
}

/** What differs between a folder of papers and those of the core. */
function differences(folder, papers) {
  const faults = [];
  const written = new Set(fs.existsSync(folder) ? fs.readdirSync(folder, { recursive: true }).filter((name) => fs.statSync(path.join(folder, name)).isFile()) : []);
  for (const paper of papers) {
    if (!written.delete(paper.name)) {
      faults.push(`${paper.name}: the native program does not write it`);
      continue;
    }
    const native = fs.readFileSync(path.join(folder, paper.name));
    const ours = Buffer.from(paper.text);
    if (native.equals(ours)) continue;
    let at = 0;
    while (native[at] === ours[at]) at += 1;
    const near = (bytes) => JSON.stringify(bytes.subarray(Math.max(0, at - 40), at + 40).toString());
    faults.push(`${paper.name}: at byte ${at} native ${near(native)}, WebAssembly ${near(ours)}`);
  }
  return [...faults, ...[...written].map((name) => `${name}: the WebAssembly does not write it`)];
}

/** `build` makes these when they are named alone. */
const ASKED_FOR_BY_NAME = ["echo", "kit-list", "tune-sheet", "shop-order"];

function usual_back_ends(core, project) {
  core.put("smallest.rig", fs.readFileSync(path.join(project, "examples/smallest.rig")));
  const made = core.ask({ ask: "papers", boat: "smallest.rig" }).answer;
  return made.map((each) => each.back_end).filter((name) => !ASKED_FOR_BY_NAME.includes(name));
}

export async function same_papers({ core, native, project, into, none }) {
  const usual = usual_back_ends(core, project);
  const boats = [];
  for (const folder of ["examples", "tests/golden/rigs"])
    for (const file of fs.readdirSync(path.join(project, folder)).sort())
      if (file.endsWith(".rig")) boats.push({ folder: path.join(project, folder), file, called: `${folder}/${file}` });
  const first = path.join(into, "first");
  fs.mkdirSync(first);
  for (const { rig, line, measured, unit, text } of first_files(core)) {
    const file = `${rig}-${line}-${measured}-${unit}.rig`;
    fs.writeFileSync(path.join(first, file), text);
    boats.push({ folder: first, file, called: file });
  }

  let files = 0;
  let built = 0;
  const build = async (boat) => {
    boat.papers = path.join(into, boat.called.replaceAll("/", "-").replace(/\.rig$/, ""));
    await native.output(["build", boat.file, "--into", boat.papers], boat.folder);
  };
  const next = async () => {
    while (built < boats.length) await build(boats[built++]);
  };
  await Promise.all(Array.from({ length: os.availableParallelism?.() ?? 2 }, next));

  let in_core = 0;
  for (const boat of boats) {
    core.clear();
    core.put_folder(boat.folder);
    const from = Date.now();
    const papers = core_papers(core, boat.file, usual);
    in_core += Date.now() - from;
    files += papers.length;
    none(`papers of ${boat.called}`, differences(boat.papers, papers));
    if (papers.length === 0) none(`papers of ${boat.called}`, ["there are none"]);
  }
  core.clear();
  console.log(`${boats.length} boats, ${files} papers; ${in_core} ms in the WebAssembly`);
}
