// The survey report as its reader has it: he follows a stay of a drawing to its section, with scripts and without, and
// prints the whole to a PDF.

import { execFileSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { looked_at_closely, without_policy } from "./papers.mjs";

/** What stands in the page: links of its drawings, its sections, and what cannot be seen. Runs in the browser. */
function links_and_sections() {
  const links = [...document.querySelectorAll("svg a[href]")].map((link) => link.getAttribute("href"));
  const ids = [...document.querySelectorAll("[id]")].map((element) => element.id);
  const unseen = [...document.querySelectorAll("main h1, main h2, main h3, main table, main figure, main dl, main p")]
    .filter((element) => !element.checkVisibility({ visibilityProperty: true, opacityProperty: true }))
    .map((element) => element.textContent.slice(0, 60));
  return { links, ids, unseen };
}

/** Complaints about one report, read with scripts or without. */
async function reading_complaints(browser, file, stays, scripts) {
  const { result, complaints } = await browser.visit(
    file,
    async (page) => {
      // The reader's own questions are asked from outside the page, so they work without its scripts, too.
      const found = await page.evaluate(links_and_sections);
      const wrong = found.unseen.map((words) => `cannot be seen: ${words}`);
      for (const link of new Set(found.links))
        if (!found.ids.includes(link.slice(1))) wrong.push(`the drawing leads to ${link}, which is not there`);
      for (const stay of stays)
        if (!found.ids.includes(`stay-${stay}`)) wrong.push(`no section of ${stay}`);
      const link = found.links.find((one) => one.startsWith("#stay-"));
      if (link !== undefined) wrong.push(...(await follow(page, link)));
      return { wrong, linked: new Set(found.links) };
    },
    { scripts },
  );
  return { complaints: [...result.wrong, ...complaints], linked: result.linked };
}

/** Clicks on the line or the name of a stay in a drawing. */
async function follow(page, link) {
  const handles = await page.$$(`svg a[href="${link}"] text`);
  if (handles.length === 0) return [`no words of a drawing lead to ${link}`];
  await handles[0].evaluate((element) => element.scrollIntoView({ block: "center" }));
  await handles[0].click();
  const where = await page.evaluate((id) => {
    const box = document.getElementById(id)?.getBoundingClientRect() ?? { top: NaN, bottom: NaN };
    return { hash: window.location.hash, seen: box.bottom > 0 && box.top < window.innerHeight, top: box.top };
  }, link.slice(1));
  const wrong = [];
  if (where.hash !== link) wrong.push(`after a click on ${link} the page is at ${where.hash || "its top"}`);
  if (!where.seen) wrong.push(`after a click on ${link} its section is not in view, but at ${where.top}`);
  return wrong;
}

async function printed_complaints(browser, file, words, pdf) {
  const { result } = await browser.visit(file, (page) => page.pdf({ preferCSSPageSize: true }));
  writeFileSync(pdf, result);
  const info = execFileSync("pdfinfo", [pdf], { encoding: "utf8" });
  const pages = Number(info.match(/^Pages: +(\d+)/m)?.[1] ?? 0);
  const text = execFileSync("pdftotext", ["-enc", "UTF-8", pdf, "-"], { encoding: "utf8" }).replace(/\s+/g, "");
  return [
    ...(pages > 0 ? [] : ["no page is printed"]),
    ...words.filter((one) => !text.includes(one.replace(/\s+/g, ""))).map((one) => `${one} is not printed`),
  ];
}

export default async function report_page({ report, boats, browser, into }) {
  let followed = 0;
  for (const boat of boats.filter((one) => looked_at_closely.includes(one.name) || one.name === "sallow")) {
    const file = path.join(boat.folder, "survey-report.html");
    const stays = [...new Set(boat.json("cut-list.json").pieces.map((piece) => piece.stay))];
    for (const scripts of [true, false]) {
      const { complaints, linked } = await reading_complaints(browser, file, stays, scripts);
      report.none(`survey report of ${boat.name}, scripts ${scripts ? "on" : "off"}`, complaints);
      const drawn = boat.json("cut-list.json").pieces.some((piece) => piece.path.length > 0);
      report.none(`drawings of ${boat.name} lead to stays`, drawn && linked.size === 0 ? ["no link"] : []);
      if (linked.size > 0) followed += 1;
    }
    const printed = await printed_complaints(browser, file, stays, path.join(into, `${boat.name}-report.pdf`));
    report.none(`survey report of ${boat.name}, printed`, printed);
  }
  report.none("links are followed", followed >= 10 ? [] : [`only ${followed} times`]);

  const boat = boats.find((one) => one.name === "sallow");
  const html = without_policy(readFileSync(path.join(boat.folder, "survey-report.html"), "utf8"));
  const planted = path.join(into, "planted-report.html");
  const plant = async (name, from, to, words) => {
    if (html.replace(from, to) === html) throw new Error(`the report has no ${from}`);
    writeFileSync(planted, html.replace(from, to));
    const { complaints } = await reading_complaints(browser, planted, ["shroud.port"], true);
    report.caught(name, complaints, words);
  };
  await plant("a section that is gone", ' id="stay-shroud.port"', "", /is not there|no section/);
  await plant("a section that is hidden", 'id="stay-shroud.port"', 'id="stay-shroud.port" style="display: none"', /seen/);
  await plant("a link that leads elsewhere", /<a ([^>]*)href="#stay/g, '<a onclick="return false" $1href="#stay', /the page is at/);
  await plant("a cover over the drawings", "<main>", '<main><div style="position: fixed; inset: 0; z-index: 9"></div>', /the page is at/);
  report.caught(
    "a stay that is not printed",
    await printed_complaints(browser, path.join(boat.folder, "survey-report.html"), ["no-such-stay"], path.join(into, "a.pdf")),
    /not printed/,
  );
}
