// The WebAssembly, as a page loads it: the file is its own module, without a second one beside it.

import { createRequire } from "node:module";
import fs from "node:fs";
import path from "node:path";

export class Core {
  constructor(made) {
    this.made = made;
    this.names = new Set();
  }

  static async load(file) {
    return new Core(await createRequire(import.meta.url)(file)());
  }

  put(name, bytes) {
    this.made.put(name, bytes);
    this.names.add(name);
  }

  /** Takes every text away. */
  clear() {
    for (const name of this.names) this.made.drop(name);
    this.names.clear();
  }

  /** A request of version 1; the whole answer. */
  ask(request) {
    return JSON.parse(this.made.ask(JSON.stringify({ version: 1, ...request })));
  }

  /** Puts all rig files below a folder, and the photographs that they name, by `prefix` and their paths from there. */
  put_folder(folder, prefix = "") {
    for (const each of fs.readdirSync(folder, { withFileTypes: true, recursive: true })) {
      if (!each.isFile() || !/\.(rig|jpe?g|png)$/.test(each.name)) continue;
      const file = path.join(each.parentPath ?? each.path, each.name);
      this.put(prefix + path.relative(folder, file), fs.readFileSync(file));
    }
  }
}
