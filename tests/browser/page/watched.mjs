// The page as `sheerpole watch` serves it: what is saved in the folder shows, what is changed in the page is written, and nothing is
// written over somebody else's change.

import { spawn } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { go, text_of, two_stays } from "./tools.mjs";

const library = 'language 1\n\nwire wire-6 "Wire 6 mm" {\n  construction: "1x19"\n  size: "6 mm"\n  diameter: 6 mm measured\n}\n';
const boat = two_stays.replace(/wire wire-6[^}]*}\n/, "").replace("language 1\n", 'language 1\nuse "parts/lines.rig"\n');

/** The program, and the address that it prints. */
function watching(program, folder, page) {
  const child = spawn(program, ["watch", path.join(folder, "two.rig"), "--page", page]);
  const address = new Promise((done, failed) => {
    let said = "";
    child.stdout.on("data", (piece) => {
      said += piece;
      const found = /^(http:\/\/127\.0\.0\.1:\d+\/[0-9a-f]{64}\/)\n/.exec(said);
      if (found) done(found[1]);
    });
    child.on("exit", () => failed(new Error(`no address: ${said}`)));
  });
  const ended = new Promise((done) => child.on("exit", (code) => done(code)));
  return { address, end: () => (child.kill("SIGINT"), ended) };
}

export default async function watched({ report, open, program, page_file }) {
  const folder = mkdtempSync(path.join(os.tmpdir(), "sheerpole-watched-"));
  mkdirSync(path.join(folder, "parts"));
  const file = (name) => path.join(folder, name);
  const read = (name) => readFileSync(file(name), "utf8");
  const write = (name, text) => writeFileSync(file(name), text);
  write("two.rig", boat);
  write("other.rig", two_stays.replace("Two stays", "Another boat"));
  write("parts/lines.rig", library);

  const server = watching(program, folder, page_file);
  const tools = await open({ size: "desktop", url: await server.address });
  const { page } = tools;
  /** Waits until something holds, here or in the folder. */
  const until = async (holds, tries = 100) => {
    for (let i = 0; i < tries; ++i) {
      if (await holds()) return true;
      await new Promise((done) => setTimeout(done, 100));
    }
    return false;
  };
  const bar = () => text_of(page, ".bar .who");
  const shown = () => page.$eval(".cm-content", (each) => each.innerText);
  const banner = async () => ((await page.$(".banner")) ? text_of(page, ".banner") : "");
  const type_at_end = async (words) => {
    await page.focus(".cm-content");
    await page.keyboard.down("Control");
    await page.keyboard.press("End");
    await page.keyboard.up("Control");
    await page.keyboard.type(words);
  };

  report.none("the boat that was named is open", /Two stays 0 of 3 ready/.test(await bar()) ? [] : [await bar()]);
  write("two.rig", boat.replace('"Two stays"', '"Two stays, renamed"'));
  report.none("what is saved in the folder shows", (await until(async () => /renamed/.test(await bar()))) ? [] : [await bar()]);
  await go(tools, "text");
  write("parts/lines.rig", library.replace("6 mm measured", "7 mm measured"));
  await until(async () => /lines\.rig was changed/.test((await page.$(".toast")) ? await text_of(page, ".toast") : ""));
  await page.select(".files select", "parts/lines.rig");
  await tools.settle();
  report.none("a library too", (await until(async () => /7 mm measured/.test(await shown()))) ? [] : [await shown()]);
  await page.select(".files select", "two.rig");
  await tools.settle();

  await type_at_end("# from the page\n");
  report.none("what is typed is written", (await until(() => read("two.rig").endsWith("# from the page\n"))) ? [] : [read("two.rig").slice(-80)]);
  report.none("and nothing else of it", read("two.rig") === `${boat.replace('"Two stays"', '"Two stays, renamed"')}# from the page\n` ? [] : [read("two.rig")]);
  report.none("the other files stay", read("other.rig") === two_stays.replace("Two stays", "Another boat") ? [] : ["they do not"]);
  await tools.tap("css:#menu");
  await tools.tap("Go back");
  report.none("going back is written as well", (await until(() => !read("two.rig").includes("from the page"))) ? [] : ["it is not"]);
  await tools.tap("Close");

  // Both at once.
  await type_at_end("# mine\n");
  write("two.rig", `${boat}# theirs\n`);
  report.none("a change of both is told", (await until(async () => /two\.rig was changed in the folder/.test(await banner()))) ? [] : [await banner()]);
  await new Promise((done) => setTimeout(done, 900));
  report.none("and nothing is written over", read("two.rig") === `${boat}# theirs\n` ? [] : [read("two.rig").slice(-60)]);
  if (process.env.PICTURES) await page.screenshot({ path: path.join(process.env.PICTURES, "watched-clash.png") });
  await tools.tap("Take the file");
  report.none("the file's text can be taken", (await until(async () => /# theirs/.test(await shown()) && !/# mine/.test(await shown()))) ? [] : ["it is not"]);
  report.none("and is not written anew", read("two.rig") === `${boat}# theirs\n` ? [] : ["it is"]);
  await type_at_end("# mine again\n");
  write("two.rig", `${boat}# theirs again\n`);
  await until(async () => /two\.rig was changed in the folder/.test(await banner()));
  await tools.tap("Keep mine");
  report.none("one's own too", (await until(() => read("two.rig") === `${boat}# theirs\n# mine again\n`)) ? [] : [read("two.rig").slice(-80)]);
  report.none("then nothing is to be said", (await until(async () => (await banner()) === "")) ? [] : [await banner()]);

  // Files that come and go, as some editors save.
  write("parts/more.rig", "language 1\n");
  await go(tools, "files");
  report.none("a file that comes is shown", (await until(async () => /parts\/more\.rig/.test(await page.$eval(".pane.L", (each) => each.innerText)))) ? [] : ["it is not"]);
  rmSync(file("parts/more.rig"));
  report.none("one that goes is not", (await until(async () => !/parts\/more\.rig/.test(await page.$eval(".pane.L", (each) => each.innerText)))) ? [] : ["it is"]);
  const before = read("two.rig");
  rmSync(file("two.rig"));
  report.none("the boat herself stays", (await until(async () => /two\.rig is gone/.test(await banner()))) ? [] : [await banner()]);
  write("two.rig", before);
  report.none("and is well when she is there again", (await until(async () => (await banner()) === "")) ? [] : [await banner()]);

  await tools.tap("css:#menu");
  await tools.tap("Boats of the folder");
  await tools.tap("Another boat");
  report.none("another boat of the folder can be opened", /Another boat/.test(await bar()) ? [] : [await bar()]);
  report.none("the browser keeps nothing of them", (await page.evaluate(() => Object.keys(localStorage).filter((key) => key.startsWith("sheerpole.boat")))).map(String));

  report.none("nothing asked for, nothing said", tools.complaints);
  report.none("ends when it is told to", (await server.end()) === 0 ? [] : ["with another code than 0"]);
  report.none("the page says that nobody serves it", (await until(async () => /sheerpole watch has ended/.test(await banner()))) ? [] : [await banner()]);
  await tools.close();
  rmSync(folder, { recursive: true });
}
