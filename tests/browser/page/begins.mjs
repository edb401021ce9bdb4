// From nothing to the bench card of a shroud that was measured on a cord, without a line of the language and without a number.

import { go, kept_text, paper_text } from "./tools.mjs";

const MOST_TAPS = 15;

const MOST_FIELDS = 30;
/** Puts in every number that the form asks for: the one that stands there, now measured. @returns how many */
async function fill_in(tools) {
  const { page } = tools;
  for (let count = 0; count < MOST_FIELDS; ++count) {
    const field = await page.$("#missing .field");
    if (!field) return count;
    const value = await field.$eval(".val", (each) => each.textContent.trim().replaceAll('"', ""));
    await tools.tap("css:#missing .field");
    await page.type("#typed", /mm$/.test(value) ? value : value.replace(/ .*/, ""));
    await tools.tap("Put in");
  }
  return MOST_FIELDS;
}

export default async function begins({ report, open }) {
  for (const size of ["phone", "desktop"]) {
    const tools = await open({ size });
    const { page } = tools;
    for (const words of ["Begin my boat", "Fractional sloop", "Next", "Rope", "Next", "A cord", "Next", "Make the list of stays"])
      await tools.tap(words);
    const first = await kept_text(page);
    report.none(
      `${size}: no stay has a finer number than for ordering`,
      await page.$$eval(".row .v", (all) => all.map((each) => each.innerText).filter((each) => !/^about \d+ ft/.test(each))),
    );
    for (const words of ["Cap shroud, port", "By the cord", "At the pin itself", "It is hoisted and knotted", "Bench card"]) await tools.tap(words);
    report.none(`${size}: at most ${MOST_TAPS} taps`, tools.taps <= MOST_TAPS ? [] : [`${tools.taps} taps`]);
    const card = await paper_text(page);
    report.none(
      `${size}: the card is of the shroud and a draft, for its hardware is assumed`,
      [/cap-shroud\.port/, /DRAFT/].filter((words) => !words.test(card)).map(String),
    );
    report.none(
      `${size}: the card is of no other stay`,
      [/forestay/, /backstay/, /lower-shroud/, /cap-shroud\.starboard/].filter((words) => words.test(card)).map(String),
    );
    const text = await kept_text(page);
    const reading = /reading of cap-shroud\.port \{[^}]*\}/.exec(text)?.[0] ?? "";
    report.none(
      `${size}: the hoisting stands in the text`,
      [/method: messenger/, /knots: 1/, /offset: 0 mm measured/, /date: \d{4}-\d\d-\d\d/]
        .filter((words) => !words.test(reading))
        .map(String),
    );
    report.none(
      `${size}: nothing else of the text has changed`,
      text.replace(reading, "") === first.replace(/reading of cap-shroud\.port \{[^}]*\}/, "") ? [] : ["it has"],
    );
    await page.evaluate(() => (document.querySelector("iframe.paper").contentWindow.print = () => (window.printed = true)));
    await tools.tap("Print");
    report.none(`${size}: the card itself is printed`, (await page.evaluate(() => window.printed === true)) ? [] : ["it is not"]);
    await go(tools, "numbers/cap-shroud.port");
    report.none(`${size}: the shroud waits for its hardware`, (await page.$(".big.not")) ? [] : ["it is not marked as not yet"]);
    const asked = await fill_in(tools);
    report.none(`${size}: what it waits for was asked`, asked >= 10 ? [] : [`${asked} numbers`]);
    report.none(
      `${size}: with all of it measured it is measured once`,
      (await page.$(".big.once")) ? [] : [await page.$eval(".big", (box) => box.innerText)],
    );
    await tools.tap("Hoisted again: same place");
    report.none(
      `${size}: hoisted again it is ready`,
      (await page.$(".big.ready")) ? [] : [await page.$eval(".big", (box) => box.innerText)],
    );
    await tools.tap("Bench card");
    const final = await paper_text(page);
    report.none(`${size}: the card is no draft any more`, /DRAFT/.test(final) || !/CUT/.test(final) ? [final.slice(0, 300)] : []);
    report.none(`${size}: nothing asked for, nothing said`, tools.complaints);
    await tools.close();
  }
  await numbers_lie_on_their_stays({ report, open });
}

/** Of two lower shrouds the forward one has its number forward of the other's. */
async function numbers_lie_on_their_stays({ report, open }) {
  const tools = await open({ size: "desktop" });
  for (const words of ["Begin my boat", "Masthead sloop", "Next", "Rope", "Next", "A cord", "Next", "Make the list of stays"])
    await tools.tap(words);
  await go(tools, "rig");
  await tools.page.waitForSelector("svg.rig .bal");
  const [forward, aft, far] = await tools.page.evaluate(() => {
    const side = document.querySelector("svg.rig");
    const number = (title) =>
      [...document.querySelectorAll("[data-live]")].find((row) => row.innerText.includes(title))?.querySelector(".no").textContent;
    const circle = (title) =>
      [...side.querySelectorAll(".bal")].find((each) => each.querySelector("text").textContent === number(title))?.querySelector("circle");
    const x = (title) => Number(circle(title)?.getAttribute("cx"));
    return [x("Fore lower"), x("Aft lower"), side.querySelectorAll(".lead").length];
  });
  report.none(
    "the number of the forward lower shroud lies forward of that of the after one, and each has its leader",
    forward > aft && far > 0 ? [] : [`${forward}, ${aft}, ${far}`],
  );
  await tools.close();
}
