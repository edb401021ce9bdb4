// A cord as it hangs, U on top, with its knots and whose they are; and the dialog that puts a stay on a cord.

import { html, nothing, svg } from "lit-html";
import { app, change_by, close_dialog, go, open_dialog, redraw, toast, toast_change } from "../state/app.js";
import { cords_of, counted_readings, free_tally, readings_of } from "../state/readings.js";
import { write_hoisted, write_knots, write_title } from "../state/writing.js";
import { w } from "../words/words.js";
import { dialog_frame } from "./dialogs.js";
import { cord_picture, mark, piece_title } from "./marks.js";
import { today } from "./stay_view.js";
import { stepper } from "./stepper.js";

const MOST_KNOTS = 12;

const rope = (knots) =>
  svg`<svg class="rope" viewBox="0 0 84 100" preserveAspectRatio="none" aria-hidden="true"><path d="M30 0V100" vector-effect="non-scaling-stroke" /></svg>
    ${
      knots === null
        ? nothing
        : svg`<svg class="knot" viewBox="0 0 84 24" aria-hidden="true"><path d="M30 12H82" /><rect x="18" y="5" width="24" height="14" rx="6" />
      ${Array.from({ length: Math.min(knots, 6) }, (_, i) => svg`<ellipse cx=${50 + i * 7} cy="12" rx="3" ry="4.6" />`)}</svg>`
    }`;

const hoists = (all) => w.hoisted_times(all.filter((each) => !each.assumed).length);

function knot_row(cord, knot) {
  const set = (count) => {
    change_by(write_knots(knot.readings, count), w.steps.knots(cord.title || cord.name, count));
  };
  return html`<li class="knots"><span class="hang">${rope(knot.knots)}</span><div class="kk">
      <div class="ss"><h2>${[...new Set(knot.stays.map(({ piece }) => piece.title))].join(", ") || w.no_tally}</h2>
        ${knot.stays.map(
          ({ piece, readings }) =>
            html`<button @click=${() => go(`numbers/${piece.name}`)}>${mark(piece.state, true)}<span>${
              piece.side === "centre" ? hoists(readings) : html`<b>${w.sides[piece.side]}</b>, ${hoists(readings)}`
            }</span></button>`,
        )}</div>
      ${stepper(w.knots_of(knot.stays[0]?.piece.title ?? ""), knot.knots ?? 0, 1, MOST_KNOTS, set)}
      ${knot.clash ? html`<p class="note"><span class="g not s" aria-hidden="true"></span><span>${w.clash}</span></p>` : nothing}
    </div></li>`;
}

function rename(cord, title) {
  const edits = write_title(app.project.files[cord.declaration.place.file], cord.declaration, title);
  change_by([edits], w.steps.renamed(title));
}

export function cord_view(name) {
  const cord = cords_of(app.answers).find((each) => each.name === name);
  const back = html`<nav class="back" aria-label=${w.all_stays}><button @click=${() => go("numbers")}>\u2039 ${w.all_stays}</button></nav>`;
  if (!cord) return html`${back}<div class="in"><h1>${w.no_such_cord}</h1></div>`;
  return html`${back}<header class="head"><h1>${cord.title || cord.name}</h1><p class="soft">${w.cord_words}</p>
      <label class="formrow strong">${w.its_colour}<span class="field"><input .value=${cord.title} @change=${(event) => rename(cord, event.target.value)} /></span></label></header>
    <ol class="cordbig">
      <li class="knots"><span class="hang">${rope(null)}</span><p class="kk"><span><b>U</b> ${w.upper_end}</span></p></li>
      ${cord.knots.map((knot) => knot_row(cord, knot))}
      <li class="knots"><span class="hang loose">${rope(null)}</span><div class="kk"><button class="link" @click=${() => open_dialog({ name: "on_cord", cord: cord.name })}>${w.another_stay}</button></div></li>
    </ol>`;
}

/** Which stay goes on this cord. */
export function on_cord_dialog(dialog) {
  const waiting = app.answers.pieces.filter(
    (piece) => !readings_of(app.answers, piece.stay).some((each) => each.cord && !each.assumed),
  );
  return dialog_frame(
    w.another_stay,
    html`<ul class="menu">${waiting.map(
      (piece) =>
        html`<li><button @click=${() => open_dialog({ name: "cord", piece: piece.name, cord: dialog.cord })}>${mark(piece.state)}<span>${piece_title(piece)}</span></button></li>`,
    )}${waiting.length ? nothing : html`<li><p class="item">${w.every_stay_measured}</p></li>`}</ul>`,
  );
}

/** A name of the language for a cord that is new. */
function cord_name(title) {
  const plain =
    title
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, "-")
      .replace(/^-|-$/g, "") || "cord";
  const taken = new Set(app.answers.declarations.map((each) => each.name));
  const safe = /^[a-z]/.test(plain) ? plain : `cord-${plain}`;
  for (let count = 1; ; ++count) {
    const name = count === 1 ? safe : `${safe}-${count}`;
    if (!taken.has(name)) return name;
  }
}

/** The end of a cord at the pin aloft moves the cut by as much as it hung lower, so it is asked, never taken to be nothing. */
function where_it_hung(dialog) {
  const lower = () => {
    dialog.hung = "lower";
    open_dialog({ name: "keypad", title: w.hung_lower_by, answers: dialog });
  };
  if (dialog.hung === "lower" && dialog.offset === undefined) dialog.hung = undefined;
  return html`<div class="formrow"><p class="strong">${w.where_its_end_hung}</p>
    <div class="choices" role="group" aria-label=${w.where_its_end_hung}>
      <button type="button" aria-pressed=${String(dialog.hung === "at")} @click=${() => {
        dialog.hung = "at";
        redraw();
      }}>${w.hung_at_the_pin}</button>
      <button type="button" aria-pressed=${String(dialog.hung === "lower")} @click=${lower}>${dialog.hung === "lower" ? w.hung_lower(dialog.offset) : w.hung_lower("")}</button></div></div>`;
}

/** The stay was hoisted on a cord: which cord, how many little knots, where its end hung. */
export function cord_dialog(dialog) {
  const piece = app.answers.pieces.find((each) => each.name === dialog.piece);
  const cords = cords_of(app.answers);
  const there = counted_readings(app.answers, piece.stay).find((each) => each.cord);
  dialog.cord ??= there?.cord ?? cords[0]?.name ?? "";
  const cord = cords.find((each) => each.name === dialog.cord);
  dialog.knots ??= there && there.cord === dialog.cord && there.knots !== null ? there.knots : free_tally(cord);
  dialog.colour ??= w.first_colour;
  const shared =
    cord?.knots.find((each) => each.knots === dialog.knots)?.stays.filter(({ piece: other }) => other.title !== piece.title) ??
    [];
  const put = (event) => {
    event.preventDefault();
    if (dialog.hung === undefined) return toast(w.toast.say_where_it_hung);
    const { root } = app.project;
    const is_new = dialog.cord === "";
    const edits = write_hoisted({
      answers: app.answers,
      root,
      text: app.project.files[root],
      stay: piece.stay,
      cord: is_new ? cord_name(dialog.colour) : dialog.cord,
      new_cord: is_new ? dialog.colour : undefined,
      knots: dialog.knots,
      offset: dialog.hung === "lower" ? dialog.offset : "0 mm",
      note: dialog.hung === "lower" ? w.written.end_below_bearing : w.written.end_at_bearing,
      date: today(),
    });
    change_by([edits], w.steps.hoisted(piece_title(piece), dialog.knots));
    close_dialog();
    toast_change(w.toast.on_cord(piece_title(piece), dialog.knots));
  };
  const choose = (name) => {
    dialog.cord = name;
    dialog.knots = undefined;
    redraw();
  };
  return dialog_frame(
    w.cord_title(piece_title(piece)),
    html`<form @submit=${put}>
      <p>${w.cord_how}</p>
      <div class="formrow"><p class="strong">${w.which_cord}</p>
        <div class="choices" role="group" aria-label=${w.which_cord}>${[
          ...cords.map((each) => [each.name, each.title || each.name]),
          ["", w.new_cord],
        ].map(
          ([name, title]) =>
            html`<button type="button" aria-pressed=${String(name === dialog.cord)} @click=${() => choose(name)}>${title}</button>`,
        )}</div></div>
      ${
        dialog.cord === ""
          ? html`<label class="formrow strong">${w.its_colour}<span class="field"><input .value=${dialog.colour} @input=${(event) => (dialog.colour = event.target.value)} /></span></label>`
          : nothing
      }
      <div class="formrow"><p class="strong">${w.little_knots}</p>
        <div class="pair even">${stepper(w.little_knots, dialog.knots, 1, MOST_KNOTS, (count) => {
          dialog.knots = count;
          redraw();
        })}${cord_picture(dialog.knots, 120)}</div>
        ${shared.length ? html`<p class="note"><span class="g not s" aria-hidden="true"></span><span>${w.clash_with(shared.map((each) => piece_title(each.piece)))}</span></p>` : nothing}</div>
      ${where_it_hung(dialog)}
      <button class="btn go wide">${w.it_is_knotted}</button>
    </form>`,
  );
}
