// node tests/bench/page.mjs PAGE SHEERPOLE [RUNS]: how long the offline page takes in Chromium. PAGE has its compiler inside.
//   start     from the first thing that is painted to the first number that a stay is cut by, of Pellimoor as `sheerpole page` gives
//             her to the page; median of RUNS (5 unless said)
//   keystroke from a key in the text of Grisolde until the findings are known, and until the screen shows them; median of 200 edits
// Prints what else the machine was doing.

import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, statSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { launch, SIZES } from "../browser/page/open_page.mjs";

const project = path.resolve(path.dirname(fileURLToPath(import.meta.url)), "../..");
const [page_file, program, runs = "5"] = process.argv.slice(2);
if (!page_file || !program) {
  console.error("usage: node tests/bench/page.mjs PAGE SHEERPOLE [RUNS]");
  process.exit(2);
}
const EDITS = 200;

const median = (all) => [...all].sort((a, b) => a - b)[Math.floor(all.length / 2)];
const said = (all) => `median ${median(all).toFixed(0)} ms, worst ${Math.max(...all).toFixed(0)} ms, of ${all.length}`;
const folder = mkdtempSync(path.join(os.tmpdir(), "sheerpole-page-speed-"));
const given = (name) => {
  const file = path.join(folder, `${name}.html`);
  execFileSync(program, ["page", path.join(project, "examples", `${name}.rig`), "--into", file, "--page", page_file], { stdio: "pipe" });
  return file;
};

/** Notes when a number to cut by is shown first, and when findings come back from the worker. */
function watch_it() {
  const noted = (globalThis.noted = { first_cut: 0, found: [], shown: [], from: 0 });
  const look = () => {
    if (!noted.first_cut && /\d/.test(document.querySelector(".row .v")?.innerText ?? "")) noted.first_cut = performance.now();
    if (!noted.first_cut) requestAnimationFrame(look);
  };
  requestAnimationFrame(look);
  const post = Worker.prototype.postMessage;
  const asked = new Set();
  Worker.prototype.postMessage = function (message, ...more) {
    if (typeof message?.values?.[0] === "string" && message.values[0].includes('"ask":"findings"')) asked.add(message.id);
    if (!this.is_watched) {
      this.is_watched = true;
      this.addEventListener("message", ({ data }) => {
        if (!asked.delete(data.id) || !noted.from) return;
        noted.found.push(performance.now() - noted.from);
        const { from } = noted;
        noted.from = 0;
        // Declarations and numbers are asked for behind them, then all is drawn.
        const drawn = new MutationObserver(() => {
          drawn.disconnect();
          requestAnimationFrame(() => noted.shown.push(performance.now() - from));
        });
        drawn.observe(document.getElementById("page"), { subtree: true, childList: true, attributes: true, characterData: true });
      });
    }
    return post.call(this, message, ...more);
  };
  addEventListener("beforeinput", () => (noted.from = performance.now()), { capture: true });
}

console.log(`${page_file}: ${statSync(page_file).size} bytes; load of the machine ${os.loadavg()[0].toFixed(1)}, ${os.cpus().length} processors`);
const browser = await launch();
try {
  const pellimoor = `${pathToFileURL(given("pellimoor")).href}#numbers`;
  const starts = [];
  const firsts = [];
  const paints = [];
  for (let i = 0; i < Number(runs); ++i) {
    const context = await browser.createBrowserContext();
    const page = await context.newPage();
    await page.setViewport(SIZES.phone);
    await page.evaluateOnNewDocument(watch_it);
    await page.goto(pellimoor);
    await page.waitForFunction(() => globalThis.noted.first_cut > 0, { polling: 50, timeout: 120_000 });
    const [cut, paint] = await page.evaluate(() => [noted.first_cut, performance.getEntriesByName("first-contentful-paint")[0]?.startTime ?? 0]);
    starts.push(cut - paint);
    firsts.push(cut);
    paints.push(paint);
    await context.close();
  }
  console.log(`first paint, from the start of loading: ${said(paints)}`);
  console.log(`first paint to first cut: ${said(starts)}`);
  console.log(`first cut, from the start of loading: ${said(firsts)}`);

  const page = await browser.newPage();
  await page.setViewport(SIZES.desktop);
  await page.evaluateOnNewDocument(watch_it);
  await page.goto(`${pathToFileURL(given("grisolde")).href}#text`);
  await page.waitForSelector("html[data-started]", { timeout: 120_000 });
  const settled = () => page.waitForFunction(() => !document.body.dataset.busy, { polling: 10, timeout: 120_000 });
  await settled();
  await page.focus(".cm-content");
  await page.keyboard.down("Control");
  await page.keyboard.press("End");
  await page.keyboard.up("Control");
  await page.keyboard.type("# ");
  await settled();
  await page.evaluate(() => (noted.found.length = noted.shown.length = noted.from = 0));
  for (let i = 0; i < EDITS; ++i) {
    await settled();
    await page.keyboard.type("abcdefghij"[i % 10]);
    await page.waitForFunction((count) => noted.shown.length > count, { polling: 10, timeout: 60_000 }, i);
  }
  const { found, shown } = await page.evaluate(() => noted);
  console.log(`keystroke in Grisolde to findings: ${said(found.slice(-EDITS))}`);
  console.log(`keystroke in Grisolde to findings on the screen: ${said(shown.slice(-EDITS))}`);
} finally {
  await browser.close();
  rmSync(folder, { recursive: true });
}
