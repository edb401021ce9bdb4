// node compiler/page/build.mjs [--core FOLDER] [--words english|pseudo] [--into FILE]: makes the page, one file that needs nothing
// beside it. FOLDER holds sheerpole-core.js with its WebAssembly inside, and sheerpole-unpack.wasm; without it the page has no
// compiler of its own, and only a test can put one beside it. The same sources make the same bytes.

import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { rig_pictures } from "./rig_pictures.mjs";

const here = path.dirname(fileURLToPath(import.meta.url));
const project = path.resolve(here, "../..");
const read = (name) => readFileSync(path.resolve(here, name), "utf8");

const options = { core: "", words: "english", into: path.join(project, "build/page/sheerpole.html") };
for (let i = 2; i < process.argv.length; i += 2) {
  const name = process.argv[i].replace(/^--/, "");
  if (!(name in options) || process.argv[i + 1] === undefined) {
    console.error("usage: node compiler/page/build.mjs [--core FOLDER] [--words english|pseudo] [--into FILE]");
    process.exit(2);
  }
  options[name] = process.argv[i + 1];
}

async function bundled(entry) {
  const made = await build({
    entryPoints: [path.join(here, entry)],
    bundle: true,
    minify: true,
    write: false,
    format: "esm",
    target: ["es2022"],
    charset: "ascii",
    legalComments: "none",
    plugins: options.words === "pseudo" ? [other_words] : [],
    logLevel: "error",
  });
  return made.outputFiles[0].text.replaceAll("</script", "<\\/script");
}
/** Takes the words from the other table, whoever asks for them. */
const other_words = {
  name: "other words",
  setup: (setup) => setup.onResolve({ filter: /words\/words\.js$/ }, () => ({ path: path.join(here, "source/words/pseudo.js") })),
};

const font = (family) =>
  readFileSync(path.join(here, `node_modules/@fontsource-variable/${family}/files/${family}-latin-wght-normal.woff2`)).toString(
    "base64",
  );
const face = (name, family) =>
  `@font-face{font-family:${name};src:url(data:font/woff2;base64,${font(family)}) format("woff2");font-weight:200 800}`;

/** The texts of the licences of all that is inlined, each once. */
function licences() {
  const packages = [
    "@fontsource-variable/atkinson-hyperlegible-next",
    "@fontsource-variable/atkinson-hyperlegible-mono",
    "lit-html",
  ];
  const code = ["autocomplete", "commands", "lint", "state", "view"].map((name) => `@codemirror/${name}`);
  const others = [
    ...code,
    "@lezer/common",
    "@lezer/highlight",
    "style-mod",
    "w3c-keyname",
    "crelt",
    "@marijn/find-cluster-break",
    "@codemirror/language",
  ];
  const texts = new Map();
  for (const name of [...packages, ...others]) {
    const folder = path.join(here, "node_modules", name);
    if (!existsSync(folder)) continue;
    const file = readdirSync(folder).find((each) => /^licen[cs]e/i.test(each));
    if (!file) continue;
    const text = readFileSync(path.join(folder, file), "utf8").trim();
    texts.set(text, [...(texts.get(text) ?? []), name]);
  }
  return [...texts].map(([text, names]) => `${names.join(", ")}\n\n${text}`).join("\n\n----\n\n");
}

/** Nothing in an inlined text ends its element. */
const as_text = (value) => value.replaceAll("</", "< /");
const data = (id, value) =>
  `<script type="application/json" id="${id}">${JSON.stringify(value).replaceAll("<", "\\u003c")}</script>`;

/** LZMA in its "alone" form, by Debian's xz-utils: a quarter smaller than what browsers unpack by themselves. */
function packed(bytes) {
  const result = execFileSync("xz", ["--format=lzma", "-9e", "--stdout"], { input: bytes, maxBuffer: 1 << 28 });
  // What is read from a pipe has no size yet when its head is written.
  result.writeBigUInt64LE(BigInt(bytes.length), 5);
  return result;
}

/**
 * Bytes as text that is a quarter longer, where base 64 makes a third of it: four bytes are five signs of 85, the last fewer. The
 * signs are those from # to x without <, so that nothing in them ends an element.
 */
function in_base_85(bytes) {
  const sign = (digit) => String.fromCharCode(digit + 35 + (digit + 35 >= 60 ? 1 : 0));
  let text = "";
  for (let at = 0; at < bytes.length; at += 4) {
    const count = Math.min(4, bytes.length - at);
    let value = 0;
    for (let i = 0; i < 4; ++i) value = value * 256 + (i < count ? bytes[at + i] : 0);
    const signs = Array(5);
    for (let i = 4; i >= 0; --i) {
      signs[i] = sign(value % 85);
      value = Math.floor(value / 85);
    }
    text += signs.slice(0, count + 1).join("");
  }
  return text;
}

/** The script of the core, and the WebAssembly that it holds as a data address. */
function taken_apart(script) {
  const found = /(["'])data:application\/octet-stream;base64,([A-Za-z0-9+\/=]+)\1/.exec(script);
  if (!found) return { script, binary: Buffer.alloc(0) };
  const at = found.index;
  return {
    script: `${script.slice(0, at)}"data:application/octet-stream;base64,"${script.slice(at + found[0].length)}`,
    binary: Buffer.from(found[2], "base64"),
  };
}

/** What is compiled into the core, by the package of Debian that its sources or headers are of. */
const IN_THE_CORE = [
  "libantlr4-runtime-dev",
  ...["cbc", "cgl", "clp", "osi", "coinutils"].map((name) => `coinor-lib${name}-dev`),
  ...["eigen3", "fast-float", "fmt", "md", "qrcodegencpp", "utf8proc", "valijson"].map((name) => `lib${name}-dev`),
  "nlohmann-json3-dev",
  "emscripten",
];
/** The licences of these as Debian tells them, each text once. */
function core_licences() {
  const texts = new Map();
  for (const name of IN_THE_CORE) {
    const file = `/usr/share/doc/${name}/copyright`;
    if (!existsSync(file)) continue;
    const text = readFileSync(file, "utf8").trim();
    texts.set(text, [...(texts.get(text) ?? []), name]);
  }
  return [...texts].map(([text, names]) => `${names.join(", ")}\n\n${text}`).join("\n\n----\n\n");
}

/** In one piece: the script, the WebAssembly and, for which nobody waits, the licences, before each its length in four bytes. */
function core_bytes() {
  const { script, binary } = taken_apart(readFileSync(path.join(options.core, "sheerpole-core.js"), "utf8"));
  return Buffer.concat(
    [Buffer.from(script), binary, Buffer.from(core_licences())].flatMap((part) => {
      const length = Buffer.alloc(4);
      length.writeUInt32LE(part.length);
      return [length, part];
    }),
  );
}

async function core() {
  if (!options.core) return "";
  const bytes = core_bytes();
  const unpacking = path.join(options.core, "sheerpole-unpack.wasm");
  const plain = (id, text) => `<script type="text/plain" id="${id}">${text}</script>\n`;
  return (
    (existsSync(unpacking)
      ? plain("core-packed", in_base_85(packed(bytes))) + plain("core-unpack", in_base_85(readFileSync(unpacking)))
      : plain("core-packed", in_base_85(bytes))) + plain("core-worker", await bundled("source/core/worker.js"))
  );
}

function example() {
  const root = "pellimoor.rig";
  const names = [root, "parts/demo-hardware.rig", "parts/demo-lines.rig"];
  return {
    root,
    files: Object.fromEntries(names.map((name) => [name, readFileSync(path.join(project, "examples", name), "utf8")])),
  };
}

const script = await bundled("source/main.js");
const hash = createHash("sha256").update(script).digest("base64");
const policy = [
  "default-src 'none'",
  `script-src 'sha256-${hash}' 'wasm-unsafe-eval' blob:`,
  "worker-src blob:",
  "style-src 'unsafe-inline'",
  "font-src data:",
  "img-src data:",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");
const styles = ["frame", "numbers", "rig", "turns", "text", "papers", "begin", "dialogs", "wide", "print"]
  .map((name) => read(`styles/${name}.css`))
  .join("\n");

const page = `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width,initial-scale=1,viewport-fit=cover">
<meta name="color-scheme" content="light dark">
<title>Sheerpole</title>
<style>${face("Next", "atkinson-hyperlegible-next")}
${face("Mono", "atkinson-hyperlegible-mono")}
${styles}</style>
</head>
<body>
<div id="page"></div>
<div id="said" class="vh" aria-live="polite"></div>
${data("given", null)}
${data("example", example())}
${data("rig-pictures", rig_pictures(path.join(project, "docs/begin")))}
<script type="text/plain" id="licences">${as_text(licences())}</script>
${await core()}<script type="module">${script}</script>
</body>
</html>
`;
mkdirSync(path.dirname(options.into), { recursive: true });
writeFileSync(options.into, page);
console.log(`${options.into}: ${(page.length / 1024).toFixed(0)} kB${options.core ? "" : ", without a compiler"}`);
