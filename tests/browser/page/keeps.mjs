// Nothing is lost: on loading anew, in a browser that is full, by files that cannot be read, by texts that look like markup.

import { readFileSync } from "node:fs";
import path from "node:path";
import { files_of, go, kept, kept_text, open_files, paper_text, text_of, two_stays } from "./tools.mjs";

export default async function keeps({ report, open, folder, project }) {
  const tools = await open({ size: "phone" });
  const { page, context } = tools;
  await open_files(tools, { "two.rig": two_stays });
  await go(tools, "text");
  await page.focus(".cm-content");
  await page.keyboard.down("Control");
  await page.keyboard.press("End");
  await page.keyboard.up("Control");
  await page.keyboard.type("# a last line");
  await tools.settle();
  const typed = await kept_text(page);
  report.none("what is typed is kept at once", typed === `${two_stays}# a last line` ? [] : [typed.slice(-60)]);
  await tools.close();

  const again = await open({ size: "phone", keep: context });
  report.none("loaded anew, the boat is there", (await kept_text(again.page)) === typed ? [] : ["she is not"]);
  report.none(
    "and she is open",
    /Two stays/.test(await text_of(again.page, ".bar .who")) ? [] : [await text_of(again.page, ".bar .who")],
  );
  await again.tap("css:#menu");
  await again.tap("Go back");
  report.none(
    "and the steps back are there",
    (await kept_text(again.page)) === two_stays ? [] : [(await kept_text(again.page)).slice(-60)],
  );
  await again.tap("Close");

  const before = await kept(again.page);
  await open_files(again, { "broken.rig": Buffer.from('language 1\nboat "\xff\xfe" {\n}\n', "latin1") });
  const message = await text_of(again.page, "dialog[open]");
  report.none(
    "a file that is no UTF-8 is refused with its line",
    /broken\.rig is no UTF-8 text: line 2/.test(message) ? [] : [message],
  );
  await again.tap("css:dialog .btn");
  await open_files(again, { "cut-off.rig-boat": '{"format":"sheerpole-boat","version":1,"boat":"a.rig","files":{"a.rig":"lang' });
  const damaged = await text_of(again.page, "dialog[open]");
  report.none("a boat in one file that is damaged is refused", /damaged/.test(damaged) ? [] : [damaged]);
  await again.tap("css:dialog .btn");
  report.none(
    "the open boat stays as she is",
    JSON.stringify(await kept(again.page)) === JSON.stringify(before) ? [] : ["she does not"],
  );

  // A browser that is full: a store takes so many characters and no more (5 MB by the HTML standard's advice).
  await again.page.evaluate(() => {
    let filling = "x".repeat(1 << 20);
    for (let i = 0; filling.length > 0; ++i)
      try {
        localStorage.setItem(`filling${i}`, filling);
      } catch {
        filling = filling.slice(0, Math.floor(filling.length / 2));
      }
  });
  const older = await kept_text(again.page);
  await go(again, "text");
  await again.page.focus(".cm-content");
  await again.page.keyboard.type("# ".padEnd(200, "full "));
  await again.settle();
  report.none(
    "a browser that is full says so",
    (await again.page.$(".banner")) && /full/.test(await text_of(again.page, ".banner")) ? [] : ["it does not"],
  );
  report.none("the older copy is there still", (await kept_text(again.page)) === older ? [] : ["it is not"]);
  await go(again, "numbers");
  report.none("and the page goes on", (await again.page.$$(".row")).length === 3 ? [] : ["it does not"]);
  await again.page.evaluate(() =>
    Object.keys(localStorage)
      .filter((key) => key.startsWith("filling"))
      .forEach((key) => localStorage.removeItem(key)),
  );
  await go(again, "text");
  await again.page.focus(".cm-content");
  await again.page.keyboard.type("# room");
  await again.settle();
  report.none(
    "with room again the change is kept",
    (await kept_text(again.page)).includes("# room") && !(await again.page.$(".banner")) ? [] : ["it is not"],
  );

  const examples = path.join(project, "examples");
  const named = (name) => readFileSync(path.join(examples, name));
  await open_files(again, { "pellimoor.rig": named("pellimoor.rig"), "demo-hardware.rig": named("parts/demo-hardware.rig") });
  report.none(
    "a library that is used and not there is asked for",
    /Add the library parts\/demo-lines\.rig/.test(await text_of(again.page, ".next")) ? [] : [await text_of(again.page, ".next")],
  );
  await go(again, "files");
  const [chooser] = await Promise.all([again.page.waitForFileChooser(), again.tap("Add a file")]);
  await chooser.accept(files_of({ "demo-lines.rig": named("parts/demo-lines.rig") }));
  await again.page.waitForFunction(() => !document.getElementById("chooser"));
  await again.settle();
  await go(again, "numbers");
  report.none(
    "and with it there are numbers",
    (await again.page.$$(".row")).length === 8 ? [] : [`${(await again.page.$$(".row")).length} stays`],
  );
  await open_files(again, {
    "demo-lines.rig": named("parts/demo-lines.rig"),
    "demo-hardware.rig": named("parts/demo-hardware.rig"),
    "pellimoor.rig": named("pellimoor.rig"),
  });
  report.none(
    "chosen together, a boat and her libraries find each other",
    Object.keys((await kept(again.page)).files)
      .sort()
      .join(" ") === "parts/demo-hardware.rig parts/demo-lines.rig pellimoor.rig"
      ? []
      : Object.keys((await kept(again.page)).files),
  );

  await go(again, "papers/index.html");
  await paper_text(again.page);
  const frame = await (await again.page.$("iframe.paper")).contentFrame();
  await frame.$$eval('[data-to="take-up.txt"]', (all) => all.find((each) => each.checkVisibility()).click());
  await new Promise((done) => setTimeout(done, 100));
  await again.settle();
  const came_to = await again.page.evaluate(() => location.hash);
  report.none("a link of a paper leads to the other paper", came_to === "#papers/take-up.txt" ? [] : [came_to]);

  const nasty = readFileSync(path.join(folder, "nasty.rig"), "utf8").replaceAll("%CONTROL%", "\u200b\u202e");
  await open_files(again, { "nasty.rig": nasty });
  report.none(
    "a title of markup is shown as it stands",
    (await text_of(again.page, ".bar .who b")).includes("<script>alert(1)</script>")
      ? []
      : [await text_of(again.page, ".bar .who b")],
  );
  for (const view of ["numbers", "rig", "papers", "text", "files"]) {
    await go(again, view);
    const made = await again.page.$$eval("#page script, #page img, #page [onerror], #page [onload]", (all) =>
      all.map((each) => each.outerHTML.slice(0, 80)),
    );
    report.none(`no markup comes of it in ${view}`, made);
  }
  await go(again, "papers/survey-report.html");
  await again.page.waitForSelector("iframe.paper");
  report.none("nothing asked for, nothing said", [...tools.complaints, ...again.complaints]);
  await again.close();
}
