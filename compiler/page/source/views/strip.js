// The strip of one stay, as the compiler draws it: its parts in a row from aloft to deck.

import { html, nothing } from "lit-html";
import { app, go } from "../state/app.js";
import { w } from "../words/words.js";

/** From where to where a group reaches across the sheet, by the places of its parts. */
function height_of(group) {
  const ys = [];
  for (const part of group.querySelectorAll("*")) {
    for (const name of ["y", "y1", "y2", "cy"]) if (part.hasAttribute(name)) ys.push(Number(part.getAttribute(name)));
    if (part.hasAttribute("height")) ys.push(Number(part.getAttribute("y")) + Number(part.getAttribute("height")));
    for (const pair of (part.getAttribute("points") ?? "").split(" ")) if (pair) ys.push(Number(pair.split(",")[1]));
  }
  return [Math.min(...ys) - 5, Math.max(...ys) + 3];
}

const made = new Map();
let made_of = null;
/** @returns {SVGElement | null} */
function strip_of(stay) {
  const sheets = app.answers.lengths?.strips ?? [];
  if (made_of !== sheets) {
    made.clear();
    made_of = sheets;
  }
  if (!made.has(stay)) {
    let found = null;
    for (const sheet of sheets) {
      const read = new DOMParser().parseFromString(sheet, "image/svg+xml");
      const group = read.getElementById(`strip-${stay}`) ?? read.getElementById(`strip-${stay.split(".")[0]}`);
      if (!group) continue;
      const [top, bottom] = height_of(group);
      found = document.createElementNS("http://www.w3.org/2000/svg", "svg");
      found.setAttribute("viewBox", `6 ${top} 408 ${bottom - top}`);
      found.setAttribute("role", "img");
      found.setAttribute("aria-label", group.querySelector("desc")?.textContent ?? stay);
      found.append(document.importNode(group, true));
      break;
    }
    made.set(stay, found);
  }
  return made.get(stay);
}

export function strip(piece) {
  const drawn = piece && strip_of(piece.stay);
  if (!drawn) return nothing;
  return html`<section class="blk strips"><h2>${w.strip(piece.title)}<button class="link" @click=${() => go(`numbers/${piece.name}`)}>${w.its_page}</button></h2>
    <div class="strip" tabindex="0" role="group" aria-label=${w.strip(piece.title)}>${drawn}</div></section>`;
}
