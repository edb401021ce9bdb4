// How each stay was measured, as the file states it, and the cords with their knots.

/** @typedef {import("./answers.js").Answers} Answers */

const property = (declaration, name) => declaration.properties.find((each) => each.name === name);
const written = (declaration, name) => property(declaration, name)?.written ?? "";

/** How many lengths stand in a list: `38' 7 3/8", 38' 7 1/4" measured "by tape"`. */
const lengths_in = (list) => without_source(list).split(",").length;

/** The lengths of a reading as they are written, one by one. @returns {string[]} */
export const runs_in = ({ declaration }) =>
  without_source(written(declaration, "runs"))
    .split(",")
    .map((each) => each.trim())
    .filter(Boolean);

/** How far below the pin the end of the cord hung, as it is written; empty: at the pin, or not said. */
export function hung_below({ declaration }) {
  const offset = without_source(written(declaration, "offset"));
  return /^0\b(?!\.)/.test(offset) ? "" : offset;
}

/** A value without where it is from. */
export const without_source = (value) =>
  value.split(/\s(?=(?:measured|drawn|assumed|maker|standard|practice|computed)\b)/)[0].trim();

/**
 * @typedef {object} ReadingView
 * @property {string} of the stay with its side
 * @property {string} method
 * @property {string} cord name; empty: none
 * @property {number | null} knots
 * @property {string} date
 * @property {number} runs how many lengths were read
 * @property {boolean} assumed it measures nothing yet
 * @property {any} declaration as the service told it
 */

/** @param {Answers} answers @returns {ReadingView[]} */
export function all_readings(answers) {
  return answers.declarations
    .filter((each) => each.kind === "reading")
    .map((declaration) => ({
      of: declaration.of,
      method: written(declaration, "method"),
      cord: written(declaration, "cord"),
      knots: /^\d+$/.test(written(declaration, "knots")) ? Number(written(declaration, "knots")) : null,
      date: written(declaration, "date"),
      runs: written(declaration, "runs") ? lengths_in(written(declaration, "runs")) : 0,
      assumed: declaration.properties.some((each) => /\sassumed\b/.test(each.written)),
      declaration,
    }));
}

/** Those of one stay; what is said of a pair holds for both sides. */
export const readings_of = (answers, stay) =>
  all_readings(answers).filter(({ of }) => of === stay || of === stay.replace(/\.(port|starboard)$/, ""));

/** The readings that a stay goes by: what was measured, else what is there. */
export function counted_readings(answers, stay) {
  const all = readings_of(answers, stay);
  const measured = all.filter((each) => !each.assumed);
  return measured.length > 0 ? measured : all;
}

/**
 * @typedef {object} Knot
 * @property {number | null} knots
 * @property {{piece: import("./answers.js").PieceView, readings: ReadingView[]}[]} stays
 * @property {boolean} clash stays of different names hang on one tally
 * @property {number} expected_mm where it lies on the cord, roughly
 */

/** The cords of the boat with their knots from U downwards. @param {Answers} answers */
export function cords_of(answers) {
  const readings = all_readings(answers).filter((each) => each.method === "messenger" && each.cord);
  return answers.declarations
    .filter((each) => each.kind === "cord")
    .map((declaration) => {
      const here = readings.filter((each) => each.cord === declaration.name);
      const tallies = [...new Set(here.map((each) => each.knots))];
      const knots = tallies.map((tally) => {
        const of_tally = here.filter((each) => each.knots === tally);
        const stays = answers.pieces
          .map((piece) => ({
            piece,
            readings: of_tally.filter(({ of }) => of === piece.stay || of === piece.stay.replace(/\.(port|starboard)$/, "")),
          }))
          .filter((each) => each.readings.length > 0);
        const bases = new Set(of_tally.map(({ of }) => of.replace(/\.(port|starboard)$/, "")));
        return {
          knots: tally,
          readings: of_tally,
          stays,
          clash: bases.size > 1,
          expected_mm: Math.min(Infinity, ...stays.map(({ piece }) => expected_length(piece) ?? piece.order_mm ?? Infinity)),
        };
      });
      knots.sort((a, b) => a.expected_mm - b.expected_mm || (a.knots ?? 0) - (b.knots ?? 0));
      return { name: declaration.name, title: declaration.title, declaration, knots };
    });
}

/** Pin to pin by the path, where there is one. Good for telling a slip, never for cutting. */
export function expected_length(piece) {
  if (piece.card?.route === "path") return piece.card.sum.find((each) => each.name === "pin-to-pin")?.total_mm ?? null;
  const other = piece.card?.other_routes.find((route) => route.expected_x_mm !== null || route.route === "path");
  return other ? (other.expected_x_mm ?? other.length_mm) : null;
}

/** The least tally that no stay of this cord has; what another side of the same stay has may be shared. */
export function free_tally(cord) {
  const taken = new Set(cord?.knots.map((each) => each.knots) ?? []);
  let tally = 1;
  while (taken.has(tally)) ++tally;
  return tally;
}
