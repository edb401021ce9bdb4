// The text: findings under the words with their edits, completion from the compiler, what a slip does to the other views, and the
// boat as one file out and in again.

import { mkdtempSync, readdirSync, readFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { go, kept, kept_text, open_files, text_of, two_stays } from "./tools.mjs";

/** Waits for a file in a folder that is complete. */
async function downloaded(folder) {
  for (let i = 0; i < 100; ++i) {
    const name = readdirSync(folder).find((each) => !each.endsWith(".crdownload"));
    if (name) return { name, text: readFileSync(path.join(folder, name), "utf8") };
    await new Promise((done) => setTimeout(done, 50));
  }
  return { name: "", text: "" };
}

export default async function texts({ report, open }) {
  for (const size of ["phone", "desktop"]) {
    const tools = await open({ size });
    const { page } = tools;
    const slip = two_stays.replace("(length: 350 mm)", "(lenght: 350 mm)");
    await open_files(tools, { "slip.rig": slip });
    const line = slip.slice(0, slip.indexOf("lenght")).split("\n").length;
    report.none(
      `${size}: the top says which line cannot be read`,
      new RegExp(`Line ${line} cannot be read`).test(await text_of(page, ".bar .who")) ? [] : [await text_of(page, ".bar .who")],
    );
    await go(tools, "papers");
    report.none(`${size}: no paper is offered`, (await page.$(".plist")) ? ["one is"] : []);
    await go(tools, `text/slip.rig:${line}`);
    await page.waitForSelector(".finding.sev-error");
    const target = await page.$(".finding.sev-error");
    await target.evaluate((each) => each.scrollIntoView({ block: "center" }));
    await (size === "phone" ? target.tap() : target.click());
    await tools.settle();
    report.none(
      `${size}: the line has the mark of a finding`,
      await page.$$eval(
        ".cm-gutterElement.has",
        (all, right) => (all.some((each) => each.textContent === right) ? [] : all.map((each) => each.textContent)),
        String(line),
      ),
    );
    await tools.tap("css:.fix .btn.go");
    report.none(
      `${size}: one tap and the slip is mended`,
      (await kept_text(page)) === two_stays ? [] : [/screw-12 \(.*/.exec(await kept_text(page))[0]],
    );
    report.none(
      `${size}: there are numbers again`,
      /0 of 3 ready/.test(await text_of(page, ".bar .who")) ? [] : [await text_of(page, ".bar .who")],
    );

    await page.focus(".cm-content");
    await page.keyboard.down("Control");
    await page.keyboard.press("End");
    await page.keyboard.up("Control");
    await page.keyboard.type("tog");
    await page.waitForSelector(".cm-tooltip-autocomplete li", { timeout: 8000 }).catch(() => {});
    const proposed = await page.$$eval(".cm-tooltip-autocomplete li", (all) => all.map((each) => each.textContent));
    report.none(`${size}: a kind is proposed`, proposed.some((each) => each.startsWith("toggle")) ? [] : proposed);
    await page.keyboard.press("Escape");
    for (let i = 0; i < 3; ++i) await page.keyboard.press("Backspace");
    await tools.settle();

    if (size === "desktop") {
      const folder = mkdtempSync(path.join(os.tmpdir(), "sheerpole-saved-"));
      const session = await page.createCDPSession();
      await session.send("Browser.setDownloadBehavior", {
        behavior: "allow",
        downloadPath: folder,
        browserContextId: tools.context.id,
      });
      await tools.tap("css:#menu");
      await tools.tap("Save to a file");
      const saved = await downloaded(folder);
      report.none("the boat is saved as one file", saved.name === "two-stays.rig-boat" ? [] : [saved.name]);
      const before = await kept(page);
      await open_files(tools, { "back.rig-boat": saved.text });
      const after = await kept(page);
      report.none(
        "and is the same when it is opened",
        JSON.stringify(after.files) === JSON.stringify(before.files) && after.root === before.root && after.id !== before.id
          ? []
          : ["it is not"],
      );
    }
    report.none(`${size}: nothing asked for, nothing said`, tools.complaints);
    await tools.close();
  }
}
