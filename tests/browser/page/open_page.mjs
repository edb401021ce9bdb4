// A page in Chromium with a compiler beside it: of a phone's size or a desktop's, watched for every request and every word on
// the console.

import { pathToFileURL } from "node:url";
import puppeteer from "puppeteer-core";
import { Bridge } from "./bridge.mjs";

export const SIZES = {
  phone: { width: 360, height: 740, isMobile: true, hasTouch: true, deviceScaleFactor: 1 },
  desktop: { width: 1280, height: 800, isMobile: false, hasTouch: false, deviceScaleFactor: 1 },
};

export const launch = () =>
  puppeteer.launch({
    executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
    args: ["--headless=new", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--no-first-run"],
    timeout: 120_000,
    protocolTimeout: 120_000,
  });

/**
 * @param {import("puppeteer-core").Browser} browser
 * @param {{file: string, program: string, docs: string, size: keyof typeof SIZES, look?: "light" | "dark", keep?: any}} how
 *   keep: a context to open it in once more, with what the browser keeps; url: the page as somebody serves it, in the place of
 *   the file
 */
export async function open_page(browser, { file, program, docs, size, look = "light", keep, inside = false, url = pathToFileURL(file).href }) {
  const context = keep ?? (await browser.createBrowserContext());
  const page = await context.newPage();
  const complaints = [];
  // Nothing is put beside a page that has its compiler inside.
  const bridge = inside ? null : new Bridge(program, docs);
  await bridge?.start();
  await page.setViewport(SIZES[size]);
  await page.emulateMediaFeatures([
    { name: "prefers-color-scheme", value: look },
    { name: "prefers-reduced-motion", value: "reduce" },
  ]);
  if (bridge) await page.exposeFunction("sheerpole_bridge", (...values) => bridge.call(...values));
  const session = await page.createCDPSession();
  await session.send("Network.enable");
  session.on("Network.requestWillBeSent", ({ request }) => {
    const asked = request.url.split("#")[0];
    const is_its_server = url.startsWith("http:") && asked.startsWith(url);
    if (asked !== url && !is_its_server && !/^(data|blob|about):/.test(asked)) complaints.push(`asks for ${request.url.slice(0, 200)}`);
  });
  page.on("console", (message) => ["error", "warn"].includes(message.type()) && complaints.push(`console: ${message.text()}`));
  page.on("pageerror", (fault) => complaints.push(`script: ${fault.message}`));
  await page.goto(url);
  await page.waitForSelector("html[data-started]");
  const tools = {
    page,
    context,
    complaints,
    taps: 0,
    /** Waits until the compiler has answered and all is drawn. */
    async settle() {
      await page.waitForFunction(() => !document.body.dataset.busy, { polling: 30 });
      await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
    },
    /** Taps what has these words, or what a selector finds; with the finger where there is one. */
    async tap(what) {
      const handle = await tools.find(what);
      await handle.evaluate((element) => element.scrollIntoView({ block: "center" }));
      await (SIZES[size].hasTouch ? handle.tap() : handle.click());
      ++tools.taps;
      await tools.settle();
    },
    async find(what) {
      if (what.startsWith("css:")) return page.waitForSelector(what.slice(4), { visible: true, timeout: 8000 });
      const found = await page.waitForFunction(
        (words) => {
          const top = document.querySelector("dialog[open]") ?? document;
          const shown = (each) => each.checkVisibility() && !each.disabled;
          const all = [...top.querySelectorAll("button")].filter(shown);
          const text = (each) => each.innerText.replace(/\s+/g, " ").trim();
          return (
            all.find((each) => text(each) === words) ??
            all.find((each) => text(each).startsWith(words)) ??
            all.find((each) => text(each).includes(words))
          );
        },
        { timeout: 8000 },
        what,
      );
      return found.asElement();
    },
    async close() {
      bridge?.close();
      await page.close();
    },
  };
  await tools.settle();
  return tools;
}
