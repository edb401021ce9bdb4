// What the keys of the pad make of what was put in so far.

export const FRACTIONS = [
  "1/16",
  "1/8",
  "3/16",
  "1/4",
  "5/16",
  "3/8",
  "7/16",
  "1/2",
  "9/16",
  "5/8",
  "11/16",
  "3/4",
  "13/16",
  "7/8",
  "15/16",
];

const METRIC = ["mm", "cm", "m"];

/**
 * @param {string} typed
 * @param {string} key a digit, ".", "-", "ft", "in", "mm", "cm", "m", a fraction or "rub"
 */
export function with_key(typed, key) {
  if (key === "-") return typed.startsWith("-") ? typed.slice(1) : `-${typed}`;
  if (key === "rub") return typed.replace(/(\s*\d+\/\d+"|\s*(?:mm|cm|m)|'\s*|.)$/, "");
  if (key === "ft") return /\d$/.test(typed) && !typed.includes("'") ? `${typed}' ` : typed;
  if (key === "in") return typed === "" || typed.endsWith('"') || typed.endsWith("m") ? typed : `${typed.trimEnd()}"`;
  if (METRIC.includes(key)) return /^-?[\d.]+$/.test(typed) ? `${typed} ${key}` : typed;
  if (key === "." && typed.includes(".")) return typed;
  if (key.includes("/")) {
    if (typed.endsWith("m")) return typed;
    const before = typed.replace(/"$/, "").replace(/\s*\d+\/\d+$/, "");
    return `${before}${/\d$/.test(before) ? " " : ""}${key}"`;
  }
  if (/(m|")$/.test(typed)) return typed;
  return typed + key;
}
