// Every screen in both sizes and looks: axe-core has nothing to say, nothing is wider than the screen, the keyboard goes everywhere.

import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { all_measured, go, open_files } from "./tools.mjs";

const require = createRequire(import.meta.url);
const axe_source = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");

const SCREENS = [
  "start/0",
  "start/1",
  "start/2",
  "start/3",
  "start/4",
  "numbers",
  "numbers/cap-shroud.port",
  "numbers/forestay",
  "cord/port-cord",
  "rig",
  "papers",
  "papers/bench/cap-shroud.port",
  "text",
  "files",
];
const DIALOGS = { "#menu": "menu", "#findings": "findings" };

export async function violations(page) {
  // Added by the debugger, which the page's policy does not bind.
  await page.evaluate(axe_source);
  const result = await page.evaluate(() =>
    window.axe.run(document, {
      resultTypes: ["violations"],
      iframes: false,
      rules: { "color-contrast-enhanced": { enabled: true } },
    }),
  );
  return result.violations.flatMap((rule) =>
    rule.nodes.slice(0, 3).map((node) => `${rule.id}: ${rule.help}: ${node.html.slice(0, 140)}`),
  );
}
/** Against the width of the screen: a phone makes its page as wide as what is in it. */
export const too_wide = (page) =>
  page.evaluate(
    (width) => (document.documentElement.scrollWidth > width ? [`${document.documentElement.scrollWidth} px wide`] : []),
    page.viewport().width,
  );

export default async function reads({ report, open, first_rig, planted }) {
  for (const size of ["phone", "desktop"])
    for (const look of ["light", "dark"]) {
      const tools = await open({ size, look });
      const { page } = tools;
      await open_files(tools, {
        "first.rig": all_measured(first_rig).replace(
          /reading of cap-shroud\.port \{[^}]*\}/,
          "reading of cap-shroud.port {\n  method: messenger\n  cord: port-cord\n  knots: 1\n}",
        ),
      });
      for (const screen of SCREENS) {
        await go(tools, screen);
        await new Promise((done) => setTimeout(done, screen.startsWith("papers/") ? 500 : 30));
        report.none(`axe-core ${size} ${look} ${screen}`, await violations(page));
        report.none(`width ${size} ${look} ${screen}`, await too_wide(page));
      }
      await go(tools, "numbers/forestay");
      for (const words of ["By the cord", "By tape"]) {
        await tools.tap(words);
        report.none(`axe-core ${size} ${look} ${words}`, await violations(page));
        await tools.tap("Close");
      }
      for (const [button, name] of Object.entries(DIALOGS)) {
        await tools.tap(`css:${button}`);
        report.none(`axe-core ${size} ${look} ${name}`, await violations(page));
        await page.keyboard.press("Escape");
        await tools.settle();
        const back = await page.evaluate(() => document.activeElement?.id);
        report.none(`${size} ${look}: the focus is back on ${button}`, `#${back}` === button ? [] : [String(back)]);
      }
      for (const [digit, view] of [
        ["1", "numbers"],
        ["2", "rig"],
        ["3", "papers"],
        ["4", "text"],
      ]) {
        await page.keyboard.down("Alt");
        await page.keyboard.press(`Digit${digit}`);
        await page.keyboard.up("Alt");
        await tools.settle();
        report.none(
          `${size} ${look}: Alt+${digit} goes to ${view}`,
          await page.evaluate((name) => (location.hash === `#${name}` ? [] : [location.hash]), view),
        );
      }
      await page.focus(".cm-content");
      await page.keyboard.press("Tab");
      report.none(`${size} ${look}: Tab leaves the text`, await page.evaluate(() => (document.activeElement.closest(".cm-editor") ? ["it does not"] : [])));
      report.none(`${size} ${look}: nothing asked for, nothing said`, tools.complaints);
      if (planted && size === "phone" && look === "light") {
        await page.evaluate(() => document.body.append(Object.assign(document.createElement("button"), { id: "planted" })));
        report.caught("a button without a word", await violations(page), /button-name/);
        await page.evaluate(() =>
          Object.assign(document.getElementById("planted").style, { display: "block", width: "2000px", height: "20px" }),
        );
        report.caught("something wider than the screen", await too_wide(page), /wide/);
      }
      await tools.close();
    }
}
