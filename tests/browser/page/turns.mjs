// Turns that nobody has made: sliders, tensions beside them, and what they were said to do is what stands after they are written.

import { readFileSync } from "node:fs";
import path from "node:path";
import { go, kept_text, open_files, text_of } from "./tools.mjs";

const pull = (page, stay, column) =>
  page.$eval(`[data-pull="${stay}"]`, (row, at) => Number(row.children[at].textContent), column);

export default async function turns({ report, open, project }) {
  // Boat A of the reference, worked with CalculiX and with another solver; its screws get thread to turn.
  const boat = readFileSync(path.join(project, "tests/reference/statics/case-a.rig"), "utf8")
    .replace("shortest: 1 mm", "shortest: 100 mm")
    .replace("longest: 1.8 mm", "longest: 160 mm")
    .replaceAll("length: 1.4 mm", "length: 130 mm");
  for (const size of ["phone", "desktop"]) {
    const tools = await open({ size });
    const { page } = tools;
    await open_files(tools, { "boat.rig": boat });
    await go(tools, "rig");
    report.none(`${size}: the panel is closed and asks nothing`, (await page.$$("[data-pull]")).length === 0 ? [] : ["it is open"]);
    await tools.tap("css:.turns summary");
    await page.waitForSelector("[data-pull]");
    await tools.settle();
    const rows = await page.$$eval(".turnrow .turnhead", (all) => all.map((each) => each.innerText.replace(/\s+/g, " ")));
    report.none(`${size}: a row for each adjuster, both sides as one`, rows.length === 5 && rows.some((row) => /both sides/.test(row)) ? [] : rows);
    // 5.442 kN by both programs; here each stay has 128.6 mm of hardware more, about a hundredth of it, which does not stretch.
    const forestay = await pull(page, "forestay", 1);
    report.none(`${size}: tensions stand beside`, Math.abs(forestay - 5.44) < 0.15 ? [] : [String(forestay)]);
    const plus = 'css:.turnrow:nth-child(2) .slide .btn:last-child';
    await tools.tap(plus);
    await tools.settle();
    report.none(
      `${size}: half a turn is said`,
      /0.5 turn tighter/.test(await text_of(page, ".turnrow:nth-child(2) output")) ? [] : [await text_of(page, ".turnrow:nth-child(2) output")],
    );
    const backstay = await pull(page, "backstay", 2);
    report.none(`${size}: it pulls more`, backstay > (await pull(page, "backstay", 1)) + 0.1 ? [] : [String(backstay)]);
    report.none(`${size}: nothing is in the text yet`, (await kept_text(page)) === boat ? [] : ["it is"]);
    report.none(
      `${size}: it says what it is not`,
      /no sail, no wind, no sea.*no verdict.*licensed rigger/s.test(await text_of(page, ".turns")) ? [] : [await text_of(page, ".turns")],
    );
    const wide = await page.evaluate(() => document.documentElement.scrollWidth > document.documentElement.clientWidth);
    report.none(`${size}: nothing is too wide`, wide ? ["it is"] : []);
    if (process.env.SHEERPOLE_PICTURES) await (await page.$(".turns")).screenshot({ path: `${process.env.SHEERPOLE_PICTURES}/turns-${size}.png` });
    await tools.tap("Put all back");
    await tools.settle();
    report.none(`${size}: put back, nothing is lit`, (await page.$$(".turns .lit")).length === 0 ? [] : ["something is"]);
    await tools.tap(plus);
    await tools.settle();
    const said = await pull(page, "backstay", 2);
    await tools.tap("Write as settings");
    await page.waitForSelector("[data-pull]");
    await tools.settle();
    const text = await kept_text(page);
    report.none(`${size}: written, it stands in the text`, text.includes("taken-up: 25.75 mm") ? [] : [/taken-up: 2\d.*/.exec(text)?.[0] ?? ""]);
    await page.waitForFunction(() => document.querySelector('[data-pull="backstay"]') !== null);
    const after = await pull(page, "backstay", 1);
    report.none(`${size}: she stands as was said`, Math.abs(after - said) < 0.011 ? [] : [`${after}, said ${said}`]);
    // One side alone.
    await tools.tap("css:.together input");
    await tools.settle();
    report.none(`${size}: each side by itself`, (await page.$$(".turnrow")).length === 8 ? [] : [String((await page.$$(".turnrow")).length)]);
    report.none(`${size}: nothing asked for, nothing said`, tools.complaints);
    await tools.close();
  }
}
