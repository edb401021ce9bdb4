// axe-core in the browser: every rule that it has, on every page; and what a page does when it is opened: it asks for
// nothing, says nothing and opens nothing.

import { readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { looked_at_closely, without_policy } from "./papers.mjs";

const require = createRequire(import.meta.url);
const axe_source = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");

/** Half of the time goes into this rule, and the colours of a paper are the same for every boat: these two have all of them. */
const seen_in_colour = ["grisolde", "nasty"];

/** Violations of one page. @param {import("puppeteer-core").Page} page */
async function violations(page, colours = true) {
  await page.evaluate(axe_source);
  const result = await page.evaluate(
    (enabled) =>
      window.axe.run(document, {
        resultTypes: ["violations"],
        performanceTimer: false,
        rules: { "color-contrast": { enabled } },
      }),
    colours,
  );
  return result.violations.flatMap((rule) =>
    rule.nodes.slice(0, 3).map((node) => `${rule.id}: ${rule.help}: ${node.html.slice(0, 160)}`),
  );
}

export default async function accessibility({ report, boats, browser, into }) {
  for (const boat of boats.filter((one) => looked_at_closely.includes(one.name)))
    for (const file of boat.files(".html", ".svg")) {
      const name = `${boat.name}/${path.basename(file)}`;
      const look = file.endsWith(".svg") ? () => [] : (page) => violations(page, seen_in_colour.includes(boat.name));
      const { result, complaints } = await browser.visit(file, look);
      if (file.endsWith(".html")) report.none(`axe-core ${name}`, result);
      report.none(`nothing is asked for or said by ${name}`, complaints);
    }

  const page = without_policy(readFileSync(boats[0].files(".html")[0], "utf8"));
  const planted = path.join(into, "planted-page.html");
  const look_at = async (html) => {
    writeFileSync(planted, html);
    return browser.visit(planted, (page) => violations(page));
  };
  report.caught("no language", (await look_at(page.replace(' lang="en"', ""))).result, /html-has-lang/);
  report.caught(
    "a page without main",
    (await look_at(page.replace("<main>", "<div>").replace("</main>", "</div>"))).result,
    /landmark-one-main/,
  );
  report.caught(
    "grey on white",
    (await look_at(page.replace("<h1>", '<p style="color: #cccccc">a line</p><h1>'))).result,
    /color-contrast/,
  );
  const with_words = async (html) => (await look_at(page.replace("<main>", `<main>${html}`))).complaints;
  report.caught("a picture from elsewhere", await with_words('<img alt="" src="https://example.org/a.png">'), /asks for/);
  report.caught("a picture beside it", await with_words('<img alt="" src="beside.png">'), /asks for/);
  report.caught("a dialog", await with_words("<script>alert(1)</script>"), /dialog/);
  report.caught("a word on the console", await with_words("<script>console.log(1)</script>"), /console/);
  report.caught("a script that fails", await with_words("<script>undefined.a</script>"), /script/);
}
