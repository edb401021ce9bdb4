// A bench card alone is enough: what it prints is read as a person reads it, worked out again from the lengths of
// cut-list.json by the rules of docs/backends/bench-card.md, laid out along the piece and closed from both ends.

import { cpSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { project } from "./papers.mjs";
import { by_name, sheets_of, words_of } from "./sheets.mjs";

const inch = 25.4; // mm; ISO 80000-3, annex

/** What the head of a card says of its unit: {kind, part in mm, step in parts}. */
function unit_of(words) {
  const found = words.match(/Lengths in (millimetres|inches|feet and inches) to (\S+(?: \d+\/\d+)?)(?: mm|")/);
  if (found === null) throw new Error(`no unit is named in: ${words}`);
  const millimetres = found[1] === "millimetres";
  const unit = { kind: found[1], part: millimetres ? 0.1 : inch / 64, step: 1 };
  unit.step = parts_of(unit, millimetres ? found[2] : `${found[2]}"`);
  return unit;
}

/** "12\u202f998", `42' 7 3/4"`, `3/8"` as parts of the unit: whole numbers, so that sums close exactly. */
function parts_of(unit, text) {
  if (unit.kind === "millimetres") {
    const found = text.replace(/(\d)\s(?=\d{3}(?!\d))/g, "$1").match(/^(\d+)(?:\.(\d))?$/);
    if (found === null) throw new Error(`no length in millimetres: ${text}`);
    return Number(found[1]) * 10 + Number(found[2] ?? 0);
  }
  const found = text.match(/^(?:(\d+)')? ?(?:(\d+)(?: (\d+)\/(\d+))?"|(\d+)\/(\d+)")?$/);
  if (found === null || text === "") throw new Error(`no length in ${unit.kind}: ${text}`);
  const [, feet, inches, over, under, over_alone, under_alone] = found.map((one) => Number(one ?? 0));
  const fraction = under > 0 ? over / under : under_alone > 0 ? over_alone / under_alone : 0;
  return (feet * 12 + inches + fraction) * 64;
}

/** "X + 32" is {x: true, parts: 320}. */
function read_length(unit, text) {
  const found = text.replace(/ mm$/, "").match(/^(X)?(?:(?:^| )?([+-]) ?)?(.*)$/);
  const [, x, sign, amount] = found;
  const parts = amount === "" ? 0 : parts_of(unit, amount);
  return { x: x !== undefined, parts: sign === "-" ? -parts : parts };
}

const same = (a, b) => a.x === b.x && a.parts === b.parts;
const shown = (one) => `${one.x ? "X + " : ""}${one.parts}`;

/** Half away from zero to the step. A half that the six decimals of the JSON may have made counts either way. */
function rounded(unit, mm) {
  const steps = Math.abs(mm) / unit.part / unit.step;
  const to = (whole) => Math.sign(mm) * whole * unit.step + 0;
  const either = Math.abs(steps - Math.floor(steps) - 0.5) < 1e-4;
  return either ? [to(Math.floor(steps)), to(Math.floor(steps) + 1)] : [to(Math.floor(steps + 0.5))];
}

/** The rows of the table of marks, over all sheets of the card: a number in the margin, a name, two places that end below each
 *  other. Which end a mark is of says its half of the table. */
function marks_of(sheets, unit) {
  const rows = [];
  for (const { texts } of sheets)
    texts.forEach((one, i) => {
      const [name, aloft, below] = texts.slice(i + 1, i + 4);
      if (!one.bold || !/^\d+$/.test(one.text) || Math.abs(one.x - sign_at) > 0.01 || !aloft?.end || !below?.end) return;
      if (name.y !== aloft.y || name.y !== below.y) return;
      rows.push({
        number: Number(one.text),
        name: name.text,
        aloft: read_length(unit, aloft.text),
        below: read_length(unit, below.text),
      });
    });
  return rows;
}

/** Where the numbers of the marks stand: the margin of the sheet and 3 mm. */
const sign_at = 18;

/** "throat, on the tail" of "throat aloft, on the tail". */
const without_its_end = (name) => name.replace(/ (?:aloft|below)/, "");

/** The amount behind some words of the card; undefined when they are not there. */
function amount_after(unit, words, lead, behind) {
  const found = words.match(new RegExp(`${lead}((?:X(?: [+-] )?)?[0-9'"/ .]*?)( mm)?${behind}`));
  return found === null ? undefined : read_length(unit, found[1].trim());
}

/** Complaints about the card of one piece. */
export function card_complaints(piece, sheets) {
  const words = sheets.map(words_of).join(" ");
  // A draft has no length of its own to be read in a unit.
  if (piece.draft) return draft_complaints(words, marks_of(sheets, { kind: "millimetres", part: 0.1, step: 10 }));
  // One that was measured once has marks, up to the dry fit, and nothing to cut by.
  if (words.includes("MEASURE AGAIN"))
    return [
      ...(/\bCUT [X0-9]/.test(words) ? ["what was measured once has a cut"] : []),
      ...(/Cut (?:to|at) /.test(words) ? ["what was measured once says where to cut"] : []),
    ];
  const unit = unit_of(words);
  const complaints = [];
  const expect = (what, printed, x, mm) => {
    if (printed === undefined) complaints.push(`${what} is not on the card`);
    else if (!rounded(unit, mm).some((parts) => same(printed, { x, parts })))
      complaints.push(`${what}: the card has ${shown(printed)}, not ${rounded(unit, mm).join(" or ")}`);
  };
  const total = (name) => piece.sum.find((section) => section.name === name).printed_total_mm;
  // A chain goes by its links, which a unit test looks at.
  if (/Links to count: \d+/.test(words)) return complaints;
  // Between the marks of a wire lies what they leave of its cut: at most a step for each of them off what it rounds to itself.
  const by_marks = piece.bench.marks.some((mark) => /^(?:mouth of the terminal|bearing of the eye)/.test(mark.name));
  const expect_body = (what, printed, x, mm, steps = by_marks ? 2 : 0) => {
    if (printed === undefined || steps === 0) return expect(what, printed, x, mm);
    if (printed.x !== x || Math.abs(printed.parts - rounded(unit, mm)[0]) > steps * unit.step)
      complaints.push(`${what}: the card has ${shown(printed)}, not about ${rounded(unit, mm).join(" or ")}`);
  };
  const from_cord = words.includes("FROM THE CORD");
  const cut = amount_after(unit, words, "CUT ", " body, (?:bearing|mouth)");
  expect("the cut", cut, piece.cut.plus_x, total("cut"));
  // A wire that is closed aloft is cut from its mouth, which the program of the card's steps looks at.
  if (!words.includes("from the mouth of the closed end"))
    expect("where to cut", amount_after(unit, words, "Cut at \\d+ and at \\d+: ", "\\. "), piece.cut.plus_x, total("cut"));
  expect_body("the body", amount_after(unit, words, "Measure again(?:, the pull let off, [^:]+| at the dock tension(?:, [^:]+ N)?)?: ", " from (?:bearing to bearing|mouth to mouth)"), piece.body.plus_x, total("body"));
  if (piece.bench.dry_fit !== null) {
    const { unknown, known_mm } = piece.bench.dry_fit;
    // Of a rope it is the sum of printed rows, in which two splices have been rounded.
    expect_body("the dry fit", amount_after(unit, words, "(?:cut or buried|cut or closed|below not closed): ", " from (?:bearing|mouth)"), unknown, known_mm, by_marks ? 2 : 1);
  }
  // The columns of a card from the cord are followed, step by step, by a unit test.
  if (from_cord || cut === undefined) return complaints;
  complaints.push(...by_hand(unit, words, cut));

  const rows = marks_of(sheets, unit);
  if (rows.length !== piece.bench.marks.length)
    return [...complaints, `${rows.length} marks on the card, ${piece.bench.marks.length} in the list`];
  rows.forEach((row, i) => {
    const mark = piece.bench.marks[i];
    const name = `mark ${row.number}, ${row.name}`;
    if (row.number !== i + 1 || row.name !== without_its_end(mark.name)) complaints.push(`${name} should be ${i + 1}, ${mark.name}`);
    // The nearer end is rounded; the other is what the cut leaves.
    const { from_aloft, from_below } = mark;
    const by_aloft =
      from_aloft.unknown === from_below.unknown ? from_aloft.known_mm <= from_below.known_mm : from_below.unknown;
    if (by_aloft) expect(`${name}, from aloft`, row.aloft, from_aloft.unknown, from_aloft.known_mm);
    else expect(`${name}, from below`, row.below, from_below.unknown, from_below.known_mm);
    if (row.aloft.x && row.below.x) complaints.push(`${name}: X from both ends`);
    if (!same({ x: row.aloft.x || row.below.x, parts: row.aloft.parts + row.below.parts }, cut))
      complaints.push(`${name}: ${shown(row.aloft)} and ${shown(row.below)} do not add up to ${shown(cut)}`);
  });
  return [...complaints, ...laid_out(rows)];
}

/** A card of a draft has nothing to cut by. */
function draft_complaints(words, rows) {
  const complaints = [];
  if (/\bCUT [X0-9]/.test(words)) complaints.push("a draft has a cut");
  if (/Cut (?:to|at) /.test(words)) complaints.push("a draft says where to cut");
  if (rows.length > 0) complaints.push("a draft has marks");
  if (!words.includes("What releases this card")) complaints.push("nothing says what releases it");
  return complaints;
}

/** "By hand: body 7290 mm + 1552 mm for the ends - 7 mm for the line = 8835 mm." */
function by_hand(unit, words, cut) {
  const found = words.match(/By hand: body (.*?) ([+-]) ([^+-]*?) for the ends(?: ([+-]) ([^+-]*?) for the line)? = (.*?)\. /);
  if (found === null) return ["the sum by hand is not on the card"];
  const [, body, ends_sign, ends, line_sign, line, sum] = found;
  const signed = (sign, text) => read_length(unit, text).parts * (sign === "-" ? -1 : 1);
  const printed = read_length(unit, sum);
  const added = read_length(unit, body).parts + signed(ends_sign, ends) + (line === undefined ? 0 : signed(line_sign, line));
  return same(printed, cut) && printed.parts === added ? [] : [`by hand ${added} comes out, ${shown(printed)} is printed`];
}

/** The marks laid along the piece, once from each end: they come in their order, and the ways between them are alike. */
function laid_out(rows) {
  const complaints = [];
  for (let i = 1; i < rows.length; ++i) {
    const [before, row] = [rows[i - 1], rows[i]];
    const down = row.aloft.x === before.aloft.x ? row.aloft.parts - before.aloft.parts : undefined;
    const up = row.below.x === before.below.x ? before.below.parts - row.below.parts : undefined;
    if (down !== undefined && down < 0) complaints.push(`mark ${row.number} lies above the one before it`);
    if (down !== up) complaints.push(`from mark ${before.number} to ${row.number}: ${down} from aloft, ${up} from below`);
  }
  const [first, last] = [rows[0], rows[rows.length - 1]];
  if (first.aloft.x || first.aloft.parts !== 0) complaints.push("the first mark is not the zero");
  if (last.below.x || last.below.parts !== 0) complaints.push("the last mark is not the end below");
  return complaints;
}

const shops = ["inches", "feet-and-inches\n  round-to: 1/8 in", "millimetres\n  round-to: 5 mm", "millimetres\n  round-to: 0.1 mm"]
  .map((unit, i) => `\nshop shed-${i} {\n  delivered-open: 50 %\n  unit: ${unit}\n}\n`)
  .join("");

export default async function bench_cards({ report, boats, browser, sheerpole, into }) {
  const folder = path.join(into, "shops");
  cpSync(path.join(project, "examples"), folder, { recursive: true });
  const with_shops = [];
  for (const name of ["pellimoor", "smallest"]) {
    const rig = path.join(folder, `${name}.rig`);
    writeFileSync(rig, readFileSync(rig, "utf8") + shops);
    for (const [, shop] of shops.matchAll(/^shop (\S+)/gm)) {
      const boat_name = `${name}-${shop}`;
      with_shops.push(await sheerpole.build(boat_name, rig, path.join(into, boat_name), "--shop", shop));
    }
  }

  let cards = 0;
  let unknown = 0;
  const units = new Set();
  for (const boat of [...boats, ...with_shops]) {
    const pieces = boat.json("cut-list.json").pieces;
    const sheets = by_name(await sheets_of(browser, path.join(boat.folder, "bench-cards.html")), "Bench card of ");
    const complaints = [];
    if (sheets.size !== pieces.length) complaints.push(`${sheets.size} cards of ${pieces.length} pieces`);
    for (const piece of pieces) {
      complaints.push(...card_complaints(piece, sheets.get(piece.name)).map((one) => `${piece.name}: ${one}`));
      if (!piece.draft) {
        const unit = unit_of(words_of(sheets.get(piece.name)[0]));
        units.add(`${unit.kind} ${unit.step}`);
      }
      cards += 1;
      if (piece.unknown) unknown += 1;
    }
    report.none(`bench cards of ${boat.name}`, complaints);
  }
  report.none("cards of all sorts", [
    ...(cards > 80 ? [] : [`only ${cards} cards`]),
    ...(unknown > 0 ? [] : ["none with X"]),
    ...(units.size === 5 ? [] : [`units: ${[...units].join(", ")}`]),
  ]);
  await plant_faults(report, boats.find((boat) => boat.name === "sallow"), browser);
}

async function plant_faults(report, boat, browser) {
  const piece = boat.json("cut-list.json").pieces[0];
  const sheets = by_name(await sheets_of(browser, path.join(boat.folder, "bench-cards.html")), "Bench card of ").get(piece.name);
  const plant = (name, from, to, words) => {
    const changed = structuredClone(sheets);
    const texts = changed.flatMap((sheet) => sheet.texts).filter((one) => one.text.includes(from));
    if (texts.length === 0) throw new Error(`the card has no ${from}`);
    texts[0].text = texts[0].text.replace(from, to);
    report.caught(name, card_complaints(piece, changed), words);
  };
  const mm = (name) => String(Math.round(piece.sum.find((section) => section.name === name).printed_total_mm));
  plant("a cut that is 1 mm off", `${mm("cut")} mm`, `${Number(mm("cut")) + 1} mm`, /the cut/);
  plant("another cut at the knife", `: ${mm("cut")} mm. Take`, `: ${Number(mm("cut")) - 1} mm. Take`, /where to cut/);
  plant("a mark that is 1 mm off", "808", "809", /mark 4/);
  plant("a sum that does not close", `body ${mm("body")}`, `body ${Number(mm("body")) + 1}`, /by hand/);
  plant("a dry fit that is off", "7323 mm from bearing", "7333 mm from bearing", /dry fit/);
  plant("another name of a mark", "taper begins", "taper ends", /taper/);
  const marks = structuredClone(piece);
  marks.bench.marks.pop();
  report.caught("a mark too many", card_complaints(marks, sheets), /marks/);
}
