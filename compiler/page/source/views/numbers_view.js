// The list of stays: how far each is, and the one best thing to do.

import { html, nothing } from "lit-html";
import { app, go, open_dialog } from "../state/app.js";
import { first_error, is_known } from "../state/answers.js";
import { missing_libraries } from "../state/open_files.js";
import { cords_of, counted_readings } from "../state/readings.js";
import { w } from "../words/words.js";
import { about_html, arrow, change_html, cord_picture, mark, other_html, piece_title, sum_html } from "./marks.js";

export function counts() {
  const count = (...states) => app.answers.pieces.filter((piece) => states.includes(piece.state)).length;
  return {
    all: app.answers.pieces.length,
    ready: count("ready", "record"),
    once: count("once"),
    differ: count("differ"),
    not: count("not"),
    todo: count("todo"),
    drawn: count("drawn"),
  };
}

/** How a stay was measured, as a line below its name. */
export function measured_line(piece) {
  const readings = counted_readings(app.answers, piece.stay);
  const cord = readings.find((each) => each.cord && !each.assumed);
  if (cord) return html`${cord_picture(cord.knots)}<span class="nb">${w.knots(cord.knots)}</span>`;
  const tape = readings.find((each) => each.runs > 0 && !each.assumed);
  if (tape) return html`${w.runs(w.methods[tape.method] ?? tape.method, tape.runs)}`;
  return html`${piece.state === "todo" ? w.nothing_read : w.from_drawing}`;
}

/** The number that is shown: none finer than a foot before somebody has measured. */
function value(piece) {
  const tried = app.trial.changes.get(piece.name);
  const change = tried
    ? html`<small class="tried">${tried.again ? w.expect_again(change_html(tried.change_mm)) : w.tried(change_html(tried.change_mm))}</small>`
    : nothing;
  if (piece.state === "todo")
    return html`<span class="v">${piece.order_mm === null ? w.no_number : about_html(piece.order_mm)}
      ${tried ? change : html`<small>${piece.order_mm === null ? nothing : w.for_ordering}</small>`}</span>`;
  if (piece.state === "not")
    return html`<span class="v"><span class="plate">${w.not_yet_plate}</span>${tried ? change : html`<small>${w.reasons_left(piece.reasons.length)}</small>`}</span>`;
  return html`<span class="v">${sum_html(piece.cut)}${tried ? change : html`<small>${sum_html(piece.cut, other_html)}</small>`}</span>`;
}

const row = (piece) => {
  const lit = app.trial.changes.has(piece.name);
  return html`<li>
    <button class="row ${lit ? "lit" : ""}" data-piece=${piece.name} aria-current=${String(piece.name === app.selected)}
      @click=${() => go(`numbers/${piece.name}`)}>
      ${mark(lit ? "not" : piece.state)}
      <span class="t"><span class="n">${piece_title(piece)}<span class="vh">, ${w.states[piece.state]}</span></span>
        <span class="d">${measured_line(piece)}</span></span>
      ${value(piece)}
    </button>
  </li>`;
};

function tally() {
  const { pieces } = app.answers;
  const of = counts();
  const legend = ["ready", "once", "differ", "not", "drawn", "todo"].filter((state) => of[state] > 0);
  return html`<div class="in tallied">
    <div class="tally" aria-hidden="true">${pieces.map((piece) => html`<i class=${app.trial.value !== null ? "not" : piece.state}></i>`)}</div>
    ${
      app.trial.value !== null
        ? html`<p class="sm strong">${w.trial_words}</p>`
        : html`<div class="legend">${legend.map((state) => html`<span>${mark(state, true)} ${w.count_of[state](of[state])}</span>`)}</div>`
    }
  </div>`;
}

/** A note where the numbers are those from before. */
export function stale_note() {
  const error = first_error(app.answers);
  if (!error) return nothing;
  const { place } = error;
  return html`<div class="in"><div class="note"><span class="g not" aria-hidden="true"></span>
    <span><b>${w.cannot_be_read(error)}</b>${error.message}
      ${app.answers.stale ? html`<br />${w.from_before}` : nothing}
      <span class="acts">${
        missing_libraries(app.project).length
          ? html`<button class="btn" @click=${() => go("files")}>${w.files_and_libraries}</button>`
          : html`<button class="btn" @click=${() => go(place ? `text/${place.file}:${place.begin.line + 1}` : "text")}>${w.go_to_line}</button>`
      }</span></span></div></div>`;
}

export function numbers_view() {
  const cords = cords_of(app.answers);
  return html`<h1 class="vh">${w.views.numbers}</h1>
    ${app.answers.pieces.length ? tally() : nothing}
    ${stale_note()}
    ${
      app.answers.pieces.length === 0 && !first_error(app.answers)
        ? html`<div class="in"><p>${app.busy ? w.working : w.no_stays}</p></div>`
        : html`<ul class="stays">${app.answers.pieces.map(row)}</ul>`
    }
    ${
      cords.length
        ? html`<section class="blk"><h2>${w.cords}</h2><ul class="menu">${cords.map(
            (cord) => html`<li><button @click=${() => go(`cord/${cord.name}`)}>${cord_picture(3)}
            <span>${cord.title || cord.name}<small>${w.knots_on_it(cord.knots.length)}</small></span>${arrow}</button></li>`,
          )}</ul></section>`
        : nothing
    }
    ${is_known(app.answers) ? whole_boat() : nothing}`;
}

const whole_boat = () =>
  html`<section class="blk"><h2>${w.whole_boat}</h2><ul class="menu"><li>
      <button @click=${() => open_dialog({ name: "form", piece: null })}>${mark("not")}<span>${w.assumed_numbers}<small>${w.assumed_count(
        app.answers.numbers.filter((each) => each.state === "assumed" || each.state === "missing").length,
      )}</small></span>${arrow}</button>
    </li></ul></section>`;

/** The one best thing to do: in words, and where. */
export function next_step() {
  const error = first_error(app.answers);
  const missing = error ? missing_libraries(app.project) : [];
  if (missing.length) return { words: w.next.library(missing[0]), to: "files" };
  if (error) return { words: w.next.error(error), to: "text" };
  const first = (state) => app.answers.pieces.find((piece) => piece.state === state);
  for (const state of ["once", "differ", "not", "todo", "drawn"]) {
    const piece = state === "not" && first("todo") ? undefined : first(state);
    if (piece) {
      const on_cord = counted_readings(app.answers, piece.stay).some((each) => each.cord);
      return { words: w.next[state](piece_title(piece), on_cord), to: `numbers/${piece.name}` };
    }
  }
  return app.answers.pieces.length ? { words: w.next.print(app.answers.pieces.length), to: "papers" } : null;
}
