// A screw is turned in the page: the tensions follow, nothing is in the file until it is written down, and written down the rig stands
// as the trial said.

import { readFileSync } from "node:fs";
import path from "node:path";
import { go, kept_text, open_files, text_of, two_stays } from "./tools.mjs";

/** The newtons of a line of the list: "4.12 kN" or "812 N". */
const newtons_of = (text) => {
  const found = /(\d+(?:\.\d+)?) (k?)N/.exec(text);
  return found ? Number(found[1]) * (found[2] ? 1000 : 1) : NaN;
};

export default async function turned({ report, open, project }) {
  const examples = path.join(project, "examples");
  const bytes = (name) => readFileSync(path.join(examples, name));
  for (const size of ["phone", "desktop"]) {
    const tools = await open({ size });
    const { page } = tools;
    await open_files(tools, {
      "pellimoor-tuned.rig": bytes("pellimoor-tuned.rig"),
      "pellimoor.rig": bytes("pellimoor.rig"),
      "demo-hardware.rig": bytes("parts/demo-hardware.rig"),
      "demo-lines.rig": bytes("parts/demo-lines.rig"),
    });
    await go(tools, "rig");
    await tools.tap("css:#turns");
    await page.waitForSelector(".turns li, .turning .why li", { timeout: 20_000 });
    const tension = async (title) =>
      newtons_of(
        await page.$$eval(
          ".turns li",
          (all, words) => all.find((each) => each.innerText.startsWith(words))?.querySelector(".v").innerText ?? "",
          title,
        ),
      );
    const before = await tension("Forestay");
    report.none(`${size}: a rig that is tuned has tensions`, before > 0 ? [] : [await text_of(page, ".turning")]);
    const text = await kept_text(page);
    const plus = () => page.$$eval(".turns li", (all) => all.findIndex((each) => each.innerText.startsWith("Forestay")));
    const at = (await plus()) + 1;
    await tools.tap(`css:.turns li:nth-child(${at}) .btn:last-child`);
    await tools.tap(`css:.turns li:nth-child(${at}) .btn:last-child`);
    const with_turn = await tension("Forestay");
    report.none(`${size}: a turn tighter, and the forestay pulls more`, with_turn > before ? [] : [`${before} N, then ${with_turn} N`]);
    report.none(
      `${size}: what changes is lit`,
      (await page.$$(".turns li.lit")).length > 1 ? [] : ["it is not"],
    );
    report.none(`${size}: nothing is in the file`, (await kept_text(page)) === text ? [] : ["it is"]);
    report.none(
      `${size}: nothing is wider than the screen`,
      await page.evaluate(() => (document.scrollingElement.scrollWidth > innerWidth ? [`${document.scrollingElement.scrollWidth} px`] : [])),
    );
    if (process.env.PICTURES) {
      await page.$eval(".turning", (each) => each.scrollIntoView());
      await page.screenshot({ path: path.join(process.env.PICTURES, `turned-${size}.png`) });
    }
    await tools.tap("css:.turning .keep .btn.quiet");
    report.none(`${size}: put back, it stands as before`, (await tension("Forestay")) === before ? [] : [`${await tension("Forestay")} N`]);
    report.none(`${size}: nothing asked for, nothing said`, tools.complaints);
    await tools.close();
  }

  const tools = await open({ size: "phone" });
  await open_files(tools, { "two.rig": two_stays });
  await go(tools, "rig");
  await tools.tap("css:#turns");
  await tools.page.waitForSelector(".turning .why li", { timeout: 20_000 });
  report.none("a rig that cannot stand says what is missing", (await tools.page.$$(".turning .why li")).length > 0 ? [] : ["it does not"]);
  await tools.close();
}
