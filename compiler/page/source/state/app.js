// The one state of the page. Views read it; what changes it ends in `redraw`.

import { bytes_of, with_edits } from "../core/edits.js";
import { w } from "../words/words.js";
import { ask_all, no_answers } from "./answers.js";
import { GIVEN_ID } from "./given.js";
import { changed, gone_back, new_project } from "./project.js";
import * as storage from "./storage.js";

export const app = {
  /** @type {import("../core/compiler.js").Compiler} */
  compiler: null,
  /** @type {import("./project.js").Project | null} */
  project: null,
  answers: no_answers(),
  settings: { unit: "ft", look: "auto", paper: "a4", ...storage.kept_settings() },
  /** What stands in the address: the view and what of it. */
  route: { view: "start", of: "" },
  /** On a wide screen, what each pane shows. */
  left: { view: "numbers", of: "" },
  right: { view: "rig", of: "" },
  /** Name of the piece that is selected in both panes. */
  selected: "",
  /** @type {null | {name: string, [more: string]: any}} */
  dialog: null,
  toast: null,
  toast_takes_back: false,
  /** The browser is full: the last change is not kept. */
  full: false,
  /** The compiler itself has failed. */
  fault: "",
  busy: false,
  trial: { key: "", value: null, changes: new Map(), appear: [], vanish: [] },
  begin: { rig: "fractional-sloop", line: "rope", measured: "cord", name: "", starts: [] },
  file: "",
  fix: null,
  /** @type {import("./given.js").GivenBoat | null} the boat that the page was made for */
  given: null,
  /** The folder that the page is served from: `boats()`, the names of its boats; `left_out`. */
  folder: null,
};

let drawing = () => {};
let said = () => {};
/** What draws, and what speaks to somebody who does not see. */
export function connect(draw, say) {
  drawing = draw;
  said = say;
}
export const redraw = () => drawing();
export const say = (words) => said(words);

export const is_wide = () => matchMedia("(min-width: 900px)").matches;

/** Goes to a view: "numbers/cap-shroud.port". */
export function go(to) {
  if (location.hash === `#${to}`) dispatchEvent(new HashChangeEvent("hashchange"));
  else location.hash = to;
}

let toast_ends = 0;
let toast_began = 0;
/** A word about something else is no word about where somebody has gone since. */
export function hush() {
  if (app.toast && Date.now() - toast_began > 500) app.toast = null;
}
export function toast(words, of_change = false) {
  app.toast = words;
  app.toast_takes_back = of_change;
  toast_began = Date.now();
  clearTimeout(toast_ends);
  toast_ends = setTimeout(() => {
    app.toast = null;
    redraw();
  }, 6000);
  redraw();
}
/** Of the change that was made last: it can be taken back from there. */
export const toast_change = (words) => toast(words, true);

let opened_from = null;
export function open_dialog(dialog) {
  if (!app.dialog) opened_from = document.activeElement;
  app.dialog = dialog;
  redraw();
}
export function close_dialog() {
  app.dialog = null;
  redraw();
  if (opened_from?.isConnected) opened_from.focus({ preventScroll: true });
  opened_from = null;
}

// ---- the compiler ----

const given = new Map();
/** Puts what is new, drops what is gone. */
async function give_texts() {
  const { files } = app.project;
  for (const name of [...given.keys()])
    if (!(name in files)) {
      given.delete(name);
      await app.compiler.drop(name);
    }
  for (const [name, text] of Object.entries(files))
    if (given.get(name) !== text) {
      given.set(name, text);
      await app.compiler.put(name, bytes_of(text));
    }
}

/** Asks about the boat that is open. */
export const ask = (request) => app.compiler.ask({ boat: app.project.root, ...request });

let turn = 0;
let asking = Promise.resolve();
/** Asks all anew, one state after the other; what was overtaken is left out. */
export function refresh() {
  const mine = ++turn;
  app.busy = true;
  asking = asking.then(async () => {
    if (mine !== turn || !app.project) return;
    const { id } = app.project;
    try {
      await give_texts();
      const before = app.answers.of === id ? app.answers : null;
      const answers = await ask_all(ask, before, app.settings.paper, (early) => {
        if (mine !== turn) return false;
        app.answers = { ...early, of: id };
        redraw();
        return true;
      });
      if (mine !== turn || !answers) return;
      app.answers = { ...answers, of: id };
      app.fault = "";
      if (!app.answers.pieces.some(({ name }) => name === app.selected)) app.selected = app.answers.pieces[0]?.name ?? "";
    } catch (fault) {
      app.fault = String(fault.message ?? fault);
    }
    app.busy = false;
    redraw();
  });
  return asking;
}
export const settled = () => asking;

// ---- the boat ----

let keeper = storage.keep_project;
/** Something else than this browser keeps boats. @param {(project: import("./project.js").Project) => boolean} keep_project */
export function keep_by(keep_project) {
  keeper = keep_project;
}
function keep() {
  app.full = !keeper(app.project);
}

/** Changes texts of the boat, keeps her and asks anew. */
export function change(texts, words, how = {}) {
  const next = changed(app.project, texts, { words, at: Date.now(), ...how });
  if (!next) return asking;
  app.project = next;
  keep();
  end_trial();
  redraw();
  return refresh();
}

/** The same with edits. @param {import("./writing.js").FileEdits[]} all */
export function change_by(all, words) {
  const texts = {};
  for (const { file, edits } of all) texts[file] = with_edits(texts[file] ?? app.project.files[file], edits);
  return change(texts, words);
}

/** The boat that the page was made for; what is changed of her is not kept. */
export function open_given(boat) {
  app.given = boat;
  keep_by((project) => project.id === GIVEN_ID || storage.keep_project(project));
  return open_project(new_project(GIVEN_ID, boat.boat, boat.files), false);
}

export function go_back() {
  const words = app.project.steps.at(-1)?.words;
  if (!words) return;
  app.project = gone_back(app.project);
  keep();
  end_trial();
  toast(w.toast.taken_back(words));
  refresh();
}

export function end_trial() {
  app.trial = { key: app.trial.key, value: null, changes: new Map(), appear: [], vanish: [] };
}

/** Opens a boat; one that is new is kept at once. */
export function open_project(project, is_new) {
  app.project = project;
  app.answers = no_answers();
  app.file = project.root;
  app.fix = null;
  end_trial();
  app.trial.key = "";
  app.selected = "";
  app.left = { view: "numbers", of: "" };
  app.right = { view: "rig", of: "" };
  if (is_new) keep();
  return refresh();
}

const fresh_id = () => Date.now().toString(36) + Math.random().toString(36).slice(2, 6);
export const begin_project = (root, files) => open_project(new_project(fresh_id(), root, files), true);

export function set_setting(name, value) {
  app.settings = { ...app.settings, [name]: value };
  storage.keep_settings(app.settings);
  apply_look();
  redraw();
  if (name === "paper" && app.project) refresh();
}
export function apply_look() {
  if (app.settings.look === "auto") delete document.documentElement.dataset.look;
  else document.documentElement.dataset.look = app.settings.look;
}
