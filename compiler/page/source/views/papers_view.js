// The papers in the order of the job, and one of them as it will be printed.

import { html, nothing } from "lit-html";
import { app, ask, go, is_wide, redraw, toast } from "../state/app.js";
import { first_error } from "../state/answers.js";
import { save_file, share_file } from "./save.js";
import { w } from "../words/words.js";
import { icon, mark, piece_title } from "./marks.js";
import { seal_line } from "./seal_view.js";
import { stale_note } from "./numbers_view.js";

/** Which paper belongs to which part of the job; what is not named stands at the end. */
const JOB = [
  ["measure", ["index", "measuring-sheet", "cord-map"]],
  ["order", ["order-list", "spool-plan", "shop-order", "receiving-card"]],
  ["bench", ["bench-card", "cut-list", "labels"]],
  ["aloft", ["dry-fit-card", "take-up", "tune-sheet", "sign-off"]],
  ["over", ["survey-report", "proof-sheet", "emergency-splice-card", "kit-list", "rig-drawing", "diagram", "calendar", "checks", "findings"]],
];
/** The names of all papers; to know them each is made, so they are asked for when somebody looks. */
const names = { of: null, all: [], asking: null };
function all_papers() {
  const { lengths } = app.answers;
  if (lengths && names.of !== lengths && names.asking !== lengths && !app.busy) {
    names.asking = lengths;
    ask({ ask: "papers", paper: app.settings.paper }).then(
      (all) => {
        if (names.asking !== lengths) return;
        Object.assign(names, { of: lengths, all: all ?? [] });
        redraw();
      },
      (fault) => toast(String(fault.message)),
    );
  }
  return names.all;
}

const NOT_FOR_READING = [".json", ".sarif"];
const paper_icon = icon("M6 2h9l4 4v16H6zM9 11h7M9 15h7M9 19h4");

const RANK = [".html", ".svg", ".txt"];
const rank = (name) => (RANK.findIndex((ending) => name.endsWith(ending)) + RANK.length + 1) % (RANK.length + 1);
/** All files that somebody reads, by their part of the job; the first of a back end stands for all of them. */
function listed() {
  const all = all_papers();
  const named = new Set(JOB.flatMap(([, names]) => names));
  const rest = all.map((each) => each.back_end).filter((name) => !named.has(name) && name !== "echo");
  return [...JOB, ["rest", rest]]
    .map(([part, names]) => ({
      part,
      papers: names
        .flatMap((name) => all.filter((each) => each.back_end === name))
        .flatMap((each) =>
          readable(each)
            .slice(0, 1)
            .map((file) => ({ ...file, back_end: each.back_end, summary: each.summary })),
        ),
    }))
    .filter(({ papers }) => papers.length > 0);
}

/** The files of a back end that somebody reads, the one to look at first. */
const readable = (each) =>
  each.files
    .filter((file) => !NOT_FOR_READING.some((ending) => file.name.endsWith(ending)))
    .sort((a, b) => rank(a.name) - rank(b.name));
const back_end_of = (name) => all_papers().find((each) => each.files.some((file) => file.name === name));

const entry = (to, current, picture, title, small) =>
  html`<li><button data-paper=${to} aria-current=${String(current)} @click=${() => go(`papers/${to}`)}>${picture}<span class="t">${title}<small>${small}</small></span></button></li>`;

function paper_list(of) {
  return html`<nav class="plist" aria-label=${w.views.papers}>${seal_line()}${listed().map(
    ({ part, papers }, i) =>
      html`<h2>${i + 1}. ${w.job[part]}</h2><ul>${papers.map((paper) =>
        paper.back_end === "bench-card"
          ? app.answers.pieces.map((piece) =>
              entry(
                `bench/${piece.name}`,
                of === `bench/${piece.name}`,
                mark(piece.state),
                piece_title(piece),
                w.states[piece.state],
              ),
            )
          : entry(
              paper.name,
              back_end_of(of)?.back_end === paper.back_end,
              paper_icon,
              w.paper_names[paper.name] ?? w.paper_of(paper.name),
              w.paper_words[paper.back_end] ?? paper.summary,
            ),
      )}</ul>`,
  )}</nav>`;
}

// ---- one paper ----

const made = { key: "", html: "", name: "", text: "", type: "" };

/** A drawing is shown whole, and larger than the screen for whoever reads its small figures. */
let is_large = false;
function change_size() {
  is_large = !is_large;
  fit(document.querySelector("iframe.paper"));
  redraw();
}

/**
 * Of the bench cards only that of one piece: its sheets, and the narrow page that phones show in their place. Null: there is none;
 * the card of another piece is never shown for it.
 */
function only_piece(text, piece) {
  const page = new DOMParser().parseFromString(text, "text/html");
  const sections = [...page.querySelectorAll("main > section")];
  // A card of several sheets says on each which of how many it is.
  const label = (section) => (section.getAttribute("aria-label") ?? "").replace(/,[^,]*\d[^,]*\d[^,]*$/, "");
  const labels = [...new Set(sections.map(label).filter(Boolean))];
  const nth = labels.findIndex((each) => each.endsWith(` ${piece}`));
  if (nth < 0) return null;
  const narrow = sections.filter((section) => section.classList.contains("narrow"));
  for (const section of sections)
    if (section.classList.contains("narrow") ? section !== narrow[nth] : label(section) !== labels[nth]) section.remove();
  return `<!DOCTYPE html>\n${page.documentElement.outerHTML}`;
}

/**
 * What is shown runs nothing, and no link of it leaves the page: another paper is shown by the page, a place by scrolling to it.
 * What is saved has its scripts and links.
 */
function for_the_frame(text) {
  const page = new DOMParser().parseFromString(text, "text/html");
  for (const script of page.querySelectorAll("script")) script.remove();
  for (const link of page.querySelectorAll("a[href]")) {
    link.dataset.to = link.getAttribute("href");
    link.removeAttribute("href");
    link.setAttribute("role", "link");
    link.setAttribute("tabindex", "0");
  }
  return `<!DOCTYPE html>\n${page.documentElement.outerHTML}`;
}

const escaped = (text) => text.replace(/&/g, "&amp;").replace(/</g, "&lt;");
/** Something other than a page, as one. */
function as_page(name, type, text) {
  const head = `<!DOCTYPE html><html lang="en"><head><meta charset="utf-8"><title>${escaped(name)}</title><style>body{margin:12px;background:#fff;color:#000;font:13px/1.4 ui-monospace,monospace}svg{width:100%;height:auto}.large svg{width:max(900px,200%)}pre{white-space:pre;margin:0}@page{size:auto}@media print{.large svg{width:100%}}</style></head>`;
  const inside = type === "image/svg+xml" ? text.slice(text.indexOf("<svg")) : `<pre>${escaped(text)}</pre>`;
  return `${head}<body><main>${inside}</main></body></html>`;
}

async function make(of, key) {
  made.key = key;
  made.html = "";
  const bench = of.startsWith("bench/") ? of.slice(6) : "";
  if (!bench && all_papers().length === 0) {
    made.key = "";
    return;
  }
  const back_end = bench ? "bench-card" : back_end_of(of)?.back_end;
  try {
    const answered = back_end ? await ask({ ask: "papers", only: [back_end], paper: app.settings.paper }) : null;
    if (made.key !== key) return;
    const file = answered?.[0]?.files.find((each) => (bench ? each.name === "bench-cards.html" : each.name === of));
    if (!file) made.html = as_page(of, "text/plain", answered?.[0]?.fault || w.no_paper);
    else {
      Object.assign(made, { name: bench ? `bench-card-${bench.replaceAll(" ", "-")}.html` : file.name, type: file.type });
      const text = file.type === "text/html" && bench ? only_piece(file.text, bench) : file.text;
      if (text === null) throw new Error(w.no_paper);
      made.text = text;
      made.html = file.type === "text/html" ? for_the_frame(made.text) : as_page(file.name, file.type, file.text);
    }
  } catch (fault) {
    made.html = as_page(of, "text/plain", String(fault.message));
  }
  redraw();
}

/** A link of a paper that was tapped, or chosen by Enter. */
function follow(event) {
  if (event.type === "keydown" && event.key !== "Enter") return;
  const to = event.target.closest?.("[data-to]")?.dataset.to;
  if (!to) return;
  const name = decodeURIComponent(to.split("#")[0]);
  if (!name) event.target.ownerDocument.getElementById(decodeURIComponent(to.slice(1)))?.scrollIntoView();
  else if (back_end_of(name)) go(`papers/${name}`);
}

/** The frame is as high as its page, so that there is one thing to scroll. */
function fit(frame) {
  const page = frame?.contentDocument;
  if (!page?.body) return;
  page.documentElement.classList.toggle("large", is_large);
  frame.style.height = "200px";
  frame.style.height = `${Math.max(200, page.documentElement.scrollHeight + 4)}px`;
}

function begin_frame({ target: frame }) {
  const page = frame.contentDocument;
  if (!page?.body) return;
  fit(frame);
  for (const link of page.querySelectorAll("[data-to]")) Object.assign(link.style, { textDecoration: "underline", cursor: "pointer" });
  for (const what of ["click", "keydown"]) page.addEventListener(what, follow);
  frame.contentWindow.addEventListener("resize", () =>
    requestAnimationFrame(() => (frame.style.height = `${Math.max(200, page.documentElement.scrollHeight + 4)}px`)),
  );
}

function paper(of) {
  const key = `${of} ${app.settings.paper} ${app.project.id} ${app.project.steps.at(-1)?.at ?? 0}`;
  if (made.key !== key && !app.busy) queueMicrotask(() => made.key !== key && make(of, key));
  const others = of.startsWith("bench/") || !back_end_of(of) ? [] : readable(back_end_of(of));
  const print = () => document.querySelector("iframe.paper")?.contentWindow.print();
  const title = of.startsWith("bench/")
    ? w.bench_card_of(
        piece_title(app.answers.pieces.find((each) => each.name === of.slice(6)) ?? { title: of.slice(6), side: "centre" }),
      )
    : (w.paper_names[of] ?? w.paper_of(of));
  return html`${is_wide() ? nothing : html`<nav class="back"><button @click=${() => go("papers")}>\u2039 ${w.all_papers}</button></nav>`}<div class="ptool">
      <button class="btn go" @click=${print}>${w.print}</button>
      <button class="btn quiet" @click=${async () => (await share_file(made.name, made.text, made.type)) || toast(w.toast.saved(made.name))}>${w.share}</button>
      <button class="btn quiet" @click=${() => save_file(made.name, made.text, made.type)}>${w.save}</button>
      ${of.endsWith(".svg") ? html`<button class="btn quiet" aria-pressed=${String(is_large)} @click=${change_size}>${is_large ? w.whole_sheet : w.larger}</button>` : nothing}</div>
    ${others.length > 1 ? html`<p class="others">${others.map((file) => html`<button class="link" aria-current=${String(file.name === of)} @click=${() => go(`papers/${file.name}`)}>${file.name}</button>`)}</p>` : nothing}
    <h1 class="vh">${title}</h1>
    ${
      made.key === key && made.html
        ? html`<iframe class="paper" title=${title} sandbox="allow-same-origin allow-modals" .srcdoc=${made.html} @load=${begin_frame}></iframe>`
        : html`<div class="in"><p>${w.working}</p></div>`
    }`;
}

export function papers_view(of) {
  if (first_error(app.answers)) return html`<h1 class="vh">${w.views.papers}</h1>${stale_note()}`;
  const list = all_papers().length || !app.answers.lengths ? paper_list(of) : html`<nav class="plist in">${w.working}</nav>`;
  const inside = of ? paper(of) : html`<div class="in soft"><p>${w.choose_a_paper}</p></div>`;
  if (is_wide()) return html`<div class="papers2">${list}<div>${inside}</div></div>`;
  return of ? inside : html`<h1 class="vh">${w.views.papers}</h1>${list}`;
}
