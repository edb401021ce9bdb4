// A boat whose files lie in a folder: what is saved there shows here, what is changed here is written there. Nothing is written over
// a file that is another than the one that was read.

import { w } from "../words/words.js";
import { app, change, go, open_project, redraw, toast_change } from "./app.js";
import { FOLDER_ID } from "./given.js";
import { new_project } from "./project.js";

/** As long as nobody types: a file is not written for every key. */
const QUIET_MS = 400;

/** @typedef {{text: string, sum: string}} OnDisk */

const folder = {
  /** @type {Map<string, OnDisk>} what was read last, or written */
  known: new Map(),
  /** @type {Map<string, OnDisk | null>} files that were changed there and here; null: there it is gone */
  clashes: new Map(),
  left_out: [],
  ended: false,
  fault: "",
};

let waiting = 0;
let working = Promise.resolve();
/** One thing after the other: what is read never overtakes what is written. */
const in_turn = (work) => (working = working.then(work).catch((fault) => failed(String(fault.message ?? fault))));

function failed(words) {
  folder.fault = words;
  redraw();
}

const read_folder = async () => {
  const answered = await fetch("files", { cache: "no-store" });
  if (!answered.ok) throw new Error(await answered.text());
  return answered.json();
};

const declares_boat = (text) => /^\s*boat\b/m.test(text);
/** The files that somebody opens, by the alphabet; libraries are none. */
const boats_of = (files) => {
  const boats = Object.keys(files).filter((name) => declares_boat(files[name]));
  return boats.length ? boats : Object.keys(files);
};
const texts_of = (files) => Object.fromEntries(Object.entries(files).map(([name, { text }]) => [name, text]));

/** Opens a boat of the folder. */
export function open_of_folder(root) {
  open_project(new_project(FOLDER_ID, root, app.project.files), false);
  go("numbers");
}

/** The first look at the folder; from then on it is listened to. */
export async function open_folder() {
  const { files, boat, left_out } = await read_folder();
  for (const [name, one] of Object.entries(files)) folder.known.set(name, one);
  folder.left_out = left_out;
  const texts = texts_of(files);
  app.folder = { boats: () => boats_of(app.project?.files ?? texts), left_out };
  open_project(new_project(FOLDER_ID, boat || boats_of(texts)[0], texts), false);
  const changes = new EventSource("changes");
  changes.addEventListener("changed", () => in_turn(take_changes));
  changes.onopen = () => set_ended(false);
  changes.onerror = () => set_ended(true);
}

function set_ended(ended) {
  if (folder.ended === ended) return;
  folder.ended = ended;
  if (!ended) {
    folder.fault = "";
    in_turn(write);
  }
  redraw();
}

const here = (name) => app.project.files[name];
const is_changed_here = (name) => here(name) !== folder.known.get(name)?.text;

/** Texts of the folder take the place of those here, without being written back. */
function take(texts) {
  const names = Object.keys(texts);
  if (names.length === 0) return;
  app.fix = null;
  change(texts, w.steps.changed_in_folder(names.join(", ")));
  toast_change(w.toast.changed_in_folder(names.join(", ")));
}

async function take_changes() {
  const { files, left_out } = await read_folder();
  folder.left_out = app.folder.left_out = left_out;
  const taken = {};
  for (const [name, there] of Object.entries(files)) {
    const before = folder.known.get(name);
    if (folder.clashes.get(name) === null) folder.clashes.delete(name); // it is there again
    if (before?.sum === there.sum) continue;
    if (here(name) === there.text) folder.clashes.delete(name);
    else if (is_changed_here(name)) {
      folder.clashes.set(name, there);
      continue;
    } else taken[name] = there.text;
    folder.known.set(name, there);
  }
  for (const name of [...folder.known.keys()].filter((each) => !(each in files))) {
    // Some programs take a file away before they put it there anew; what is open stays here, and is asked about.
    if (name === app.project.root || is_changed_here(name)) folder.clashes.set(name, null);
    else {
      folder.known.delete(name);
      if (here(name) !== undefined) taken[name] = null;
    }
  }
  folder.fault = "";
  take(taken);
  redraw();
}

async function put(name, text) {
  const before = folder.known.get(name);
  const answered = await fetch(`file/${name.split("/").map(encodeURIComponent).join("/")}`, {
    method: "PUT",
    headers: before ? { "If-Match": `"${before.sum}"` } : { "If-None-Match": "*" },
    body: text,
  });
  if (answered.ok) {
    folder.known.set(name, { text, sum: (await answered.json()).sum });
    return;
  }
  if (answered.status !== 412) throw new Error(`${name}: ${(await answered.text()).trim()}`);
  const { files } = await read_folder();
  if (files[name]?.text === text) folder.known.set(name, files[name]);
  else folder.clashes.set(name, files[name] ?? null);
}

async function write() {
  if (folder.ended || app.project?.id !== FOLDER_ID) return;
  for (const name of Object.keys(app.project.files))
    if (is_changed_here(name) && !folder.clashes.has(name)) await put(name, here(name));
  folder.fault = "";
  redraw();
}

/** Instead of the browser: the folder keeps the boat. @returns {boolean} */
export function keep_in_folder() {
  clearTimeout(waiting);
  waiting = setTimeout(() => in_turn(write), QUIET_MS);
  return true;
}

/** Whether something is here that the folder has not. */
export const is_unwritten = () =>
  app.project?.id === FOLDER_ID && Object.keys(app.project.files).some((name) => is_changed_here(name));

/** What is to be said of the folder: `{words, more, acts: [words, act][]}`; null: nothing. */
export function folder_news() {
  if (!app.folder) return null;
  const clash = [...folder.clashes][0];
  if (clash) {
    const [name, there] = clash;
    const mine = [
      w.folder.keep_mine,
      () => {
        folder.clashes.delete(name);
        if (there) folder.known.set(name, there);
        else folder.known.delete(name);
        in_turn(write);
      },
    ];
    const theirs = [
      w.folder.take_theirs,
      () => {
        folder.clashes.delete(name);
        folder.known.set(name, there);
        take({ [name]: there.text });
        redraw();
      },
    ];
    return there
      ? { words: w.folder.clash(name), more: w.folder.clash_words, acts: [theirs, mine] }
      : { words: w.folder.gone(name), more: w.folder.gone_words, acts: [mine] };
  }
  if (folder.ended) return { words: w.folder.ended, more: is_unwritten() ? w.folder.ended_unwritten : "", acts: [] };
  if (folder.fault) return { words: w.folder.not_written, more: folder.fault, acts: [[w.folder.try_again, () => in_turn(write)]] };
  return null;
}
