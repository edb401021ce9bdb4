// The whole page: bar, panes, tabs, dialogs, and what is drawn when.

import { html, nothing, render } from "lit-html";
import { all_findings, first_error, is_known } from "../state/answers.js";
import { app, close_dialog, go, go_back, hush, is_wide, open_dialog, redraw } from "../state/app.js";
import { folder_news } from "../state/folder.js";
import { GIVEN_ID, is_as_given } from "../state/given.js";
import { title_of } from "../state/storage.js";
import { w } from "../words/words.js";
import { begin_view } from "./begin_view.js";
import { cord_dialog, cord_view, on_cord_dialog } from "./cord_view.js";
import { findings_dialog } from "./findings_view.js";
import { form_dialog } from "./form_view.js";
import { keypad_dialog } from "./keypad.js";
import { arrow, icon } from "./marks.js";
import { about_dialog, boats_dialog, files_view, folder_boats_dialog, menu_dialog, message_dialog, save_boat, sure_dialog } from "./menu.js";
import { counts, next_step, numbers_view } from "./numbers_view.js";
import { papers_view } from "./papers_view.js";
import { rig_view } from "./rig_view.js";
import { stay_view } from "./stay_view.js";
import { seal_dialog } from "./seal_view.js";
import { text_drawn, text_view } from "./text_view.js";

const VIEWS = {
  numbers: (of) => (of ? stay_view(of) : numbers_view()),
  cord: cord_view,
  rig: rig_view,
  papers: papers_view,
  text: text_view,
  files: files_view,
};
/** Which of the four a view belongs to. */
export const TAB_OF = { numbers: "numbers", cord: "numbers", rig: "rig", papers: "papers", text: "text", files: "text" };
const ICONS = {
  numbers: "M3 8h18v8H3zM7 8v4M11 8v5M15 8v4M19 8v5",
  rig: "M11 2v18M11 3l8 15M11 5L5 18M3 20h18l-2 2H6z",
  papers: "M6 2h9l4 4v16H6zM9 11h7M9 15h7M9 19h4",
  text: "M4 6h10M7 11h12M7 16h8M4 21h5",
};
const DIALOGS = {
  menu: menu_dialog,
  boats: boats_dialog,
  folder_boats: folder_boats_dialog,
  sure: sure_dialog,
  about: about_dialog,
  findings: findings_dialog,
  keypad: keypad_dialog,
  cord: cord_dialog,
  on_cord: on_cord_dialog,
  form: form_dialog,
  message: message_dialog,
  seal: seal_dialog,
};

function summary() {
  const error = first_error(app.answers);
  if (app.trial.value !== null) return w.trial_not_cut;
  if (error) return w.cannot_be_read(error);
  const { ready, all } = counts();
  return all ? w.ready_of(ready, all) : app.busy ? w.working : "";
}

function bar() {
  const count = all_findings(app.answers).length;
  return html`<header class="bar"><div class="who"><b>${title_of(app.project)}</b><span>${summary()}</span></div>
    <button id="findings" aria-haspopup="dialog" @click=${() => open_dialog({ name: "findings" })}><span>${w.findings}</span><span class="count">${is_known(app.answers) ? count : ""}</span></button>
    <button id="menu" aria-haspopup="dialog" aria-label=${w.menu} @click=${() => open_dialog({ name: "menu" })}>${icon("M4 7h16M4 12h16M4 17h16")}</button></header>`;
}

const tab = (view, current) =>
  html`<button data-go=${view} aria-current=${current === view ? "page" : "false"} @click=${() => go(view)}>${icon(ICONS[view])}<span>${w.views[view]}</span></button>`;

function next_bar() {
  const next = next_step();
  const here = `${app.left.view}${app.left.of ? `/${app.left.of}` : ""}`;
  if (!next || next.to === here || app.left.view !== "numbers" || (!is_wide() && app.left.of)) return nothing;
  return html`<div class="next"><button @click=${() => go(next.to)}><span class="tx"><span class="lab">${w.next_word}</span>${next.words}</span>${arrow}</button></div>`;
}

function banner() {
  if (app.full)
    return html`<div class="banner" role="alert"><span class="tx"><b>${w.browser_full}</b> ${w.browser_full_words}</span><button class="btn go" @click=${save_boat}>${w.save}</button></div>`;
  if (app.fault)
    return html`<div class="banner" role="alert"><span class="tx"><b>${w.fault}</b> ${app.fault}</span><button class="btn" @click=${save_boat}>${w.save}</button></div>`;
  const news = folder_news();
  if (news)
    return html`<div class="banner" role="alert"><span class="tx"><b>${news.words}</b> ${news.more}</span>${news.acts.map(
      ([words, act]) => html`<button class="btn" @click=${act}>${words}</button>`,
    )}</div>`;
  if (app.given && app.project?.id === GIVEN_ID && !is_as_given(app.given, app.project))
    return html`<div class="banner" role="status"><span class="tx"><b>${w.given_changed}</b> ${w.given_changed_words}</span><button class="btn" @click=${save_boat}>${w.save}</button></div>`;
  return nothing;
}

function panes() {
  const show = ({ view, of }) => VIEWS[view](of);
  if (!is_wide()) {
    const side = ["numbers", "text"].includes(TAB_OF[app.route.view]) ? app.left : app.right;
    return html`<main aria-busy=${String(app.busy)} class="pane one v-${side.view}">${show(side)}${next_bar()}</main>
      <nav class="tabs" aria-label=${w.views_label}>${["numbers", "rig", "papers", "text"].map((view) => tab(view, TAB_OF[side.view]))}</nav>`;
  }
  const strip = (views, current, label) =>
    html`<nav class="ptabs" aria-label=${label}>${views.map((view) => tab(view, TAB_OF[current]))}</nav>`;
  return html`<div class="panes"><main class="pane L v-${app.left.view}">${strip(["numbers", "text"], app.left.view, w.what_you_say)}<div class="inner">${show(app.left)}</div>${next_bar()}</main>
    <section class="pane R v-${app.right.view}" aria-label=${w.what_follows}>${strip(["rig", "papers"], app.right.view, w.what_follows)}<div class="inner">${show(app.right)}</div></section></div>`;
}

const toast = () =>
  html`<div class="toast ${app.toast ? "on" : ""}" role="status">${
    app.toast
      ? html`<span>${app.toast}</span>${
          app.toast_takes_back && app.project?.steps.length
            ? html`<button @click=${() => {
                app.toast = null;
                go_back();
              }}>${w.take_back}</button>`
            : nothing
        }`
      : nothing
  }</div>`;

const starting = () => app.route.view === "start" || !app.project;

let dialog_was = null;
export function draw() {
  document.documentElement.lang = w.language;
  document.title = app.project && !starting() ? `${w.name}: ${title_of(app.project)}` : w.name;
  render(
    html`${banner()}${
      starting()
        ? html`<div id="start">${begin_view(app.route.view === "start" ? app.route.of : "0")}</div>`
        : html`<nav class="skips" aria-label=${w.skip}><button class="skip" @click=${() => document.querySelector("main button.row, main h1")?.focus()}>${w.skip_to_stays}</button></nav>${bar()}${panes()}`
    }
      <dialog aria-label=${app.dialog ? (w.dialogs[app.dialog.name] ?? w.name) : w.name} @cancel=${(event) => {
        event.preventDefault();
        close_dialog();
      }} @click=${(event) => event.target.tagName === "DIALOG" && close_dialog()}>${app.dialog ? DIALOGS[app.dialog.name](app.dialog) : nothing}</dialog>
      ${toast()}`,
    document.getElementById("page"),
  );
  const dialog = document.querySelector("dialog");
  if (app.dialog && !dialog.open) dialog.showModal();
  if (!app.dialog && dialog.open) dialog.close();
  if (app.dialog && dialog_was !== app.dialog.name) {
    dialog.scrollTop = 0;
    (dialog.querySelector("input[autofocus]") ?? dialog.querySelector("h2"))?.focus();
  }
  dialog_was = app.dialog?.name ?? null;
  text_drawn();
}

/** What stands behind the number sign; somebody may have typed it. */
function address() {
  try {
    return decodeURIComponent(location.hash.slice(1));
  } catch {
    return "";
  }
}

/** What the address says is shown. */
export function take_route() {
  const [view, ...of] = address().split("/");
  const known = view === "start" || view in VIEWS;
  app.route = known ? { view, of: of.join("/") } : { view: app.project ? "numbers" : "start", of: "" };
  const tab_name = TAB_OF[app.route.view];
  if (tab_name === "numbers" || tab_name === "text") app.left = app.route;
  else if (tab_name) app.right = app.route;
  const piece = app.route.view === "numbers" ? app.route.of : app.route.of.replace(/^bench\//, "");
  if (piece && app.answers.pieces.some(({ name }) => name === piece)) app.selected = piece;
  if (app.dialog) close_dialog();
  hush();
  redraw();
}
