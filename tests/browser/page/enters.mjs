// What is put in on screens becomes text, and the text says what becomes of a piece: a second hoist releases it.

import { with_key } from "../../../compiler/page/source/core/keypad_text.js";
import { all_measured, go, kept_text, open_files, text_of, two_stays } from "./tools.mjs";

async function lines_of(tools, keys) {
  for (const key of keys) await tools.tap(key);
}

/** A new boat from the menu, measured in this way. */
async function begin(tools, way) {
  await tools.tap("css:#menu");
  await lines_of(tools, ["Begin another boat", "Fractional sloop", "Next", "Rope", "Next", way, "Next", "Make the list of stays"]);
}

export default async function enters({ report, open, first_rig }) {
  const typed = (...keys) => keys.reduce(with_key, "");
  report.none(
    "a minus is put in front of what was put in, and taken off again",
    typed("1", "4", ".", "8", "-", "mm") === "-14.8 mm" && typed("-", "1", "4", "-", "mm") === "14 mm"
      ? []
      : [typed("1", "4", ".", "8", "-", "mm"), typed("-", "1", "4", "-", "mm")],
  );
  report.none(
    "metres, centimetres and one point",
    typed("1", "3", ".", ".", "1", "m", "m") === "13.1 m" && typed("4", "5", "cm", "rub", "mm", "7") === "45 mm"
      ? []
      : [typed("1", "3", ".", ".", "1", "m", "m"), typed("4", "5", "cm", "rub", "mm", "7")],
  );
  for (const size of ["phone", "desktop"]) {
    const tools = await open({ size });
    const { page } = tools;

    await open_files(tools, { "two.rig": two_stays });
    await tools.tap("Forestay");
    await tools.tap("By tape");
    // The path is the root of 4^2 + 9^2 m, 9848.86 mm: 32' 3 3/4" is 9848.85 mm, as a double a little less.
    await lines_of(tools, ["3", "2", "ft '", "3", "3/4"]);
    report.none(
      `${size}: the pad says what it is in millimetres, and that it agrees`,
      /9848\.8 mm.*agrees/.test(await text_of(page, ".echo")) ? [] : [await text_of(page, ".echo")],
    );
    await lines_of(tools, ["Rub out", "Rub out", "4", "3/4"]);
    report.none(
      `${size}: an inch too many is told`,
      /inch/.test(await text_of(page, ".echo")) ? [] : [await text_of(page, ".echo")],
    );
    await lines_of(tools, ["Rub out", "Rub out", "6", "3/4"]);
    report.none(
      `${size}: three inches beside the drawing do not agree with it`,
      /differ/.test(await text_of(page, ".echo")) && !/agree/.test(await text_of(page, ".echo")) ? [] : [await text_of(page, ".echo")],
    );
    await lines_of(tools, ["Rub out", "Rub out", "3", "3/4", "Put in"]);
    const once = await kept_text(page);
    report.none(
      `${size}: one run stands in the text`,
      /reading of forestay \{\n {2}method: tape\n {2}runs: 32' 3 3\/4" measured\n/.test(once) ? [] : [once.slice(-200)],
    );
    report.none(
      `${size}: the forestay agrees with its measured points, so it is ready`,
      (await page.$(".big.ready")) ? [] : [await text_of(page, ".big .st")],
    );
    await tools.tap("css:#menu");
    await tools.tap("Go back");
    report.none(`${size}: it is taken back`, (await kept_text(page)) === two_stays ? [] : ["it is not"]);
    if (await page.$("dialog[open]")) await tools.tap("Close");

    await open_files(tools, { "first.rig": all_measured(first_rig) });
    await go(tools, "numbers/lower-shroud.port");
    await lines_of(tools, ["By the cord", "At the pin itself", "It is hoisted and knotted"]);
    report.none(`${size}: hoisted once`, (await page.$(".big.once")) ? [] : [await text_of(page, ".big .st")]);
    const cut = await text_of(page, ".big .num");
    report.none(`${size}: its cut is X and so much more`, /^X \+ \d/.test(cut) ? [] : [cut]);
    await tools.tap("Hoisted again: same place");
    report.none(`${size}: hoisted twice it is ready`, (await page.$(".big.ready")) ? [] : [await text_of(page, ".big .st")]);
    report.none(
      `${size}: the marks say where they are on the cord`,
      (await page.$$eval(".marks .v", (all) => all.map((each) => each.innerText))).some((each) => /past U/.test(each))
        ? []
        : ["no mark is past U"],
    );
    await go(tools, "cord/port-cord");
    await tools.tap("css:.knots .stepper button:last-child");
    report.none(
      `${size}: knots are counted in the text`,
      /reading of lower-shroud\.port \{[^}]*knots: 3|reading of cap-shroud\.port \{[^}]*knots: 2/.test(await kept_text(page))
        ? []
        : [await kept_text(page)],
    );

    // Begun with a tape: what stood there to be measured makes way, and a second run stands beside the first.
    await begin(tools, "A tape or laser");
    await tools.tap("Forestay");
    await lines_of(tools, ["By tape", "3", "6", "ft '", "2", "in \"", "Put in", "By tape", "3", "6", "ft '", "2", "1/16", "Put in"]);
    const runs = /reading of forestay \{[^}]*\}/.exec(await kept_text(page))?.[0] ?? "";
    report.none(`${size}: two runs stand beside each other`, runs.includes(`runs: 36' 2", 36' 2 1/16" measured`) && !runs.includes("assumed") ? [] : [runs]);

    report.none(
      `${size}: the pad says what the tape goes between`,
      (await tools.tap("By tape"), /^From the middle of one pin to the middle of the other: at the \S.* above, at the \S.* below/.test(await text_of(page, ".kp .strong")))
        ? []
        : [await text_of(page, ".kp")],
    );
    await tools.tap("Close");
    await tools.tap("css:#measured li:nth-child(1) button");
    const second = /reading of forestay \{[^}]*\}/.exec(await kept_text(page))?.[0] ?? "";
    report.none(`${size}: a run is struck out, and the other stays`, second.includes(`runs: 36' 2 1/16" measured`) ? [] : [second]);
    await tools.tap("css:#measured li:nth-child(1) button");
    report.none(
      `${size}: the last run takes its reading along, and the stay is to be measured`,
      !/reading of forestay/.test(await kept_text(page)) && (await page.$(".big.todo, .big.drawn")) ? [] : [await text_of(page, ".big .st")],
    );
    await tools.tap("Take back");
    report.none(`${size}: what was struck out is taken back`, /reading of forestay/.test(await kept_text(page)) ? [] : ["it is not"]);
    await tools.tap("css:#menu");
    await tools.tap("Save to a file");
    report.none(
      `${size}: a word about saving takes nothing back`,
      (await page.$(".toast.on")) && !(await page.$(".toast button")) ? [] : [await text_of(page, ".toast")],
    );

    // Begun from a drawing: there is no cord yet, so one is made.
    await begin(tools, "I do not know yet");
    await tools.tap("Backstay");
    await lines_of(tools, ["By the cord", "At the pin itself", "It is hoisted and knotted"]);
    const text = await kept_text(page);
    report.none(`${size}: a new cord is declared and holds the stay`, /cord orange-cord "Orange cord" \{\n\}/.test(text) && /reading of backstay \{[^}]*cord: orange-cord\n {2}knots: 1\n/.test(text) ? [] : [text.slice(-300)]);
    report.none(`${size}: the compiler takes it`, (await page.$(".big.not")) ? [] : [await text_of(page, ".big .st")]);
    await open_files(tools, { "second.rig": all_measured(first_rig) });
    await go(tools, "numbers/lower-shroud.starboard");
    const unasked = await kept_text(page);
    await lines_of(tools, ["By the cord", "It is hoisted and knotted"]);
    report.none(
      `${size}: where the cord hung is asked, never taken to be the pin`,
      (await kept_text(page)) === unasked && (await page.$("dialog[open]")) ? [] : ["it is written"],
    );
    await lines_of(tools, ["Lower than the pin", "3", 'in "', "Put in", "It is hoisted and knotted"]);
    const hung = /reading of lower-shroud\.starboard \{[^}]*\}/.exec(await kept_text(page))?.[0] ?? "";
    report.none(`${size}: how much lower stands in the text`, hung.includes('offset: 3" measured "end of the cord to the pin aloft"') ? [] : [hung]);
    report.none(`${size}: nothing asked for, nothing said`, tools.complaints);
    await tools.close();
  }
}
