// What turns would do to a rig that stands in tension: asked of the service, kept as long as the texts are the same.

import { app, ask, redraw, toast } from "./app.js";

/**
 * @typedef {object} Turns what is tried
 * @property {boolean} open somebody looks
 * @property {Record<string, number>} turned by stay: tighter than now, in turns, holes or mm
 * @property {any} answer of the service; null: not asked yet
 * @property {any} of the texts that it is of
 */
/** @type {Turns} */
export const turns = { open: false, turned: {}, answer: null, of: null };

let asked = 0;
/** Asks for what these turns do; answers that were overtaken are left out. */
export async function try_turns(turned) {
  const mine = ++asked;
  const texts = app.project.files;
  Object.assign(turns, { turned, of: texts });
  redraw();
  try {
    const answer = await ask({ ask: "turns", turns: turned });
    if (mine !== asked || turns.of !== texts) return;
    turns.answer = answer;
  } catch (fault) {
    toast(String(fault.message));
  }
  redraw();
}

/** What stands there; asked anew where the texts are others. */
export function turns_answer() {
  if (turns.of !== app.project.files && !app.busy) {
    turns.answer = null;
    turns.turned = {};
    queueMicrotask(() => turns.of !== app.project.files && try_turns({}));
  }
  return turns.of === app.project.files ? turns.answer : null;
}

/** One adjuster turned; nothing of it is no turn. */
export function with_turn(stay, count) {
  const turned = { ...turns.turned };
  if (Math.abs(count) < 1e-9) delete turned[stay];
  else turned[stay] = count;
  return turned;
}
