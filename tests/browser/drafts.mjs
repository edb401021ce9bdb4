// DRAFT stands where a length rests on something that is missing or assumed, and nowhere else. Which lengths do is worked
// out here again from the rows of cut-list.json: from the class of each number and from what it rests on.

import { cpSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import Papa from "papaparse";
import { project } from "./papers.mjs";
import { by_name, sheets_of, words_of } from "./sheets.mjs";

/** Whether anything that a piece rests on is missing, assumed or tried on the command line. */
function rests_on_doubt(piece, tried) {
  const rows = piece.sum.flatMap((section) => section.rows);
  const known = [...rows.map((row) => row.provenance), ...(piece.unknown_source === null ? [] : [piece.unknown_source])];
  const assumed = known.some((one) => one.class === "assumed" || one.assumptions.length > 0);
  return assumed || !piece.complete || !piece.body.complete || !piece.cut.complete || tried.includes(piece.stay);
}

/** Complaints where the two disagree, either way. */
function compare(place, name, is_draft, says_draft) {
  if (is_draft === says_draft) return [];
  return [`${place}: ${name} ${is_draft ? "is a draft and does not say so" : "says DRAFT and is none"}`];
}

const says_draft = (sheet) => /\bDRAFT\b/.test(words_of(sheet));

/** Complaints about papers of a boat. @param {{tried?: string[], only?: string}} options stays with a value from the
 *  command line; one file that is looked at alone */
export async function draft_complaints(boat, browser, { tried = [], only } = {}) {
  const list = boat.json("cut-list.json");
  const complaints = [];
  const drafts = new Set(list.pieces.filter((piece) => rests_on_doubt(piece, tried)).map((piece) => piece.name));
  const stays = new Set(list.pieces.filter((piece) => drafts.has(piece.name)).map((piece) => piece.stay));
  const wanted = (file) => only === undefined || only === file;
  const sheets = async (file) => (wanted(file) ? sheets_of(browser, path.join(boat.folder, file)) : []);

  if (wanted("cut-list.json")) {
    for (const piece of list.pieces) {
      complaints.push(...compare("cut-list.json", piece.name, drafts.has(piece.name), piece.draft));
      if (piece.draft !== piece.draft_reasons.length > 0) complaints.push(`cut-list.json: no reasons for ${piece.name}`);
    }
    complaints.push(...compare("cut-list.json", "the list", drafts.size > 0, list.draft));
  }

  // Every sheet of a card, for a sheet is carried to the bench alone.
  const cards = by_name(await sheets("bench-cards.html"), "Bench card of ");
  const pieces = new Map(list.pieces.map((piece) => [piece.name, piece]));
  for (const [name, of_card] of cards)
    for (const sheet of of_card) {
      complaints.push(...compare("bench card", name, drafts.has(name), says_draft(sheet)));
      for (const { reason } of pieces.get(name).draft_reasons)
        if (!of_card.some((one) => words_of(one).includes(reason))) complaints.push(`bench card of ${name} does not say: ${reason}`);
    }
  const hung = (sheet) => sheet.title.startsWith("Hoisted");
  const fit_sheets = await sheets("dry-fit-cards.html");
  const fits = by_name(fit_sheets.filter((sheet) => !hung(sheet)), "Dry fit of ");
  for (const [stay, of_stay] of by_name(fit_sheets.filter(hung), "Hoisted dry fit of "))
    for (const sheet of of_stay) complaints.push(...compare("hoisted dry-fit card", stay, stays.has(stay), says_draft(sheet)));
  const all_stays = [...new Set(list.pieces.map((piece) => piece.stay))];
  if (wanted("dry-fit-cards.html"))
    complaints.push(...all_stays.filter((stay) => !fits.has(stay)).map((stay) => `no dry-fit card of ${stay}`));
  if (wanted("bench-cards.html"))
    complaints.push(...[...pieces.keys()].filter((name) => !cards.has(name)).map((name) => `no bench card of ${name}`));
  for (const [stay, of_stay] of fits)
    for (const sheet of of_stay) complaints.push(...compare("dry-fit card", stay, stays.has(stay), says_draft(sheet)));
  for (const sheet of await sheets("order-list.html"))
    complaints.push(...compare("order list", sheet.title, drafts.size > 0, says_draft(sheet)));

  if (wanted("survey-report.html")) {
    const says = boat.read("survey-report.html").includes('<p class="notice">DRAFT');
    complaints.push(...compare("survey report", "the report", drafts.size > 0, says));
  }

  // In the tables two off that are printed alike are one piece of two names. A piece that is to be measured again is no draft,
  // and the plan keeps it back all the same.
  const kept_back = new Set(list.pieces.filter((piece) => piece.state === "measured once").map((piece) => piece.name));
  const waits = (name) => drafts.has(name) || kept_back.has(name);
  for (const file of ["cut-list.csv", "spool-plan.csv"].filter(wanted))
    for (const row of Papa.parse(boat.read(file).trimEnd(), { header: true }).data)
      complaints.push(
        ...compare(file, row.piece, row.piece.split(" + ").some(file === "spool-plan.csv" ? waits : (name) => drafts.has(name)), row.draft === "yes"),
      );
  for (const file of boat.files(".svg").map((whole) => path.basename(whole)))
    if (file.startsWith("stay-strips") && wanted(file))
      complaints.push(...(await strip_complaints(browser, path.join(boat.folder, file), list, stays)));
  return [...new Set(complaints)];
}

/** A strip is called after its stay, or after the part before the side for two sides that are alike. */
async function strip_complaints(browser, file, list, stays) {
  const { result } = await browser.visit(file, (page) =>
    page.evaluate(() =>
      [...document.querySelectorAll('g[id^="strip-"]')].map((strip) => [strip.id.slice("strip-".length), strip.textContent]),
    ),
  );
  return result.flatMap(([id, words]) => {
    const of_strip = [...new Set(list.pieces.map((piece) => piece.stay))].filter(
      (stay) => stay === id || stay.replace(/\.(port|starboard)$/, "") === id,
    );
    return of_strip.length === 0
      ? []
      : compare(path.basename(file), id, of_strip.some((stay) => stays.has(stay)), /\bDRAFT\b/.test(words));
  });
}

/** Boats with one thing changed, and the pieces that are drafts by it. */
const variants = [
  ["nothing-measured", "smallest", [/^ {2}contraction: .*\n/m, ""], ["shroud"]],
  ["eye-assumed", "smallest", ["95 mm measured", "95 mm assumed"], ["shroud"]],
  ["plate-assumed", "smidgeon", [/^( {2}stem-plate .*) drawn$/m, "$1 assumed"], ["forestay"]],
  [
    "port-assumed",
    "smidgeon",
    [/^( {2}upper-plate\.port: .*) measured "14 mm/m, '$1 assumed "14 mm'],
    ["upper-shroud.port"],
  ],
  ["with-stock", "sallow", ['measured "test wrap"', 'assumed "test wrap"'], ["shroud.port", "shroud.starboard"]],
  ["cord", "smallest", [/^ {2}contraction: /m, "  recovered: 50 % assumed\n  contraction: "], ["shroud"]],
];

export default async function drafts({ report, boats, browser, sheerpole, into }) {
  report.none("some boats have drafts and some have none", [
    ...(boats.some((boat) => boat.json("cut-list.json").draft) ? [] : ["no boat has drafts"]),
    ...(boats.some((boat) => !boat.json("cut-list.json").draft) ? [] : ["every boat has drafts"]),
  ]);
  for (const boat of boats) report.none(`drafts of ${boat.name}`, await draft_complaints(boat, browser));

  const folder = path.join(into, "drafts");
  cpSync(path.join(project, "examples"), folder, { recursive: true });
  for (const [name, from, [what, by], expected] of variants) {
    const rig = path.join(folder, `${name}.rig`);
    const text = readFileSync(path.join(folder, `${from}.rig`), "utf8");
    if (text.replace(what, by) === text) throw new Error(`${from}.rig has no ${what}`);
    writeFileSync(rig, text.replace(what, by));
    const boat = await sheerpole.build(name, rig, path.join(into, name));
    report.none(`drafts of ${name}`, await draft_complaints(boat, browser));
    const found = boat.json("cut-list.json").pieces.filter((piece) => piece.draft).map((piece) => piece.name);
    report.none(`which are drafts of ${name}`, String(found) === String(expected) ? [] : [`${found}, not ${expected}`]);
  }
  const smidgeon = path.join(folder, "smidgeon.rig");
  const tried = await sheerpole.build("tried", smidgeon, path.join(into, "tried"), "--set", "clevis-20.length=25 mm");
  const with_clevis = ["upper-shroud", "lower-shroud"].flatMap((stay) => [`${stay}.port`, `${stay}.starboard`]);
  report.none("drafts of a try on the command line", await draft_complaints(tried, browser, { tried: with_clevis }));

  const grisolde = boats.find((boat) => boat.name === "grisolde");
  const planted = await sheerpole.build("planted", grisolde.rig, path.join(into, "planted-drafts"));
  const with_stock = path.join(folder, "with-stock.rig");
  const stocked = await sheerpole.build("planted", with_stock, path.join(into, "planted-stock"));
  const plant = async (file, from, to, words, boat = planted) => {
    const whole = path.join(boat.folder, file);
    const text = readFileSync(whole, "utf8");
    if (text.replace(from, to) === text) throw new Error(`${file} has no ${from}`);
    writeFileSync(whole, text.replace(from, to));
    report.caught(`DRAFT in ${file}`, await draft_complaints(boat, browser, { only: file }), words);
    writeFileSync(whole, text);
  };
  await plant("bench-cards.html", /DRAFT/g, "", /bench card: .* is a draft and does not say so/);
  await plant("bench-cards.html", ">15\u202f250 mm<", ">15\u202f250 mm, DRAFT<", /bench card: forestay says DRAFT/);
  await plant("dry-fit-cards.html", "DRAFT", "", /dry-fit card: .* does not say so/);
  await plant("order-list.html", "DRAFT", "", /order list: .* does not say so/);
  await plant("survey-report.html", "DRAFT: do not", "Do not", /survey report/);
  await plant("stay-strips.svg", /DRAFT/g, "", /stay-strips/);
  await plant("spool-plan.csv", ",yes,", ",no,", /spool-plan/, stocked);
  const nobody_assumed = (found) => (found.startsWith('"class"') ? '"class": "drawn"' : '"assumptions": []');
  await plant("cut-list.json", /"class": "assumed"|"assumptions": \[[^\]]+\]/g, nobody_assumed, /cut-list.json/);
}
