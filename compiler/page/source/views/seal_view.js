// Whether the boat that the page was made for is as she was sealed, and what that does not prove.

import { html, nothing } from "lit-html";
import { app, ask, open_dialog, redraw } from "../state/app.js";
import { GIVEN_ID } from "../state/given.js";
import { w } from "../words/words.js";
import { dialog_frame } from "./dialogs.js";
import { arrow, mark } from "./marks.js";

/** What came of looking, and of which state of the boat. */
const looked = { of: null, asking: null, check: null, fault: "" };

const seal_here = () => (app.project?.id === GIVEN_ID ? app.given.seal : null);

/** Looks once for each state of the texts, when the numbers are there. */
function check() {
  const seal = seal_here();
  const state = app.project.files;
  if (looked.of !== state && looked.asking !== state && !app.busy) {
    looked.asking = state;
    ask({ ask: "verify", sums: seal.sums, facts: seal.facts, words: seal.words, only: seal.back_ends })
      .then(
        (answer) => ({ check: answer, fault: "" }),
        (fault) => ({ check: null, fault: String(fault.message ?? fault) }),
      )
      .then((result) => {
        if (looked.asking !== state) return;
        Object.assign(looked, { of: state, ...result });
        redraw();
      });
  }
  return looked.of === state ? looked.check : null;
}

const faults_of = (found) => [
  ["altered", found.altered],
  ["missing", found.missing],
  ["extra", found.extra],
  ["bad_lines", found.bad_lines],
];
const is_well = (found) => faults_of(found).every(([, names]) => names.length === 0);

function verdict(found) {
  if (looked.fault) return w.seal.not_looked(looked.fault);
  if (!found) return w.working;
  return is_well(found) ? w.seal.well(found.files - found.not_checked.length) : w.seal.not_well;
}

/** One line where somebody looks anyway. */
export function seal_line() {
  if (!seal_here()) return nothing;
  const found = check();
  return html`<p class="in sealed"><button class="btn quiet wide" id="seal" aria-haspopup="dialog" @click=${() => open_dialog({ name: "seal", typed: "" })}>
    ${found && !is_well(found) ? mark("not") : nothing}<span>${verdict(found)}</span>${arrow}</button></p>`;
}

function facts_line(seal) {
  let facts = {};
  try {
    facts = JSON.parse(seal.facts);
  } catch {
    return nothing;
  }
  const said = [facts.boat, facts.revision && w.seal.revision(facts.revision), facts.report_date, facts.version && w.seal.version(facts.version)];
  return html`<p class="soft">${said.filter(Boolean).join(", ")}</p>`;
}

export function seal_dialog(dialog) {
  const seal = seal_here();
  const found = check();
  const typed = dialog.typed.trim().toLowerCase();
  return dialog_frame(
    w.dialogs.seal,
    html`<div class="seal">${facts_line(seal)}<p class="strong" role="status">${verdict(found)}</p>
      ${
        found
          ? html`${faults_of(found).map(([key, names]) =>
              names.length ? html`<h3>${w.seal[key]}</h3><ul class="names">${names.map((name) => html`<li>${name}</li>`)}</ul>` : nothing,
            )}
        ${found.not_checked.length ? html`<h3>${w.seal.not_checked}</h3><ul class="names">${found.not_checked.map((name) => html`<li>${name}</li>`)}</ul>` : nothing}
        <h3>${w.seal.its_digits}</h3><p class="digits">${found.seal}</p>
        <p><label>${w.seal.written_down}<input id="written-down" class="show" autocomplete="off" spellcheck="false" .value=${dialog.typed} @input=${(event) => {
          dialog.typed = event.target.value;
          redraw();
        }} /></label></p>
        ${typed ? html`<p role="status" class="strong">${typed === found.seal ? w.seal.same_digits : /^[0-9a-f]{64}$/.test(typed) ? w.seal.other_digits : w.seal.no_digits}</p>` : nothing}`
          : nothing
      }
      <p>${seal.signed ? w.seal.signed : w.seal.not_signed}</p>
      <p>${w.seal.proves_not}</p></div>`,
  );
}
