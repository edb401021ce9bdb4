// node tests/editor/random_edits.mjs SHEERPOLE [EDITS [SEED]]: a client of the language server protocol that is not ours makes
// changes by chance, with signs of several bytes, in a boat and her library. The server's texts have to be the client's all along,
// and what it finds has to be what a check of the same files finds. The last line is "N passed, N failed".

import { execFileSync, spawn } from "node:child_process";
import { mkdtempSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import rpc from "vscode-jsonrpc/node.js";
import lsp from "vscode-languageserver-protocol";
import { TextDocument } from "vscode-languageserver-textdocument";

const here = path.dirname(fileURLToPath(import.meta.url));
const [program, edits_asked = "10000", seed_asked = "1"] = process.argv.slice(2);
if (program === undefined) {
  console.error("usage: node tests/editor/random_edits.mjs SHEERPOLE [EDITS [SEED]]");
  process.exit(2);
}
const edits_wanted = Number(edits_asked);
const in_one_go = 40;
const compared_every = 1000;

// A linear congruence (Knuth, The Art of Computer Programming, volume 2, 3.3.4, as MMIX has it): the same chance each time.
let state = BigInt(seed_asked);
const chance = (below) => {
  state = (state * 6364136223846793005n + 1442695040888963407n) & 0xffffffffffffffffn;
  return Number((state >> 33n) % BigInt(below));
};
const pick = (list) => list[chance(list.length)];

let passed = 0;
let failed = 0;
const check = (name, good, seen) => {
  if (good) passed += 1;
  else {
    failed += 1;
    console.log(`FAIL ${name}: ${typeof seen === "string" ? seen : JSON.stringify(seen, null, 1)}`);
  }
};

const folder = mkdtempSync(path.join(tmpdir(), "sheerpole-edits-"));
mkdirSync(path.join(folder, "parts"));
const names = ["boat.rig", "parts/demo-parts.rig"];
const originals = names.map((name) => readFileSync(path.join(here, "boats", name), "utf8"));
const uris = names.map((name) => pathToFileURL(path.join(folder, name)).href);
let documents = uris.map((uri, i) => TextDocument.create(uri, "rig", 1, originals[i]));

const server = spawn(path.resolve(program), ["editor"], { stdio: ["pipe", "pipe", "inherit"] });
const connection = rpc.createMessageConnection(
  new rpc.StreamMessageReader(server.stdout),
  new rpc.StreamMessageWriter(server.stdin),
);
const published = new Map();
let told = () => {};
connection.onNotification(lsp.PublishDiagnosticsNotification.method, (params) => {
  published.set(params.uri, params);
  told();
});
let complaints = 0;
connection.onNotification(lsp.LogMessageNotification.method, () => {
  complaints += 1;
});
connection.listen();

const words = ["Ü", "é", "€", "🚢", "⛵", "ﬁ", "\u0301", "\u200d", "a", " ", "\n", "\r\n", "\t", "{", "}", "(", ")", ":", ",", ">", '"',
  "#", "12 mm", "1/2 in", "toggle-12", "stay x {\n}\n", "let a = 1 m\n", "§", "\u2028", "—", "'", "12' 3\"", "use", ";", "\uFEFF"];

/** A place of the text, never between the two halves of a sign; now and then far beyond an end. */
const some_place = (document) => {
  if (chance(50) === 0) return { line: chance(3) === 0 ? 100000 : chance(document.lineCount), character: 100000 };
  let at = chance(document.getText().length + 1);
  const before = document.getText().charCodeAt(at - 1);
  if (before >= 0xd800 && before < 0xdc00) at -= 1;
  return document.positionAt(at);
};

const some_change = (document, original) => {
  const sort = chance(100);
  if (sort === 0) return { text: original };
  if (sort === 1)
    return {
      range: { start: { line: 0, character: 0 }, end: document.positionAt(document.getText().length) },
      text: original,
    };
  const start = some_place(document);
  let end = start;
  if (chance(3) === 0) {
    const far = document.offsetAt(start) + chance(12);
    const behind = document.getText().charCodeAt(far - 1);
    end = document.positionAt(behind >= 0xd800 && behind < 0xdc00 ? far + 1 : far);
  }
  let text = "";
  for (let i = chance(3); i >= 0 && chance(4) > 0; i -= 1) text += pick(words);
  return { range: { start, end }, text };
};

/** Waits until the server has spoken of this state of the document. */
const settled = async (i) => {
  const version = documents[i].version;
  while (published.get(uris[i])?.version !== version)
    await new Promise((resolve) => {
      told = resolve;
    });
};

const sort_key = (finding) => JSON.stringify(finding);

/** What a check of the files as they are now says, in the way of the protocol. */
const cold = (all) => {
  all.forEach((document, i) => writeFileSync(path.join(folder, names[i]), document.getText()));
  let output;
  try {
    output = execFileSync(path.resolve(program), ["check", "--form", "json", path.join(folder, names[0])], {
      encoding: "utf8",
      stdio: ["ignore", "pipe", "ignore"],
      maxBuffer: 1 << 26,
    });
  } catch (fault) {
    output = fault.stdout;
  }
  const result = new Map(uris.map((uri) => [uri, []]));
  const severity = { error: 1, warning: 2, note: 3 };
  for (const finding of JSON.parse(output).findings) {
    const i = finding.place === null ? 0 : names.findIndex((name) => finding.place.file === path.join(folder, name));
    const bytes = Buffer.from(all[i].getText(), "utf8");
    // The offsets of a finding are those behind a byte order mark.
    const mark = bytes.subarray(0, 3).equals(Buffer.from([0xef, 0xbb, 0xbf])) ? 3 : 0;
    const place = (byte) => all[i].positionAt(bytes.subarray(0, byte + mark).toString("utf8").length);
    const zero = { line: 0, character: 0 };
    result.get(uris[i]).push({
      range:
        finding.place === null
          ? { start: zero, end: zero }
          : { start: place(finding.place.offset), end: place(finding.place.end_offset) },
      severity: severity[finding.severity],
      code: finding.slug,
      message: finding.message + (finding.why === "" ? "" : `\n${finding.why}`),
    });
  }
  return result;
};

const as_found = (params) =>
  (params?.diagnostics ?? []).map(({ range, severity, code, message }) => ({ range, severity, code, message }));

let compared = 0;
const compare = async (made) => {
  for (const i of [0, 1]) await settled(i);
  for (const i of [0, 1]) {
    const { text } = await connection.sendRequest("sheerpole/text", { textDocument: { uri: uris[i] } });
    check(`text of ${names[i]} after ${made} edits`, text === documents[i].getText(), { server: text, client: documents[i].getText() });
  }
  const wanted = cold(documents);
  // A library that the boat does not reach any more stands alone, of which a check of the boat knows nothing.
  const reached = /^use "parts\/demo-parts\.rig"/m.test(documents[0].getText());
  for (const i of reached ? [0, 1] : [0]) {
    const found = as_found(published.get(uris[i])).map(sort_key).sort();
    compared += found.length;
    const asked = [...new Set(wanted.get(uris[i]).map(sort_key))].sort();
    check(`findings of ${names[i]} after ${made} edits`, JSON.stringify(found) === JSON.stringify(asked), { found, asked });
  }
};

const requests = [
  ["textDocument/completion", (position) => ({ position })],
  ["textDocument/hover", (position) => ({ position })],
  ["textDocument/definition", (position) => ({ position })],
  ["textDocument/references", (position) => ({ position, context: { includeDeclaration: true } })],
  ["textDocument/prepareRename", (position) => ({ position })],
  ["textDocument/documentSymbol", () => ({})],
  ["textDocument/foldingRange", () => ({})],
  ["textDocument/semanticTokens/full", () => ({})],
  ["textDocument/formatting", () => ({ options: { tabSize: 2, insertSpaces: true } })],
  ["textDocument/inlayHint", (position) => ({ range: { start: { line: 0, character: 0 }, end: position } })],
  ["textDocument/codeAction", (position) => ({ range: { start: position, end: position }, context: { diagnostics: [] } })],
];

try {
  const started = await connection.sendRequest(lsp.InitializeRequest.method, {
    processId: process.pid,
    rootUri: pathToFileURL(folder).href,
    capabilities: { textDocument: { publishDiagnostics: { relatedInformation: true } } },
  });
  check("places are counted in UTF-16", started.capabilities.positionEncoding === "utf-16", started);
  await connection.sendNotification(lsp.InitializedNotification.method, {});
  for (const document of documents)
    await connection.sendNotification(lsp.DidOpenTextDocumentNotification.method, {
      textDocument: { uri: document.uri, languageId: "rig", version: 1, text: document.getText() },
    });
  let made = 0;
  let next = compared_every;
  let version = 1;
  while (made < edits_wanted) {
    for (let n = 0; n < in_one_go; n += 1) {
      const i = chance(3) === 0 ? 1 : 0;
      const changes = [];
      for (let many = chance(4) === 0 ? 3 : 1; many > 0; many -= 1) {
        const change = some_change(documents[i], originals[i]);
        version += 1;
        documents[i] = TextDocument.update(documents[i], [change], version);
        changes.push(change);
        made += 1;
      }
      await connection.sendNotification(lsp.DidChangeTextDocumentNotification.method, {
        textDocument: { uri: uris[i], version },
        contentChanges: changes,
      });
    }
    const [method, params] = pick(requests);
    const i = chance(2);
    await connection.sendRequest(method, { textDocument: { uri: uris[i] }, ...params(some_place(documents[i])) });
    if (made >= next) {
      await compare(made);
      next += compared_every;
    }
  }
  // At last the texts as they were: all findings of the wild ones are gone again.
  for (const i of [0, 1]) {
    version += 1;
    documents[i] = TextDocument.update(documents[i], [{ text: originals[i] }], version);
    await connection.sendNotification(lsp.DidChangeTextDocumentNotification.method, {
      textDocument: { uri: uris[i], version },
      contentChanges: [{ text: originals[i] }],
    });
  }
  await compare(made);
  check("findings were compared", compared > made / 1000, compared);
  check("nothing was complained of", complaints === 0, complaints);
  await connection.sendRequest(lsp.ShutdownRequest.method);
  await connection.sendNotification(lsp.ExitNotification.method);
  const code = await new Promise((resolve) => server.on("exit", resolve));
  check("it leaves well", code === 0, code);
} catch (fault) {
  check("all edits were made", false, fault.stack ?? String(fault));
} finally {
  connection.dispose();
  server.kill();
  rmSync(folder, { recursive: true, force: true });
}
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 && passed > 0 ? 0 : 1;
