// The compiler beside a page that was built without one: the native `sheerpole editor` answers what the page asks. `begin` and
// `starts` are answered by `sheerpole begin` and the pages of docs/begin where the service does not know them.

import { execFileSync, spawn } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";

/** The native language server, spoken to in JSON-RPC. */
class LanguageServer {
  #process;
  #unread = Buffer.alloc(0);
  #waiting = new Map();
  #count = 0;

  constructor(program) {
    this.#process = spawn(program, ["editor"], { stdio: ["pipe", "pipe", "inherit"] });
    this.#process.stdout.on("data", (bytes) => this.#take(bytes));
  }
  #take(bytes) {
    this.#unread = Buffer.concat([this.#unread, bytes]);
    for (;;) {
      const head = this.#unread.indexOf("\r\n\r\n");
      if (head < 0) return;
      const length = Number(/Content-Length: (\d+)/.exec(this.#unread.subarray(0, head).toString())[1]);
      if (this.#unread.length < head + 4 + length) return;
      const message = JSON.parse(this.#unread.subarray(head + 4, head + 4 + length).toString("utf8"));
      this.#unread = this.#unread.subarray(head + 4 + length);
      if (message.id !== undefined && this.#waiting.has(message.id)) {
        this.#waiting.get(message.id)(message);
        this.#waiting.delete(message.id);
      }
    }
  }
  #send(message) {
    const content = Buffer.from(JSON.stringify({ jsonrpc: "2.0", ...message }));
    this.#process.stdin.write(Buffer.concat([Buffer.from(`Content-Length: ${content.length}\r\n\r\n`), content]));
  }
  tell(method, params) {
    this.#send({ method, params });
  }
  async ask(method, params) {
    const id = ++this.#count;
    const answered = new Promise((done) => this.#waiting.set(id, done));
    this.#send({ id, method, params });
    const message = await answered;
    if (message.error) throw new Error(message.error.message);
    return message.result;
  }
  close() {
    this.#process.kill();
  }
}

/** The kinds of rig, with the numbers of their example, out of docs/begin. */
function starts_of(docs) {
  return readdirSync(docs)
    .filter((name) => name.endsWith(".md") && name !== "README.md")
    .sort()
    .map((name) => {
      const page = readFileSync(path.join(docs, name), "utf8");
      const command = /sheerpole begin my-boat\.rig --rig \S+(.*)/.exec(page)?.[1] ?? "";
      return {
        rig: name.replace(/\.md$/, ""),
        title: /^# (.*)/m.exec(page)[1],
        numbers: [...command.matchAll(/(--[a-z-]+) "([^"]*)"/g)].flatMap((found) => [found[1], found[2]]),
      };
    });
}

/** Where texts lie, for the language server; nothing is ever read from there. */
const FOLDER = "/nowhere/of-a-page/";

export class Bridge {
  #server;
  #program;
  #starts;
  #versions = new Map();

  constructor(program, docs) {
    this.#program = program;
    this.#server = new LanguageServer(program);
    this.#starts = starts_of(docs);
  }
  async start() {
    await this.#server.ask("initialize", { capabilities: {}, rootUri: null, processId: null });
    this.#server.tell("initialized", {});
  }

  #put(name, bytes) {
    const uri = pathToFileURL(FOLDER + name).href;
    const text = bytes.toString("utf8");
    const version = (this.#versions.get(name) ?? 0) + 1;
    this.#versions.set(name, version);
    if (version === 1) this.#server.tell("textDocument/didOpen", { textDocument: { uri, languageId: "rig", version, text } });
    else this.#server.tell("textDocument/didChange", { textDocument: { uri, version }, contentChanges: [{ text }] });
  }
  #drop(name) {
    this.#versions.delete(name);
    this.#server.tell("textDocument/didClose", { textDocument: { uri: pathToFileURL(FOLDER + name).href } });
  }
  #begin({ rig, line, measured, name }) {
    const folder = mkdtempSync(path.join(os.tmpdir(), "begin-"));
    try {
      const file = path.join(folder, "boat.rig");
      const { numbers } = this.#starts.find((each) => each.rig === rig);
      execFileSync(
        this.#program,
        ["begin", file, "--rig", rig, "--line", line, "--measured-by", measured, "--boat", name, ...numbers],
        { stdio: "pipe" },
      );
      return { version: 1, answers: "begin", file: "boat.rig", text: readFileSync(file, "utf8") };
    } finally {
      rmSync(folder, { recursive: true });
    }
  }
  async #ask(request) {
    if (request.ask === "starts")
      return { version: 1, answers: "starts", answer: this.#starts.map(({ rig, title }) => ({ rig, title })) };
    if (request.ask === "begin") return this.#begin(request);
    const there = { ...request, boat: FOLDER + request.boat, ...(request.file ? { file: FOLDER + request.file } : {}) };
    const answered = await this.#server.ask("sheerpole/ask", there);
    return JSON.parse(JSON.stringify(answered).replaceAll(FOLDER, ""));
  }

  /** What the page calls: put, drop or ask. @returns {Promise<string | undefined>} */
  async call(what, value, base64) {
    if (what === "put") this.#put(value, Buffer.from(base64, "base64"));
    else if (what === "drop") this.#drop(value);
    else return JSON.stringify(await this.#ask(JSON.parse(value)));
  }
  close() {
    this.#server.close();
  }
}
