// The numbers that pieces wait for, as a form: each with what it is, how it is known now, and a field to tap.

import { html, nothing } from "lit-html";
import { app, close_dialog, open_dialog } from "../state/app.js";
import { without_source } from "../state/readings.js";
import { w } from "../words/words.js";
import { dialog_frame } from "./dialogs.js";
import { piece_title } from "./marks.js";

/** The title of what a number is of. */
function owner_of(entry) {
  const piece = app.answers.pieces.find((each) => each.stay === entry.of);
  if (piece) return piece_title(piece);
  const point = app.answers.declarations
    .filter((each) => each.kind === "points")
    .flatMap((each) => each.properties)
    .find((each) => each.name === entry.of);
  if (point) return point.title || entry.of;
  const declared = app.answers.declarations.find((each) => each.name === entry.of);
  return declared?.title || entry.of;
}

export function number_title(entry) {
  const [end, dimension] = entry.property.includes(".") ? entry.property.split(".") : ["", entry.property];
  const property = w.properties[dimension] ?? dimension.replaceAll("-", " ");
  return `${owner_of(entry)}${property ? `: ${property}` : ""}${end ? ` (${w.ends[end] ?? end})` : ""}`;
}

const note_of = (written) => /"((?:[^"\\]|\\.)*)"\s*$/.exec(written)?.[1] ?? "";

/** One number as a row with its field. */
export function field(entry) {
  const value = without_source(entry.written);
  const note = note_of(entry.written.slice(value.length));
  return html`<li class="ask">
    <p class="strong">${number_title(entry)}</p>
    <p class="why">${[entry.words, note || entry.mend, entry.help].filter(Boolean)[0] ?? ""}</p>
    ${
      entry.write
        ? html`<button class="field" @click=${() => open_dialog({ ...app.dialog, name: "keypad", entry, title: number_title(entry), then: app.dialog })}>
          <span class="val">${value || w.tap_to_put_in}</span>
          ${value ? html`<span class="unit">${w.sources[entry.state] ?? entry.state}</span>` : html`<span class="unit">${entry.unit}</span>`}</button>`
        : nothing
    }
  </li>`;
}

/** What this piece waits for; without a piece everything that is assumed or missing. */
export function asked_entries(piece) {
  return app.answers.numbers.filter(
    (each) => ["missing", "assumed"].includes(each.state) && (piece === null || each.pieces.includes(piece)),
  );
}
export const asked_fields = (piece) => asked_entries(piece).map(field);

export function form_dialog(dialog) {
  const all = asked_entries(dialog.piece);
  return dialog_frame(
    w.assumed_numbers,
    html`<p class="soft sm">${w.assumed_words}</p><ul class="sheet">${all.length ? all.map(field) : html`<li class="ask">${w.nothing_assumed}</li>`}</ul>`,
    close_dialog,
  );
}
