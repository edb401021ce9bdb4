// node tests/browser/page/run.mjs SHEERPOLE [--core FOLDER] [SUBJECT...]: the offline page in Chromium, of a phone's and a desktop's
// size. The compiler is the native SHEERPOLE beside the page; with --core the one of WebAssembly inside it. The last line is
// "N passed, N failed".

import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { Report } from "../report.mjs";
import { launch, open_page } from "./open_page.mjs";

const SUBJECTS = ["begins", "enters", "hoists", "tries", "turns", "tryables", "texts", "keeps", "inside", "boats", "reads", "given", "watched", "words_table", "size"];

const here = path.dirname(fileURLToPath(import.meta.url));
const project = path.resolve(here, "../../..");
const [named, ...rest] = process.argv.slice(2);
const program = named && path.resolve(named);
const core = rest[0] === "--core" ? rest.splice(0, 2)[1] : "";
const unknown = rest.filter((name) => !SUBJECTS.includes(name));
if (program === undefined || unknown.length > 0) {
  console.error("usage: node tests/browser/page/run.mjs SHEERPOLE [--core FOLDER] [SUBJECT...]");
  process.exit(2);
}

const report = new Report();
const built = mkdtempSync(path.join(os.tmpdir(), "sheerpole-built-"));
const build = (name, ...more) => {
  const into = path.join(built, name);
  execFileSync(
    process.execPath,
    [path.join(project, "compiler/page/build.mjs"), "--into", into, ...(core ? ["--core", path.resolve(core)] : []), ...more],
    { stdio: "pipe" },
  );
  return into;
};

let browser;
try {
  const file = build("sheerpole.html");
  const again = build("again.html");
  report.none("two builds are the same bytes", readFileSync(file).equals(readFileSync(again)) ? [] : ["they are not"]);
  const policy = /Content-Security-Policy" content="([^"]*)"/.exec(readFileSync(file, "utf8"))[1];
  report.none(
    "the policy lets nothing in from elsewhere",
    /default-src 'none'/.test(policy) && !/https?:|\*|connect-src/.test(policy) ? [] : [policy],
  );

  const begun = path.join(built, "first.rig");
  const numbers = ["--mast-height", "12.5 m", "--beam", "3.4 m", "--base", "3.6 m"];
  execFileSync(
    program,
    ["begin", begun, "--rig", "fractional-sloop", "--line", "rope", "--measured-by", "cord", "--boat", "First", ...numbers],
    { stdio: "pipe" },
  );

  browser = await launch();
  const context = {
    report,
    program,
    project,
    folder: path.resolve(here, ".."),
    build,
    first_rig: readFileSync(begun, "utf8"),
    built,
    planted: true,
    pseudo: rest.length === 0 || rest.includes("words_table") ? build("pseudo.html", "--words", "pseudo") : "",
    page_file: file,
    inside: core !== "",
    open: (how) => open_page(browser, { file, program, docs: path.join(project, "docs/begin"), inside: core !== "", ...how }),
  };
  for (const subject of rest.length ? rest : SUBJECTS) {
    const from = Date.now();
    try {
      await (await import(`./${subject}.mjs`)).default(context);
    } catch (fault) {
      report.none(subject, [fault.stack ?? String(fault)]);
    }
    console.log(`${subject}: ${((Date.now() - from) / 1000).toFixed(1)} s`);
  }
} catch (fault) {
  report.none("building the page", [fault.stack ?? String(fault), String(fault.stderr ?? "")]);
} finally {
  await browser?.close();
  rmSync(built, { recursive: true });
}
console.log(`${report.passed} passed, ${report.failed} failed`);
// A subject that failed half way leaves a compiler behind that nobody asks any more.
process.exit(report.failed === 0 && report.passed > 0 ? 0 : 1);
