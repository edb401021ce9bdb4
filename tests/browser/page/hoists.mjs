// A cord that is hoisted again: on every stay of the examples that is kept by one the button leaves a boat that can be read, with
// one more reading of the same knot, and the stay of an offset, a hook or a lower pin gets these with it. Nothing can be read into
// a number: what stands between knot and pins is what the first reading has.

import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { go, kept_text, open_files } from "./tools.mjs";

const BETWEEN = ["offset", "hoist-offset", "below-knot"];
const block_of = (text) => text.slice(text.lastIndexOf("\nreading of "));
const facts_of = (block) => BETWEEN.map((name) => new RegExp(`^  ${name}: .*$`, "m").exec(block)?.[0] ?? "").join("\n");

export default async function hoists({ report, open, project }) {
  const examples = path.join(project, "examples");
  const below = (folder) =>
    readdirSync(path.join(examples, folder))
      .filter((name) => name.endsWith(".rig"))
      .map((name) => path.join(folder, name));
  const libraries = [...below("parts"), ...below("stock")];
  const tools = await open({ size: "phone" });
  const { page } = tools;
  let hoisted = 0;
  for (const boat of below("")) {
    const text = readFileSync(path.join(examples, boat), "utf8");
    const others = below("").filter((name) => name !== boat && text.includes(`"${name}"`));
    if (!/method: messenger/.test(text)) continue;
    await open_files(tools, Object.fromEntries([boat, ...others, ...libraries].map((name) => [path.basename(name), readFileSync(path.join(examples, name))])));
    await go(tools, "numbers");
    for (const piece of await page.$$eval(".row", (all) => all.map((each) => each.dataset.piece))) {
      await go(tools, `numbers/${piece}`);
      const again = await page.evaluate(() => [...document.querySelectorAll("button")].some((each) => each.innerText === "Hoisted again: same place"));
      if (!again) continue;
      const before = await kept_text(page);
      await tools.tap("Hoisted again: same place");
      ++hoisted;
      report.none(`${boat} ${piece}: can be read when its cord is hoisted again`, await page.evaluate(() => document.body.innerText.match(/Line \d+ cannot be read.*/g) ?? []));
      report.none(`${boat} ${piece}: is ready or says why not`, (await page.$(".big.ready, .big.not, .big.once .why")) ? [] : [await page.$eval(".big", (box) => box.innerText)]);
      const block = block_of(await kept_text(page));
      const first = before.split("\nreading of ").find((each) => each.startsWith(`${piece} {`) || each.startsWith(`${piece.replace(/\.\w+$/, "")} {`)) ?? "";
      report.none(`${boat} ${piece}: what moves X goes with it`, facts_of(block) === facts_of(first) ? [] : [block, "beside", first]);
      await tools.tap("Take back");
    }
  }
  report.none("some were hoisted again", hoisted > 3 ? [] : [`${hoisted}`]);
  report.none("no complaints", tools.complaints);
  await tools.close();
}
