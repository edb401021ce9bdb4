// The pad on which a number is put in: feet, inches and fractions without a keyboard. It says at once what the number is.

import { html, nothing } from "lit-html";
import { feet_text, likely_slip, mm_text, read_length } from "../core/lengths.js";
import { FRACTIONS, with_key } from "../core/keypad_text.js";
import { app, change_by, close_dialog, go, open_dialog, redraw, toast, toast_change } from "../state/app.js";
import { expected_length, without_source } from "../state/readings.js";
import { write_number, write_run } from "../state/writing.js";
import { w } from "../words/words.js";
import { change_html, feet_html, length_html } from "./marks.js";
import { dialog_frame } from "./dialogs.js";
import { today } from "./stay_view.js";

const LENGTH_UNITS = ["mm", "cm", "m", "in", "ft"];
const SOURCES = ["measured", "maker", "drawn"];
/** As far as two ways to a length may be apart where the file sets no `routes-apart` of its own, in millimetres. */
const AGREES_WITHIN = 5;

/** Between which middles the tape goes, and where they are. */
function from_where_to_where(dialog) {
  const piece = app.answers.pieces.find((each) => each.name === dialog.run_of);
  const measured = app.answers.lengths.stays.find((each) => each.name === piece?.stay)?.measured;
  return measured ? html`<p class="sm strong">${w.tape_goes(measured)}</p>` : nothing;
}

/** The keys below the digits and beside them, in the unit that somebody measures in. */
function length_keys(dialog, kind, { key, digits, unit, fraction }) {
  dialog.pad ??= app.settings.unit;
  const other = dialog.pad === "ft" ? "mm" : "ft";
  const turn = html`<button type="button" class="link" @click=${() => {
    dialog.pad = other;
    redraw();
  }}>${other === "ft" ? w.inch_keys : w.metric_keys}</button>`;
  const minus = kind.minus ? unit("-") : nothing;
  return html`<div class="grid">${
    dialog.pad === "ft"
      ? html`${digits("789")}${unit("ft")}${digits("456")}${unit("in")}${digits("123")}${unit("mm")}${digits("0")}${minus}${FRACTIONS.map(fraction)}`
      : html`${digits("789")}${unit("mm")}${digits("456")}${unit("cm")}${digits("123")}${unit("m")}${digits("0")}${key(".", ".", "fk")}${minus}`
  }</div>
    <p class="sm">${turn}</p>`;
}

/** What sort of thing is put in: a length, a number with a unit, or words of the language. */
function sort_of(dialog) {
  const { entry } = dialog;
  if (!entry) return { sort: "length", minus: false };
  const value = without_source(entry.written);
  const unit = entry.unit || /^-?[\d_.]+\s*([a-zA-Z%]+)$/.exec(value)?.[1] || "";
  if (entry.type === "size") return { sort: "length", quotes: true };
  if (entry.type === "quantity-list" || /^\(/.test(value) || entry.type === "place") return { sort: "words" };
  if (LENGTH_UNITS.includes(unit) || read_length(value) !== null) return { sort: "length", minus: entry.property === "length" };
  if (["quantity", "number", "count"].includes(entry.type) || (unit && /^[\d_.]+ /.test(value))) return { sort: "number", unit };
  return { sort: "words" };
}

/** The value as the language writes it; null: it is none yet. */
function value_of(kind, typed) {
  const said = typed.trim();
  if (kind.sort === "words") return said || null;
  if (kind.sort === "number") return /^\d+(\.\d+)?$/.test(said) ? `${said}${kind.unit ? ` ${kind.unit}` : ""}` : null;
  const minus = kind.minus && /^[-\u2212]/.test(said);
  if (read_length(minus ? said.slice(1) : said) === null) return null;
  if (minus) return `-${said.slice(1).trim()}`;
  return kind.quotes ? `"${said.replace(/"/g, " in").trim()}"` : said;
}

/** What stands in the file, as it would be put in; empty where that is no number. */
function typed_again(kind, value) {
  const plain = value.replace(/^"(.*)"$/, "$1").replaceAll("_", "");
  const typed = kind.sort === "number" ? (/^\d+(\.\d+)?/.exec(plain)?.[0] ?? "") : plain;
  return value_of(kind, typed) === null ? "" : typed;
}

/** What the number is, and whether it agrees with what else is known. */
function echo(dialog, kind) {
  if (kind.sort !== "length") return nothing;
  // The crown of a thimble may lie beyond its pin: then the length is written with a minus.
  const minus = kind.minus && /^[-\u2212]/.test(dialog.typed.trim());
  const size = read_length(minus ? dialog.typed.trim().slice(1) : dialog.typed);
  const mm = size === null ? null : minus ? -size : size;
  if (mm === null) return html`<p class="soft">${dialog.typed ? w.say_the_unit : w.put_in_a_length}</p>`;
  const other = /mm|cm|m$/.test(dialog.typed) ? feet_html(mm) : html`<b>${mm_text(mm)}</b>`;
  const piece = app.answers.pieces.find((each) => each.name === dialog.run_of);
  const expected = piece && expected_length(piece);
  if (!expected) return html`<p>${other}.</p>`;
  const off = mm - expected;
  const slip = likely_slip(mm, expected);
  const far = Math.abs(off) > expected * 0.1;
  const agrees = Math.abs(off) <= AGREES_WITHIN;
  if (slip) return html`<p>${other}. ${change_html(off)} ${w.against_the_path} <b>${w.slips[slip]}</b></p>`;
  return html`<p>${other}. ${Math.abs(off) < 0.8 ? w.as_the_path : off < 0 ? w.shorter(length_html(-off)) : w.longer(length_html(off))}
    <b>${far ? w.far_off : agrees ? w.agrees : w.differs}</b></p>`;
}

function put_in(dialog, kind) {
  const value = value_of(kind, dialog.typed);
  if (value === null) return toast(w.toast.no_number);
  if (dialog.answers) {
    dialog.answers.offset = value;
    return open_dialog(dialog.answers);
  }
  const title = dialog.title;
  if (dialog.run_of) {
    const { root } = app.project;
    const piece = app.answers.pieces.find((each) => each.name === dialog.run_of);
    const edits = write_run({
      answers: app.answers,
      root,
      text: app.project.files[root],
      stay: piece.stay,
      length: value,
      date: today(),
    });
    change_by([edits], w.steps.put_in(title, value));
    toast_change(w.toast.run);
  } else {
    change_by([write_number(dialog.entry, value, dialog.source)], w.steps.put_in(title, value));
    toast_change(w.toast.put_in(title, value));
  }
  dialog.then ? open_dialog(dialog.then) : close_dialog();
}

export function keypad_dialog(dialog) {
  const kind = sort_of(dialog);
  const { entry } = dialog;
  dialog.typed ??= kind.sort === "words" ? without_source(entry.written) : "";
  dialog.source ??=
    entry && (["assumed", "missing"].includes(entry.state) || SOURCES.includes(entry.state))
      ? SOURCES.includes(entry.state)
        ? entry.state
        : "measured"
      : "";
  const type = (key) => {
    dialog.typed = with_key(dialog.typed, key);
    redraw();
  };
  const key = (name, words, look = "") => html`<button type="button" class=${look} @click=${() => type(name)}>${words}</button>`;
  const fraction = (name) => {
    const [top, bottom] = name.split("/");
    return key(
      name,
      html`<span class="vh">${name}</span><span class="fr" aria-hidden="true"><sup>${top}</sup>\u2044<sub>${bottom}</sub></span>`,
      "fk",
    );
  };
  const digits = (all) => [...all].map((digit) => key(digit, digit));
  const unit = (name) => key(name, w.keys[name], "fk");
  const same = entry && dialog.typed === "" ? typed_again(kind, without_source(entry.written)) : "";
  return dialog_frame(
    dialog.title,
    html`<form class="kp ${kind.sort}" @submit=${(event) => {
      event.preventDefault();
      put_in(dialog, kind);
    }}>
      ${from_where_to_where(dialog)}
      <label class="vh" for="typed">${dialog.title}</label>
      <input id="typed" class="show" autofocus autocomplete="off" spellcheck="false" inputmode=${kind.sort === "words" ? "text" : "none"} .value=${dialog.typed}
        @input=${(event) => {
          dialog.typed = event.target.value;
          redraw();
        }} />
      ${
        entry?.written && entry.place
          ? html`<p class="sm"><button type="button" class="link" @click=${() => {
              close_dialog();
              go(`text/${entry.place.file}:${entry.place.begin.line + 1}`);
            }}>${w.where_it_stands(entry.place.begin.line + 1, entry.place.file)}</button></p>`
          : nothing
      }
      <div class="echo" aria-live="polite">${echo(dialog, kind)}${entry?.help && kind.sort !== "length" ? html`<p class="soft sm">${entry.help} ${entry.range}</p>` : nothing}</div>
      ${
        dialog.source
          ? html`<div class="seg small" role="group" aria-label=${w.where_from}>${SOURCES.map(
              (source) =>
                html`<button type="button" aria-pressed=${String(source === dialog.source)} @click=${() => {
                  dialog.source = source;
                  redraw();
                }}>${w.sources[source]}</button>`,
            )}</div>`
          : nothing
      }
      ${
        same
          ? html`<button type="button" class="btn quiet wide same" @click=${() => {
              dialog.typed = same;
              redraw();
            }}>${w.same_value(without_source(entry.written))}</button>`
          : nothing
      }
      ${
        kind.sort === "length"
          ? length_keys(dialog, kind, { key, digits, unit, fraction })
          : nothing
      }
      ${kind.sort === "number" ? html`<div class="grid three">${digits("789456123")}${key(".", ".", "fk")}${digits("0")}<span class="unit">${kind.unit}</span></div>` : nothing}
      <div class="pair">${kind.sort === "words" ? nothing : html`<button type="button" class="btn quiet" @click=${() => type("rub")}>${w.rub_out}</button>`}
        <button class="btn go">${w.put_in}</button></div>
    </form>`,
    dialog.answers ? () => open_dialog(dialog.answers) : close_dialog,
  );
}
