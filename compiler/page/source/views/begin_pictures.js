// Pictures of the first screens: a stay with its cord, rope and wire, cord and tape, and each rig from her own first drawing.

import { html, svg } from "lit-html";

const cord_knots = [
  [68, 247],
  [55, 251.5],
  [42, 254.2],
  [29, 255.6],
];

function welcome(words) {
  return html`<svg class="pic hero" viewBox="0 0 328 270" role="img" aria-label=${words.picture}>
    <path d="M226 8V240" stroke-width="8" /><path d="M6 240H322" stroke-width="2.5" /><path d="M214 26H226" stroke-width="6" />
    <path d="M214 26L110 226" stroke-width="6" /><rect x="100" y="226" width="20" height="14" rx="2" class="paper" stroke-width="3" />
    <path d="M190 24L86 224" class="cord" stroke-width="5" /><g transform="rotate(27.5 88 220)"><rect x="77" y="213" width="22" height="13" rx="6" class="tied" /></g>
    <path d="M86 224C80 240 62 254 20 256" class="cord" stroke-width="4.5" />
    ${cord_knots.map(([x, y]) => svg`<circle cx=${x} cy=${y} r="5.6" class="tied" />`)}
    <g class="says"><text x="240" y="31">${words.bearing}</text><text x="240" y="49">${words.aloft}</text><text x="134" y="205">${words.bearing}</text>
      <text x="134" y="223">${words.at_the_deck}</text><text x="52" y="112">${words.the_cord}</text><text x="240" y="112">${words.the_stay}</text>
      <path d="M237 107H180" stroke-width="1.2" /><text x="6" y="226">${words.its_knot}</text></g></svg>`;
}

const strand = (x) => `M${x} 40q8 10 16 0t16 0`;
const mast = svg`<path d="M70 8V112" stroke-width="5" /><path d="M64 14H76" stroke-width="4" /><path d="M10 108H112" stroke-width="2" />`;
const small = (inside) => html`<svg class="pic" viewBox="0 0 120 120" aria-hidden="true">${inside}</svg>`;

export const begin_pictures = {
  welcome,
  rope: small(svg`<path d="M6 46H74M6 66H74" stroke-width="3" /><path d=${[8, 26, 44].map((x) => `M${x} 46l16 20M${x + 16} 46l-16 20`).join("")} stroke-width="2" />
    <path d="M74 46C92 30 114 38 114 56S92 82 74 66" stroke-width="3" /><path d="M80 52C92 44 104 46 104 56S92 68 80 60" stroke-width="2" />`),
  wire: small(
    svg`<path d="M4 50H70M4 56H70M4 62H70" stroke-width="2.4" /><path d="M70 44H92V68H70Z" stroke-width="3" /><path d="M92 48H104A10 8 0 0 1 104 64H92" stroke-width="3" /><circle cx="103" cy="56" r="3.4" stroke-width="2.4" />`,
  ),
  cord: small(svg`${mast}<path d="M66 16L28 108" stroke-width="2.6" /><path d="M58 16L20 108" class="cord" stroke-width="3.4" /><circle cx="22.5" cy="102" r="5.5" class="tied" />
    <path d="M19 111q-6 8-15 4" class="cord" stroke-width="3" /><circle cx="13" cy="116" r="3" class="tied" />`),
  tape: small(svg`${mast}<path d="M66 16L28 108" stroke-width="2.6" /><path d="M54 18L18 104" class="edge" stroke-width="7" />
    <path d=${Array.from({ length: 9 }, (_, i) => `M${52 - i * 4.2} ${22 + i * 10}l5 2`).join("")} class="cardline" stroke-width="1.6" /><rect x="4" y="96" width="22" height="18" rx="4" class="card" stroke-width="2.4" />`),
  drawing: small(
    svg`${mast}<path d="M66 16L28 108" stroke-width="2.6" stroke-dasharray="7 7" /><text x="20" y="72" class="mark">?</text>`,
  ),
};

/** One stay, and the rest of the boat faint. */
const one_stay = small(svg`<g class="faint"><path d="M62 10V92" stroke-width="5" /><path d="M61 14L20 90" stroke-width="2.4" /></g>
  <path d="M12 90Q58 98 108 86Q104 106 90 106H26Q16 104 12 90Z" stroke-width="2.4" /><path d="M64 14L100 87" stroke-width="6" />`);

let rigs = null;
/** The side view of a first rig, taken from the drawings of the documents when the page was built. */
export function rig_picture(name) {
  if (name === "one-stay") return one_stay;
  rigs ??= JSON.parse(document.getElementById("rig-pictures").textContent);
  const rig = rigs[name];
  if (!rig) return html`<svg class="pic" viewBox="0 0 100 100" aria-hidden="true"></svg>`;
  const { box, stays, masts, spreaders, hull } = rig;
  return html`<svg class="pic" viewBox=${box} aria-hidden="true"><path d=${hull} stroke-width="1.6" /><path d=${stays} stroke-width="1.3" />
    <path d=${spreaders} stroke-width="2" /><path d=${masts} stroke-width="3" /></svg>`;
}
