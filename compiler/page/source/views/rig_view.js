// The rig from the side and from astern; a slider that tries a number; what the trial changes.

import { html, nothing } from "lit-html";
import { app, ask, change_by, end_trial, go, is_wide, redraw, say, toast, toast_change } from "../state/app.js";
import { changes_of, GROUPS, tryables } from "../state/trial.js";
import { w } from "../words/words.js";
import { number_title } from "./form_view.js";
import { stale_note } from "./numbers_view.js";
import { about_html, change_html, length_html, length_words, mark, piece_title, sum_html } from "./marks.js";
import { seal_line } from "./seal_view.js";
import { strip } from "./strip.js";
import { bounds, view_drawing, views_of } from "./rig_drawing.js";
import { turns_panel } from "./turns_panel.js";

function tried_title(each) {
  const stay = each.group === "setting" && app.answers.pieces.find((piece) => piece.stay.split(".")[0] === each.stay);
  return `${stay ? `${stay.title}: ` : ""}${number_title(each.entry)}${each.axis ? `, ${w.axes[each.axis]}` : ""}`;
}

/** The value as it is said: lengths in the unit of the reader, changes with their sign. */
function value_words(each, value) {
  if (each.unit !== "mm") return `${Math.round(value * 1000) / 1000} ${each.unit}`;
  const sign = each.base === null ? (value < 0 ? "\u2212 " : "+ ") : "";
  return `${sign}${length_words(each.base === null ? Math.abs(value) : value)}`;
}

let asked_turn = 0;
/** Tries a value; answers that were overtaken are left out. */
async function try_value(each, value) {
  const mine = ++asked_turn;
  const start = each.base ?? 0;
  if (value === start) {
    end_trial();
    redraw();
    return;
  }
  app.trial = { ...app.trial, key: each.key, value };
  redraw();
  try {
    const trial = await ask({ ask: "set", settings: [each.setting(value)] });
    if (mine !== asked_turn || app.trial.value !== value) return;
    const failed =
      trial.changed === null
        ? trial.findings.files.flatMap((file) => file.findings).find((one) => one.severity === "error")
        : null;
    // That a value is only tried is said already.
    const shown = ({ finding }) => !["set-on-command-line", "assumed-input"].includes(finding);
    app.trial = {
      ...app.trial,
      changes: changes_of(trial, app.answers.pieces),
      appear: trial.appear.filter(shown),
      vanish: trial.vanish.filter(shown),
      failed: failed?.message ?? "",
    };
    redraw();
    say(w.trial_said(value_words(each, value), app.trial.changes.size));
  } catch (fault) {
    toast(String(fault.message));
  }
}

function keep_it(each) {
  const { place } = each.entry;
  const edit = { begin: place.begin.unit, end: place.end.unit, text: each.text(app.trial.value) };
  const words = w.steps.tried(tried_title(each), value_words(each, app.trial.value));
  change_by([{ file: place.file, edits: [edit] }], words);
  toast_change(w.toast.kept);
}

function slider(all) {
  const each = all.find(({ key }) => key === app.trial.key) ?? all[0];
  const start = each.base ?? 0;
  const value = app.trial.key === each.key && app.trial.value !== null ? app.trial.value : start;
  const step = (by) =>
    try_value(
      each,
      Math.min(each.most, Math.max(each.least, (Math.round(((value + by * each.step) / each.step) * 1e9) / 1e9) * each.step)),
    );
  const moved = value !== start;
  return html`<section class="try" aria-label=${w.try_another}>
    <div class="trygrid"><label class="strong">${w.try_another}
        <select @change=${(event) => {
          end_trial();
          app.trial.key = event.target.value;
          redraw();
        }}>${GROUPS.map((group) => {
          const of_group = all.filter((one) => one.group === group);
          return of_group.length
            ? html`<optgroup label=${w.tried_groups[group]}>${of_group.map((one) => html`<option value=${one.key} ?selected=${one.key === each.key}>${tried_title(one)}</option>`)}</optgroup>`
            : nothing;
        })}</select></label>
      <p class="tryval"><b>${each.unit === "mm" && each.base !== null ? length_html(value) : value_words(each, value)}</b><span class="soft">${each.base === null ? w.from_the_file : w.in_the_file(value_words(each, start))}</span></p></div>
    <div class="sk"><div class="slide">
        <button class="btn" aria-label=${w.less} @click=${() => step(-1)}>\u2212</button>
        <input type="range" aria-label=${tried_title(each)} aria-valuetext=${value_words(each, value)} min=${each.least} max=${each.most} step=${each.step}
          .value=${String(value)} @input=${(event) => try_value(each, Number(event.target.value))} />
        <button class="btn" aria-label=${w.greater} @click=${() => step(1)}>+</button></div>
      <div class="keep"><button class="btn quiet" ?disabled=${!moved} @click=${() => try_value(each, start)}>${w.put_it_back}</button>
        <button class="btn" ?disabled=${!moved || Boolean(app.trial.failed)} @click=${() => keep_it(each)}>${w.keep_in_file}</button></div></div>
    ${app.trial.failed ? html`<p class="note"><span class="g not s"></span><span>${app.trial.failed}</span></p>` : nothing}
    ${moved && !app.trial.failed && app.trial.changes.size === 0 ? html`<p class="sm">${w.changes_nothing}</p>` : nothing}
    ${[
      ["appear", w.appears],
      ["vanish", w.vanishes],
    ].map(([which, words]) =>
      app.trial[which].length
        ? html`<p class="sm"><b>${words}</b> ${app.trial[which].map(({ message }) => message).join(". ")}</p>`
        : nothing,
    )}
  </section>`;
}

const live_row = (piece) => {
  const tried = app.trial.changes.get(piece.name);
  const shown =
    piece.state === "todo"
      ? piece.order_mm === null
        ? w.no_number
        : about_html(piece.order_mm)
      : piece.state === "not"
        ? html`<span class="plate">${w.not_yet_plate}</span>`
        : sum_html(piece.cut);
  return html`<li class=${tried ? "lit" : ""}><button data-live=${piece.name} aria-current=${String(piece.name === app.selected)} @click=${() => go(`numbers/${piece.name}`)}>
    <span class="no" aria-hidden="true">${piece.number}</span><span>${piece_title(piece)}<span class="vh">, ${w.states[piece.state]}</span></span>
    <span class="v">${shown}${tried ? html`<small>${tried.again ? w.expect_again(change_html(tried.change_mm)) : w.tried(change_html(tried.change_mm))}</small>` : nothing}</span></button></li>`;
};

function select(name) {
  app.selected = name;
  if (is_wide()) {
    app.left = { view: "numbers", of: name };
    history.replaceState(null, "", `#numbers/${encodeURIComponent(name)}`);
  }
  redraw();
}

export function rig_view() {
  const views = app.answers.lengths ? views_of(app.answers.lengths.diagram) : null;
  const all = tryables(app.answers);
  const { calculated } = app.answers.findings;
  const boxes = views ? [bounds(views.side), bounds(views.front)] : [];
  const how = {
    top: Math.min(...boxes.map((box) => box.top)),
    bottom: Math.max(...boxes.map((box) => box.bottom)),
    pieces: app.answers.pieces,
    selected: app.selected,
    lit: new Set(app.trial.changes.keys()),
    tap: select,
  };
  return html`<h1 class="vh">${w.views.rig}</h1>
    ${
      views && views.side.stays.size
        ? html`<div class="rigwrap">${view_drawing("side", views.side, how)}${view_drawing("front", views.front, how)}</div>`
        : calculated
          ? html`<div class="in"><p class="note">${mark("todo")}<span>${app.busy ? w.working : w.no_drawing}</span></p></div>`
          : stale_note()
    }
    ${all.length && calculated ? slider(all) : nothing}
    ${turns_panel()}
    ${seal_line()}
    ${strip(app.answers.pieces.find((piece) => piece.name === app.selected))}
    <ul class="live">${app.answers.pieces.map(live_row)}</ul>`;
}
