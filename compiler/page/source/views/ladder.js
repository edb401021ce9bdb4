// How a cut adds up, drawn as the stay hangs: aloft above, deck below. A tap on a row changes its number.

import { html, nothing } from "lit-html";
import { app, go, open_dialog } from "../state/app.js";
import { GIVEN_ID } from "../state/given.js";
import { w } from "../words/words.js";
import { change_html, length_html, sum_html } from "./marks.js";
import { part_picture } from "./part_pictures.js";

/** The number of the service that stands where a row of the sum is from. */
function entry_of(row) {
  const { place } = row.provenance;
  if (!place) return undefined;
  return app.answers.numbers.find(
    ({ place: { file, begin } }) => file === place.file && begin.line === place.line - 1 && begin.character === place.column - 1,
  );
}

const WEAK = ["no source given", "assumed"];

function provenance_line(row) {
  const { note, written } = row.provenance;
  const source = row.provenance.class;
  const how = row.how || (written && !/^[\d_.]+ ?mm$/.test(written) ? written : "");
  const said = [how, WEAK.includes(source) || !note ? (w.sources[source] ?? source) : note].filter(Boolean);
  return html`<small class=${WEAK.includes(source) ? "weak" : ""}>${said.join(". ")}</small>`;
}

/** A page that was made for one boat is there to be read: a tap leads to where the number stands. */
export const is_to_be_read = () => app.project.id === GIVEN_ID;

/** To the number if a form can write it, else to its place in the text. */
function change_row(row, piece) {
  const entry = entry_of(row);
  if (entry?.write && !is_to_be_read()) open_dialog({ name: "keypad", entry, title: row_title(row), piece: piece.name });
  else if (row.provenance.place) go(`text/${row.provenance.place.file}:${row.provenance.place.line}`);
}

/** A part by its title, with what its name says beyond: how far it is open. */
function row_title(row) {
  const found = /^(\d+ x )?([^,]+)(.*)$/.exec(row.name);
  const declared = app.answers.declarations.find((each) => each.name === found?.[2]);
  return declared?.title ? `${found[1] ?? ""}${declared.title}${found[3]}` : row.name;
}

const row_html = (row, piece, kind) => {
  const sure = piece.state !== "todo" || row.provenance.class !== "computed";
  return html`<li><button @click=${() => change_row(row, piece)}>
    <span class="pic">${kind === null ? nothing : part_picture(kind)}</span>
    <span class="t">${row_title(row)}${provenance_line(row)}</span>
    <span class="v">${sure ? change_html(row.amount_mm) : w.not_yet}</span></button></li>`;
};

/** Parts of the stack that add nothing to the length are drawn too. */
function hardware_rows(piece, rows) {
  const stay = app.answers.declarations.find((each) => each.kind === "stay" && piece.stay.split(".")[0] === each.name);
  const stack = stay?.inside.find((each) => each.kind === "stack")?.properties ?? [];
  const kinds = new Map(app.answers.declarations.map((each) => [each.name, each]));
  const rest = [...rows];
  const result = [];
  for (const item of stack) {
    const at = rest.findIndex((row) => row.name.replace(/^\d+ x /, "").split(",")[0] === item.name);
    const declared = kinds.get(item.name);
    if (at >= 0) result.push(row_html(rest.splice(at, 1)[0], piece, declared?.kind ?? ""));
    else
      result.push(html`<li><div><span class="pic">${part_picture(item.name === "line" ? "line" : (declared?.kind ?? ""))}</span>
        <span class="t">${item.name === "line" ? piece.card.line.title || piece.card.line.name : declared?.title || item.name}</span>
        <span class="v quiet">${item.name === "line" ? w.body_word : w.no_length}</span></div></li>`);
  }
  return [...rest.map((row) => row_html(row, piece, null)), ...result];
}

/** Aloft first. */
const by_end = (rows) => [
  ...rows.filter(({ name }) => name.includes("aloft")),
  ...rows.filter(({ name }) => !name.includes("aloft")),
];

export function ladder(piece) {
  const section = (name) => piece.card.sum.find((each) => each.name === name);
  const pins = section("pin-to-pin");
  const body = section("body");
  const cut = section("cut");
  const hidden = piece.state === "todo" || piece.state === "not";
  const x = piece.card.unknown;
  return html`<ol class="lad">
      ${
        x
          ? html`<li><div><span class="pic"></span><span class="t">${w.x_pin_to_pin}<small>${piece.card.unknown_source?.note ?? ""}</small></span><span class="v">X</span></div></li>`
          : nothing
      }
      ${pins ? pins.rows.filter((row) => !x || Math.abs(row.amount_mm) >= 0.05).map((row) => row_html(row, piece, null)) : nothing}
      ${hardware_rows(piece, body?.rows ?? [])}
    </ol>
    <p class="tot"><span>${w.body}</span><span>${piece.state === "todo" && !x ? w.not_yet : sum_html(piece.body)}</span></p>
    <ol class="lad">${by_end(cut?.rows ?? []).map((row) => row_html(row, piece, null))}</ol>
    <p class="tot large"><span>${w.cut_word}</span>${hidden ? html`<span class="plate">${w.not_yet_plate}</span>` : html`<span>${sum_html(piece.cut)}</span>`}</p>`;
}

/** Where the marks of a cord-measured piece lie on its cord. */
export function cord_marks(piece) {
  const marks = piece.card.bench.marks.filter((each) => each.from_u);
  if (marks.length === 0) return nothing;
  const place = ({ from_u, from_l }) => {
    const [mm, end] = from_u.x_of === null ? [from_u.plus_mm, "U"] : [from_l.plus_mm, "L"];
    return html`${length_html(Math.abs(mm))}<small>${mm < 0 ? w.past(end) : w.inside(end)}</small>`;
  };
  return html`<ol class="marks">${marks.map(
    (each, i) =>
      html`<li><span class="pin" aria-hidden="true">${i + 1}</span><span class="t">${each.name}</span><span class="v">${place(each)}</span></li>`,
  )}</ol>`;
}
