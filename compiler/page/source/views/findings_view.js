// What the compiler has found, with what can be done about each at once.

import { html, nothing } from "lit-html";
import { all_findings } from "../state/answers.js";
import { app, change_by, close_dialog, go, toast_change } from "../state/app.js";
import { edit_of } from "../core/edits.js";
import { w } from "../words/words.js";
import { dialog_frame } from "./dialogs.js";
import { mend } from "./text_view.js";

/** All certain edits together. */
function mend_all(findings) {
  const files = new Map();
  for (const each of findings.flatMap((finding) => finding.edit.edits))
    files.set(each.place.file, [...(files.get(each.place.file) ?? []), edit_of(each)]);
  change_by(
    [...files].map(([file, edits]) => ({ file, edits })),
    w.steps.mended(findings.length),
  );
  toast_change(w.toast.mended(w.steps.mended(findings.length)));
}

const one = (finding) =>
  html`<li class="find sev-${finding.severity}"><p class="w"><span class="sev">${w.severities[finding.severity]}</span></p>
    <p><b>${finding.message}</b></p>${finding.why ? html`<p class="soft">${finding.why}</p>` : nothing}
    <p class="acts">${finding.edit ? html`<button class="btn go" @click=${() => mend(finding)}>${finding.edit.title}</button>` : nothing}
      ${
        finding.place && finding.place.file in app.project.files
          ? html`<button class="btn quiet" @click=${() => {
              close_dialog();
              app.file = finding.place.file;
              app.fix = finding;
              go(`text/${finding.place.file}:${finding.place.begin.line + 1}`);
            }}>${w.line(finding.place.begin.line + 1, Object.keys(app.project.files).length > 1 ? finding.place.file : "")}</button>`
          : nothing
      }</p></li>`;

export function findings_dialog() {
  const all = all_findings(app.answers);
  const certain = all.filter((finding) => finding.edit?.certain);
  return dialog_frame(
    w.findings,
    html`${all.length ? nothing : html`<p>${w.nothing_found}</p>`}
      ${certain.length > 1 ? html`<p><button class="btn go wide" @click=${() => mend_all(certain)}>${w.mend_all(certain.length)}</button></p>` : nothing}
      <ul>${all.map(one)}</ul><p class="soft sm">${w.findings_caution}</p>`,
  );
}
