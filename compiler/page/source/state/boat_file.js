// A boat as one file to save and to share: JSON, so that any program can take the texts out again.

const FORMAT = "sheerpole-boat";

/** @param {import("./project.js").Project} project */
export function boat_file(project) {
  const files = {};
  for (const name of Object.keys(project.files).sort()) files[name] = project.files[name];
  return `${JSON.stringify({ format: FORMAT, version: 1, boat: project.root, files }, null, 1)}\n`;
}

/**
 * @returns {{root: string, files: Record<string, string>} | null} null: it is another kind of file
 */
export function read_boat_file(text) {
  let read;
  try {
    read = JSON.parse(text);
  } catch {
    return null;
  }
  if (read?.format !== FORMAT || read.version !== 1 || typeof read.files !== "object" || read.files === null) return null;
  const files = {};
  for (const [name, content] of Object.entries(read.files)) {
    if (typeof content !== "string") return null;
    files[name] = content;
  }
  return typeof read.boat === "string" && read.boat in files ? { root: read.boat, files } : null;
}

/** Whether a text says that it is a boat in one file, readable or not. */
export const is_boat_file = (text) => text.slice(0, 200).includes(`"${FORMAT}"`);
