// What the subjects share: opening a text as if somebody had chosen its file, reading what the browser keeps.

import { mkdtempSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";

const folder = mkdtempSync(path.join(os.tmpdir(), "sheerpole-page-"));

/** Files of these names with these bytes. @returns {string[]} their paths */
export const files_of = (contents) =>
  Object.entries(contents).map(([name, bytes]) => {
    const file = path.join(folder, name);
    writeFileSync(file, bytes);
    return file;
  });

/** Opens files by the button of the first screen, or of the menu. */
export async function open_files(tools, contents) {
  const { page } = tools;
  if (await page.$("#menu")) await tools.tap("css:#menu");
  const [chooser] = await Promise.all([page.waitForFileChooser(), tools.tap("Open a file")]);
  await chooser.accept(files_of(contents));
  await page.waitForFunction(() => !document.getElementById("chooser"));
  await new Promise((done) => setTimeout(done, 50));
  await tools.settle();
}

/** The boat as the browser keeps her. */
export const kept = (page) =>
  page.evaluate(() => {
    const id = JSON.parse(localStorage.getItem("sheerpole.last"));
    return id === null ? null : JSON.parse(localStorage.getItem(`sheerpole.boat.${id}`));
  });
export const kept_text = async (page) => {
  const project = await kept(page);
  return project.files[project.root];
};

/** Goes to a view by its address. */
export async function go(tools, to) {
  await tools.page.evaluate((hash) => (location.hash = hash), to);
  await new Promise((done) => setTimeout(done, 40));
  await tools.settle();
}

export const text_of = (page, selector) => page.$eval(selector, (element) => element.innerText.replace(/\s+/g, " ").trim());
/** The text of the paper that is shown. */
export async function paper_text(page) {
  await page.waitForSelector("iframe.paper", { timeout: 10_000 });
  await page.waitForFunction(() => (document.querySelector("iframe.paper").contentDocument?.body?.innerText ?? "").length > 20, {
    timeout: 10_000,
  });
  return page.$eval("iframe.paper", (frame) => frame.contentDocument.body.innerText);
}

/** A boat of two stays whose lengths are Pythagoras: the cap shroud ends at plate-a, the forestay at the stem. */
export const two_stays = `language 1

boat "Two stays" {
}

points {
  cap-tang "Cap tang": (0 m, 0.1 m, 10.0 m) mirrored measured
  plate-a "Chainplate": (0 m, 1.4 m, 1.0 m) mirrored measured
  fore-tang "Fore tang": (0 m, 0 m, 10 m) measured
  stem "Stem": (4 m, 0 m, 1 m) measured
}

wire wire-6 "Wire 6 mm" {
  construction: "1x19"
  size: "6 mm"
  diameter: 6 mm measured
}

terminal eye-6 "Eye terminal" {
  length: 50 mm measured
  lower: wire-socket (construction: "1x19", size: "6 mm", inserted: 50 mm measured)
}

turnbuckle screw-12 "Turnbuckle" {
  shortest: 300 mm measured
  longest: 400 mm measured
  upper: wire-socket (construction: "1x19", size: "6 mm", inserted: 50 mm measured)
}

stay cap-shroud "Cap shroud" {
  sides: port, starboard
  path: cap-tang > plate-a
  line: wire-6
  stack {
    eye-6
    line
    screw-12 (length: 350 mm)
  }
}

stay forestay "Forestay" {
  path: fore-tang > stem
  line: wire-6
  stack {
    eye-6
    line
    screw-12 (length: 350 mm)
  }
}
`;

/** Everything that is assumed in a first rig, measured, so that nothing but the hoisting is left. */
export const all_measured = (text) =>
  text.replace(/ assumed( "[^"]*")?/g, (found, note) => (note?.includes("end of the cord") ? found : ` measured${note ?? ""}`));
