// From nothing to the bench card of a shroud that was measured on a cord, without a line of the language and without a number.

import { go, kept_text, paper_text } from "./tools.mjs";

const MOST_TAPS = 15;

export default async function begins({ report, open }) {
  for (const size of ["phone", "desktop"]) {
    const tools = await open({ size });
    const { page } = tools;
    for (const words of ["Begin my boat", "Fractional sloop", "Next", "Rope", "Next", "A cord", "Next", "Make the list of stays"]) await tools.tap(words);
    const first = await kept_text(page);
    report.none(`${size}: no stay has a finer number than for ordering`, await page.$$eval(".row .v", (all) => all.map((each) => each.innerText).filter((each) => !/^about \d+ ft/.test(each))));
    for (const words of ["Cap shroud, port", "By the cord", "It is hoisted and knotted", "Bench card"]) await tools.tap(words);
    report.none(`${size}: at most ${MOST_TAPS} taps`, tools.taps <= MOST_TAPS ? [] : [`${tools.taps} taps`]);
    const card = await paper_text(page);
    report.none(`${size}: the card is of the shroud and a draft, for its hardware is assumed`, [/cap-shroud\.port/, /DRAFT/].filter((words) => !words.test(card)).map(String));
    report.none(`${size}: the card is of no other stay`, [/BENCH CARD forestay/, /BENCH CARD cap-shroud\.starboard/].filter((words) => words.test(card)).map(String));
    const text = await kept_text(page);
    const reading = /reading of cap-shroud\.port \{[^}]*\}/.exec(text)?.[0] ?? "";
    report.none(`${size}: the hoisting stands in the text`, [/method: messenger/, /knots: 1/, /offset: 0 mm measured/, /date: \d{4}-\d\d-\d\d/].filter((words) => !words.test(reading)).map(String));
    report.none(`${size}: nothing else of the text has changed`, text.replace(reading, "") === first.replace(/reading of cap-shroud\.port \{[^}]*\}/, "") ? [] : ["it has"]);
    await go(tools, "numbers/cap-shroud.port");
    report.none(`${size}: the shroud waits for its hardware`, (await page.$(".big.not")) ? [] : ["it is not marked as not yet"]);
    report.none(`${size}: nothing asked for, nothing said`, tools.complaints);
    await tools.close();
  }
}
