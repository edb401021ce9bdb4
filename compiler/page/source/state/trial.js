// What can be tried on a slider: every number that is stated, as the language sets it for a trial (`--set`).

import { without_source } from "./readings.js";

const NUMBER = /^(-?\d[\d_]*(?:\.\d+)?)\s*(mm|cm|m|kN|N|kg|%|deg|d)?$/;
const LENGTHS = { mm: 1, cm: 10, m: 1000 };

/**
 * @typedef {object} Tryable
 * @property {string} key
 * @property {string} of
 * @property {string} property empty for a `let` or a point
 * @property {string} axis empty, else forward, starboard or up
 * @property {string} unit
 * @property {number | null} base what stands in the file; null: an expression, so only the change is shown
 * @property {number} least
 * @property {number} most
 * @property {number} step
 * @property {(value: number) => string} setting
 * @property {(value: number) => string} text the value as it would stand in the file
 * @property {any} entry the number of the service
 */

const spelled = (value) => String(Math.round(value * 1e6) / 1e6);
/** `x + 20 mm`, without a sum of nothing. */
const shifted = (expression, mm) => (mm === 0 ? expression : `${expression} ${mm < 0 ? "-" : "+"} ${spelled(Math.abs(mm))} mm`);

/** Range and step for a plain number. */
function range_of(base, unit) {
  if (unit === "%") return { least: 0, most: 100, step: 5 };
  if (unit === "deg") return { least: base - 10, most: base + 10, step: 1 };
  const reach = Math.abs(base) || 1;
  const rough = (reach * 0.5) / 10;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((each) => each * power).find((each) => each >= rough * 0.999);
  const low = base - 5 * step;
  return { least: base > 0 ? Math.max(base % step, low) : low, most: base + 5 * step, step };
}

/** Lengths move by centimetres: half a length is no trial of a rig. */
function length_range(mm) {
  const step = Math.abs(mm) >= 1500 ? 10 : Math.abs(mm) >= 100 ? 10 : 1;
  const reach = step * 10;
  return { least: mm > 0 ? Math.max(mm % step, mm - reach) : mm - reach, most: mm + reach, step };
}

function parts_of_vector(value) {
  const found = /^\(([^()]*(?:\([^()]*\)[^()]*)*)\)(.*)$/s.exec(value);
  if (!found) return null;
  const parts = [];
  let depth = 0;
  let part = "";
  for (const sign of found[1]) {
    if (sign === "(") ++depth;
    if (sign === ")") --depth;
    if (sign === "," && depth === 0) {
      parts.push(part.trim());
      part = "";
    } else part += sign;
  }
  parts.push(part.trim());
  return parts.length === 3 ? { parts, behind: found[2] } : null;
}

/** One axis of a point that moves. */
function of_point(entry, value, source) {
  const found = parts_of_vector(value);
  if (!found) return [];
  const unit = /^\s*(mm|cm|m)\b/.exec(found.behind)?.[1];
  return ["forward", "starboard", "up"].flatMap((axis, i) => {
    const part = found.parts[i];
    if (axis === "starboard" && /^0(\.0*)?( m| mm)?$/.test(part)) return [];
    const with_unit = unit && !/[a-z]/i.test(part) ? `${part} ${unit}` : part;
    const text = (mm) => {
      const parts = [...found.parts];
      parts[i] = mm === 0 ? part : shifted(with_unit, mm);
      return `(${parts.join(", ")})${found.behind}`;
    };
    return [
      {
        ...{ key: `${entry.of}/${axis}`, of: entry.of, property: "", axis, unit: "mm", base: null, entry },
        ...{ least: -100, most: 100, step: 10 },
        setting: (mm) => `${entry.of}=${text(mm)}${/^ \w+/.exec(source)?.[0] ?? ""}`,
        text: (mm) => `${text(mm)}${source}`,
      },
    ];
  });
}

/** What is a record of something, or holds in one state or layer alone, is no value of the boat that could be another. */
const RECORDS = new Set([
  "reading",
  "cord",
  "tape",
  "state",
  "layer",
  "changes",
  "inspection",
  "piece",
  "waiver",
  "shop",
  "stock",
  "rule",
  "limits",
]);

/** The declaration in which a number stands; nothing of a `let`. */
const around = (entry, declarations) =>
  declarations.find(
    ({ place: { file, begin, end } }) =>
      file === entry.place.file && begin.unit <= entry.place.begin.unit && entry.place.begin.unit < end.unit,
  );

/** By which name a number is set: of an item in a stack the stay comes first. */
function name_of(entry, outer) {
  if (entry.property === "") return entry.of;
  if (outer?.kind === "boat") return `boat.${entry.property}`;
  const stay = outer?.kind === "stay" ? outer : null;
  if (!stay || stay.name === entry.of || stay.name.startsWith(`${entry.of}.`)) return `${entry.of}.${entry.property}`;
  return `${stay.name}.${entry.of}.${entry.property}`;
}

/** In which order they are offered: what somebody turns first. */
export const GROUPS = ["setting", "let", "point", "part", "other"];
function group_of({ axis, property, name, of, unit }, kind, not_parts) {
  if (axis) return "point";
  if (property === "") return "let";
  if (name !== `${of}.${property}`) return "setting";
  return kind && !not_parts.has(kind) && unit === "mm" ? "part" : "other";
}

/** @param {import("./answers.js").Answers} answers @returns {Tryable[]} in the order of GROUPS */
export function tryables(answers) {
  const kinds = new Map(answers.declarations.map((each) => [each.name, each.kind]));
  const seen = new Set();
  const result = answers.numbers.flatMap((entry) => {
    const outer = around(entry, answers.declarations);
    if (!entry.written || !entry.write || entry.property.includes(".")) return [];
    if (outer && (RECORDS.has(outer.kind) || outer.of !== "")) return [];
    if (entry.type === "size" || entry.type === "count" || entry.type === "quantity-list") return [];
    const value = without_source(entry.written);
    const source = entry.written.slice(value.length);
    if (value.startsWith("(")) return entry.property === "" ? of_point(entry, value, source) : [];
    const name = name_of(entry, outer);
    const found = NUMBER.exec(value);
    const stay = outer?.kind === "stay" ? outer.name : "";
    const common = { key: name, of: entry.of, property: entry.property, axis: "", entry, name, stay };
    if (!found || !found[2]) return [];
    const number = Number(found[1].replace(/_/g, ""));
    const length = LENGTHS[found[2]];
    const unit = length ? "mm" : found[2];
    const base = length ? number * length : number;
    const text = (tried) => `${spelled(tried)} ${unit}`;
    return [
      {
        ...common,
        unit,
        base,
        ...(length ? length_range(base) : range_of(base, unit)),
        setting: (tried) => `${name}=${text(tried)}`,
        text: (tried) => (tried === base ? entry.written : `${text(tried)}${source}`),
      },
    ];
  });
  const parts = new Set(["rope", "wire", "rod", "splice", "stay", "boat", "limits", "spar"]);
  const grouped = result
    .filter(({ key }) => !seen.has(key) && seen.add(key))
    .map((each) => ({ ...each, group: group_of(each, kinds.get(each.of), parts) }));
  return GROUPS.flatMap((group) => grouped.filter((each) => each.group === group));
}

/**
 * What a trial does, piece by piece.
 * @returns {Map<string, {change_mm: number, again: boolean}>} of the pieces that change; again: it has to be measured anew
 */
export function changes_of(trial, pieces) {
  const result = new Map();
  for (const stay of trial.stays)
    for (const piece of stay.pieces)
      if (piece.cut.change_mm) result.set(piece.name, { change_mm: piece.cut.change_mm, again: false });
  for (const { name, expected_mm } of trial.measure_again)
    for (const piece of pieces)
      if (piece.stay === name && Math.abs(expected_mm) >= 0.05) result.set(piece.name, { change_mm: expected_mm, again: true });
  return result;
}
