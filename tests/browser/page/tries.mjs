// A slider that moves a chainplate: what changes stays lit, by as much as Pythagoras says, and nothing is kept until somebody says so.

import { go, kept_text, open_files, text_of, two_stays } from "./tools.mjs";

export default async function tries({ report, open }) {
  for (const size of ["phone", "desktop"]) {
    const tools = await open({ size });
    const { page } = tools;
    await open_files(tools, { "two.rig": two_stays });
    await tools.tap("css:#menu");
    await tools.tap("millimetres");
    await tools.tap("Close");
    await go(tools, "rig");
    const key = await page.$$eval(
      "select option",
      (all) =>
        all.find((each) => /Chainplate|plate-a/.test(each.textContent) && /up and down/.test(each.textContent))?.value ?? "",
    );
    report.none(`${size}: the chainplate can be moved up and down`, key ? [] : ["it is not among what can be tried"]);
    await page.select("select", key);
    for (let i = 0; i < 3; ++i) await tools.tap("css:.slide .btn:last-child");
    // 30 mm up: sqrt(1.3^2 + 8.97^2) - sqrt(1.3^2 + 9^2) m = -29.69 mm.
    const lit = await page.$$eval("[data-live]", (all) =>
      all
        .filter((each) => each.parentElement.classList.contains("lit"))
        .map((each) => `${each.dataset.live}: ${each.querySelector("small").textContent}`),
    );
    const right = ["cap-shroud.port", "cap-shroud.starboard"].map((name) => `${name}: tried: \u2212 29.7 mm`);
    report.none(
      `${size}: both cap shrouds are lit, and nothing else`,
      JSON.stringify(lit) === JSON.stringify(right) ? [] : lit.concat("instead of", right),
    );
    report.none(`${size}: their lines in the drawing have the marker`, (await page.$$(".halo")).length > 0 ? [] : ["none has"]);
    report.none(
      `${size}: the top says that it is a trial`,
      /a trial, not a cut/.test(await text_of(page, ".bar .who")) ? [] : [await text_of(page, ".bar .who")],
    );
    report.none(`${size}: nothing is in the text yet`, (await kept_text(page)) === two_stays ? [] : ["it is"]);
    await page.focus("input[type=range]");
    await page.keyboard.press("ArrowLeft");
    await tools.settle();
    const by_key = await page.$$eval("[data-live] small", (all) => all.map((each) => each.textContent));
    // 20 mm up: -19.80 mm.
    report.none(
      `${size}: an arrow key moves it one step`,
      by_key.every((each) => each.includes("\u2212 19.8 mm")) && by_key.length === 2 ? [] : by_key,
    );
    const said = await text_of(page, "#said");
    report.none(`${size}: it is said how many change`, /2 stays change/.test(said) ? [] : [said]);
    await tools.tap("Put it back");
    report.none(`${size}: put back, nothing is lit`, (await page.$$(".lit")).length === 0 ? [] : ["something is"]);
    // In the drawing a line that is tapped is selected; the list below has the same stays.
    const line = await page.$(".hit:last-of-type line, .hit line");
    await line.evaluate((each) => each.dispatchEvent(new MouseEvent("click", { bubbles: true })));
    await tools.settle();
    report.none(`${size}: a line that is tapped is selected`, (await page.$$(".st.sel")).length > 0 ? [] : ["it is not"]);
    await tools.tap("css:.slide .btn:last-child");
    await tools.tap("Keep in the file");
    const text = await kept_text(page);
    report.none(
      `${size}: kept, it stands in the text`,
      text.includes("(0 m, 1.4 m, 1.0 m + 10 mm) mirrored measured") ? [] : [/plate-a.*/.exec(text)?.[0] ?? ""],
    );
    report.none(`${size}: nothing asked for, nothing said`, tools.complaints);
    await tools.close();
  }
}
