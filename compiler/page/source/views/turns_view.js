// Screws to be turned, and what each turn does to every stay: tensions, what goes slack, where the masthead goes.

import { html, nothing } from "lit-html";
import { edit_of } from "../core/edits.js";
import { app, change_by, redraw, toast } from "../state/app.js";
import { try_turns, turns, turns_answer, with_turn } from "../state/turns.js";
import { w } from "../words/words.js";
import { length_html, piece_title } from "./marks.js";

/** In which steps something is turned by hand: half a turn goes past a split pin. */
const STEPS = { turn: 0.5, hole: 1, mm: 1 };

const side_of = (name) => w.sides[/\.(port|starboard)$/.exec(name)?.[1] ?? "centre"];
/** As the other lists call the stay. */
function title_of({ name, stay, title }) {
  const piece = app.answers.pieces.find((each) => each.stay === (stay ?? name));
  return piece ? piece_title(piece) : [title || name || stay, side_of(name ?? stay)].filter(Boolean).join(", ");
}

/** To the last sign that somebody can read off a gauge. */
const force = (newtons) =>
  Math.abs(newtons) < 1000 ? `${Math.round(newtons)} N` : `${(Math.round(newtons / 10) / 100).toFixed(2)} kN`;
const signed = (text, value) => `${value < 0 ? "\u2212" : "+"} ${text}`;

/** What a stay pulls, by how much that is another than now, and which share of its break load it is. */
function tension_of(stay) {
  const { now, with: turned } = stay.newtons;
  const change = now !== null && turned !== null ? turned - now : 0;
  const shown = turned ?? now;
  const slack = turned === null ? stay.slack_mm.now : stay.slack_mm.with;
  const share = stay.break_newtons && shown ? Math.round((shown / stay.break_newtons) * 100) : null;
  const changes = Math.abs(change) >= 0.5;
  return {
    changes,
    words: shown === null ? w.no_number : slack > 0.05 ? html`${w.turns.slack} ${length_html(slack)}` : force(shown),
    more: [changes ? signed(force(Math.abs(change)), change) : "", share === null ? "" : w.turns.of_break(share)].filter(Boolean).join(", "),
  };
}

function adjuster(each, stay) {
  const count = turns.turned[each.stay] ?? 0;
  const step = STEPS[each.turned];
  // Never outside what is left of its thread, and a whole number of steps from now.
  const within = (value) => Math.min(Math.floor(each.most / step) * step, Math.max(Math.ceil(each.least / step) * step, value));
  const turn = (value) => try_turns(with_turn(each.stay, within(value)));
  const said = w.turns.turned(count, each.turned);
  const pull = tension_of(stay);
  return html`<li class=${count || pull.changes ? "lit" : ""}><p><span><b>${title_of(each)}</b><small>${said}</small></span><span class="v">${pull.words}<small>${pull.more}</small></span></p>
    <div class="slide"><button class="btn" aria-label=${`${title_of(each)}: ${w.turns.slacker}`} ?disabled=${within(count - step) >= count} @click=${() => turn(count - step)}>\u2212</button>
      <input type="range" aria-label=${title_of(each)} aria-valuetext=${said} min=${within(-1e9)} max=${within(1e9)} step=${step} .value=${String(count)}
        @input=${(event) => turn(Number(event.target.value))} />
      <button class="btn" aria-label=${`${title_of(each)}: ${w.turns.tighter}`} ?disabled=${within(count + step) <= count} @click=${() => turn(count + step)}>+</button></div></li>`;
}

/** Of a stay that nothing is turned on. */
function tension(stay) {
  const { changes, words, more } = tension_of(stay);
  return html`<li class=${changes ? "lit" : ""}><span>${title_of(stay)}</span><span class="v">${words}<small>${more}</small></span></li>`;
}

function mast(each) {
  const { now, with: turned } = each.head_aft_mm;
  if (now === null) return nothing;
  const change = turned === null ? 0 : turned - now;
  return html`<li class=${Math.abs(change) >= 0.05 ? "lit" : ""}><span>${w.turns.head_aft(each.title || each.name)}</span>
    <span class="v">${length_html(turned ?? now)}<small>${Math.abs(change) >= 0.05 ? html`${change < 0 ? "\u2212" : "+"} ${length_html(Math.abs(change))}` : nothing}</small></span></li>`;
}

/** The turns are written down as what the adjusters have taken. */
function write_down(answer) {
  const files = new Map();
  for (const each of answer.edits) files.set(each.place.file, [...(files.get(each.place.file) ?? []), edit_of(each)]);
  change_by(
    [...files].map(([file, edits]) => ({ file, edits })),
    w.steps.turned(Object.keys(turns.turned).length),
  );
  toast(w.toast.kept);
}

function standing(answer) {
  const moved = Object.keys(turns.turned).length > 0;
  const others = answer.stays.filter(({ name }) => !answer.adjusters.some(({ stay }) => stay === name));
  const beyond = answer.adjusters.filter((each) => each.beyond);
  return html`${answer.draft.length ? html`<p class="note"><span class="g not s"></span><span><b>${w.turns.rests_on}</b>${answer.draft.join(". ")}</span></p>` : nothing}
    <ul class="turns" aria-live="polite">${answer.adjusters.map((each) =>
      adjuster(
        each,
        answer.stays.find(({ name }) => name === each.stay),
      ),
    )}</ul>
    ${others.length + answer.masts.length ? html`<ul class="tensions" aria-live="polite">${others.map(tension)}${answer.masts.map(mast)}</ul>` : nothing}
    ${answer.trouble.map((words) => html`<p class="note"><span class="g not s"></span><span>${words}</span></p>`)}
    ${beyond.map((each) => html`<p class="note"><span class="g not s"></span><span>${w.turns.beyond(title_of(each))}</span></p>`)}
    ${answer.not_written.map(({ stay, why }) => html`<p class="sm">${stay}: ${why}</p>`)}
    <div class="keep"><button class="btn quiet" ?disabled=${!moved} @click=${() => try_turns({})}>${w.put_it_back}</button>
      <button class="btn" ?disabled=${!moved || answer.edits.length === 0} @click=${() => write_down(answer)}>${w.turns.write_down}</button></div>`;
}

function in_the_way(answer) {
  const lacking = answer.in_the_way.map(({ of, property, words }) => words || w.turns.lacks(of, property));
  return html`<p>${w.turns.does_not_stand}</p><ul class="why">${lacking.map((words) => html`<li>${words}</li>`)}</ul>`;
}

/** Below the drawing: asked for by a tap, since to stand a rig up takes the compiler a moment. */
export function turns_section() {
  const answer = turns.open ? turns_answer() : null;
  return html`<section class="try turning"><h2><button class="btn quiet wide" id="turns" aria-expanded=${String(turns.open)} @click=${() => {
    turns.open = !turns.open;
    redraw();
  }}>${w.turns.title}</button></h2>${
    turns.open
      ? html`${answer ? (answer.stands ? standing(answer) : in_the_way(answer)) : html`<p>${w.working}</p>`}
        ${answer ? html`<p class="soft sm">${answer.cautions.join(" ")}</p>` : nothing}`
      : nothing
  }</section>`;
}
