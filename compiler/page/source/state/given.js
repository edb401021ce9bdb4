// What stands in the page when it was made for one boat, or is served from a folder.

/**
 * @typedef {object} Seal the texts of a sealed folder
 * @property {string} sums
 * @property {string} facts
 * @property {string} words
 * @property {string[]} back_ends those that its papers are of
 * @property {boolean} signed
 */
/** @typedef {{boat: string, files: Record<string, string>, seal: Seal | null}} GivenBoat */

/** @returns {GivenBoat | {folder: true} | null} null: neither; the page keeps boats in the browser */
export const given = (document) => JSON.parse(document.getElementById("given")?.textContent || "null");

/** Of the boat that the page was made for; what is changed of her is not kept. */
export const GIVEN_ID = "given";
/** Of a boat of the folder; what is changed of her is written to its files. */
export const FOLDER_ID = "folder";

/** Whether the texts are those that the page was made with. @param {GivenBoat} boat */
export const is_as_given = (boat, project) =>
  project.root === boat.boat &&
  Object.keys(project.files).length === Object.keys(boat.files).length &&
  Object.entries(boat.files).every(([name, text]) => project.files[name] === text);
