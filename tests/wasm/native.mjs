// The native program: builds, first files and what its language server answers.

import { execFile, spawn } from "node:child_process";
import { promisify } from "node:util";

const run = promisify(execFile);

export class Native {
  constructor(program) {
    this.program = program;
    this.count = 0;
    this.waiting = new Map();
    this.read = Buffer.alloc(0);
  }

  /** What a run prints; a run with findings is none that failed. */
  async output(args, folder) {
    try {
      return (await run(this.program, args, { cwd: folder, maxBuffer: 1 << 28 })).stdout;
    } catch (fault) {
      if (fault.code === 1) return fault.stdout;
      throw fault;
    }
  }

  /** A request of version 1 through `sheerpole editor`; the whole answer. */
  ask(request) {
    if (this.server === undefined) {
      this.server = spawn(this.program, ["editor"], { stdio: ["pipe", "pipe", "inherit"] });
      this.server.stdout.on("data", (bytes) => this.take(bytes));
      this.say("initialize", { capabilities: {} });
    }
    return this.say("sheerpole/ask", { version: 1, ...request });
  }

  say(method, params) {
    this.count += 1;
    const content = Buffer.from(JSON.stringify({ jsonrpc: "2.0", id: this.count, method, params }));
    this.server.stdin.write(`Content-Length: ${content.length}\r\n\r\n`);
    this.server.stdin.write(content);
    return new Promise((resolve) => this.waiting.set(this.count, resolve));
  }

  take(bytes) {
    this.read = Buffer.concat([this.read, bytes]);
    for (;;) {
      const head = this.read.indexOf("\r\n\r\n");
      if (head < 0) return;
      const length = Number(/Content-Length: (\d+)/.exec(this.read.subarray(0, head).toString())[1]);
      if (this.read.length < head + 4 + length) return;
      const message = JSON.parse(this.read.subarray(head + 4, head + 4 + length).toString());
      this.read = this.read.subarray(head + 4 + length);
      this.waiting.get(message.id)?.(message.result);
      this.waiting.delete(message.id);
    }
  }

  close() {
    this.server?.kill();
  }
}
