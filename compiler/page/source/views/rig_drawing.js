// The compiler's drawing, taken apart into lines and drawn for a screen: what can be tapped, what is selected, what changes.

import { html, svg } from "lit-html";
import { w } from "../words/words.js";
import { piece_title } from "./marks.js";

/** @typedef {{x1: number, y1: number, x2: number, y2: number}} Line */
/** @typedef {{stays: Map<string, Line[]>, spreaders: Line[], water: Line | null}} View */

const numbers_of = (line) => Object.fromEntries(["x1", "y1", "x2", "y2"].map((name) => [name, Number(line.getAttribute(name))]));

/** One view of the sheet: "side" or "front". @returns {View | null} */
function view_of(sheet, name) {
  const group = sheet.getElementById(`${name}-view`);
  if (!group) return null;
  const view = { stays: new Map(), spreaders: [], water: null };
  for (const part of group.children) {
    const { id } = part;
    const lines = part.tagName === "line" ? [numbers_of(part)] : [...part.querySelectorAll(":scope > line")].map(numbers_of);
    if (id === `${name}-waterline`) view.water = lines[0];
    else if (id.startsWith(`${name}-stay-`)) view.stays.set(id.slice(`${name}-stay-`.length), lines);
    else if (id.startsWith(`${name}-spreader-`)) view.spreaders.push(...lines);
  }
  return view;
}

let read_from = "";
let read = null;
/** Both views of rig-diagram.svg; null where there are none. */
export function views_of(diagram) {
  if (diagram !== read_from) {
    read_from = diagram;
    const sheet = new DOMParser().parseFromString(diagram, "image/svg+xml");
    const side = view_of(sheet, "side");
    const front = view_of(sheet, "front");
    read = side && front ? { side, front } : null;
  }
  return read;
}

export function bounds(view) {
  const all = [...view.stays.values(), view.spreaders].flat();
  const xs = all.flatMap((line) => [line.x1, line.x2]);
  const ys = all.flatMap((line) => [line.y1, line.y2]);
  if (view.water) ys.push(view.water.y1 + 2);
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

/** Her hull, roughly, for the eye: from the ends of the stays to the waterline. */
function hull(view, box) {
  if (!view.water) return svg``;
  const y = view.water.y1;
  const ends = [...view.stays.values()].flat().map((line) => (line.y1 > line.y2 ? [line.x1, line.y1] : [line.x2, line.y2]));
  const on_deck = ends.filter(([, end]) => end > y - (y - box.top) * 0.3);
  if (on_deck.length < 2) return svg``;
  const stern = on_deck.reduce((a, b) => (b[0] < a[0] ? b : a));
  const bow = on_deck.reduce((a, b) => (b[0] > a[0] ? b : a));
  const sheer = (stern[1] + bow[1]) / 2 + 3;
  return svg`<path class="hull" d=${`M${stern[0] - 3} ${stern[1]}Q${(stern[0] + bow[0]) / 2} ${sheer} ${bow[0] + 3} ${bow[1]}Q${bow[0] - 4} ${y + 2} ${bow[0] - 16} ${y + 3}L${stern[0] + 10} ${y + 3}Z`} />`;
}

/** The masts, which the sheet leaves out: through the places aloft that lie above each other. @param {View} view */
function masts(view, box) {
  const aloft = [...view.stays.values()].flatMap((lines) => {
    const ends = lines.flatMap(({ x1, y1, x2, y2 }) => [
      [x1, y1],
      [x2, y2],
    ]);
    const top = ends.reduce((a, b) => (b[1] < a[1] ? b : a));
    const low = ends.reduce((a, b) => (b[1] > a[1] ? b : a));
    return [[...top, Math.abs(top[0] - low[0])]];
  });
  const low = [...view.stays.values()].flat().map((line) => Math.max(line.y1, line.y2));
  const deck = Math.max(...low) - (Math.max(...low) - box.top) * 0.02;
  const near = (box.right - box.left) * 0.1 + 1;
  const groups = [];
  for (const place of aloft.sort((a, b) => a[0] - b[0])) {
    const last = groups.at(-1);
    if (last && place[0] - last.at(-1)[0] < near) last.push(place);
    else groups.push([place]);
  }
  const mean = (all) => all.reduce((sum, each) => sum + each, 0) / all.length;
  return groups
    .filter((group) => group.length > 1 || group[0][2] < near)
    .filter((group) => Math.min(...group.map(([, y]) => y)) < deck - (deck - box.top) * 0.3)
    .map((group) => {
      const x = mean(group.map((each) => each[0]));
      const roots = view.spreaders
        .map((line) => (Math.abs(line.x1 - x) < Math.abs(line.x2 - x) ? line.x1 : line.x2))
        .filter((root) => Math.abs(root - x) < near);
      const foot = roots.length ? mean(roots) : x;
      return { x1: x, y1: Math.min(...group.map(([, y]) => y)) - 1, x2: foot, y2: deck };
    });
}

/** A place on a stay, by its share of the whole length from aloft. @param {Line[]} lines */
function place_on(lines, share) {
  const long = (line) => Math.hypot(line.x2 - line.x1, line.y2 - line.y1);
  let rest = lines.reduce((sum, line) => sum + long(line), 0) * share;
  for (const line of lines) {
    const length = long(line);
    if (rest <= length) return [line.x1 + ((line.x2 - line.x1) * rest) / length, line.y1 + ((line.y2 - line.y1) * rest) / length];
    rest -= length;
  }
  return [lines.at(-1).x2, lines.at(-1).y2];
}
/** A shroud is told from the next where it leaves the mast; a stay fore and aft at its middle. */
const share_of = (piece) => (piece.side === "centre" ? 0.5 : 0.3);

/** Which way a shroud leads from the mast, seen from the side: forward 1, aft -1, neither 0. @param {Line[]} lines */
function leads(lines, near) {
  const [first, last] = [lines[0], lines.at(-1)];
  const along = (first.y1 < last.y2 ? 1 : -1) * (last.x2 - first.x1);
  return Math.abs(along) < near ? 0 : Math.sign(along);
}

/** Numbers that would cover each other move apart. */
function apart(places, reach) {
  for (let round = 0; round < 60; ++round)
    for (let i = 0; i < places.length; ++i)
      for (let j = 0; j < i; ++j) {
        const [a, b] = [places[i], places[j]];
        const dx = a.x - b.x || (a.nth - b.nth) * 0.1 || 0.1;
        const dy = a.y - b.y;
        const far = Math.hypot(dx, dy);
        if (far >= reach) continue;
        const push = (reach - far) / 2 / (far || 1);
        a.x += dx * push;
        a.y += dy * push * 0.7;
        b.x -= dx * push;
        b.y -= dy * push * 0.7;
      }
  return places;
}

/**
 * @param {"side" | "front"} name
 * @param {View} view
 * @param {{pieces: any[], selected: string, lit: Set<string>, tap: (piece: string) => void}} how
 */
export function view_drawing(name, view, { pieces, selected, lit, tap, top, bottom }) {
  const box = bounds(view);
  const height = bottom - top + 12;
  const reach = height / 15;
  const width = box.right - box.left + reach * 3.2;
  const left = (box.left + box.right) / 2 - width / 2;
  // A stay of a side that the side view hides behind its pair has no line there of its own.
  const shown = pieces.filter((piece) => view.stays.has(piece.stay));
  const of_pair = (piece, test) =>
    pieces.some((other) => test(other) && (other === piece || (name === "side" && other.number === piece.number)));
  const is_selected = (piece) => of_pair(piece, (other) => other.name === selected);
  const is_lit = (piece) => of_pair(piece, (other) => lit.has(other.name));
  const lines = (piece) =>
    view.stays.get(piece.stay).map((line) => svg`<line x1=${line.x1} y1=${line.y1} x2=${line.x2} y2=${line.y2} />`);
  const numbered = name === "front" ? shown.filter((piece) => piece.side !== "centre") : shown;
  const middle = (box.left + box.right) / 2;
  const out_by = (piece) => Math.abs(place_on(view.stays.get(piece.stay), 0.5)[0] - middle);
  const balloons = apart(
    numbered.map((piece, nth) => {
      // Between a shroud and the mast is no room for a number beside it: there it sits on its own line.
      const inner = name === "front" && numbered.some((other) => other.side === piece.side && out_by(other) > out_by(piece) + reach * 0.3);
      const [x, y] = place_on(view.stays.get(piece.stay), inner ? 0.45 + 0.25 * (piece.number % 2) : share_of(piece));
      if (inner) return { piece, nth, x, y, at: [x, y] };
      const along = name === "side" && piece.side !== "centre" ? leads(view.stays.get(piece.stay), reach * 0.2) : 0;
      const out = along || (name === "side" && piece.side !== "centre" ? (piece.number % 2 ? 1 : -1) : x < middle ? -1 : 1);
      return { piece, nth, x: x + out * reach * 0.62, y, at: [x, y] };
    }),
    reach * 1.02,
  );
  return html`<figure style=${`flex:${width} 1 0`}><svg class="rig" viewBox=${`${left} ${top - 5} ${width} ${height}`} role="img" aria-label=${w.view_words[name](shown.map(piece_title))}>
      ${view.water ? svg`<line class="wl" x1=${left + 2} y1=${view.water.y1} x2=${left + width - 2} y2=${view.water.y1} />` : ""}
      ${name === "side" ? hull(view, box) : ""}
      ${shown.filter(is_lit).map((piece) => svg`<g class="halo">${lines(piece)}</g>`)}
      ${masts(view, box).map((line) => svg`<line class="mast" x1=${line.x1} y1=${line.y1} x2=${line.x2} y2=${line.y2} />`)}
      ${view.spreaders.map((line) => svg`<line class="sp" x1=${line.x1} y1=${line.y1} x2=${line.x2} y2=${line.y2} />`)}
      ${shown.map((piece) => svg`<g class=${`st ${is_selected(piece) ? "sel" : ""}`}>${lines(piece)}</g>`)}
      ${shown.map((piece) => svg`<g class="hit" @click=${() => tap(piece.name)}>${lines(piece)}</g>`)}
      ${balloons.map(({ piece, x, y, at }) => svg`<line class=${`lead ${is_selected(piece) ? "sel" : ""}`} x1=${at[0]} y1=${at[1]} x2=${x} y2=${y} stroke-width=${reach * 0.04} />`)}
      ${balloons.map(
        ({ piece, x, y }) => svg`<g class=${`bal ${is_selected(piece) ? "sel" : ""}`} @click=${() => tap(piece.name)}>
          <circle cx=${x} cy=${y} r=${reach * 0.46} stroke-width=${reach * 0.05} /><text x=${x} y=${y + reach * 0.2} font-size=${reach * 0.56}>${piece.number}</text></g>`,
      )}
    </svg><figcaption>${w.view_names[name]}</figcaption></figure>`;
}
