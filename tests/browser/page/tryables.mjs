// Every number that the slider offers can be set for a trial, in every boat of the examples: asked of the compiler itself.

import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { tryables as all_tryables } from "../../../compiler/page/source/state/trial.js";
import { Bridge } from "./bridge.mjs";

/** Of so many numbers one is tried, so that it stays short. */
const ONE_IN = Number(process.env.ONE_IN ?? 7);
/** What a check may say of the value itself, or of a stay that is made up anew by a file on top. */
const SAID_OF_THE_VALUE = ["size-far-off", "change-not-in-stack"];

export default async function tryables({ report, program, project }) {
  const bridge = new Bridge(program, path.join(project, "docs/begin"));
  await bridge.start();
  const ask = async (request) => JSON.parse(await bridge.call("ask", JSON.stringify({ version: 1, ...request }))).answer;
  const examples = path.join(project, "examples");
  const put = async (folder) => {
    for (const name of readdirSync(path.join(examples, folder)).filter((each) => each.endsWith(".rig")))
      await bridge.call("put", path.join(folder, name), readFileSync(path.join(examples, folder, name)).toString("base64"));
  };
  for (const folder of ["", "parts", "stock"]) await put(folder);
  let offered = 0;
  for (const boat of readdirSync(examples).filter((name) => name.endsWith(".rig"))) {
    const answers = { numbers: await ask({ ask: "numbers", boat }), declarations: await ask({ ask: "declarations", boat }) };
    const refused = [];
    for (const each of all_tryables(answers).filter((_, nth) => nth % ONE_IN === 0)) {
      ++offered;
      const setting = each.setting((each.base ?? 0) + each.step);
      const trial = await ask({ ask: "set", boat, settings: [setting] });
      // An error of a check is an answer; one that says that the setting itself cannot be read or bound is none.
      const errors = trial.findings.files
        .flatMap((file) => file.findings)
        .filter((one) => one.severity === "error" && one.place?.file === "command line");
      const unread = errors.filter(
        (one) => !/range|least|most|between/.test(one.message) && !SAID_OF_THE_VALUE.includes(one.finding),
      );
      if (unread.length) refused.push(`${setting}: ${unread[0].finding}: ${unread[0].message}`);
    }
    report.none(`what can be tried of ${boat}`, refused);
  }
  report.none("there is something to try", offered > 100 ? [] : [`${offered} numbers`]);
  bridge.close();
}
