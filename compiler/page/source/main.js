// Starts the page: the compiler, the boat that was open last, and the first drawing.

import { start_compiler } from "./core/compiler.js";
import { app, apply_look, connect, go, keep_by, open_given, open_project, redraw, refresh } from "./state/app.js";
import { is_unwritten, keep_in_folder, open_folder } from "./state/folder.js";
import { given } from "./state/given.js";
import { kept_project, last_project, watch_boats } from "./state/storage.js";
import { w } from "./words/words.js";
import { draw, take_route, TAB_OF } from "./views/page.js";
import { show_place } from "./views/text_view.js";

const said = document.getElementById("said");
connect(draw, (words) => (said.textContent = words));
apply_look();

/** A new view begins at its top, and says its heading to who cannot see it. */
function arrive() {
  const before = app.route.view + app.route.of;
  take_route();
  if (app.route.view + app.route.of === before) return;
  const left = ["numbers", "text"].includes(TAB_OF[app.route.view]);
  const pane = document.querySelector(left ? ".pane.L .inner" : ".pane.R .inner");
  (pane ?? document.scrollingElement).scrollTop = 0;
  if (app.route.view === "text" && app.route.of) show_place(app.route.of);
  if (app.route.view === "start") document.querySelector("#start h1")?.focus({ preventScroll: true });
}
addEventListener("hashchange", arrive);
let wide = matchMedia("(min-width: 900px)");
wide.addEventListener("change", redraw);
addEventListener("keydown", (event) => {
  const view = event.altKey && { Digit1: "numbers", Digit2: "rig", Digit3: "papers", Digit4: "text" }[event.code];
  if (!view || !app.project) return;
  event.preventDefault();
  go(view);
});
watch_boats((id) => {
  const kept = id === app.project?.id && kept_project(id);
  if (!kept || JSON.stringify(kept.files) === JSON.stringify(app.project.files)) return;
  app.project = kept;
  refresh();
});

app.compiler = start_compiler(document, window);
/** What the page was made for or is served from comes before what the browser keeps. */
const handed = given(document);
const last = handed ? null : last_project();
if (handed?.boat) open_given(handed);
if (handed?.folder) {
  keep_by(keep_in_folder);
  addEventListener("beforeunload", (event) => is_unwritten() && event.preventDefault());
  await open_folder().catch((fault) => (app.fault = `${w.folder.not_read} ${fault.message ?? fault}`));
}
if (last) open_project(last, false);
if (handed && !location.hash) history.replaceState(null, "", handed.boat ? "#rig" : "#numbers");
if (last && (!location.hash || location.hash.startsWith("#start"))) history.replaceState(null, "", "#numbers");
take_route(); // something to look at, while the compiler starts
try {
  await app.compiler.started;
  app.begin.starts = await app.compiler.ask({ ask: "starts" });
  redraw();
} catch (fault) {
  app.fault = `${w.no_compiler} ${fault.message ?? fault}`;
  redraw();
}
document.documentElement.dataset.started = "yes";
