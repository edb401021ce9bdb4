// HTML and SVG by two checkers of markup that know nothing of each other: the Nu Html Checker (vnu-jar), which holds them
// against the HTML standard and SVG, and html-validate, which adds rules of good practice.

import { execFile } from "node:child_process";
import { createRequire } from "node:module";
import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { promisify } from "node:util";
import { HtmlValidate } from "html-validate";
import { looked_at_closely } from "./papers.mjs";

const run = promisify(execFile);
const require = createRequire(import.meta.url);

const html_validate = new HtmlValidate({
  root: true,
  extends: ["html-validate:recommended", "html-validate:document", "html-validate:a11y"],
  rules: {
    // The ids are made of names of the rig: letters, digits, dots and hyphens.
    "valid-id": ["error", { relaxed: true }],
    // The title names the boat, and how long her name is is her owner's affair.
    "long-title": "off",
    // A matter of taste: the standard allows both, and `<meta charset="utf-8">` is how its own examples are written.
    "doctype-style": "off",
    // SVG inside HTML is written as XML, so that it is the same text as in a file of its own: <line ... />.
    "no-self-closing": "off",
    "void-style": "off",
  },
});

/** Complaints of html-validate about one HTML text. */
export async function html_validate_complaints(name, html) {
  const report = await html_validate.validateString(html, name);
  return report.results.flatMap((result) =>
    result.messages.map((one) => `${name}:${one.line}:${one.column}: ${one.message} (${one.ruleId})`),
  );
}

/** Complaints of the Nu Html Checker about files, HTML or SVG by their endings, all in one run. */
export async function vnu_complaints(files) {
  const jar = require("vnu-jar");
  const words = ["-Xss4m", "-jar", jar, "--errors-only", "--also-check-svg", "--format", "json", ...files];
  const said = await run("java", words, { maxBuffer: 1 << 28 }).then(
    (result) => result.stderr,
    (fault) => {
      if (!fault.stderr?.trimStart().startsWith("{")) throw fault; // no java, no jar
      return fault.stderr;
    },
  );
  return JSON.parse(said.slice(said.indexOf("{"))).messages.map(
    (one) => `${path.basename(path.dirname(one.url))}/${path.basename(one.url)}:${one.lastLine}: ${one.message}`,
  );
}

export default async function markup({ report, boats: all, into }) {
  const boats = all.filter((boat) => looked_at_closely.includes(boat.name) || boat.name === "letter");
  const files = boats.flatMap((boat) => boat.files(".html", ".svg"));
  const planted_html = path.join(into, "planted-markup.html");
  const planted_svg = path.join(into, "planted-markup.svg");
  const page = readFileSync(boats[0].files(".html")[0], "utf8");
  writeFileSync(planted_html, page.replace("<h1>", "<h1><p>"));
  writeFileSync(planted_svg, readFileSync(boats[0].files(".svg")[0], "utf8").replace("<line ", "<lime "));
  const by_vnu = vnu_complaints([...files, planted_html, planted_svg]);

  for (const boat of boats)
    for (const file of boat.files(".html")) {
      const name = `${boat.name}/${path.basename(file)}`;
      report.none(`html-validate ${name}`, await html_validate_complaints(name, readFileSync(file, "utf8")));
    }
  report.caught("a heading without its end", await html_validate_complaints("a", page.replace("</h1>", "")));
  report.caught("an id twice", await html_validate_complaints("a", page.replaceAll("<section class=\"sheet\" ", '<section class="sheet" id="a" ')), /id/);

  const complaints = await by_vnu;
  for (const boat of boats)
    for (const file of boat.files(".html", ".svg")) {
      const name = `${boat.name}/${path.basename(file)}`;
      report.none(`markup of ${name}`, complaints.filter((one) => one.startsWith(`${name}:`)));
    }
  report.caught("a paragraph in a heading", complaints, /planted-markup\.html/);
  report.caught("an element that SVG does not have", complaints, /planted-markup\.svg/);
}
