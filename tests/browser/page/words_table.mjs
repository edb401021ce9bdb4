// Every word of the page is in its table: built with another one, none is left in English, and nothing is too narrow for it.

import { files_of, go, two_stays } from "./tools.mjs";
import { too_wide } from "./reads.mjs";

export default async function words_table({ report, open, pseudo }) {
  const tools = await open({ size: "phone", file: pseudo });
  const { page } = tools;
  const plain = () =>
    page.evaluate(() => {
      const found = [];
      for (const each of document.querySelectorAll(
        ".tabs button, .btn, h1, h2, .legend span, .next .lab, .try label, .seg button, .menu button, .plist h2",
      )) {
        const own = [...each.childNodes]
          .filter((node) => node.nodeType === 3)
          .map((node) => node.data)
          .join("")
          .trim();
        const text = own || each.innerText.trim();
        if (/[A-Za-z]{3}/.test(text) && !text.includes("\u27e6") && each.checkVisibility()) found.push(text.slice(0, 60));
      }
      return found;
    });
  // What is the compiler's or the boat's own.
  const own = /Two stays|Cap shroud|Forestay|Turnbuckle|two\.rig|Letter/;
  for (const screen of ["start/0", "start/1", "start/2", "start/3", "start/4"]) {
    await go(tools, screen);
    report.none(
      `words of ${screen}`,
      (await plain()).filter((each) => !/sloop|cutter|Ketch/i.test(each)),
    );
    report.none(`width of ${screen}`, await too_wide(page));
  }
  await go(tools, "start/0");
  const [chooser] = await Promise.all([page.waitForFileChooser(), tools.tap("css:.bot .pair .btn")]);
  await chooser.accept(files_of({ "two.rig": two_stays }));
  await page.waitForSelector(".bar");
  await tools.settle();
  for (const screen of ["numbers", "numbers/forestay", "rig", "papers", "text", "files"]) {
    await go(tools, screen);
    report.none(
      `words of ${screen}`,
      (await plain()).filter((each) => !own.test(each)),
    );
    report.none(`width of ${screen}`, await too_wide(page));
  }
  await tools.close();
}
