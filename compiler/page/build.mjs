// node compiler/page/build.mjs [--core FOLDER] [--words english|pseudo] [--into FILE]: makes the page, one file that needs nothing
// beside it. FOLDER holds sheerpole-core.js and, where it is not inlined there, sheerpole-core.wasm; without it the page has no
// compiler of its own, and only a test can put one beside it. The same sources make the same bytes.

import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
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
const packed = (bytes) => gzipSync(bytes, { level: 9 }).fill(255, 9, 10).toString("base64");

async function core() {
  if (!options.core) return "";
  const script = readFileSync(path.join(options.core, "sheerpole-core.js"));
  const binary = path.join(options.core, "sheerpole-core.wasm");
  const plain = (id, text) => `<script type="text/plain" id="${id}">${text}</script>\n`;
  return (
    plain("core-script", packed(script)) +
    (existsSync(binary) ? plain("core-wasm", packed(readFileSync(binary))) : "") +
    plain("core-worker", await bundled("source/core/worker.js"))
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
