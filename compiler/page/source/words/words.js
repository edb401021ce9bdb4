// All words of the page, in the one language that it was built with.
export { english as w } from "./english.js";
