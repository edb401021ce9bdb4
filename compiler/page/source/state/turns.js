// Turns that nobody has made yet: what is asked of the compiler for them, and what stands in a row of their panel.

/** A turnbuckle is locked at half turns as well; a hole or a millimetre is whole. */
export const step_of = (adjuster) => (adjuster.turned === "turn" ? 0.5 : 1);

/**
 * @typedef {object} TurnsRow what is turned as one
 * @property {string} key
 * @property {string} title
 * @property {"port" | "starboard" | "both" | "centre"} side
 * @property {string[]} stays
 * @property {"turn" | "hole" | "mm"} turned
 * @property {number} step
 * @property {number} least as far as all of them can go, in whole steps
 * @property {number} most
 */

const side_of = (name) => /\.(port|starboard)$/.exec(name)?.[1] ?? "centre";

function row_of(all, side) {
  const step = step_of(all[0]);
  const least = Math.max(...all.map((each) => each.least));
  const most = Math.min(...all.map((each) => each.most));
  return {
    key: all.map(({ stay }) => stay).join("+"),
    title: all[0].title || all[0].base,
    side,
    stays: all.map(({ stay }) => stay),
    turned: all[0].turned,
    step,
    // Rounding of the thread is no step less.
    least: Math.min(0, Math.ceil(least / step - 1e-6) * step),
    most: Math.max(0, Math.floor(most / step + 1e-6) * step),
  };
}

/** The rows of the panel: both sides together where they are turned alike. @returns {TurnsRow[]} */
export function rows_of(answer, together) {
  const done = new Set();
  return answer.adjusters.flatMap((adjuster) => {
    if (done.has(adjuster.stay)) return [];
    const pair = answer.adjusters.filter(
      (each) => each.base === adjuster.base && each.turned === adjuster.turned && each.step_mm === adjuster.step_mm,
    );
    const all = together && pair.length === 2 ? pair : [adjuster];
    for (const { stay } of all) done.add(stay);
    return [row_of(all, all.length === 2 ? "both" : side_of(adjuster.stay))];
  });
}

/** How much a row is turned: that of its first stay. */
export const turns_of = (row, turns) => turns[row.stays[0]] ?? 0;

/** The same turns with a row turned so far, within its range; what is not turned is left out. */
export function turned(row, turns, value) {
  const set = Math.min(row.most, Math.max(row.least, Math.round(value / row.step) * row.step));
  const next = { ...turns };
  for (const stay of row.stays) {
    if (set === 0) delete next[stay];
    else next[stay] = set;
  }
  return next;
}

/** The edits of an answer, file by file. @returns {import("./writing.js").FileEdits[]} */
export function edits_of(answer) {
  const files = new Map();
  for (const { place, replacement } of answer.edits) {
    const all = files.get(place.file) ?? [];
    all.push({ begin: place.begin.unit, end: place.end.unit, text: replacement });
    files.set(place.file, all);
  }
  return [...files].map(([file, edits]) => ({ file, edits }));
}
