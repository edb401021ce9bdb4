// One browser for all tests. Every page that is opened is watched: it may ask for nothing but itself, say nothing on the
// console and open no dialog.

import { pathToFileURL } from "node:url";
import puppeteer from "puppeteer-core";

export class Browser {
  #started;
  #page;
  #url = "";
  #complaints = [];

  #start() {
    this.#started ??= puppeteer.launch({
      executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
      args: ["--headless=new", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--no-first-run"],
      // Starting beside other work on a slow machine takes a while too.
      timeout: 120_000,
      // A job of the paper's size takes a while under a sanitizer on a slow machine.
      protocolTimeout: 120_000,
    });
    return this.#started;
  }

  /** The one page, and what it has done since it was last asked to open a file. */
  async #opened() {
    if (this.#page) return this.#page;
    const page = await (await this.#start()).newPage();
    await page.setRequestInterception(true);
    page.on("request", (request) => {
      if (request.url().split("#")[0] === this.#url) {
        request.continue();
      } else {
        this.#complaints.push(`asks for ${request.url().slice(0, 200)}`);
        request.abort();
      }
    });
    page.on("dialog", async (dialog) => {
      this.#complaints.push(`opens a dialog: ${dialog.message()}`);
      await dialog.dismiss();
    });
    page.on("console", (message) => this.#complaints.push(`console: ${message.text()}`));
    page.on("pageerror", (fault) => this.#complaints.push(`script: ${fault.message}`));
    page.on("popup", () => this.#complaints.push("opens a window"));
    this.#page = page;
    return page;
  }

  /**
   * Opens a file and calls look(page). @returns {{result: any, complaints: string[]}}
   * @param {{scripts?: boolean}} options scripts off: what a reader sees who forbids them
   */
  async visit(file, look, options = {}) {
    const page = await this.#opened();
    await page.setJavaScriptEnabled(options.scripts ?? true);
    this.#url = pathToFileURL(file).href;
    this.#complaints = [];
    await page.goto(this.#url, { waitUntil: "load" });
    const result = await look(page);
    return { result, complaints: this.#complaints };
  }

  async close() {
    if (this.#started) await (await this.#started).close();
  }
}
