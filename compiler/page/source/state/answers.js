// Everything the page asks of the compiler about one state of a boat, and what the views read out of it.

/** Asked of every text: these need no lengths. */
async function of_texts(ask) {
  return {
    findings: (await ask({ ask: "findings" })) ?? { files: [], calculated: false },
    declarations: (await ask({ ask: "declarations" })) ?? [],
    numbers: (await ask({ ask: "numbers" })) ?? [],
  };
}

/** Asked when there are lengths. */
async function of_lengths(ask, paper, only = ["cut-list", "diagram"]) {
  const stays = await ask({ ask: "stays" });
  if (!stays) return null;
  const made = await ask({ ask: "papers", only, paper });
  const file = (name) => made?.flatMap((each) => each.files).find((each) => each.name === name)?.text;
  const cut_list = file("cut-list.json");
  return {
    stays,
    cut_list: cut_list ? JSON.parse(cut_list) : { pieces: [], adjusters: [] },
    strips:
      made
        ?.flatMap((each) => each.files)
        .filter((each) => each.name.startsWith("stay-strips"))
        .map((each) => each.text) ?? [],
    diagram: file("rig-diagram.svg") ?? "",
  };
}

/**
 * @typedef {object} PieceView a piece to cut, as the views show it
 * @property {string} name `cap-shroud.port`
 * @property {string} stay
 * @property {string} title
 * @property {string} side port, starboard or centre
 * @property {"todo" | "drawn" | "not" | "once" | "differ" | "ready" | "record"} state drawn: not measured, and the file gives leave
 *   to cut from the drawing; differ: measured, and another way to the length gives something else
 * @property {{reason: string, mend: string}[]} reasons
 * @property {{x: boolean, plus_mm: number}} cut
 * @property {{x: boolean, plus_mm: number}} body
 * @property {number | null} order_mm
 * @property {any} card the piece in the cut list
 * @property {number} number of its stay, the same for both sides
 */

/** The name of a stay without its side: `cap-shroud` of `cap-shroud.port`. */
const base_of = (stay) => stay.name.replace(/\.(port|starboard)$/, "");

/** What a stay is called: by its title, else by its name, as on the papers. */
const called = (stay) => stay.title || base_of(stay);

/** A title without what only tells more of the same stay, as long as no other stay is called so. */
function short_title(title, titles) {
  const short = title.split(",")[0];
  return titles.filter((each) => each !== title && each.split(",")[0] === short).length > 0 ? title : short;
}

function state_of(piece) {
  if (piece.state === "not measured" && piece.reasons.length === 0) return "drawn";
  // Where both ways were measured the papers keep the cut back, and so does the page.
  if (piece.ways_differ && piece.reasons.length > 0) return "not";
  return piece.ways_differ ? "differ" : (STATES[piece.state] ?? "not");
}

const STATES = {
  "not measured": "todo",
  "not yet": "not",
  "measured once": "once",
  "ways differ": "differ",
  ready: "ready",
  "on record": "record",
};

/** @returns {PieceView[]} in the order of the file */
function pieces_of(lengths) {
  const cards = new Map(lengths.cut_list.pieces.map((card) => [card.name, card]));
  const numbers = new Map();
  const titles = lengths.stays.map(called);
  return lengths.stays.flatMap((stay) => {
    const base = base_of(stay);
    if (!numbers.has(base)) numbers.set(base, numbers.size + 1);
    return stay.pieces.map((piece) => ({
      ...piece,
      stay: stay.name,
      title:
        stay.pieces.length > 1
          ? `${short_title(called(stay), titles)} (${piece.name.replace(/^.* (\d+ of \d+)$/, "$1")})`
          : short_title(called(stay), titles),
      full_title: called(stay),
      side: /\.(port|starboard)$/.exec(stay.name)?.[1] ?? "centre",
      state: state_of(piece),
      card: cards.get(piece.name),
      number: numbers.get(base),
    }));
  });
}

/**
 * @typedef {Awaited<ReturnType<typeof of_texts>> & {lengths: any, pieces: PieceView[], stale: boolean}} Answers
 */

/** What whoever opens a boat looks for: her stays, before what is said of her texts and before her drawings. Null: no lengths. */
async function of_opening(ask, paper) {
  const declarations = (await ask({ ask: "declarations" })) ?? [];
  const lengths = await of_lengths(ask, paper, ["cut-list"]);
  return lengths && { ...no_answers(), declarations, lengths, pieces: pieces_of(lengths), partial: true };
}

/**
 * Asks all anew: what is said of the texts comes first, for whoever is typing; of a boat that was just opened her stays do. Where
 * there are no lengths now, those from before stay, and `stale` says so.
 * @param {(request: object) => Promise<any>} ask
 * @param {Answers | null} before
 * @param {"a4" | "letter"} paper
 * @param {(answers: Answers) => boolean} early is given what is known so far; false: it has been overtaken
 * @returns {Promise<Answers | null>} null: it was overtaken
 */
export async function ask_all(ask, before, paper, early) {
  if (!before) {
    before = await of_opening(ask, paper);
    if (before && !early(before)) return null;
  }
  const texts = await of_texts(ask);
  const from_before = { lengths: before?.lengths ?? null, pieces: before?.pieces ?? [] };
  if (!texts.findings.calculated) return { ...texts, ...from_before, stale: before?.lengths != null };
  if (!early({ ...texts, ...from_before, stale: false })) return null;
  const lengths = await of_lengths(ask, paper);
  return lengths ? { ...texts, lengths, pieces: pieces_of(lengths), stale: false } : { ...texts, ...from_before, stale: true };
}

export const no_answers = () => ({
  findings: { files: [], calculated: false },
  declarations: [],
  numbers: [],
  lengths: null,
  pieces: [],
  stale: false,
});

/** Whether anything was answered of this boat yet. @param {Answers} answers */
export const is_known = (answers) => answers.of !== undefined && !answers.partial;

/** All findings with their file, errors first. @param {Answers} answers */
export function all_findings(answers) {
  const rank = { error: 0, warning: 1, note: 2 };
  return answers.findings.files
    .flatMap(({ file, findings }) => findings.map((finding) => ({ file, ...finding })))
    .sort((a, b) => rank[a.severity] - rank[b.severity]);
}
export const first_error = (answers) => all_findings(answers).find((finding) => finding.severity === "error");
