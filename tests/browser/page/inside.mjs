// A compiler inside the page: in a worker, made of what is inlined, under the policy of the page. What answers here only says what
// it was asked; whether the real one answers as the native one does is looked at with `--core`.

import { mkdtempSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { go, text_of } from "./tools.mjs";

/** A module that holds nothing but so many bytes under a name: its head, then one section for whoever reads it. */
const HELD = 70_000;
const leb = (value) => (value < 128 ? [value] : [(value & 127) | 128, ...leb(value >> 7)]);
const NAME = [...Buffer.from("bytes")];
const BINARY = Buffer.from([
  ...[0x00, 0x61, 0x73, 0x6d, 0x01, 0x00, 0x00, 0x00],
  ...[0x00, ...leb(1 + NAME.length + HELD), NAME.length, ...NAME, ...Array(HELD).fill(1)],
]).toString("base64");
const STANDS_IN = `
var wasmBinaryFile = "data:application/octet-stream;base64,${BINARY}";
var SheerpoleCore = async function (options) {
  const texts = new Map();
  const [held] = WebAssembly.Module.customSections(await options.wasmModule, "bytes");
  return {
    put: (name, bytes) => void texts.set(name, bytes.length),
    drop: (name) => void texts.delete(name),
    ask: (request) => {
      const asked = JSON.parse(request);
      if (asked.ask === "starts") return JSON.stringify({ version: 1, answers: "starts", answer: [{ rig: "cutter", title: "Cutter of a worker, " + held.byteLength }] });
      return JSON.stringify({ version: 1, answers: "error", message: "not here" });
    },
  };
};`;

export default async function inside({ report, open, build }) {
  const folder = mkdtempSync(path.join(os.tmpdir(), "sheerpole-core-"));
  writeFileSync(path.join(folder, "sheerpole-core.js"), STANDS_IN);
  const tools = await open({ size: "phone", file: build("inside.html", "--core", folder), inside: true });
  await go(tools, "start/1");
  const tile = await text_of(tools.page, ".tile");
  report.none("the worker was started and asked, with all its bytes", tile.includes(`Cutter of a worker, ${HELD}`) ? [] : [tile]);
  await go(tools, "start/4");
  await tools.tap("Make the list of stays");
  report.none(
    "what it refuses is told",
    /not here/.test(await text_of(tools.page, "dialog[open]")) ? [] : [await text_of(tools.page, "dialog[open]")],
  );
  report.none("nothing asked for, nothing said", tools.complaints);
  await tools.close();
}
