// The texts of nasty.rig in every form: each comes out as the text that it is, and nothing comes of what it looks like.

import { execFileSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { events_of } from "./calendar.mjs";
import { texts_of, without_policy } from "./papers.mjs";

/** What must be found of nasty.rig on each paper: the declaration or the property whose text it is. */
const shown = {
  "bench-cards.html": ["boat nasty", "rope rope-9", "wire wire-5", "thimble thimble-16", "stay shroud", "stay forestay",
    "taper:", "locking:"],
  "order-list.html": ["boat nasty", "turnbuckle screw-10", "turnbuckle screw-wire", "terminal eye-30", "thimble thimble-16"],
  "sign-off.html": ["boat nasty", "secured:", "locked:"],
  "change-sheet.html": ["boat nasty"],
  "survey-report.html": ["boat nasty", "spar mast", "tang tang-10", "stay shroud", "stay forestay", "message:", "why:",
    "reason:", "mast:", "beam:", "turnbuckle screw-10", "thimble thimble-16"],
  "rig-diagram.svg": ["boat nasty"],
  "stay-strips.svg": ["thimble thimble-16", "turnbuckle screw-10", "turnbuckle screw-wire", "terminal eye-30", "stay shroud"],
};

/** In PDFs the letters of other scripts stand in the order of the screen, so of these only the others are looked for. */
const shown_in_pdf = {
  "bench-cards.pdf": shown["bench-cards.html"],
  "order-list.pdf": shown["order-list.html"],
  "sign-off.pdf": shown["sign-off.html"],
  "survey-report.pdf": ["boat nasty", "message:", "reason:", "stay shroud"],
};

const shown_as_text = {
  "cut-list.txt": ["boat nasty", "stay shroud", "stay forestay"],
  "findings.txt": ["message:", "why:", "reason:"],
};

// compiler/base/code_point.hpp, said again.
const hidden = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u2028-\u202e\u2066-\u2069\ufdd0-\ufdef\ufffe\uffff]/g;
const without_hidden = (text) => text.replace(hidden, (sign) => (sign === "\u202f" ? sign : "\ufffd"));

/** Boats that together have all that a paper can have: stock, drafts, both sorts of line, a rig before. */
const compared = ["grisolde", "sallow", "fieldfare", "pellimoor", "since", "oddnys-wager"];

/** Lines are broken anywhere, so blanks do not count. */
const squeezed = (text) => text.replace(/[\s\u00a0\ufeff]+/g, "");

/** The text of a declaration ("stay shroud") or of a property ("reason:"), as it must come out. */
function text_at(rig, place) {
  const line = rig.split("\n").find((one) => one.trimStart().startsWith(`${place} `));
  if (line === undefined) throw new Error(`nasty.rig has no ${place}`);
  return without_hidden(texts_of(line)[0]);
}

function missing_texts(rig, places, text) {
  const found = squeezed(text);
  return places
    .map((place) => [place, text_at(rig, place)])
    .filter(([, words]) => !found.includes(squeezed(words)))
    .map(([place, words]) => `${place} is not there as written: ${words}`);
}

/** Elements and attributes of a page or a drawing, and its text. Runs in the browser. */
function dissect() {
  const markup = new Set();
  for (const element of document.querySelectorAll("*")) {
    markup.add(`<${element.localName}>`);
    for (const attribute of element.attributes) markup.add(`<${element.localName} ${attribute.name}>`);
    for (const name of ["href", "src"])
      if (element.hasAttribute(name) && !element.getAttribute(name).startsWith("#"))
        markup.add(`<${element.localName} ${name}="${element.getAttribute(name)}">`);
  }
  return {
    markup: [...markup],
    scripts: [...document.querySelectorAll("script")].map((script) => script.textContent),
    comments: document.createNodeIterator(document, NodeFilter.SHOW_COMMENT).nextNode() !== null,
    text: document.documentElement.textContent,
    hidden: document.documentElement.outerHTML.match(/[\u0000-\u0008\u000b-\u001f\u007f-\u009f\ufffe\uffff]/)?.[0],
  };
}

/** What the page has that the pages of other boats do not have. */
function strange_markup(page, others) {
  const known = new Set(others.flatMap((other) => other.markup));
  const scripts = new Set(others.flatMap((other) => other.scripts));
  return [
    ...page.markup.filter((one) => !known.has(one)).map((one) => `no other boat has ${one}`),
    ...page.scripts.filter((one) => !scripts.has(one)).map((one) => `no other boat has the script ${one}`),
    ...(page.comments ? ["a comment"] : []),
    ...(page.hidden === undefined ? [] : [`a control character ${JSON.stringify(page.hidden)}`]),
  ];
}

async function look_at_pages({ report, boats, browser, into }, nasty, rig) {
  for (const file of nasty.files(".html", ".svg")) {
    const name = path.basename(file);
    const others = [];
    for (const boat of boats.filter((one) => compared.includes(one.name) && one.files(name).length > 0))
      others.push((await browser.visit(boat.files(name)[0], (page) => page.evaluate(dissect))).result);
    const least = name.startsWith("change-sheet") ? 1 : 3;
    report.none(`${name} of other boats`, others.length >= least ? [] : ["there are too few to compare with"]);
    const { result, complaints } = await browser.visit(file, (page) => page.evaluate(dissect));
    report.none(`nothing is run in ${name}`, complaints);
    report.none(`markup of ${name} is ours`, strange_markup(result, others));
    if (shown[name] !== undefined) report.none(`texts of ${name}`, missing_texts(rig, shown[name], result.text));

    if (name !== "bench-cards.html" && name !== "stay-strips.svg") continue;
    const planted = path.join(into, `planted-text${path.extname(file)}`);
    const plant = async (from, to) => {
      const text = without_policy(readFileSync(file, "utf8"));
      if (!text.includes(from)) throw new Error(`${name} has no ${from}`);
      writeFileSync(planted, text.replaceAll(from, to));
      const visit = await browser.visit(planted, (page) => page.evaluate(dissect));
      return [...visit.complaints, ...strange_markup(visit.result, others), ...missing_texts(rig, shown[name], visit.result.text)];
    };
    report.caught(`markup in a text of ${name}`, await plant("</text>", "<b>a</b></text>"), /<b>/);
    report.caught(`a script in ${name}`, await plant("</svg>", "<script>alert(1)</script></svg>"), /dialog/);
    report.caught(`a handler in ${name}`, await plant("<text ", '<text onclick="alert(1)" '), /onclick/);
    report.caught(`a text escaped twice in ${name}`, await plant("&lt;/text", "&amp;lt;/text"), /thimble/);
  }
}

export default async function hostile_text(context) {
  const { report, boats, sheerpole, into } = context;
  const nasty = boats.find((boat) => boat.name === "nasty");
  const rig = readFileSync(nasty.rig, "utf8");
  await look_at_pages(context, nasty, rig);

  for (const [name, places] of Object.entries(shown_in_pdf)) {
    const file = path.join(nasty.folder, name);
    const text = squeezed(execFileSync("pdftotext", ["-enc", "UTF-8", file, "-"], { encoding: "utf8" }));
    const runs = places.flatMap((place) => text_at(rig, place).match(/[\x21-\x7e]+/g).map((run) => [place, run]));
    report.none(
      `texts of ${name}`,
      runs.filter(([, run]) => !text.includes(run)).map(([place, run]) => `${place}: ${run} is not there`),
    );
  }

  for (const [name, places] of Object.entries(shown_as_text))
    report.none(`texts of ${name}`, missing_texts(rig, places, nasty.read(name)));
  for (const file of nasty.files(".txt", ".csv", ".json", ".sarif", ".ics", ".rig", ".svg", ".html")) {
    const found = readFileSync(file, "utf8").match(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u2028-\u202e]/);
    report.none(
      `${path.basename(file)} holds no control characters`,
      found === null ? [] : [`${JSON.stringify(found[0])} at ${found.index}`],
    );
  }

  report.none(
    "the boat in cut-list.json",
    nasty.json("cut-list.json").boat === text_at(rig, "boat nasty") ? [] : [nasty.json("cut-list.json").boat],
  );
  const rules = nasty.json("findings.sarif").runs[0].results.map((one) => one.message.text);
  report.none(
    "a message of the user in findings.sarif",
    rules.some((text) => text.includes(text_at(rig, "message:"))) ? [] : rules,
  );

  const waiver = events_of(nasty.read("calendar.ics")).find((event) => event.description.startsWith("Waived"));
  const by = text_at(rig.slice(rig.indexOf("waive ")), "by:");
  report.none(
    "a waiver in calendar.ics",
    waiver.description === `Waived by ${by}: ${text_at(rig, "reason:")}` ? [] : [waiver.description],
  );

  // What the spool plan writes is read again, and holds the same texts.
  const stock = nasty.read("new-stock.rig");
  const batch = text_at(rig.slice(rig.indexOf("stock spool-1")), "batch:");
  report.none("a batch in new-stock.rig", texts_of(stock).includes(batch) ? [] : texts_of(stock));
  const again = path.join(into, "again.rig");
  writeFileSync(again, rig.replace(/^(stock|cutting) [^]*?^}\n/gm, "") + stock.replace(/^language 1$/m, ""));
  report.none(
    "new-stock.rig is read again",
    await sheerpole.say("check", again).then(
      () => [],
      (fault) => [fault.stdout + fault.stderr],
    ),
  );
}
