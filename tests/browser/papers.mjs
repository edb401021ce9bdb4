// What `sheerpole build` makes of the boats that are looked at, each in a folder of its own.

import { execFile } from "node:child_process";
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import { promisify } from "node:util";

const run = promisify(execFile);

export const here = import.meta.dirname ?? path.dirname(new URL(import.meta.url).pathname);
export const project = path.resolve(here, "..", "..");

/** Files that every boat must have; a back end that is gone is not passed over. */
export const required = [
  "bench-cards.html",
  "cut-list.json",
  "dry-fit-cards.html",
  "order-list.html",
  "sign-off.html",
  "survey-report.html",
];

/** Boats whose every page is looked at by all means, the slow ones too. */
export const looked_at_closely = ["grisolde", "oddnys-wager", "pellimoor", "smidgeon", "smallest", "nasty"];

const examples = [
  "grisolde", "oddnys-wager", "pellimoor", "smidgeon", "smallest", "sallow", "fieldfare", "tansyholm", "skirlpool",
];
const kinds_of_rig = ["bowsprit", "hydraulic", "junk", "runners", "tie-rod"];

/** No one sees them; XML 1.0, section 2.2, and HTML forbid some of them. */
const controls = "\u0001\u000b\u000c\u001f\u007f\u0085\u00ad\u200b\u2028\u202e\ufdd0\ufeff\uffff";

export class Boat {
  constructor(name, rig, folder) {
    this.name = name;
    /** Path of the rig file. */
    this.rig = rig;
    /** Where its papers are. */
    this.folder = folder;
  }

  files(...endings) {
    return readdirSync(this.folder)
      .filter((name) => endings.some((ending) => name.endsWith(ending)))
      .sort()
      .map((name) => path.join(this.folder, name));
  }

  read(name) {
    return readFileSync(path.join(this.folder, name), "utf8");
  }

  json(name) {
    return JSON.parse(this.read(name));
  }

  /** Texts in quotes of the rig file itself, as they are meant. */
  texts() {
    return texts_of(readFileSync(this.rig, "utf8"));
  }
}

/** Texts in quotes of a rig file; \" is a quote and \\ is a backslash (docs/findings/stray-backslash.md). */
export function texts_of(rig) {
  const texts = [];
  for (const line of rig.split("\n")) {
    const found = line.matchAll(/"((?:[^"\\]|\\.)*)"|#.*/g);
    for (const [, text] of found)
      if (text !== undefined) texts.push(text.replace(/\\(["\\])/g, "$1"));
  }
  return texts;
}

export class Sheerpole {
  constructor(program) {
    this.program = path.resolve(program);
  }

  /** Standard output; throws with what was said when the exit code is not 0. */
  async say(...words) {
    const { stdout } = await run(this.program, words, { cwd: project, maxBuffer: 1 << 28 });
    return stdout;
  }

  async build(name, rig, folder, ...words) {
    rmSync(folder, { recursive: true, force: true });
    await this.say("build", rig, "--into", folder, ...words);
    return new Boat(name, rig, folder);
  }
}

/** The results of make(item), in the order of the items. */
export async function two_at_a_time(items, make) {
  const results = new Array(items.length);
  let next = 0;
  const worker = async () => {
    while (next < items.length) {
      const mine = next++;
      results[mine] = await make(items[mine]);
    }
  };
  await Promise.all([worker(), worker()]);
  return results;
}

/** All boats that are looked at. @param {string} into folder of the test, emptied first */
export async function build_all(sheerpole, into) {
  rmSync(into, { recursive: true, force: true });
  mkdirSync(into, { recursive: true });
  const nasty = path.join(into, "nasty.rig");
  const rig = readFileSync(path.join(here, "nasty.rig"), "utf8").replaceAll("%CONTROL%", controls);
  writeFileSync(nasty, rig);
  const before = path.join(into, "nasty-before.rig");
  writeFileSync(before, rig.replace("8_220 mm", "8_200 mm").replace("8.400) m", "8.300) m").replace("8.700) m", "8.600) m"));
  const wanted = [
    ...examples.map((name) => [name, path.join(project, "examples", `${name}.rig`)]),
    ...kinds_of_rig.map((name) => [name, path.join(project, "tests/golden/rigs", `${name}.rig`)]),
    ["nasty", nasty, "--pdf", "--since", before],
    ["since", path.join(project, "examples/pellimoor-turnbuckles.rig"), "--since", path.join(project, "examples/pellimoor.rig")],
    ["letter", path.join(project, "examples/pellimoor.rig"), "--paper", "letter"],
  ];
  return two_at_a_time(wanted, ([name, rig, ...words]) => sheerpole.build(name, rig, path.join(into, name), ...words));
}

export function missing_files(boat) {
  const names = new Set(readdirSync(boat.folder));
  const compared = ["nasty", "since"].includes(boat.name) ? ["change-sheet.html", "change-sheet.svg"] : [];
  return [...required, ...compared].filter((name) => !names.has(name)).map((name) => `${boat.name}: no ${name}`);
}

/** The page without its Content-Security-Policy, which would keep a planted fault from doing anything. */
export function without_policy(html) {
  return html.replace(/<meta http-equiv="Content-Security-Policy"[^>]*>\n?/, "");
}
