// Every boat of the examples, with her libraries, on every view: nothing fails, each piece has its row, and the page says of each
// what the compiler says.

import { execFileSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { too_wide } from "./reads.mjs";
import { go, open_files, two_stays } from "./tools.mjs";

const STATES = { todo: "not measured", drawn: "not measured", not: "not yet", once: "measured once", differ: "ways differ", ready: "ready", record: "on record" };

export default async function boats({ report, open, program, project }) {
  const examples = path.join(project, "examples");
  const below = (folder) =>
    readdirSync(path.join(examples, folder))
      .filter((name) => name.endsWith(".rig"))
      .map((name) => path.join(folder, name));
  const libraries = [...below("parts"), ...below("stock")];
  const tools = await open({ size: "phone" });
  const { page } = tools;
  for (const boat of below("")) {
    const text = readFileSync(path.join(examples, boat), "utf8");
    // A boat that is made of another one takes that with her.
    const others = below("").filter((name) => name !== boat && text.includes(`"${name}"`));
    const files = Object.fromEntries([boat, ...others, ...libraries].map((name) => [path.basename(name), readFileSync(path.join(examples, name))]));
    await open_files(tools, files);
    await go(tools, "numbers");
    const into = mkdtempSync(path.join(os.tmpdir(), "sheerpole-boat-"));
    execFileSync(program, ["build", path.join(examples, boat), "--only", "cut-list", "--into", into], { stdio: "pipe" });
    const said = JSON.parse(readFileSync(path.join(into, "cut-list.json"), "utf8"));
    rmSync(into, { recursive: true });
    const rows = await page.$$eval(".row", (all) => all.map((each) => [each.dataset.piece, [...each.querySelector(".g").classList].find((name) => name.length > 1)]));
    const right = said.pieces.map((piece) => `${piece.name}: ${piece.state}`);
    const shown = rows.map(([name, state]) => `${name}: ${STATES[state]}`);
    report.none(`states of ${boat}`, JSON.stringify(right) === JSON.stringify(shown) && shown.length > 0 ? [] : [...shown, "instead of", ...right]);
    for (const view of ["rig", "papers", "text", "files", ...(rows.length ? [`numbers/${rows[0][0]}`, `numbers/${rows.at(-1)[0]}`] : [])]) {
      await go(tools, view);
      report.none(`${boat} ${view}`, [...(await too_wide(page)), ...tools.complaints.splice(0)]);
    }
  }
  // A stay without a title is called by its name, on each side.
  const untitled = two_stays.replace(/^(stay [\w-]+) "[^"]*"/gm, "$1");
  await open_files(tools, { "untitled.rig": untitled });
  await go(tools, "numbers");
  const called = await page.$$eval(".row", (all) => all.map((each) => [each.dataset.piece, each.textContent]));
  const nameless = called.filter(([piece, shown]) => !shown.includes(piece.replace(/\.(port|starboard)$/, "")));
  report.none("a stay without a title has its name", untitled === two_stays || called.length === 0 ? ["nothing was looked at"] : nameless);
  await tools.close();
}
