// Small things that stand in many views: lengths, the four marks, the cord with its knots.

import { html, nothing, svg } from "lit-html";
import { feet_and_inches, feet_text, mm_text, tenths_of_metres, whole_feet } from "../core/lengths.js";
import { app } from "../state/app.js";
import { w } from "../words/words.js";

/** Feet and inches with a built fraction; it never breaks over a line. */
export function feet_html(mm) {
  const { minus, feet, inches, top, bottom } = feet_and_inches(mm);
  const whole = [feet ? `${feet}'` : "", feet || inches || !top ? String(inches) : ""].filter(Boolean).join(" ");
  const fraction = top ? html`${whole ? " " : ""}<span class="fr"><sup>${top}</sup>\u2044<sub>${bottom}</sub></span>` : nothing;
  return html`<span class="nb">${minus ? "\u2212" : ""}${whole}${fraction}"</span>`;
}
const mm_html = (mm) => html`<span class="nb">${mm_text(mm)}</span>`;

/** In the unit that somebody reads by, and in the other. */
export const length_html = (mm) => (app.settings.unit === "ft" ? feet_html(mm) : mm_html(mm));
export const other_html = (mm) => (app.settings.unit === "ft" ? mm_html(mm) : feet_html(mm));
export const length_words = (mm) => (app.settings.unit === "ft" ? feet_text(mm) : mm_text(mm));

/** `X + 4' 5 3/8"` of `{x, plus_mm}`. */
export function sum_html({ x, plus_mm }, write = length_html) {
  if (!x) return write(plus_mm);
  if (Math.abs(plus_mm) < 0.05) return html`X`;
  return html`<span class="nb">X ${plus_mm < 0 ? "\u2212" : "+"} ${write(Math.abs(plus_mm))}</span>`;
}
export const change_html = (mm) => html`<span class="nb">${mm < 0 ? "\u2212" : "+"} ${length_html(Math.abs(mm))}</span>`;

/** For ordering: rounded up, and no finer than a foot or a tenth of a metre. */
export const about_html = (mm) =>
  html`<span class="nb">${app.settings.unit === "ft" ? w.about_feet(whole_feet(mm)) : w.about_metres(tenths_of_metres(mm))}</span>`;

export const piece_title = (piece) => (piece.side === "centre" ? piece.title : `${piece.title}, ${w.sides[piece.side]}`);

/** How far a piece is, as ink. */
export const mark = (state, small = false) =>
  html`<span class="g ${state} ${small ? "s" : ""}" aria-hidden="true">${
    state === "ready" || state === "record" ? "\u2713" : state === "once" ? "1" : state === "differ" ? "2" : nothing
  }</span>`;

/** A short cord with its wide knot and its tally. */
export function cord_picture(knots, width = 84) {
  const count = Math.min(knots ?? 0, 9);
  return svg`<svg class="cordlet" width=${width} height="14" viewBox="0 0 84 14" aria-hidden="true">
    <path d="M2 7H82" /><rect x="11" y="1" width="8" height="12" rx="3.5" />
    ${Array.from({ length: count }, (_, i) => svg`<ellipse cx=${30 + i * (count > 5 ? 6 : 13)} cy="7" rx="3.4" ry="4.4" />`)}
  </svg>`;
}

export const arrow = svg`<svg class="icon" viewBox="0 0 24 24" aria-hidden="true"><path d="M5 12h14M13 6l6 6-6 6" /></svg>`;
/** @param {string} path */
export const icon = (path) => svg`<svg class="icon" viewBox="0 0 24 24" aria-hidden="true"><path d=${path} /></svg>`;

/** A choice of a few, of which one is pressed. */
export const segments = (label, all, pressed, choose) =>
  html`<div class="seg" role="group" aria-label=${label}>
    ${all.map(
      ([value, words]) =>
        html`<button type="button" aria-pressed=${String(value === pressed)} @click=${() => choose(value)}>${words}</button>`,
    )}
  </div>`;
