// The one menu: keep, hand on, go back, open, settings; and the files of the boat.

import { html, nothing } from "lit-html";
import {
  app,
  begin_project,
  change,
  close_dialog,
  go,
  go_back,
  open_dialog,
  open_project,
  redraw,
  set_setting,
  toast,
  toast_change,
} from "../state/app.js";
import { boat_file } from "../state/boat_file.js";
import { open_of_folder } from "../state/folder.js";
import { add_files, missing_libraries, open_boat } from "../state/open_files.js";
import { drop_project, kept_boats, kept_project, title_of } from "../state/storage.js";
import { free_name, rig_name } from "../state/project.js";
import { w } from "../words/words.js";
import { dialog_frame } from "./dialogs.js";
import { arrow, icon, segments } from "./marks.js";
import { choose_files, save_file, share_file } from "./save.js";

const ICONS = {
  save: "M5 3h11l4 4v14H5zM8 3v6h7V3M8 21v-7h8v7",
  share: "M12 15V3M7 8l5-5 5 5M5 13v8h14v-8",
  back: "M9 14L4 9l5-5M4 9h9a6 6 0 0 1 0 12h-3",
  open: "M3 6h6l2 3h10v11H3z",
  boats: "M11 2v16M11 3l8 13M11 5L5 16M3 19h18l-2 3H6z",
  files: "M6 2h9l4 4v16H6zM9 11h7M9 15h7",
  fresh: "M12 5v14M5 12h14",
  about: "M12 11v6M12 7v.5M3 12a9 9 0 1 0 18 0a9 9 0 1 0-18 0",
};

const file_name = () => `${rig_name(title_of(app.project)).replace(/\.rig$/, "")}.rig-boat`;
export const save_boat = () => {
  save_file(file_name(), boat_file(app.project));
  toast(w.toast.saved(file_name()));
};

/** Lets somebody open a boat, and says what was wrong. */
export async function open_from_file() {
  const files = await choose_files(true);
  if (files.length === 0) return;
  const wrong = open_boat(files);
  close_dialog();
  if (app.project && !wrong) go("numbers");
  if (wrong) open_dialog({ name: "message", heading: w.cannot_open, words: wrong });
}

const item = (picture, words, small, tap, disabled = false) =>
  html`<li><button ?disabled=${disabled} @click=${tap}>${icon(ICONS[picture])}<span>${words}${small ? html`<small>${small}</small>` : nothing}</span></button></li>`;

export function menu_dialog() {
  const last = app.project.steps.at(-1);
  const away = (to) => () => {
    close_dialog();
    go(to);
  };
  return dialog_frame(
    title_of(app.project),
    html`<ul class="menu">
        ${item("save", w.save_to_file, w.one_file(file_name()), () => {
          close_dialog();
          save_boat();
        })}
        ${item("share", w.share, w.share_words, async () => {
          close_dialog();
          await share_file(file_name(), boat_file(app.project));
        })}
        ${item("back", w.go_back, last ? last.words : w.nothing_to_take_back, go_back, !last)}
      </ul><ul class="menu">
        ${item("files", w.files_and_libraries, w.count_files(Object.keys(app.project.files).length), away("files"))}
        ${
          app.folder
            ? item("boats", w.folder.boats, w.count_boats(app.folder.boats().length), () => open_dialog({ name: "folder_boats" }))
            : html`${item("open", w.open_a_file, "", open_from_file)}
        ${item("boats", w.boats_here, "", () => open_dialog({ name: "boats" }))}
        ${item("fresh", w.begin_another, "", away("start/1"))}`
        }
      </ul>
      <div class="formrow"><p class="strong">${w.lengths_in}</p>${segments(
        w.lengths_in,
        [
          ["ft", w.feet_and_inches],
          ["mm", w.millimetres],
        ],
        app.settings.unit,
        (unit) => set_setting("unit", unit),
      )}</div>
      <div class="formrow"><p class="strong">${w.look}</p>${segments(
        w.look,
        [
          ["auto", w.looks.auto],
          ["light", w.looks.light],
          ["dark", w.looks.dark],
        ],
        app.settings.look,
        (look) => set_setting("look", look),
      )}</div>
      <div class="formrow"><p class="strong">${w.paper}</p>${segments(
        w.paper,
        [
          ["a4", "A4"],
          ["letter", "Letter"],
        ],
        app.settings.paper,
        (paper) => set_setting("paper", paper),
      )}</div>
      <ul class="menu">${item("about", w.about, "", () => open_dialog({ name: "about" }))}</ul>
      <p class="soft sm">${app.folder ? w.folder.written_there : w.stays_here}</p>`,
  );
}

/** The boats of the folder that the page is served from. */
export const folder_boats_dialog = () =>
  dialog_frame(
    w.folder.boats,
    html`<ul class="menu">${app.folder.boats().map(
      (root) => html`<li><button aria-current=${String(root === app.project.root)} @click=${() => {
        close_dialog();
        open_of_folder(root);
      }}>${icon(ICONS.boats)}<span>${title_of({ root, files: app.project.files })}<small>${root}${root === app.project.root ? `, ${w.is_open}` : ""}</small></span></button></li>`,
    )}</ul>`,
  );

export function boats_dialog() {
  const boats = kept_boats();
  return dialog_frame(
    w.boats_here,
    html`<ul class="menu">${boats.map(
      (boat) => html`<li class="two"><button aria-current=${String(boat.id === app.project?.id)} @click=${() => {
        open_project(kept_project(boat.id), false);
        close_dialog();
        go("numbers");
      }}>${icon(ICONS.boats)}<span>${boat.title}${boat.id === app.project?.id ? html`<small>${w.is_open}</small>` : nothing}</span></button>
        ${boat.id === app.project?.id ? nothing : html`<button class="side" aria-label=${w.take_off(boat.title)} @click=${() => open_dialog({ name: "sure", boat })}>\u00d7</button>`}</li>`,
    )}</ul>
      <p class="pair"><button class="btn quiet" @click=${open_from_file}>${w.open_a_file}</button>
        <button class="btn quiet" @click=${() => {
          close_dialog();
          open_example();
        }}>${w.begin.see_example}</button></p>`,
  );
}

/** Before a boat is taken off the device. */
export const sure_dialog = ({ boat }) =>
  dialog_frame(
    w.take_off(boat.title),
    html`<p>${w.take_off_words}</p><div class="pair"><button class="btn quiet" @click=${() => open_dialog({ name: "boats" })}>${w.keep_her}</button>
      <button class="btn" @click=${() => {
        drop_project(boat.id);
        open_dialog({ name: "boats" });
      }}>${w.take_off_now}</button></div>`,
  );

export function files_view() {
  const names = Object.keys(app.project.files).sort();
  const missing = missing_libraries(app.project);
  const add = async () => {
    const files = await choose_files(true);
    const wrong = files.length ? add_files(files) : "";
    if (wrong) open_dialog({ name: "message", heading: w.cannot_open, words: wrong });
  };
  return html`<nav class="back"><button @click=${() => go("text")}>\u2039 ${w.views.text}</button></nav>
    <header class="head"><h1>${w.files_and_libraries}</h1><p class="soft">${w.files_words}</p></header>
    <div class="in"><ul class="menu">${names.map(
      (
        name,
      ) => html`<li class="two"><button @click=${() => go(`text/${name}:1`)}>${icon(ICONS.files)}<span>${name}<small>${name === app.project.root ? w.the_boat : w.library}</small></span>${arrow}</button>
        ${
          name === app.project.root || app.folder
            ? nothing
            : html`<button class="side" aria-label=${w.take_away(name)} @click=${() => {
                change({ [name]: null }, w.steps.removed(name));
                toast_change(w.toast.removed(name));
              }}>\u00d7</button>`
        }</li>`,
    )}</ul>
      ${app.folder?.left_out.length ? html`<p class="note"><span class="g not"></span><span><b>${w.folder.left_out}</b>${app.folder.left_out.map(({ file, why }) => html`<br />${file}: ${why}`)}</span></p>` : nothing}
      ${missing.length ? html`<p class="note"><span class="g not"></span><span><b>${w.library_missing}</b>${missing.join(", ")}</span></p>` : nothing}
      <div class="pair"><button class="btn" @click=${add}>${w.add_file}</button>
        <button class="btn quiet" @click=${() => {
          const name = free_name(app.project, "parts.rig");
          change({ [name]: "language 1\n" }, w.steps.added(name));
          app.file = name;
          go("text");
        }}>${w.new_library}</button></div></div>`;
}

export const message_dialog = ({ heading, words }) =>
  dialog_frame(heading, html`<p>${words}</p><p><button class="btn go wide" @click=${close_dialog}>${w.close}</button></p>`);

let of_the_compiler = null;
export function about_dialog() {
  if (of_the_compiler === null) {
    of_the_compiler = "";
    app.compiler.licences().then(
      (text) => {
        of_the_compiler = text;
        redraw();
      },
      () => {},
    );
  }
  const licence = [document.getElementById("licences")?.textContent ?? "", of_the_compiler].filter(Boolean).join("\n\n----\n\n");
  return dialog_frame(
    w.about,
    html`<p>${w.about_words}</p><p>${w.caution}</p><h3>${w.licences}</h3><pre class="licence" tabindex="0">${licence}</pre>`,
  );
}

/** The boat that comes with the page. */
export function open_example() {
  const files = JSON.parse(document.getElementById("example").textContent);
  begin_project(files.root, files.files);
  redraw();
  go("numbers");
}
