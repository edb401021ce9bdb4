// What was measured of one stay, reading by reading, each to be struck out again: a slip need not be looked for in the text.

import { html, nothing } from "lit-html";
import { app, change_by, toast_change } from "../state/app.js";
import { hung_below, readings_of, runs_in } from "../state/readings.js";
import { write_struck } from "../state/writing.js";
import { w } from "../words/words.js";
import { is_to_be_read } from "./ladder.js";
import { cord_picture, piece_title } from "./marks.js";

/** What of one reading is struck out by itself: a run of the tape, or the reading as a whole. */
function items_of(reading) {
  if (!reading.cord && reading.runs > 1)
    return runs_in(reading).map((run, at) => ({ words: run, picture: nothing, run: at }));
  const cord = app.answers.declarations.find((each) => each.kind === "cord" && each.name === reading.cord);
  return reading.cord
    ? [{ words: w.on_cord(cord?.title || reading.cord, reading.knots), picture: cord_picture(reading.knots, 90), run: null }]
    : [{ words: runs_in(reading)[0] ?? w.no_length, picture: nothing, run: null }];
}

function strike(piece, reading, { words, run }) {
  change_by([write_struck(app.project.files, reading, run)], w.steps.struck(piece_title(piece), words));
  toast_change(w.toast.struck(words));
}

export function measured(piece) {
  const all = readings_of(app.answers, piece.stay).filter((each) => !each.assumed);
  if (all.length === 0) return nothing;
  const more = (reading) => [
    w.methods[reading.method] ?? reading.method,
    reading.date,
    hung_below(reading) && w.end_below(hung_below(reading)),
    reading.of !== piece.stay && piece.side !== "centre" && w.for_both_sides,
  ];
  const row = (reading, item) =>
    html`<li><span class="t">${item.picture}<span>${item.words}<small>${more(reading).filter(Boolean).map((words, at) => html`${at ? ", " : ""}<span class="nb">${words}</span>`)}</small></span></span>
      ${is_to_be_read() ? nothing : html`<button class="btn quiet" @click=${() => strike(piece, reading, item)} aria-label=${w.strike(item.words)}>${w.strike_out}</button>`}</li>`;
  return html`<section class="blk" id="measured"><h2>${w.what_was_measured}</h2>
    <ul class="sheet runs">${all.flatMap((reading) => items_of(reading).map((item) => row(reading, item)))}</ul></section>`;
}
