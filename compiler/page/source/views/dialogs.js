// The frame of every dialog: its heading, which has the focus, and the way back.

import { html } from "lit-html";
import { close_dialog } from "../state/app.js";
import { w } from "../words/words.js";

export const dialog_frame = (heading, inside, close = close_dialog) =>
  html`<div class="dh"><h2 tabindex="-1" autofocus>${heading}</h2><button type="button" @click=${close}>${w.close}</button></div>
    <div class="db">${inside}</div>`;
