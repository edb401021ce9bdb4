// What a part looks like beside its row in the sum: aloft above, deck below. One picture for each sort of part.

import { svg } from "lit-html";

const PICTURES = {
  tang: svg`<path d="M3 24H31V40H3Z" class="fill" /><circle cx="17" cy="32" r="3.6" class="hole" /><path d="M17 40V48" />`,
  chainplate: svg`<path d="M17 0V8" /><path d="M3 10H31V30H3Z" class="fill" /><circle cx="17" cy="20" r="3.6" class="hole" />`,
  thimble: svg`<path d="M17 0V8" /><path d="M17 44C4 28 6 10 17 9C28 10 30 28 17 44Z" class="fill" /><circle cx="17" cy="22" r="5" class="hole" /><path d="M17 44V48" />`,
  deadeye: svg`<path d="M17 0V6" /><circle cx="17" cy="24" r="13" class="fill" /><circle cx="12" cy="20" r="2" class="hole" /><circle cx="22" cy="20" r="2" class="hole" /><circle cx="12" cy="29" r="2" class="hole" /><circle cx="22" cy="29" r="2" class="hole" /><path d="M17 37V48" />`,
  lashing: svg`<path d="M11 0L13 48M15 0L16 48M19 0L18 48M23 0L21 48" class="thin" />`,
  link: svg`<path d="M17 0V6" /><rect x="9" y="6" width="16" height="36" rx="5" class="fill" /><circle cx="17" cy="14" r="3" class="hole" /><circle cx="17" cy="34" r="3" class="hole" /><path d="M17 42V48" />`,
  toggle: svg`<path d="M17 0V8" /><path d="M9 8H25V26H21V40H13V26H9Z" class="fill" /><path d="M17 40V48" />`,
  turnbuckle: svg`<path d="M17 0V48" /><rect x="10" y="8" width="14" height="32" rx="3" class="fill" /><path d="M10 18H24M10 30H24" class="thin" />`,
  terminal: svg`<path d="M17 0V10" /><path d="M12 10H22L20 38H14Z" class="fill" /><path d="M17 38V48" />`,
  line: svg`<path d="M17 0V48" class="wide" />`,
};

/** @param {string} kind of the part, in the words of the language */
export const part_picture = (kind) =>
  svg`<svg viewBox="0 0 34 48" preserveAspectRatio="xMidYMid meet" aria-hidden="true">${
    PICTURES[kind] ?? svg`<path d="M17 0V12" /><rect x="9" y="12" width="16" height="24" class="fill" /><path d="M17 36V48" />`
  }</svg>`;
