// node tests/editor/textmate.mjs SHEERPOLE: the TextMate grammar, read by vscode-textmate as editors read it, over all rig files of
// the project and over lines whose words are known. The last line is "N passed, N failed".

import { execFileSync } from "node:child_process";
import { createRequire } from "node:module";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { fileURLToPath } from "node:url";
import onig from "vscode-oniguruma";
import textmate from "vscode-textmate";

const here = path.dirname(fileURLToPath(import.meta.url));
const project = path.resolve(here, "../..");
const extension = path.join(project, "docs/editors/textmate");
const [program] = process.argv.slice(2);
if (program === undefined) {
  console.error("usage: node tests/editor/textmate.mjs SHEERPOLE");
  process.exit(2);
}

let passed = 0;
let failed = 0;
const check = (name, good, seen) => {
  if (good) passed += 1;
  else {
    failed += 1;
    console.log(`FAIL ${name}: ${JSON.stringify(seen)}`);
  }
};

const read_json = (name) => JSON.parse(readFileSync(path.join(extension, name), "utf8"));
const manifest = read_json("package.json");
const [contributed] = manifest.contributes.grammars;
const wasm = readFileSync(createRequire(import.meta.url).resolve("vscode-oniguruma/release/onig.wasm"));
await onig.loadWASM(wasm.buffer.slice(wasm.byteOffset, wasm.byteOffset + wasm.byteLength));
const registry = new textmate.Registry({
  onigLib: Promise.resolve({
    createOnigScanner: (patterns) => new onig.OnigScanner(patterns),
    createOnigString: (text) => new onig.OnigString(text),
  }),
  loadGrammar: async (scope) =>
    scope === contributed.scopeName
      ? textmate.parseRawGrammar(readFileSync(path.join(extension, contributed.path), "utf8"), contributed.path)
      : null,
});
const grammar = await registry.loadGrammar(contributed.scopeName);

/** The words of a line with the innermost name of each. */
const words = (line) =>
  grammar
    .tokenizeLine(line, textmate.INITIAL)
    .tokens.map(({ startIndex, endIndex, scopes }) => [line.slice(startIndex, endIndex).trim(), scopes.at(-1)])
    .filter(([word]) => word !== "");

const known = [
  ["language 1", { language: "keyword.control.rig", 1: "constant.numeric.rig" }],
  ['use "parts/a.rig"', { use: "keyword.control.import.rig", '"parts/a.rig"': "string.quoted.double.rig" }],
  ["let drop = 12 mm drawn", { let: "storage.type.let.rig", drop: "variable.other.rig", 12: "constant.numeric.rig",
    mm: "keyword.other.unit.rig", drawn: "storage.modifier.source.rig" }],
  ['stay cap-shroud.port "Cap" {', { stay: "storage.type.kind.rig", "cap-shroud": "entity.name.type.rig",
    '"Cap"': "string.quoted.double.rig" }],
  ["toggle b from a {", { toggle: "storage.type.kind.rig", b: "entity.name.type.rig", from: "keyword.other.rig" }],
  ["reading of forestay {", { reading: "storage.type.kind.rig", of: "keyword.other.rig", forestay: "variable.other.rig" }],
  ["  path: cap-tang > tip clamped > plate # down", { path: "variable.other.property.rig", "cap-tang": "variable.other.rig",
    ">": "keyword.operator.rig", clamped: "keyword.other.rig", "# down": "comment.line.number-sign.rig" }],
  ["  2 x toggle-12 (length: 90 mm)", { 2: "constant.numeric.rig", x: "keyword.other.rig", "toggle-12": "support.type.rig",
    length: "variable.other.property.rig", mm: "keyword.other.unit.rig" }],
  ["  pull: 50 N measured", { measured: "storage.modifier.source.rig", N: "keyword.other.unit.rig" }],
  ["  length: 38' 7 3/8\" maker", { "38' 7 3/8\"": "constant.numeric.length.rig", maker: "storage.modifier.source.rig" }],
  ["  open: 50 %", { 50: "constant.numeric.rig", "%": "keyword.other.unit.rig" }],
  ["  density: 0.2 kg/m assumed", { "kg/m": "keyword.other.unit.rig", assumed: "storage.modifier.source.rig" }],
  ["  sides: port, starboard", { port: "constant.language.rig", starboard: "constant.language.rig" }],
  ["  date: 2026-05-02", { "2026-05-02": "constant.numeric.date.rig" }],
  ['  note: "a \\"b\\" # c"', { '\\"': "constant.character.escape.rig" }],
  ["a // b", { "// b": "invalid.illegal.comment.rig" }],
  ["a -> b;", { "->": "invalid.illegal.sign.rig", ";": "invalid.illegal.sign.rig" }],
  ["  note: “grey”", { "“grey”": "invalid.illegal.quotes.rig" }],
  ["  drawn-in: 3 mm", { "drawn-in": "variable.other.property.rig" }],
];
for (const [line, wanted] of known) {
  const seen = words(line);
  for (const [word, scope] of Object.entries(wanted))
    check(`${word} in ${line}`, seen.some(([each, found]) => each === word && found === scope), seen);
}

// The language's own list of words: each kind, property, unit and keyword is coloured as what it is.
const language = JSON.parse(execFileSync(path.resolve(program), ["list", "completion"], { encoding: "utf8", maxBuffer: 1 << 26 }));
const has = (line, word, scope) => words(line).some(([each, found]) => each === word && found === scope);
for (const kind of language.kinds) {
  check(`kind ${kind.name}`, has(`${kind.name} a-1 {`, kind.name, "storage.type.kind.rig"), words(`${kind.name} a-1 {`));
  for (const property of kind.properties)
    check(`property ${property.name}`, has(`  ${property.name}: 1`, property.name, "variable.other.property.rig"), words(`  ${property.name}: 1`));
}
for (const unit of language.units)
  check(`unit ${unit.name}`, has(`  a: 12 ${unit.name}`, unit.name, "keyword.other.unit.rig"), words(`  a: 12 ${unit.name}`));

// Nothing in the boats of the project is refused, and every word has a colour.
const rig_files = (folder) =>
  readdirSync(path.join(project, folder)).filter((name) => name.endsWith(".rig")).map((name) => path.join(project, folder, name));
const files = ["examples", "examples/parts", "examples/stock"].flatMap(rig_files);
check("there are boats", files.length > 10, files);
for (const file of files) {
  let state = textmate.INITIAL;
  const odd = [];
  readFileSync(file, "utf8").split("\n").forEach((line, number) => {
    const { tokens, ruleStack } = grammar.tokenizeLine(line, state);
    state = ruleStack;
    for (const { startIndex, endIndex, scopes } of tokens) {
      const word = line.slice(startIndex, endIndex);
      if (scopes.some((scope) => scope.startsWith("invalid")) || (scopes.length === 1 && /[A-Za-z0-9]/.test(word)))
        odd.push([number + 1, word, scopes]);
    }
  });
  check(path.relative(project, file), odd.length === 0, odd.slice(0, 5));
}

// What the extension names is there and is JSON; each snippet is a rig file when it is filled in.
for (const name of [contributed.path, manifest.contributes.languages[0].configuration, manifest.contributes.snippets[0].path])
  check(`${name} is there`, Object.keys(read_json(name)).length > 0, name);
const folder = mkdtempSync(path.join(tmpdir(), "sheerpole-snippets-"));
const snippets = read_json(manifest.contributes.snippets[0].path);
for (const [name, { prefix, body }] of Object.entries(snippets)) {
  const text = [body].flat().join("\n").replace(/\$\{\d+:([^}]*)\}/g, "$1").replace(/\$\{CURRENT_YEAR\}/g, "2026")
    .replace(/\$\{CURRENT_(MONTH|DATE)\}/g, "05").replace(/ *\$0\n?/g, "").replace(/\$\{4\}/g, "maker");
  let said = "";
  try {
    const file = path.join(folder, "snippet.rig");
    writeFileSync(file, `language 1\n\n${text}\n`);
    execFileSync(path.resolve(program), ["tidy", "--look", file], { encoding: "utf8", stdio: "pipe" });
  } catch (fault) {
    said = `${fault.stdout}${fault.stderr}`;
  }
  check(`snippet ${name} (${prefix}) is tidy`, said === "", { text, said });
}
rmSync(folder, { recursive: true });

console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 && passed > 0 ? 0 : 1;
