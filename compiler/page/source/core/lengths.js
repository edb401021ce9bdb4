// Lengths as people say them. All numbers are in millimetres; an inch is 25.4 mm.

const MM_PER_INCH = 25.4;
const SIXTEENTHS_PER_FOOT = 12 * 16;

/** @typedef {{minus: boolean, feet: number, inches: number, top: number, bottom: number}} FeetAndInches */

/** To the nearest sixteenth of an inch. @returns {FeetAndInches} */
export function feet_and_inches(mm) {
  let sixteenths = Math.round((Math.abs(mm) / MM_PER_INCH) * 16);
  const minus = mm < 0 && sixteenths > 0;
  const feet = Math.floor(sixteenths / SIXTEENTHS_PER_FOOT);
  sixteenths -= feet * SIXTEENTHS_PER_FOOT;
  const inches = Math.floor(sixteenths / 16);
  let top = sixteenths % 16;
  let bottom = 16;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  return { minus, feet, inches, top, bottom };
}

/** `4' 5 3/8"`, as the language reads it. */
export function feet_text(mm) {
  const { minus, feet, inches, top, bottom } = feet_and_inches(mm);
  const parts = [];
  if (feet) parts.push(`${feet}'`);
  if (feet || inches || !top) parts.push(String(inches));
  if (top) parts.push(`${top}/${bottom}`);
  return `${minus ? "\u2212" : ""}${parts.join(" ")}"`;
}

export const mm_text = (mm) => `${mm < 0 && Math.abs(mm) >= 0.05 ? "\u2212" : ""}${Math.abs(mm).toFixed(1)} mm`;

/** Rounded up to what is ordered by: a foot, or a tenth of a metre. */
export const whole_feet = (mm) => Math.ceil(mm / 304.8 - 1e-9);
export const tenths_of_metres = (mm) => (Math.ceil(mm / 100 - 1e-9) / 10).toFixed(1);

const METRIC = { mm: 1, cm: 10, m: 1000 };

/**
 * What somebody has put in, in millimetres: `14' 7 1/4"`, `7 1/4"`, `4451 mm`, `11.64 m`, `14 ft 7 in`.
 * @returns {number | null} null: it is no length, or has no unit
 */
export function read_length(text) {
  const said = text
    .trim()
    .replace(/\u2032/g, "'")
    .replace(/\u2033/g, '"')
    .replace(/_/g, "");
  const metric = /^(\d+(?:\.\d+)?)\s*(mm|cm|m)$/.exec(said);
  if (metric) return Number(metric[1]) * METRIC[metric[2]];
  const feet = /^(?:(\d+)\s*(?:'|ft))?\s*(?:(\d+(?:\.\d+)?)?\s*(?:(\d+)\/(\d+))?\s*(?:"|in))?$/.exec(said);
  if (!feet || said === "") return null;
  const [, whole_feet_said, inches, top, bottom] = feet;
  if (whole_feet_said === undefined && inches === undefined && top === undefined) return null;
  if (top !== undefined && (Number(bottom) === 0 || Number(top) >= Number(bottom))) return null;
  return (
    (Number(whole_feet_said ?? 0) * 12 + Number(inches ?? 0) + (top === undefined ? 0 : Number(top) / Number(bottom))) *
    MM_PER_INCH
  );
}

/** The slips that fit a length that is `off` mm too long: a foot, an inch, ten inches, two digits changed about. */
export function likely_slip(mm, expected) {
  const off = mm - expected;
  const within = 6;
  const near = (slip) => Math.abs(Math.abs(off) - slip) <= within;
  if (near(304.8)) return "foot";
  if (near(25.4)) return "inch";
  if (near(254)) return "ten_inches";
  if (Math.abs(mm / 25.4 - expected) <= within || Math.abs(mm * 25.4 - expected) <= within) return "unit";
  if (Math.abs(mm * 10 - expected) <= 10 * within || Math.abs(mm / 10 - expected) <= within) return "digit";
  return null;
}
