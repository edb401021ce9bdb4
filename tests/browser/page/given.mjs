// A page that was made for one boat: what a surveyor or a crew opens. From the drawing to the stay to the source of a number, and
// whether she is as she was sealed.

import { execFileSync } from "node:child_process";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { go, kept, text_of } from "./tools.mjs";

const MARKUP = "Second </script><script>alert(1)</script><!-- Wind";

export default async function given({ report, open, program, project, built, page_file }) {
  const folder = path.join(built, "given");
  mkdirSync(folder, { recursive: true });
  const examples = path.join(project, "examples");
  const make = (rig, into, ...more) => {
    execFileSync(program, ["page", rig, "--into", path.join(folder, into), "--page", page_file, ...more], { stdio: "pipe" });
    return path.join(folder, into);
  };

  // The usual papers are many; these two are enough to be made again, and a PDF to be told as one that is not.
  const sealed = path.join(folder, "sealed");
  const only = ["--only", "cut-list,survey-report"];
  const said = execFileSync(program, ["seal", "pellimoor.rig", ...only, "--pdf", "--into", sealed], { cwd: examples, stdio: "pipe" });
  const digits = /^seal ([0-9a-f]{64})$/m.exec(said.toString())[1];
  const page = make(path.join(examples, "pellimoor.rig"), "pellimoor.html", "--seal", sealed);
  report.none(
    "the same boat makes the same bytes",
    readFileSync(page).equals(readFileSync(make(path.join(sealed, "rig/pellimoor.rig"), "again.html", "--seal", sealed)))
      ? []
      : ["it does not"],
  );

  for (const size of ["phone", "desktop"]) {
    const tools = await open({ size, file: page });
    await tools.settle();
    report.none(
      `${size}: opens on the rig`,
      (await tools.page.evaluate(() => location.hash)) === "#rig" && (await tools.page.$(".rigwrap svg")) ? [] : ["it does not"],
    );
    report.none(
      `${size}: with her stays`,
      (await tools.page.$$(".live button")).length === 8 ? [] : [`${(await tools.page.$$(".live button")).length} stays`],
    );
    report.none(
      `${size}: nothing is wider than the screen`,
      await tools.page.evaluate(() =>
        document.scrollingElement.scrollWidth > innerWidth ? [`${document.scrollingElement.scrollWidth} px`] : [],
      ),
    );
    // From the drawing to the stay.
    await tools.tap("css:.rig .bal");
    const selected = await tools.page.$eval(".live button[aria-current=true]", (each) => each.dataset.live);
    // On a wide screen its page is beside the drawing already.
    if (size === "phone") await tools.tap(`css:[data-live="${selected}"]`);
    report.none(
      `${size}: a stay of the drawing leads to its page`,
      (await tools.page.evaluate(() => decodeURIComponent(location.hash))) === `#numbers/${selected}` ? [] : [selected],
    );
    // From a number to where it stands.
    const row = await tools.page.evaluateHandle(() =>
      [...document.querySelectorAll(".lad button")].find((each) => /toggle/i.test(each.innerText)),
    );
    await row.asElement().evaluate((each) => each.scrollIntoView({ block: "center" }));
    await (size === "phone" ? row.asElement().tap() : row.asElement().click());
    await tools.settle();
    const came_to = await tools.page.evaluate(() => decodeURIComponent(location.hash));
    const found = /^#text\/(.*):(\d+)$/.exec(came_to);
    const line = found ? readFileSync(path.join(examples, found[1]), "utf8").split("\n")[found[2] - 1] : came_to;
    report.none(`${size}: a part of a sum leads to the line where its number stands`, /\d+(\.\d+)? mm/.test(line) ? [] : [line]);

    // The seal.
    await go(tools, "rig");
    await tools.page.waitForFunction(() => /as sealed/.test(document.getElementById("seal")?.innerText ?? ""), { timeout: 20_000 });
    await tools.tap("css:#seal");
    const words = await text_of(tools.page, "dialog[open]");
    report.none(
      `${size}: she is as she was sealed, papers made again`,
      [/\b9 files are as sealed/, /papers\/cut-list\.pdf/, /papers\/survey-report\.pdf/, /Not signed/, /Whoever alters this page/]
        .filter((each) => !each.test(words))
        .map((each) => `${each}: ${words.slice(0, 400)}`),
    );
    report.none(`${size}: her seal`, words.includes(digits) ? [] : [words]);
    await tools.page.type("#written-down", `${digits.slice(1)}0`);
    report.none(`${size}: another seal is told`, /It is another/.test(await text_of(tools.page, "dialog[open]")) ? [] : ["it is not"]);
    await tools.page.$eval("#written-down", (each) => (each.value = ""));
    await tools.page.type("#written-down", digits.toUpperCase());
    report.none(
      `${size}: the same one too, in capital letters`,
      /It is the same/.test(await text_of(tools.page, "dialog[open]")) ? [] : ["it is not"],
    );
    if (process.env.PICTURES) await tools.page.screenshot({ path: path.join(process.env.PICTURES, `seal-${size}.png`) });
    await tools.tap("Close");
    if (process.env.PICTURES) await tools.page.screenshot({ path: path.join(process.env.PICTURES, `given-${size}.png`) });

    // What is changed is told, and goes.
    await go(tools, "text");
    await tools.page.focus(".cm-content");
    await tools.page.keyboard.type("# mine\n");
    await tools.settle();
    report.none(
      `${size}: a change is told as one that is not kept`,
      /She is not as this page was made/.test((await tools.page.$(".banner")) ? await text_of(tools.page, ".banner") : "")
        ? []
        : ["it is not"],
    );
    await go(tools, "rig");
    await tools.page.waitForFunction(() => /NOT as sealed/.test(document.getElementById("seal")?.innerText ?? ""), { timeout: 20_000 });
    await tools.tap("css:#seal");
    const altered = await text_of(tools.page, "dialog[open]");
    report.none(
      `${size}: and as one of what was sealed`,
      /Altered (.*)?rig\/[a-z/-]*\.rig/.test(altered) ? [] : [altered.slice(0, 300)],
    );
    report.none(`${size}: the browser keeps nothing of her`, (await kept(tools.page)) === null ? [] : ["it does"]);
    report.none(`${size}: nothing asked for, nothing said`, tools.complaints);
    await tools.close();
    const again = await open({ size, file: page, keep: tools.context });
    report.none(`${size}: loaded anew she is as she was made`, (await again.page.$(".banner")) ? ["she is not"] : []);
    await again.close();
  }

  // A list of sums that says something else: the page tells what is altered, missing and on no list.
  const text = readFileSync(page, "utf8");
  const from = text.indexOf('id="given">') + 11;
  const handed = JSON.parse(text.slice(from, text.indexOf("</script>", from)));
  const lines = handed.seal.sums.split("\n");
  const of = (name) => lines.findIndex((each) => each.endsWith(`  ${name}`));
  lines[of("papers/cut-list.csv")] = `${"0".repeat(64)}  papers/cut-list.csv`;
  lines.splice(of("papers/cut-list.txt"), 1);
  lines.splice(-1, 0, `${"1".repeat(64)}  papers/more.txt`, "no sum");
  handed.seal.sums = lines.join("\n");
  const forged = path.join(folder, "forged.html");
  writeFileSync(forged, text.slice(0, from) + JSON.stringify(handed).replaceAll("<", "\\u003c") + text.slice(text.indexOf("</script>", from)));
  const tools = await open({ size: "phone", file: forged });
  await tools.page.waitForFunction(() => /NOT as sealed/.test(document.getElementById("seal")?.innerText ?? ""), { timeout: 20_000 });
  await tools.tap("css:#seal");
  const words = await text_of(tools.page, "dialog[open]");
  report.none(
    "what is other than the list says is named",
    [/Altered papers\/cut-list\.csv/, /Missing papers\/more\.txt/, /On no list papers\/cut-list\.txt/, /no sum and name no sum/]
      .filter((each) => !each.test(words))
      .map((each) => `${each}: ${words.slice(0, 500)}`),
  );
  await tools.close();

  // Texts that look like markup, and a boat without a seal.
  const nasty = path.join(folder, "nasty.rig");
  writeFileSync(nasty, readFileSync(path.join(examples, "smallest.rig"), "utf8").replace(/^language 1\n/, `language 1\n# ${MARKUP} \u2028\n`));
  const plain = await open({ size: "phone", file: make(nasty, "nasty.html") });
  await go(plain, "text");
  report.none(
    "a text that looks like markup is a text",
    (await plain.page.$eval(".cm-content", (each) => each.innerText)).includes(MARKUP) ? [] : ["it is not"],
  );
  report.none("without a seal nothing is said of one", (await plain.page.$("#seal")) ? ["something is"] : []);
  report.none("nothing asked for, nothing said", plain.complaints);
  await plain.close();
}
