// Sheerpole reports and leaves the judgement to people: no paper, no page of docs and nothing that the program says calls a
// rig safe, approved or certified. tests/architecture/output_words.py looks for these words in the sources; here is what
// comes out. A text that the user wrote is his own: it may say so.

import { execFileSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { project } from "./papers.mjs";

const verdict = /\b(safe|approved|certified)\b/gi;

const bare = (text) => text.replace(/\s+/g, " ");

/** The text without markup, escapes and folded lines, so that a text of the user is found in it as he wrote it. */
function words_of(file) {
  if (file.endsWith(".pdf")) return execFileSync("pdftotext", ["-enc", "UTF-8", file, "-"], { encoding: "utf8" });
  const text = readFileSync(file, "utf8");
  if (/\.(html|svg)$/.test(file))
    return text
      .replace(/<[^>]*>/g, " ")
      .replaceAll("&lt;", "<")
      .replaceAll("&gt;", ">")
      .replaceAll("&quot;", '"')
      .replaceAll("&amp;", "&");
  if (file.endsWith(".ics")) return text.replaceAll("\r\n ", "").replace(/\\([\\;,])/g, "$1");
  if (file.endsWith(".csv")) return text.replaceAll('""', '"');
  if (/\.(json|sarif|rig)$/.test(file)) return text.replace(/\\(["\\])/g, "$1");
  return text;
}

/** Complaints about a text. @param {string[]} own texts that the user wrote */
export function word_complaints(text, own = []) {
  let rest = bare(text);
  for (const words of own.filter((one) => one.match(verdict))) rest = rest.replaceAll(bare(words), " ");
  return [...rest.matchAll(verdict)].map(
    (found) => `says "${found[0]}": ...${rest.slice(Math.max(0, found.index - 50), found.index + 50)}...`,
  );
}

/** The names in the first column of a list of the program. */
const first_words = (listing) => listing.split("\n").slice(2).map((line) => line.split(" ")[0]).filter((word) => /^[a-z]/.test(word));

export default async function words({ report, boats: built, sheerpole, into }) {
  // What is made only when it is asked for by name.
  const echo = await sheerpole.build("echo", path.join(into, "nasty.rig"), path.join(into, "echo"), "--only", "echo");
  const boats = [...built, echo];
  for (const boat of boats)
    for (const file of boat.files("")) {
      const name = `${boat.name}/${path.basename(file)}`;
      report.none(`words of ${name}`, word_complaints(words_of(file), boat.texts()));
    }

  report.none("files are looked at", echo.files("").length === 1 && built[0].files("").length > 20 ? [] : ["too few"]);

  const pages = readdirSync(path.join(project, "docs"), { recursive: true })
    .filter((name) => name.endsWith(".md"))
    .map((name) => path.join(project, "docs", name));
  report.none("pages of docs", pages.length > 100 ? [] : [`only ${pages.length} found`]);
  report.none(
    "words of docs",
    [path.join(project, "README.md"), ...pages].flatMap((page) =>
      word_complaints(readFileSync(page, "utf8")).map((one) => `${path.relative(project, page)} ${one}`),
    ),
  );

  const help = await sheerpole.say("--help");
  const verbs = [...help.matchAll(/^ {2}([a-z]+) {2,}/gm)].map((found) => found[1]);
  report.none("verbs", verbs.length >= 9 && verbs.includes("build") ? [] : [`only ${verbs}`]);
  const said = [help];
  for (const verb of verbs) said.push(await sheerpole.say(verb, "--help"));
  for (const what of ["kinds", "ends", "findings", "back-ends", "tables", "phases", "completion"])
    said.push(await sheerpole.say("list", what));
  const names = [...first_words(await sheerpole.say("list", "kinds")), ...first_words(await sheerpole.say("list", "ends"))];
  for (const name of names) said.push(await sheerpole.say("explain", name));
  report.none("what is explained", names.length > 20 ? [] : [`only ${names}`]);
  report.none("words of the program", said.flatMap((text) => word_complaints(text)));

  report.caught("a verdict", word_complaints("The rig is SAFE."), /SAFE/);
  report.caught("over two lines", word_complaints("is\napproved"), /approved/);
  report.caught("beside a text of the user", word_complaints("he says it is safe; it is safe", ["he says it is safe"]), /safe/);
  report.none("a text of the user", word_complaints("he says it\n  is safe", ["he says it is safe"]));
  report.none("other words", word_complaints("safety, unapproved, certify"));
  const nasty = boats.find((boat) => boat.name === "nasty");
  report.none(
    "the user's own words are kept",
    /calls it safe, approved and certified/.test(bare(nasty.read("findings.txt"))) ? [] : ["they are not in findings.txt"],
  );
}
