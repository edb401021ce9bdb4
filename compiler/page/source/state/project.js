// A boat as the page keeps it: her files, which of them is hers, and the steps back.

import { difference, inverse, with_edits } from "../core/edits.js";

/**
 * @typedef {object} Step one change, told so that it can be taken back
 * @property {string} words what was changed
 * @property {number} at milliseconds since 1970
 * @property {{file: string, edit?: import("../core/edits.js").Edit, text?: string | null}[]} back edits, or whole texts of
 *   files that were added (null) or taken away
 * @property {string} [root]
 */
/** @typedef {{id: string, root: string, files: Record<string, string>, steps: Step[]}} Project */

const MOST_STEPS = 200;
/** Keys that are pressed one after the other are one step. */
const ONE_STEP_MS = 4000;

/** @returns {Project} */
export const new_project = (id, root, files) => ({ id, root, files, steps: [] });

/**
 * Puts texts in the place of others; null takes a file away.
 * @param {Project} project
 * @param {Record<string, string | null>} texts
 * @param {{words: string, at: number, typing?: boolean, root?: string}} how
 * @returns {Project | null} null: nothing changes
 */
export function changed(project, texts, how) {
  const files = { ...project.files };
  const back = [];
  for (const [file, text] of Object.entries(texts)) {
    const was = files[file];
    if (was === (text ?? undefined)) continue;
    if (was === undefined || text === null) back.push({ file, text: was ?? null });
    else back.push({ file, edit: inverse(was, difference(was, text)) });
    if (text === null) delete files[file];
    else files[file] = text;
  }
  const root = how.root ?? project.root;
  if (back.length === 0 && root === project.root) return null;
  const last = project.steps.at(-1);
  let step = { words: how.words, at: how.at, back, ...(root === project.root ? {} : { root: project.root }) };
  let steps = project.steps;
  if (
    how.typing &&
    last?.typing &&
    how.at - last.at < ONE_STEP_MS &&
    last.back.length === 1 &&
    last.back[0].file === back[0].file
  ) {
    const before = with_edits(with_edits(files[back[0].file], [back[0].edit]), [last.back[0].edit]);
    step.back = [{ file: back[0].file, edit: difference(files[back[0].file], before) ?? { begin: 0, end: 0, text: "" } }];
    steps = steps.slice(0, -1);
  }
  if (how.typing) step = { ...step, typing: true };
  return { ...project, root, files, steps: [...steps, step].slice(-MOST_STEPS) };
}

/** The boat before her last change. @param {Project} project */
export function gone_back(project) {
  const step = project.steps.at(-1);
  if (!step) return project;
  const files = { ...project.files };
  for (const { file, edit, text } of step.back) {
    if (edit) files[file] = with_edits(files[file], [edit]);
    else if (text === null) delete files[file];
    else files[file] = text;
  }
  return { ...project, root: step.root ?? project.root, files, steps: project.steps.slice(0, -1) };
}

/** A name that no file of the boat has yet. */
export function free_name(project, name) {
  if (!(name in project.files)) return name;
  const dot = name.lastIndexOf(".");
  for (let count = 2; ; ++count) {
    const other = dot > 0 ? `${name.slice(0, dot)}-${count}${name.slice(dot)}` : `${name}-${count}`;
    if (!(other in project.files)) return other;
  }
}

/** The file name of a boat that is called so. */
export function rig_name(title) {
  const plain = title
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "");
  return `${plain.slice(0, 40) || "boat"}.rig`;
}
