// The file itself: everything that is put in elsewhere shows here.

import { html, nothing, render } from "lit-html";
import { edit_of } from "../core/edits.js";
import { app, ask, change, change_by, go, redraw, toast_change } from "../state/app.js";
import { w } from "../words/words.js";
import { make_editor } from "./editor.js";

const KEYS = ["{", "}", "(", ")", ":", ",", '"', "'", "/", ">", "_", "#"];

let editor = null;
/** What the colours and findings on the screen are of. */
let drawn = { text: null, answers: null, open: null, file: "" };
let tokens = { text: null, file: "", all: [] };

const of_file = () =>
  app.answers.findings.files
    .filter(({ file }) => file === app.file)
    .flatMap(({ findings }) => findings)
    .filter(({ place }) => place?.file === app.file);

/** The edit that a finding suggests, made. */
export function mend(finding) {
  const files = new Map();
  for (const each of finding.edit.edits) files.set(each.place.file, [...(files.get(each.place.file) ?? []), edit_of(each)]);
  change_by(
    [...files].map(([file, edits]) => ({ file, edits })),
    finding.edit.title,
  );
  app.fix = null;
  toast_change(w.toast.mended(finding.edit.title));
}

function card(finding) {
  const dom = document.createElement("div");
  // The editor measures it without what stands outside its border, so the room around it is inside.
  dom.className = "fixroom";
  render(
    html`<div class="fix"><p><b>${finding.message}</b></p>${finding.why ? html`<p class="soft">${finding.why}</p>` : nothing}
      <p class="acts">${finding.edit ? html`<button class="btn go" @click=${() => mend(finding)}>${finding.edit.title}</button>` : nothing}
        <button class="btn quiet" @click=${() => {
          app.fix = null;
          redraw();
        }}>${w.close}</button></p></div>`,
    dom,
  );
  return dom;
}

function the_editor() {
  editor ??= make_editor({
    label: w.text_of_the_boat,
    typed: (text) => change({ [app.file]: text }, w.steps.typed(app.file), { typing: true }),
    complete: (unit) => ask({ ask: "complete", file: app.file, at: { unit } }).catch(() => null),
    hover: (unit) => ask({ ask: "hover", file: app.file, at: { unit } }).catch(() => null),
    tapped: (unit) => {
      app.fix =
        of_file().find(({ place }) => place.begin.unit <= unit && unit <= Math.max(place.end.unit, place.begin.unit + 1)) ?? null;
      redraw();
    },
  });
  return editor;
}

/** Colours, once the compiler has said what each word is. */
async function colour(text) {
  const { file } = app;
  tokens = { text, file, all: tokens.all };
  const all = await ask({ ask: "tokens", file }).catch(() => []);
  if (tokens.text !== text || tokens.file !== file) return;
  tokens.all = all;
  drawn.text = null;
  redraw();
}

/** After everything is drawn: the editor is given what is new. */
export function text_drawn() {
  if (!editor?.dom.isConnected) return;
  const text = app.project.files[app.file] ?? "";
  editor.show(app.file, text);
  if (!app.busy && (tokens.text !== text || tokens.file !== app.file)) colour(text);
  const same = drawn.text === text && drawn.answers === app.answers && drawn.open === app.fix && drawn.file === app.file;
  if (same || app.busy) return;
  drawn = { text, answers: app.answers, open: app.fix, file: app.file };
  editor.decorate({ tokens: tokens.file === app.file ? tokens.all : [], findings: of_file(), open: app.fix, card });
}

/** Goes to a line of a file: "boat.rig:84". */
export function show_place(of) {
  const found = /^(.*):(\d+)$/.exec(of);
  if (!found || !(found[1] in app.project.files)) return;
  app.file = found[1];
  const line = Number(found[2]);
  requestAnimationFrame(() => editor?.go_to_line(line));
}

export function text_view() {
  const files = Object.keys(app.project.files).sort();
  if (!files.includes(app.file)) app.file = app.project.root;
  return html`<h1 class="vh">${w.views.text}</h1>
    <div class="files">${
      files.length > 1
        ? html`<label>${w.file}<select @change=${(event) => {
            app.file = event.target.value;
            app.fix = null;
            redraw();
          }}>${files.map((name) => html`<option value=${name} ?selected=${name === app.file}>${name}</option>`)}</select></label>`
        : html`<span class="soft">${app.file}</span>`
    }
      <button class="link" @click=${() => go("files")}>${w.files_and_libraries}</button></div>
    <div class="code">${the_editor().dom}</div>
    <div class="keys" role="group" aria-label=${w.signs}>${KEYS.map(
      (sign) =>
        html`<button type="button" @pointerdown=${(event) => event.preventDefault()} @click=${() => editor.insert(sign)}>${sign}</button>`,
    )}</div>`;
}
