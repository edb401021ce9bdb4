// node tests/browser/run.mjs SHEERPOLE FOLDER [SUBJECT...]: what the papers of the boats look like to the programs that read
// them. FOLDER is emptied and holds the papers afterwards. The last line is "N passed, N failed".

import path from "node:path";
import { Browser } from "./browser.mjs";
import { build_all, missing_files, Sheerpole } from "./papers.mjs";
import { Report } from "./report.mjs";

/** Those that need the browser run one after the other, the others beside them. */
const in_browser = ["accessibility", "hostile_text", "drafts", "bench_cards", "report_page", "phone"];
const without_browser = ["markup", "csv_files", "calendar", "words"];

const [program, into, ...asked] = process.argv.slice(2);
const unknown = asked.filter((name) => ![...in_browser, ...without_browser].includes(name));
if (into === undefined || unknown.length > 0) {
  console.error("usage: node tests/browser/run.mjs SHEERPOLE FOLDER [SUBJECT...]");
  process.exit(2);
}

const report = new Report();
const sheerpole = new Sheerpole(program);
const browser = new Browser();
try {
  const boats = await build_all(sheerpole, path.resolve(into));
  for (const boat of boats) report.none(`files of ${boat.name}`, missing_files(boat));
  const context = { report, boats, sheerpole, browser, into: path.resolve(into) };
  const look = async (subject) => {
    const from = Date.now();
    try {
      await (await import(`./${subject}.mjs`)).default(context);
    } catch (fault) {
      report.none(subject, [fault.stack ?? String(fault)]);
    }
    console.log(`${subject}: ${((Date.now() - from) / 1000).toFixed(1)} s`);
  };
  const one_by_one = async (names) => {
    for (const name of names) if (asked.length === 0 || asked.includes(name)) await look(name);
  };
  await Promise.all([one_by_one(in_browser), one_by_one(without_browser)]);
} catch (fault) {
  report.none("building the papers", [fault.stack ?? String(fault), fault.stderr ?? ""]);
} finally {
  await browser.close();
}
console.log(`${report.passed} passed, ${report.failed} failed`);
process.exitCode = report.failed === 0 && report.passed > 0 ? 0 : 1;
