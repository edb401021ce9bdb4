// English with its letters changed and a third longer: what a test sees plain was not taken from the table.

import { english } from "./english.js";

const ACCENTS = {
  a: "\u00e5",
  e: "\u00e9",
  i: "\u00ef",
  o: "\u00f8",
  u: "\u00fc",
  A: "\u00c5",
  E: "\u00c9",
  I: "\u00ce",
  O: "\u00d8",
  U: "\u00dc",
};
const accented = (text) =>
  `\u27e6${text.replace(/[aeiouAEIOU]/g, (sign) => ACCENTS[sign])}${"~".repeat(Math.ceil(text.length / 4))}\u27e7`;

/** Every text of a table, however deep; `language` stays. */
function pseudo(words, key = "") {
  if (typeof words === "string") return key === "language" || words.length < 2 ? words : accented(words);
  if (typeof words === "function") return (...values) => pseudo(words(...values));
  if (Array.isArray(words)) return words.map((each) => pseudo(each));
  if (words && typeof words === "object" && Object.getPrototypeOf(words) === Object.prototype && !("_$litType$" in words))
    return Object.fromEntries(Object.entries(words).map(([name, each]) => [name, pseudo(each, name)]));
  return words;
}

export const w = pseudo(english);
