// One stay: how far it is, the next thing to do, its sum, its marks, what it can take up, what is missing.

import { html, nothing, svg } from "lit-html";
import { app, change_by, go, open_dialog, toast_change } from "../state/app.js";
import { counted_readings, readings_of } from "../state/readings.js";
import { write_same_knot } from "../state/writing.js";
import { w } from "../words/words.js";
import { asked_fields } from "./form_view.js";
import { cord_marks, is_to_be_read, ladder } from "./ladder.js";
import { about_html, cord_picture, icon, length_html, mark, other_html, piece_title, sum_html } from "./marks.js";
import { measured } from "./measured_view.js";
import { stale_note } from "./numbers_view.js";

export const today = () => {
  const now = new Date();
  return `${now.getFullYear()}-${String(now.getMonth() + 1).padStart(2, "0")}-${String(now.getDate()).padStart(2, "0")}`;
};

function same_knot(piece, reading) {
  const text = app.project.files[app.project.root];
  const edits = write_same_knot({ root: app.project.root, text, stay: piece.stay, reading, note: w.written.hoisted_again, date: today() });
  change_by([edits], w.steps.second_reading(piece_title(piece)));
  toast_change(w.toast.second_reading);
}

const measure_buttons = (piece) =>
  html`<div class="pair">
    <button class="btn go" @click=${() => open_dialog({ name: "cord", piece: piece.name })}>${w.by_the_cord}</button>
    <button class="btn" @click=${() => open_dialog({ name: "keypad", run_of: piece.name, title: w.tape_title(piece_title(piece)) })}>${w.by_tape}</button>
  </div>`;

/** What is measured on a cord: which cord, which knot. */
function x_box(piece) {
  const reading = counted_readings(app.answers, piece.stay).find((each) => each.cord);
  if (!reading || !piece.card?.unknown) return nothing;
  const cord = app.answers.declarations.find((each) => each.kind === "cord" && each.name === reading.cord);
  return html`<div class="xbox"><b>X =</b><button class="link" @click=${() => go(`cord/${reading.cord}`)}>${cord_picture(reading.knots, 120)}<span class="vh">${w.go_to_cord}</span></button>
    <span></span><p class="sm">${w.x_is(cord?.title || reading.cord, reading.knots)} ${
      piece.order_mm === null ? nothing : html`${w.by_drawing} ${about_html(piece.order_mm)}: ${w.never_for_the_cut}`
    }</p></div>`;
}

function reasons(piece) {
  const first = piece.reasons.slice(0, 3);
  return html`<ul class="why">${first.map(({ reason, mend }) => html`<li><b>${reason}</b><span class="soft">${mend}</span></li>`)}
    ${piece.reasons.length > 3 ? html`<li class="soft">${w.more_reasons(piece.reasons.length - 3)}</li>` : nothing}</ul>`;
}

function measured_words(piece) {
  const all = readings_of(app.answers, piece.stay).filter((each) => !each.assumed);
  const days = [...new Set(all.map((each) => each.date).filter(Boolean))];
  return all.some((each) => each.cord)
    ? w.hoisted(all.length, days)
    : w.taped(Math.max(1, ...all.map((each) => each.runs)), days);
}

function head_box(piece) {
  const on_cord = counted_readings(app.answers, piece.stay).find((each) => each.cord && !each.assumed);
  const tape = counted_readings(app.answers, piece.stay).find((each) => each.runs > 0 && !each.assumed);
  const cut = html`<p class="k">${w.cut_label}</p><p class="num">${sum_html(piece.cut)}</p><p class="mm">${sum_html(piece.cut, other_html)}</p>
    ${piece.state === "drawn" ? nothing : html`<p class="sm">${measured_words(piece)}</p>`}`;
  // Measured more than once, and not confirmed by it.
  const all = readings_of(app.answers, piece.stay).filter((each) => !each.assumed);
  const disagrees = piece.state === "once" && (all.length > 1 || all.some((each) => each.runs > 1));
  const inside = {
    todo: () => html`<p class="k">${piece.order_mm === null ? nothing : html`${about_html(piece.order_mm)}, ${w.for_ordering}`}</p>
      <p>${w.not_measured_words}</p>${measure_buttons(piece)}`,
    drawn: () => html`${cut}<p class="sm strong">${piece.card?.state_words ?? ""}</p>${measure_buttons(piece)}`,
    not: () => html`<p class="num"><span class="plate">${w.not_yet_plate}</span></p>${reasons(piece)}`,
    once: () =>
      disagrees
        ? html`<p class="num"><span class="plate">${w.not_yet_plate}</span></p><p class="sm strong">${w.disagree_words}</p><p class="sm">${piece.card?.state_words ?? ""}</p>`
        : html`${cut}<p class="sm strong">${w.once_words}</p>`,
    differ: () => html`${cut}<p class="sm strong">${w.differ_words}</p><p class="sm">${piece.card?.state_words ?? ""}</p>`,
    ready: () => cut,
    record: () => cut,
  }[piece.state]();
  return html`<section class="big ${piece.state}" aria-label=${w.states[piece.state]}>
      <p class="st">${mark(piece.state)}<span>${w.states[piece.state]}</span></p>
      <div class="cut">${inside}</div>
      ${piece.state === "todo" ? nothing : x_box(piece)}
    </section>
    ${
      piece.state === "once" && on_cord
        ? html`<button class="btn go wide" @click=${() => same_knot(piece, on_cord)}>${w.hoisted_again}</button>
          <button class="btn quiet wide" @click=${() => open_dialog({ name: "cord", piece: piece.name })}>${w.another_knot}</button>`
        : nothing
    }
    ${
      piece.state === "once" && tape && !on_cord
        ? html`<button class="btn go wide" @click=${() => open_dialog({ name: "keypad", run_of: piece.name, title: w.tape_title(piece_title(piece)) })}>${w.second_run}</button>`
        : nothing
    }
    <button class="btn ${piece.state === "ready" || piece.state === "not" ? "go" : "quiet"} wide" @click=${() => go(`papers/bench/${piece.name}`)}>${w.bench_card}</button>`;
}

/** The range of an adjuster as a bar: from hauled tight, left, to fully open. */
function take_up(piece) {
  const stay = app.answers.lengths.stays.find((each) => each.name === piece.stay);
  if (!stay?.adjusters.length) return nothing;
  return html`<section class="blk"><h2>${w.take_up}</h2>${stay.adjusters.map((each) => {
    const range = each.to_tighten_mm + each.to_slacken_mm;
    const at = range > 0 ? Math.min(1, Math.max(0, each.to_tighten_mm / range)) : 0.5;
    return html`<div class="sheet tu"><p class="soft sm">${each.part}</p>
      <div class="lbls"><span>${w.tighten}<b>${length_html(each.to_tighten_mm)}</b></span><span>${w.slacken}<b>${length_html(each.to_slacken_mm)}</b></span></div>
      ${svg`<svg viewBox="0 0 300 34" role="img" aria-label=${w.take_up_picture(Math.round(at * 100))}>
        <rect x="2" y="18" width="296" height="12" class="range" /><path d=${`M${2 + at * 296} 16l-7 -12h14z`} class="at" />
        <path d=${`M${2 + at * 296} 16V32`} class="tick" /></svg>`}
      <p class="lbls sm soft"><span>${w.hauled_tight}</span><span>${w.as_long_as_it_goes}</span></p></div>`;
  })}</section>`;
}

export function stay_view(name) {
  const at = app.answers.pieces.findIndex((each) => each.name === name);
  const piece = app.answers.pieces[at];
  if (!piece)
    return html`<div class="in"><h1>${w.no_such_stay}</h1><button class="link" @click=${() => go("numbers")}>${w.all_stays}</button></div>`;
  const other = (step) => app.answers.pieces[(at + step + app.answers.pieces.length) % app.answers.pieces.length];
  const marks = cord_marks(piece);
  const asked = asked_fields(piece.name);
  const path = piece.card?.path.map(({ point }) => point.replace(/\.(port|starboard)$/, "")).join(" \u203a ");
  return html`<nav class="back" aria-label=${w.all_stays}>
      <button @click=${() => go("numbers")}>\u2039 ${w.all_stays}</button>
      <span><button aria-label=${w.stay_before} @click=${() => go(`numbers/${other(-1).name}`)}>${icon("M12 19V5M6 11l6-6 6 6")}</button>
      <button aria-label=${w.stay_behind} @click=${() => go(`numbers/${other(1).name}`)}>${icon("M12 5v14M6 13l6 6 6-6")}</button></span></nav>
    <header class="head"><h1>${piece_title(piece)}</h1>
      <p class="soft sm">${piece.full_title === piece.title ? nothing : html`${piece.full_title}. `}${path ? html`${path}. ` : nothing}${piece.card?.line.title || piece.card?.line.name}</p></header>
    ${stale_note()}
    <div class="in">${head_box(piece)}</div>
    ${piece.card ? html`<section class="blk"><h2>${w.how_it_adds_up}</h2><p class="soft sm">${is_to_be_read() ? w.tap_for_source : w.tap_a_part}</p><div class="sheet">${ladder(piece)}</div></section>` : nothing}
    ${marks === nothing || piece.state === "todo" || piece.state === "not" ? nothing : html`<section class="blk"><h2>${w.marks_on_the_cord}</h2><div class="sheet">${marks}</div></section>`}
    ${measured(piece)}
    ${take_up(piece)}
    ${
      asked.length
        ? html`<section class="blk" id="missing"><h2>${w.what_is_missing}</h2><p class="soft sm">${w.what_is_missing_words}</p>
      <ul class="sheet">${asked}</ul></section>`
        : nothing
    }
    ${piece.state === "todo" || piece.state === "drawn" ? nothing : html`<section class="blk"><h2>${w.measure_another_way}</h2>${measure_buttons(piece)}</section>`}`;
}
