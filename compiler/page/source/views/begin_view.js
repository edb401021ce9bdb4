// From nothing to a list of stays: five screens, each one question, none of them a number.

import { html, nothing, svg } from "lit-html";
import { app, begin_project, go, redraw, set_setting, toast } from "../state/app.js";
import { kept_boats } from "../state/storage.js";
import { rig_name } from "../state/project.js";
import { w } from "../words/words.js";
import { begin_pictures, rig_picture } from "./begin_pictures.js";
import { mark, segments } from "./marks.js";
import { open_example, open_from_file } from "./menu.js";
import { open_dialog } from "../state/app.js";

/** Those that most boats have come first. */
const FIRST = ["fractional-sloop", "masthead-sloop", "cutter", "ketch", "gaff-cutter", "one-stay"];
const STEPS = 4;

const progress = (step) =>
  svg`<svg class="progress" width="150" height="30" viewBox="0 0 150 30" role="img" aria-label=${w.step_of(step, STEPS)}><path d="M2 15H148" />
    ${Array.from({ length: STEPS }, (_, i) => svg`<ellipse cx=${20 + i * 36} cy="15" rx=${i < step ? 8 : 5} ry=${i < step ? 10 : 6} class=${i < step ? "tied" : ""} />`)}</svg>`;

function tile(name, value, picture, title, small) {
  const choose = () => {
    app.begin[name] = value;
    redraw();
  };
  return html`<button type="button" class="tile" aria-pressed=${String(app.begin[name] === value)} data-choice=${value} @click=${choose}>${picture}<span><b>${title}</b>${small ? html`<small>${small}</small>` : nothing}</span></button>`;
}

function rigs() {
  const { starts, all } = app.begin;
  const of = new Map(starts.map((each) => [each.rig, each]));
  const first = FIRST.filter((name) => of.has(name));
  const rest = starts.map((each) => each.rig).filter((name) => !FIRST.includes(name));
  const shown = all || rest.includes(app.begin.rig) ? [...first, ...rest] : first;
  return html`<h1 tabindex="-1">${w.begin.which_rig}</h1><p class="soft">${w.begin.which_rig_words}</p>
    <div class="tiles">${shown.map((name) => tile("rig", name, rig_picture(name), of.get(name).title, w.begin.rigs[name] ?? ""))}
    ${
      shown.length < starts.length
        ? html`<button type="button" class="tile more" @click=${() => {
            app.begin.all = true;
            redraw();
          }}><span><b>${w.begin.more(rest.length)}</b><small>${w.begin.more_words}</small></span></button>`
        : nothing
    }</div>`;
}

const lines = () => html`<h1 tabindex="-1">${w.begin.rope_or_wire}</h1><p class="soft">${w.begin.rope_or_wire_words}</p>
  <div class="tiles one">${tile("line", "rope", begin_pictures.rope, ...w.begin.rope)}${tile("line", "wire", begin_pictures.wire, ...w.begin.wire)}</div>`;

const ways = () => html`<h1 tabindex="-1">${w.begin.cord_or_tape}</h1><p class="soft">${w.begin.cord_or_tape_words}</p>
  <div class="tiles one">${["cord", "tape", "drawing"].map((way) => tile("measured", way, begin_pictures[way], ...w.begin[way]))}</div>`;

const name_and_units = () => html`<h1 tabindex="-1">${w.begin.name}</h1>
  <label class="formrow strong">${w.begin.name_of_the_boat}<span class="field"><input id="boat-name" autocomplete="off" placeholder=${w.begin.my_boat} .value=${app.begin.name}
    @input=${(event) => (app.begin.name = event.target.value)} /></span></label>
  <div class="formrow"><p class="strong">${w.lengths_in}</p>${segments(
    w.lengths_in,
    [
      ["ft", w.feet_and_inches],
      ["mm", w.millimetres],
    ],
    app.settings.unit,
    (unit) => set_setting("unit", unit),
  )}</div>
  <div class="note">${mark("todo")}<span><b>${w.begin.then}</b>${w.begin.then_words}</span></div>`;

async function make() {
  const { rig, line, measured, name } = app.begin;
  const title = name.trim() || w.begin.my_boat;
  try {
    const made = await app.compiler.ask({
      ask: "begin",
      rig,
      line,
      measured,
      name: title,
      unit: app.settings.unit === "ft" ? "inches" : "millimetres",
    });
    const file = rig_name(title);
    await begin_project(file, { [file]: made.text });
    go("numbers");
    toast(w.begin.made);
  } catch (fault) {
    open_dialog({ name: "message", heading: w.cannot_begin, words: String(fault.message) });
  }
}

const welcome = () =>
  html`<div class="welcome"><h1 tabindex="-1">${w.begin.welcome}</h1><p>${w.begin.welcome_words}</p>${begin_pictures.welcome(w.begin)}</div>`;

export function begin_view(of) {
  const step = Math.min(STEPS, Math.max(0, Number(of) || 0));
  const inside = [welcome, rigs, lines, ways, name_and_units][step]();
  const boats = app.project || kept_boats().length > 0;
  return html`<header class="top">
      ${step === 0 ? html`<b class="brand">${w.name}</b>` : html`<button class="link bare" @click=${() => go(`start/${step - 1}`)}>\u2039 ${w.back}</button>`}
      <span class="middle">${step ? progress(step) : nothing}</span>
      ${step || app.project ? html`<button class="link bare" @click=${() => go(app.project ? "numbers" : "start/0")}>${w.stop}</button>` : nothing}</header>
    <main class="mid">${inside}</main>
    <footer class="bot"><div>${
      step === 0
        ? html`<button class="btn go wide tall" @click=${() => go("start/1")}>${w.begin.begin}</button>
          <span class="pair"><button class="btn quiet" @click=${open_from_file}>${w.open_a_file}</button>
          ${boats ? html`<button class="btn quiet" @click=${() => open_dialog({ name: "boats" })}>${w.boats_here}</button>` : html`<button class="btn quiet" @click=${open_example}>${w.begin.see_example}</button>`}</span>
          <p class="sm soft center">${w.stays_here}</p>`
        : html`<button class="btn go wide tall" @click=${() => (step < STEPS ? go(`start/${step + 1}`) : make())}>${step < STEPS ? w.next_word : w.begin.make_list}</button>`
    }</div></footer>`;
}
