// Files that somebody has chosen become a boat, or join the one that is open. What cannot be read is told, and changes nothing.

import { text_of } from "../core/edits.js";
import { w } from "../words/words.js";
import { app, begin_project, change } from "./app.js";
import { is_boat_file, read_boat_file } from "./boat_file.js";
import { free_name } from "./project.js";

const MOST_BYTES = 4_000_000;
const declares_stays = (text) => /^\s*(?:boat|stay)\b/m.test(text);
/** The paths that a text takes other files from. */
const used = (text) => [...text.matchAll(/^\s*use\s+"([^"\n]+)"/gm)].map((found) => found[1]);

/** What each file says. @returns {{texts: Record<string, string>, refused: string[]}} */
function read(files) {
  const texts = {};
  const refused = [];
  for (const { name, bytes } of files) {
    const plain = name.replace(/[\\/\u0000-\u001f]/g, "_");
    if (bytes.length > MOST_BYTES) refused.push(w.refused.too_large(plain));
    else {
      const result = text_of(bytes);
      if ("bad_line" in result) refused.push(w.refused.not_utf8(plain, result.bad_line));
      else if (result.text.includes("\0")) refused.push(w.refused.no_text(plain));
      else texts[plain] = result.text;
    }
  }
  return { texts, refused };
}

/** A path as the file that uses it means it: beside itself. */
function beside(file, path) {
  const parts = [...file.split("/").slice(0, -1)];
  for (const part of path.split("/")) {
    if (part === ".." && parts.length > 0) parts.pop();
    else if (part !== "." && part !== "") parts.push(part);
  }
  return parts.join("/");
}

/** Libraries get the paths by which the boat asks for them, and these in turn; what nobody asks for keeps its name. */
function placed(texts, root) {
  const files = { [root]: texts[root] };
  const left = new Set(Object.keys(texts).filter((name) => name !== root));
  const waiting = [root];
  while (waiting.length > 0) {
    const user = waiting.pop();
    for (const path of used(files[user])) {
      const place = beside(user, path);
      const name = path.split("/").at(-1);
      if (place in files || !left.has(name)) continue;
      left.delete(name);
      files[place] = texts[name];
      waiting.push(place);
    }
  }
  for (const name of left) files[name] = texts[name];
  return files;
}

/** Opens a boat. @returns {string} what was wrong, in words; empty: nothing */
export function open_boat(files) {
  const { texts, refused } = read(files);
  const names = Object.keys(texts);
  if (names.length === 0) return refused.join(" ");
  for (const name of names)
    if (is_boat_file(texts[name])) {
      const boat = read_boat_file(texts[name]);
      if (!boat) return w.refused.broken_boat(name);
      begin_project(boat.root, boat.files);
      return refused.join(" ");
    }
  const root = names.find((name) => declares_stays(texts[name])) ?? names[0];
  begin_project(root, placed(texts, root));
  return refused.join(" ");
}

/** Adds files to the boat that is open. @returns {string} what was wrong */
export function add_files(files) {
  const { texts, refused } = read(files);
  const added = {};
  const wanted = missing_libraries(app.project);
  for (const [name, text] of Object.entries(texts)) {
    const path = wanted.find((each) => each.split("/").at(-1) === name && !(each in app.project.files)) ?? name;
    added[free_name(app.project, path)] = text;
  }
  if (Object.keys(added).length) change(added, w.steps.added(Object.keys(added).join(", ")));
  return refused.join(" ");
}

/** The paths that are used and not there. */
export const missing_libraries = (project) =>
  [...new Set(Object.entries(project.files).flatMap(([file, text]) => used(text).map((path) => beside(file, path))))].filter(
    (path) => !(path in project.files),
  );
