// What the browser keeps between two visits. A store that is full throws, and what it held before is held still.

const BOAT = "sheerpole.boat.";
const LAST = "sheerpole.last";
const SETTINGS = "sheerpole.settings";

/** @returns {boolean} false: it was not kept */
function keep(key, text) {
  try {
    localStorage.setItem(key, text);
    return true;
  } catch {
    return false;
  }
}

function look_up(key) {
  try {
    const text = localStorage.getItem(key);
    return text === null ? null : JSON.parse(text);
  } catch {
    return null;
  }
}

/** @returns {boolean} false: there is no room, and what was kept before is kept still */
export function keep_project(project) {
  const kept = keep(BOAT + project.id, JSON.stringify(project));
  if (kept) keep(LAST, JSON.stringify(project.id));
  return kept;
}

/** @returns {import("./project.js").Project | null} */
export function kept_project(id) {
  const project = look_up(BOAT + id);
  return project && typeof project.root === "string" && project.files?.[project.root] !== undefined
    ? { steps: [], ...project, id }
    : null;
}

export const last_project = () => {
  const id = look_up(LAST);
  return typeof id === "string" ? kept_project(id) : null;
};

export function drop_project(id) {
  localStorage.removeItem(BOAT + id);
}

/** The boats that are kept here: id, file and title, by the alphabet. */
export function kept_boats() {
  const found = [];
  try {
    for (let i = 0; i < localStorage.length; ++i) {
      const key = localStorage.key(i);
      if (!key.startsWith(BOAT)) continue;
      const project = kept_project(key.slice(BOAT.length));
      if (project) found.push({ id: project.id, title: title_of(project) });
    }
  } catch {
    return [];
  }
  return found.sort((a, b) => (a.title < b.title ? -1 : 1));
}

/** The boat's title as her file has it; before the compiler has read it. */
export function title_of(project) {
  const found = /^boat\b[^\n"]*"((?:[^"\\]|\\.)*)"/m.exec(project.files[project.root] ?? "");
  return found ? found[1].replace(/\\(.)/g, "$1") : project.root;
}

export const kept_settings = () => look_up(SETTINGS) ?? {};
export const keep_settings = (settings) => keep(SETTINGS, JSON.stringify(settings));

/** Calls back when another window keeps this boat. @param {(id: string) => void} changed_elsewhere */
export function watch_boats(changed_elsewhere) {
  addEventListener("storage", ({ key }) => {
    if (key?.startsWith(BOAT)) changed_elsewhere(key.slice(BOAT.length));
  });
}
