// Changes of texts, counted in UTF-16 units as answers of the service give them.

/** @typedef {{begin: number, end: number, text: string}} Edit */

/** An edit of the service. @returns {Edit} */
export const edit_of = ({ place, replacement }) => ({ begin: place.begin.unit, end: place.end.unit, text: replacement });

/** The text with its edits made; they do not overlap. @param {Edit[]} edits */
export function with_edits(text, edits) {
  let result = text;
  for (const edit of [...edits].sort((a, b) => b.begin - a.begin || b.end - a.end))
    result = result.slice(0, edit.begin) + edit.text + result.slice(edit.end);
  return result;
}

/** The one edit that turns a text into another. @returns {Edit | null} null: they are the same */
export function difference(was, is) {
  if (was === is) return null;
  let begin = 0;
  while (begin < was.length && begin < is.length && was[begin] === is[begin]) ++begin;
  let end = 0;
  while (end < was.length - begin && end < is.length - begin && was[was.length - 1 - end] === is[is.length - 1 - end]) ++end;
  return { begin, end: was.length - end, text: is.slice(begin, is.length - end) };
}

/** The edit that takes one back, made of the text before it. @param {Edit} edit */
export const inverse = (was, edit) => ({
  begin: edit.begin,
  end: edit.begin + edit.text.length,
  text: was.slice(edit.begin, edit.end),
});

/** The bytes of a text as the compiler reads them. */
export const bytes_of = (text) => new TextEncoder().encode(text);

/**
 * A file that somebody has opened, as text.
 * @returns {{text: string} | {bad_line: number}} the line, from 1, in which the first byte stands that is no UTF-8
 */
export function text_of(bytes) {
  try {
    return { text: new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes) };
  } catch {
    let good = 0;
    let bad = bytes.length;
    while (good < bad) {
      const middle = (good + bad + 1) >> 1;
      try {
        new TextDecoder("utf-8", { fatal: true }).decode(bytes.subarray(0, middle), { stream: true });
        good = middle;
      } catch {
        bad = middle - 1;
      }
    }
    return { bad_line: bytes.subarray(0, good).filter((byte) => byte === 10).length + 1 };
  }
}
