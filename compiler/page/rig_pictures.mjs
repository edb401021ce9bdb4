// The side view of each first rig, from the drawings of docs/begin: a few lines each, for the screen on which a rig is chosen.

import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";

const round = (value) => Math.round(value * 10) / 10;
const path_of = (lines) => lines.map(([x1, y1, x2, y2]) => `M${round(x1)} ${round(y1)}L${round(x2)} ${round(y2)}`).join("");

/** The lines of the groups of one view whose names begin so. */
function lines_of(svg, prefix) {
  return [...svg.matchAll(new RegExp(`<g id="${prefix}[^"]*">([\\s\\S]*?)</g>`, "g"))].flatMap((group) =>
    [...group[1].matchAll(/<line x1="([^"]*)" y1="([^"]*)" x2="([^"]*)" y2="([^"]*)"/g)].map((found) =>
      found.slice(1, 5).map(Number),
    ),
  );
}

/** Masts, which the drawing leaves out: through the upper ends of stays that lie above each other. */
function masts(stays, spreaders, top, deck, width) {
  // A shroud stands nearly upright; a stay that does not tells of a mast only where another one meets it.
  const aloft = stays
    .filter(([, y1, , y2]) => Math.max(y1, y2) > deck - (deck - top) * 0.6)
    .map(([x1, y1, x2, y2]) => (y1 < y2 ? [x1, y1, Math.abs(x1 - x2)] : [x2, y2, Math.abs(x1 - x2)]))
    .filter(([, y]) => y < deck - (deck - top) * 0.3);
  const groups = [];
  for (const place of aloft.sort((a, b) => a[0] - b[0])) {
    const last = groups.at(-1);
    if (last && place[0] - last.at(-1)[0] < width * 0.09) last.push(place);
    else groups.push([place]);
  }
  return groups
    .filter((group) => group.length > 1 || group[0][2] < width * 0.08)
    .map((group) => {
      const x = group.reduce((sum, each) => sum + each[0], 0) / group.length;
      return [x, Math.min(...group.map(([, y]) => y)) - 1, x, deck];
    });
}

function picture(svg) {
  const stays = lines_of(svg, "side-stay-");
  const spreaders = lines_of(svg, "side-spreader-");
  const water = Number(/id="side-waterline" x1="[^"]*" y1="([^"]*)"/.exec(svg)?.[1] ?? 0);
  const all = [...stays, ...spreaders];
  const xs = all.flatMap(([x1, , x2]) => [x1, x2]);
  const ys = all.flatMap(([, y1, , y2]) => [y1, y2]);
  if (all.length === 0)
    return { box: "0 0 100 100", stays: "", spreaders: "", masts: "M50 6V84", hull: "M12 78Q50 88 88 76Q84 92 74 92H24Z" };
  const [left, right, top, low] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const deck = low - (water - low) * 0.1;
  const below = water + 4;
  const hull = `M${round(left - 2)} ${round(low - 1)}Q${round((left + right) / 2)} ${round(low + 5)} ${round(right + 2)} ${round(low - 3)}Q${round(right - 2)} ${round(below)} ${round(right - 14)} ${round(below)}L${round(left + 8)} ${round(below)}Z`;
  return {
    box: `${round(left - 6)} ${round(top - 5)} ${round(right - left + 12)} ${round(below - top + 8)}`,
    stays: path_of(stays),
    spreaders: path_of(spreaders),
    masts: path_of(masts(stays, spreaders, top, deck, right - left)),
    hull,
  };
}

/** @param {string} folder of the drawings: one SVG for each kind of rig */
export function rig_pictures(folder) {
  const result = {};
  for (const file of readdirSync(folder)
    .filter((name) => name.endsWith(".svg"))
    .sort())
    result[path.basename(file, ".svg")] = picture(readFileSync(path.join(folder, file), "utf8"));
  return result;
}
