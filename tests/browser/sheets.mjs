// What stands on printed sheets: the texts of each page of an HTML file of pages, as the browser has them, with their places.

import { readFileSync } from "node:fs";

const read_before = new Map();

/** One sheet: `title` of its section, `texts` as {text, x, y, end, bold}, in the order of the file. */
export async function sheets_of(browser, file) {
  const html = readFileSync(file, "utf8");
  if (!read_before.has(html)) read_before.set(html, await read_sheets(browser, file));
  return read_before.get(html);
}

async function read_sheets(browser, file) {
  const { result } = await browser.visit(file, (page) =>
    page.evaluate(() =>
      [...document.querySelectorAll("section.sheet")].map((section) => ({
        title: section.getAttribute("aria-label"),
        texts: [...section.querySelectorAll("text")].map((text) => ({
          text: text.textContent,
          x: Number(text.getAttribute("x")),
          y: Number(text.getAttribute("y")),
          end: text.getAttribute("text-anchor") === "end",
          bold: text.getAttribute("font-weight") === "bold",
        })),
      })),
    ),
  );
  return result;
}

/** The sheets of each thing by its name: "Bench card of forestay, page 1 of 2" belongs to forestay. */
export function by_name(sheets, lead) {
  const found = new Map();
  for (const sheet of sheets) {
    if (!sheet.title.startsWith(lead)) throw new Error(`a sheet is called ${sheet.title}`);
    const name = sheet.title.slice(lead.length).replace(/, page \d+ of \d+$/, "");
    found.set(name, [...(found.get(name) ?? []), sheet]);
  }
  return found;
}

/** All words of a sheet in one line. */
export const words_of = (sheet) => sheet.texts.map((one) => one.text).join(" ").replace(/\s+/g, " ");
