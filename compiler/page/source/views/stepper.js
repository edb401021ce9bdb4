// A small whole number with a button to each side.

import { html } from "lit-html";
import { w } from "../words/words.js";

export const stepper = (label, value, least, most, set) =>
  html`<div class="stepper" role="group" aria-label=${label}>
    <button type="button" aria-label=${w.fewer(label)} ?disabled=${value <= least} @click=${() => set(value - 1)}>\u2212</button>
    <output aria-live="polite">${value}</output>
    <button type="button" aria-label=${w.more(label)} ?disabled=${value >= most} @click=${() => set(value + 1)}>+</button>
  </div>`;
