// node tests/browser/contact_sheet.mjs SHEERPOLE FOLDER [BOAT...]: every page of every paper of the examples as a small picture on
// one sheet a boat, contact-BOAT.png in FOLDER, to look through after a change. HTML and SVG as the browser shows them.

import { mkdirSync, readdirSync, writeFileSync } from "node:fs";
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

const browser = await puppeteer.launch({
  executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
  args: ["--headless=new", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--no-first-run"],
  protocolTimeout: 120_000,
});

/** Pictures of what is a page of its own: a drawing, a section of pages, else the top of a text. */
async function pictures_of(page, file) {
  await page.goto(pathToFileURL(file).href, { waitUntil: "load" });
  const sheets = await page.$$("section.sheet");
  const wanted = sheets.length > 0 ? sheets : [await page.$("svg:root, body")];
  const pictures = [];
  for (const element of wanted) pictures.push(await element.screenshot({ encoding: "base64" }));
  return pictures;
}

try {
  for (const name of examples) {
    const boat = await sheerpole.build(name, path.join(project, "examples", `${name}.rig`), path.join(folder, name));
    const page = await browser.newPage();
    await page.setViewport({ width: 820, height: 1160 });
    const cells = [];
    for (const file of boat.files(".html", ".svg"))
      for (const [i, picture] of (await pictures_of(page, file)).entries())
        cells.push(`<figure><img src="data:image/png;base64,${picture}"><figcaption>${path.basename(file)} ${i + 1}</figcaption></figure>`);
    const sheet = path.join(folder, `contact-${name}.html`);
    writeFileSync(
      sheet,
      `<!DOCTYPE html><meta charset="utf-8"><title>${name}</title><style>body{margin:8px;font:12px sans-serif}` +
        `figure{display:inline-block;margin:4px;width:236px;vertical-align:top}img{width:234px;max-height:332px;object-fit:contain;` +
        `object-position:top;border:1px solid #707070}</style>${cells.join("")}`,
    );
    await page.setViewport({ width: 1500, height: 1000 });
    await page.goto(pathToFileURL(sheet).href, { waitUntil: "load" });
    await page.screenshot({ path: path.join(folder, `contact-${name}.png`), fullPage: true });
    await page.close();
    console.log(`contact-${name}.png: ${cells.length} pages`);
  }
} finally {
  await browser.close();
}
