// What is put in on a screen becomes text here, and nowhere else: edits of the file in which it belongs.

import { readings_of, runs_in, without_source } from "./readings.js";

/** @typedef {{file: string, edits: import("../core/edits.js").Edit[]}} FileEdits */

const at = (place, text) => ({ begin: place.begin.unit, end: place.end.unit, text });
/** Before the brace that closes a block. */
function into_block(declaration, line) {
  const end = declaration.block.end.unit - 1;
  return { begin: end, end, text: declaration.block.begin.line === declaration.block.end.line ? `\n  ${line}\n` : `  ${line}\n` };
}
const at_end = (text, block) => ({ begin: text.length, end: text.length, text: `${text.endsWith("\n") ? "" : "\n"}\n${block}` });
const find = (declaration, name) => declaration.properties.find((each) => each.name === name);

/** A number where a form has asked for it. @returns {FileEdits} */
export function write_number(entry, value, source) {
  const { place, before, after } = entry.write;
  return { file: place.file, edits: [at(place, `${before}${value}${source ? ` ${source}` : ""}${after}`)] };
}

/** A property of a declaration: what stands there makes way. */
function write_property(declaration, name, value) {
  const there = find(declaration, name);
  return there ? at(there.place, value) : into_block(declaration, `${name}: ${value}`);
}

/**
 * A stay that was hoisted on a cord. A reading that only says what is to be measured is filled in; else one is added.
 * @param {{answers: any, root: string, text: string, stay: string, cord: string, new_cord?: string, knots: number,
 *   offset: string, note: string, date: string}} how
 * @returns {FileEdits}
 */
export function write_hoisted({ answers, root, text, stay, cord, new_cord, knots, offset, note, date }) {
  const measured = `${offset} measured "${note}"`;
  const waiting = readings_of(answers, stay).find((each) => each.assumed && each.of === stay);
  const edits = [];
  if (new_cord !== undefined) edits.push(at_end(text, `cord ${cord} "${quoted(new_cord)}" {\n}\n`));
  if (waiting && waiting.method === "messenger") {
    const { declaration } = waiting;
    edits.push(write_property(declaration, "cord", cord), write_property(declaration, "knots", String(knots)));
    edits.push(write_property(declaration, "offset", measured));
    edits.push(write_property(declaration, "date", date));
    return { file: declaration.place.file, edits: joined(edits) };
  }
  const block = `reading of ${stay} {\n  method: messenger\n  cord: ${cord}\n  knots: ${knots}\n  offset: ${measured}\n  date: ${date}\n}\n`;
  if (waiting) edits.push(at(waiting.declaration.place, block.trimEnd()));
  else edits.push(at_end(text, block));
  return { file: waiting ? waiting.declaration.place.file : root, edits: joined(edits) };
}

/** What lies between the knot and the pins: all of it moves X. */
const BETWEEN_KNOT_AND_PINS = ["offset", "hoist-offset", "below-knot"];

/**
 * Hoisted once more, and it came to the same knot. The note sets it apart from a reading that was pasted twice, for both may be of
 * one day.
 * @returns {FileEdits}
 */
export function write_same_knot({ root, text, stay, reading, note, date }) {
  const lines = [`  method: messenger`, `  cord: ${reading.cord}`];
  if (reading.knots !== null) lines.push(`  knots: ${reading.knots}`);
  for (const name of BETWEEN_KNOT_AND_PINS) {
    const stated = find(reading.declaration, name);
    if (stated) lines.push(`  ${name}: ${stated.written}`);
  }
  const block = `reading of ${stay} {\n${lines.join("\n")}\n  date: ${date}\n  note: "${quoted(note)}"\n}\n`;
  return { file: root, edits: [at_end(text, block)] };
}

/**
 * A run with the tape. What only stood there to be measured makes way; a run that was read before stays beside it.
 * @returns {FileEdits}
 */
export function write_run({ answers, root, text, stay, length, date }) {
  const all = readings_of(answers, stay).filter((each) => each.of === stay);
  const waiting = all.find((each) => each.assumed);
  const block = (more) => `reading of ${stay} {\n  method: tape\n  runs: ${length} measured\n  date: ${date}\n${more}}`;
  if (waiting) return { file: waiting.declaration.place.file, edits: [at(waiting.declaration.place, block(""))] };
  const tape = all.find((each) => each.method === "tape" && each.runs > 0);
  if (tape) {
    const runs = find(tape.declaration, "runs");
    const value = `${without_source(runs.written)}, ${length} measured`;
    return { file: tape.declaration.place.file, edits: [at(runs.place, value)] };
  }
  // Beside a cord without a number it has to be said which of the two counts.
  return { file: root, edits: [at_end(text, `${block(all.length > 0 ? "  counts: yes\n" : "")}\n`)] };
}

/**
 * What was measured is struck out: one run of several, or the reading.
 * @param {Record<string, string>} files
 * @param {import("./readings.js").ReadingView} reading
 * @param {number | null} run null: all of it
 * @returns {FileEdits}
 */
export function write_struck(files, reading, run) {
  const { file, begin, end } = reading.declaration.place;
  if (run !== null) {
    const { place, written } = find(reading.declaration, "runs");
    const source = written.slice(without_source(written).length);
    return { file, edits: [at(place, runs_in(reading).filter((_, i) => i !== run).join(", ") + source)] };
  }
  // With the line that it ends, and one of the blank lines round it.
  const text = files[file];
  const until = text[end.unit] === "\n" ? end.unit + 1 : end.unit;
  const from = text.slice(0, begin.unit).endsWith("\n\n") ? begin.unit - 1 : begin.unit;
  return { file, edits: [{ begin: from, end: until, text: "" }] };
}

/** Another tally for all readings of one knot. @returns {FileEdits[]} */
export const write_knots = (readings, knots) =>
  readings.map(({ declaration }) => ({
    file: declaration.place.file,
    edits: [write_property(declaration, "knots", String(knots))],
  }));

/** What a declaration is called, between the quotes before its block. @returns {FileEdits} */
export function write_title(text, declaration, title) {
  const begin = declaration.place.begin.unit;
  const head = text.slice(begin, declaration.block.begin.unit);
  const found = /"(?:[^"\\\n]|\\.)*"/.exec(head);
  const words = `"${quoted(title)}"`;
  const edit = found
    ? { begin: begin + found.index, end: begin + found.index + found[0].length, text: words }
    : { begin: declaration.block.begin.unit, end: declaration.block.begin.unit, text: `${words} ` };
  return { file: declaration.place.file, edits: [edit] };
}

/** Texts between quotes. */
export const quoted = (text) => text.replace(/[\n\r]/g, " ").replace(/[\\"]/g, "\\$&");

/** Edits at one place, put together in their order. */
function joined(edits) {
  const result = [];
  for (const edit of edits) {
    const same = result.find((each) => each.begin === edit.begin && each.end === edit.end && each.begin === each.end);
    if (same) same.text += edit.text;
    else result.push({ ...edit });
  }
  return result;
}
