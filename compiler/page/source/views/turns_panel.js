// What turns would do: a slider for each adjuster, the tension of every stay beside it, the masthead and the bend.

import { html, nothing } from "lit-html";
import { app, ask, change_by, redraw, say, toast, toast_change } from "../state/app.js";
import { edits_of, rows_of, turned, turns_of } from "../state/turns.js";
import { w } from "../words/words.js";

/** Whether the panel is open, and what was answered last, of which state of the boat. */
const panel = { open: false, together: true, turns: {}, answer: null, of: null, asked: 0 };

async function ask_turns() {
  const mine = ++panel.asked;
  const { answers } = app;
  panel.of = answers;
  try {
    const answer = await ask({ ask: "turns", turns: panel.turns });
    if (mine !== panel.asked) return;
    panel.answer = answer;
    redraw();
    if (answer?.stands && Object.keys(panel.turns).length) say(w.turns.said(answer.trouble.length ? answer.trouble[0] : ""));
  } catch (fault) {
    toast(String(fault.message));
  }
}

function turn_to(turns) {
  panel.turns = turns;
  redraw();
  ask_turns();
}

function open_or_close(event) {
  if (event.target.open === panel.open) return;
  panel.open = event.target.open;
  redraw();
}

const side_words = (side) => (side === "centre" ? "" : side === "both" ? w.turns.both_sides : w.sides[side]);
const row_title = (row) => (row.side === "centre" ? row.title : `${row.title}, ${side_words(row.side)}`);
const kilonewtons = (newtons) => (newtons / 1000).toFixed(2);
const signed = (value, decimals) => {
  const digits = Math.abs(value).toFixed(decimals);
  return Number(digits) === 0 ? digits : `${value < 0 ? "\u2212" : "+"}${digits}`;
};

function slider_row(row) {
  const value = turns_of(row, panel.turns);
  const set = (to) => turn_to(turned(row, panel.turns, to));
  const title = row_title(row);
  const words = w.turns.count(row.turned, value);
  return html`<li class="turnrow"><p class="turnhead"><span class="strong">${title}</span><output>${words}</output></p>
    <div class="slide">
      <button class="btn" aria-label=${w.turns.slacker(title)} ?disabled=${value <= row.least} @click=${() => set(value - row.step)}>\u2212</button>
      <input type="range" aria-label=${title} aria-valuetext=${words} min=${row.least} max=${row.most} step=${row.step}
        .value=${String(value)} @input=${(event) => set(Number(event.target.value))} />
      <button class="btn" aria-label=${w.turns.tighter(title)} ?disabled=${value >= row.most} @click=${() => set(value + row.step)}>+</button></div>
    <p class="sm soft">${w.turns.left(row.turned, row.most - value, value - row.least)}</p></li>`;
}

function stay_row(stay) {
  const { now, with: then } = stay.newtons;
  const title = `${stay.title || stay.base}${/\.(port|starboard)$/.test(stay.name) ? `, ${w.sides[/[a-z]+$/.exec(stay.name)[0]]}` : ""}`;
  if (then === null) return html`<tr><th scope="row">${title}</th><td>${kilonewtons(now)}</td><td></td><td></td></tr>`;
  const slack = then > 0 ? nothing : html`<b class="words">${w.turns.slack_by(stay.slack_mm.with.toFixed(1))}</b>`;
  const beyond = stay.break_newtons !== null && then > stay.break_newtons;
  return html`<tr data-pull=${stay.name} class=${Math.abs(then - now) >= 5 ? "lit" : ""}><th scope="row">${title}</th>
    <td>${now > 0 ? kilonewtons(now) : w.turns.slack}</td>
    <td>${then > 0 ? html`<b>${kilonewtons(then)}</b>` : slack}${beyond ? html` <b class="words">${w.turns.beyond_break}</b>` : nothing}</td>
    <td>${signed((then - now) / 1000, 2)}</td></tr>`;
}

const moved_row = (words, { now, with: then }) =>
  html`<tr class=${then !== null && Math.abs(then - now) >= 0.05 ? "lit" : ""}><th scope="row">${words}</th><td>${signed(now, 1)}</td>
    <td>${then === null ? nothing : html`<b>${signed(then, 1)}</b>`}</td><td>${then === null ? nothing : signed(then - now, 1)}</td></tr>`;

function mast_rows(mast, several) {
  const of = several ? `${mast.title || mast.name}: ` : "";
  return [
    moved_row(`${of}${w.turns.head_aft}`, mast.head_aft_mm),
    moved_row(`${of}${w.turns.head_starboard}`, mast.head_starboard_mm),
    ...mast.bends.map((bend) => moved_row(`${of}${w.turns.bend_at(bend.at)}`, bend.forward_mm)),
  ];
}

const head = (unit) =>
  html`<caption>${unit}</caption><thead><tr><td></td><th scope="col">${w.turns.now}</th><th scope="col">${w.turns.with_turns}</th><th scope="col">${w.turns.change}</th></tr></thead>`;

function write_down() {
  const count = panel.answer.edits.length;
  const edits = edits_of(panel.answer);
  panel.turns = {};
  panel.answer = null;
  panel.of = null;
  change_by(edits, w.turns.step(count));
  toast_change(w.turns.written);
}

function standing(answer) {
  const rows = rows_of(answer, panel.together);
  const any = Object.keys(panel.turns).length > 0;
  const pairs = answer.adjusters.some(({ stay }) => /\.(port|starboard)$/.test(stay));
  return html`${answer.draft.length ? html`<p class="note"><span class="g not s"></span><span><b>${w.turns.draft}</b> ${answer.draft.join(". ")}.</span></p>` : nothing}
    ${
      pairs
        ? html`<label class="together"><input type="checkbox" .checked=${panel.together} @change=${(event) => {
            panel.together = event.target.checked;
            turn_to({});
          }} /> ${w.turns.together}</label>`
        : nothing
    }
    <div class="turngrid"><ul class="turnrows">${rows.map(slider_row)}</ul>
    <div class="turnout">${answer.trouble.map((words) => html`<p class="note" role="alert"><span class="g not s"></span><span>${w.turns.does_not_stand} ${words}.</span></p>`)}
      ${answer.adjusters.some(({ beyond }) => beyond) ? html`<p class="note"><span class="g not s"></span><span>${w.turns.beyond_thread}</span></p>` : nothing}
      <table class="turntable">${head(w.turns.tensions)}<tbody>${answer.stays.map(stay_row)}</tbody></table>
      <table class="turntable">${head(w.turns.movements)}<tbody>${answer.masts.flatMap((mast) => mast_rows(mast, answer.masts.length > 1))}</tbody></table></div></div>
    ${answer.not_written.map(({ stay, why }) => html`<p class="sm"><b>${w.turns.not_written(stay)}</b> ${why}.</p>`)}
    <div class="keep"><button class="btn quiet" ?disabled=${!any} @click=${() => turn_to({})}>${w.turns.reset}</button>
      <button class="btn" ?disabled=${answer.edits.length === 0 || answer.trouble.length > 0} @click=${write_down}>${w.turns.write}</button></div>`;
}

const asked_for = (answer) =>
  html`<p>${w.turns.state_these}</p><ul class="why">${answer.in_the_way.map(
    ({ of, property, words }) => html`<li>${words || html`<b>${of}</b>: ${property}`}</li>`,
  )}</ul>`;

/** Asked when it is open and the boat is another than it was asked about. */
export function turns_panel() {
  if (!app.answers.findings.calculated || app.answers.stale) return nothing;
  if (panel.open && panel.of !== app.answers && !app.busy) {
    if (panel.of?.of !== app.answers.of) panel.turns = {};
    ask_turns();
  }
  const { answer } = panel;
  return html`<details class="turns" ?open=${panel.open} @toggle=${open_or_close}><summary>${w.turns.title}</summary>
    ${
      !panel.open
        ? nothing
        : !answer
          ? html`<p class="soft">${w.working}</p>`
          : html`${answer.stands ? standing(answer) : asked_for(answer)}<p class="sm soft">${answer.cautions.join(" ")}</p>`
    }</details>`;
}
