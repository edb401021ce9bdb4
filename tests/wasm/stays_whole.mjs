// What may come from a stranger: the core answers and is of use afterwards. And what its file may not hold.

import fs from "node:fs";
import path from "node:path";
import { Core } from "./core.mjs";

/** Texts that are hostile by depth, by length or by their bytes. */
function* hostile(project) {
  const limits = path.join(project, "tests/golden/limits");
  for (const name of fs.readdirSync(limits)) if (name.endsWith(".rig")) yield [name, fs.readFileSync(path.join(limits, name))];
  yield ["parentheses", Buffer.from("language 1\nlet a = " + "(".repeat(200_000) + "1 mm" + ")".repeat(200_000) + "\n")];
  yield ["signs", Buffer.from("language 1\nlet a = " + "-".repeat(100_000) + "1 mm\n")];
  yield ["braces", Buffer.from("language 1\n" + "stay a {\n".repeat(50_000))];
  yield ["no UTF-8", Buffer.from([0xff, 0xfe, 0x00, 0x80])];
  yield ["nothing", Buffer.alloc(0)];
  yield ["5 MB", Buffer.alloc(5_000_000, "# a comment\n")];
  yield ["chain", Buffer.from("language 1\nlet a0 = 1 mm\n" + Array.from({ length: 5_000 }, (_, i) => `let a${i + 1} = a${i} + 1 mm\n`).join(""))];
}

export async function stays_whole({ core_file, project, none }) {
  const core = await Core.load(core_file);
  const small = "language 1\nlet a = 1 mm\n";
  const faults = [];
  for (const [name, bytes] of hostile(project)) {
    core.put("hostile.rig", bytes);
    for (const ask of ["findings", "tokens", "papers"])
      try {
        const answered = core.ask({ ask, boat: "hostile.rig" });
        // A file that cannot be read has findings and no tokens.
        if (answered.answers !== ask && answered.answers !== "error") faults.push(`${name}: ${JSON.stringify(answered).slice(0, 200)}`);
      } catch (fault) {
        faults.push(`${name}: ${fault.message}`);
      }
  }
  core.put("small.rig", small);
  if (core.ask({ ask: "findings", boat: "small.rig" }).answer.calculated !== true) faults.push("afterwards: no answer");
  none("hostile texts", faults);

  // A page that forbids both has no use for a file that needs them.
  const text = fs.readFileSync(core_file, "utf8");
  none(
    "words in the file",
    ["eval(", "new Function(", project].filter((word) => text.includes(word)).map((word) => `${word} is in it`),
  );
}
