// node tests/browser/contact_sheet.mjs SHEERPOLE FOLDER [BOAT...]: every output of every example as a small picture, one sheet a boat and
// kind, contact-BOAT-KIND.png in FOLDER, to look through after a change:
//   pages     HTML of pages and drawings on A4, as the browser shows them
//   pdf-a4, pdf-letter  every page of every PDF (pdftoppm)
//   phone, desk  HTML at 360 and at 1280 px
//   terminal  check, show and explain at 60, 80 and 120 columns
// index.html in FOLDER leads to all of them. The last line says how many pictures there are; a paper without a picture ends with 1.

import { execFileSync, spawnSync } from "node:child_process";
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";
import puppeteer from "puppeteer-core";
import { project, Sheerpole } from "./papers.mjs";

const [program, into, ...asked] = process.argv.slice(2);
if (into === undefined) {
  console.error("usage: node tests/browser/contact_sheet.mjs SHEERPOLE FOLDER [BOAT...]");
  process.exit(2);
}
const folder = path.resolve(into);
mkdirSync(folder, { recursive: true });
const sheerpole = new Sheerpole(program);
const examples = readdirSync(path.join(project, "examples"))
  .filter((name) => name.endsWith(".rig"))
  .map((name) => name.replace(/\.rig$/, ""))
  .filter((name) => asked.length === 0 || asked.includes(name));
const per_sheet = 16; // four rows of four, large enough to read what stands on each
const widths_of_terminal = [60, 80, 120];

const browser = await puppeteer.launch({
  executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
  args: ["--headless=new", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--no-first-run"],
  protocolTimeout: 120_000,
});

/** Every back end there is, also those that are made by name alone. */
function all_back_ends() {
  const said = JSON.parse(execFileSync(program, ["list", "back-ends", "--form", "json"], { encoding: "utf8" }));
  return said.rows.map((row) => row.back_end);
}

function build(name, paper) {
  const out = path.join(folder, `${name}-${paper}`);
  rmSync(out, { recursive: true, force: true });
  const only = all_back_ends().flatMap((one) => ["--only", one]);
  const made = spawnSync(
    program,
    ["build", path.join(project, "examples", `${name}.rig`), ...only, "--pdf", "--paper", paper, "--into", out],
    { encoding: "utf8" },
  );
  if (made.status !== 0) throw new Error(`${name}: ${made.stderr}`);
  return readdirSync(out).map((file) => path.join(out, file));
}

const figure = (picture, words, mime = "png") =>
  `<figure><img src="data:image/${mime};base64,${picture}"><figcaption>${words}</figcaption></figure>`;

/** Pictures of what is a page of its own: a drawing, a section of pages, else the top of a text. */
async function pictures_of(page, file) {
  await page.goto(pathToFileURL(file).href, { waitUntil: "load" });
  const sheets = await page.$$("section.sheet");
  const wanted = sheets.length > 0 ? sheets : [await page.$("svg:root, body")];
  const pictures = [];
  for (const element of wanted) pictures.push(await element.screenshot({ encoding: "base64" }));
  return pictures;
}

async function pages(page, files) {
  const cells = [];
  await page.setViewport({ width: 820, height: 1160 });
  for (const file of files.filter((one) => /\.(html|svg)$/.test(one)))
    for (const [i, picture] of (await pictures_of(page, file)).entries())
      cells.push(figure(picture, `${path.basename(file)} ${i + 1}`));
  return cells;
}

/** The first two screens of each paper at this width: what is below them looks as they do. */
async function at_width(page, files, width, height) {
  const cells = [];
  for (const file of files.filter((one) => one.endsWith(".html"))) {
    await page.setViewport({ width, height });
    await page.goto(pathToFileURL(file).href, { waitUntil: "load" });
    cells.push(figure(await page.screenshot({ encoding: "base64" }), `${path.basename(file)} at ${width} px`));
  }
  return cells;
}

function pdf_pages(files) {
  const cells = [];
  for (const file of files.filter((one) => one.endsWith(".pdf"))) {
    const stem = file.replace(/\.pdf$/, "-page");
    execFileSync("pdftoppm", ["-r", "58", "-png", file, stem]);
    const drawn = readdirSync(path.dirname(file)).filter((one) => one.startsWith(`${path.basename(stem)}-`));
    if (drawn.length === 0) throw new Error(`${file} has no page`);
    for (const one of drawn.sort()) {
      const picture = path.join(path.dirname(file), one);
      cells.push(figure(readFileSync(picture).toString("base64"), `${path.basename(file)} ${one.match(/(\d+)\.png$/)[1]}`));
      rmSync(picture);
    }
  }
  return cells;
}

const escaped = (text) => text.replace(/&/g, "&amp;").replace(/</g, "&lt;");

/** What a terminal of so many columns shows; a line that is wider than it is marked. */
function terminal(name) {
  const file = path.join(project, "examples", `${name}.rig`);
  const cells = [];
  for (const columns of widths_of_terminal)
    for (const command of [["check", file], ["show", "pieces", file], ["show", "stack", file]]) {
      const said = spawnSync(program, command, { encoding: "utf8", env: { ...process.env, COLUMNS: String(columns), NO_COLOR: "1" } });
      const lines = (said.stdout + said.stderr).split("\n").slice(0, 60);
      const shown = lines.map((line) => ([...line].length > columns ? `<b>${escaped(line)}</b>` : escaped(line))).join("\n");
      cells.push(`<figure class="text"><pre style="width:${columns}ch">${shown}</pre><figcaption>${command.slice(0, -1).join(" ")} at ${columns}</figcaption></figure>`);
    }
  return cells;
}

const style =
  "body{margin:8px;font:14px sans-serif}figure{display:inline-block;margin:4px;width:482px;vertical-align:top}" +
  "img{width:480px;max-height:680px;object-fit:cover;object-position:top;border:1px solid #707070}" +
  ".phone figure{width:242px}.phone img{width:240px;max-height:none}" +
  ".text{width:auto}pre{font:9px/1.2 'Liberation Mono',monospace;border:1px solid #707070;margin:0;white-space:pre;overflow:hidden}b{background:#ddd}";

const written = [];

async function write_sheets(page, name, kind, cells) {
  for (let from = 0, number = 1; from < cells.length; from += per_sheet, ++number) {
    const stem = `contact-${name}-${kind}${cells.length > per_sheet ? `-${number}` : ""}`;
    const html = path.join(folder, `${stem}.html`);
    const some = cells.slice(from, from + per_sheet);
    writeFileSync(html, `<!DOCTYPE html><meta charset="utf-8"><title>${stem}</title><style>${style}</style><body class="${kind}">${some.join("")}`);
    await page.setViewport({ width: 2000, height: 1000 });
    await page.goto(pathToFileURL(html).href, { waitUntil: "load" });
    await page.screenshot({ path: path.join(folder, `${stem}.png`), fullPage: true });
    rmSync(html);
    written.push(stem);
    console.log(`${stem}.png: ${some.length} pictures`);
  }
  return cells.length;
}

let pictures = 0;
try {
  for (const name of examples) {
    const a4 = build(name, "a4");
    const letter = build(name, "letter");
    const page = await browser.newPage();
    const sheets = [
      ["pages", await pages(page, a4)],
      ["pdf-a4", pdf_pages(a4)],
      ["pdf-letter", pdf_pages(letter)],
      ["phone", await at_width(page, a4, 360, 1200)],
      ["desk", await at_width(page, a4, 1280, 1600)],
      ["terminal", terminal(name)],
    ];
    for (const [kind, cells] of sheets) pictures += await write_sheets(page, name, kind, cells);
    await page.close();
  }
} finally {
  await browser.close();
}
writeFileSync(
  path.join(folder, "index.html"),
  `<!DOCTYPE html><meta charset="utf-8"><title>Contact sheets</title>${written.map((stem) => `<p>${stem}<br><img src="${stem}.png" width="2000"></p>`).join("")}`,
);
console.log(`${pictures} pictures on ${written.length} sheets of ${examples.length} boats`);
process.exitCode = pictures > 0 ? 0 : 1;
