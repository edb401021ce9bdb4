// Every HTML paper on a telephone, 360 px wide: nothing is scrolled sideways, no text is smaller than 16 px but what says whose it
// is (14 px), and the page of paper does not show. On a wide screen and on paper the pages show, and what is for the telephone does
// not. The policy of each file allows what it needs and nothing else.

import path from "node:path";

/** Each paper of these: with drafts, from a cord, with everything, with names that are hard to set. */
const looked_at_on_a_phone = ["grisolde", "smallest", "sallow", "nasty"];

/** Runs in the page. */
function measured() {
  const shown = (element) => element.getClientRects().length > 0;
  const small = new Set();
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const holder = node.parentElement;
    if (!node.data.trim() || !shown(holder) || holder.closest("svg, script, style")) continue;
    const least = holder.closest(".foot, footer") ? 14 : 16;
    if (parseFloat(getComputedStyle(holder).fontSize) < least) small.add(node.data.trim().slice(0, 40));
  }
  const width = document.documentElement.clientWidth;
  const wide = [...document.body.querySelectorAll("*")].filter(
    (element) => shown(element) && !element.closest("svg, h1") && element.getBoundingClientRect().right > width + 1,
  );
  return {
    scrolls: document.scrollingElement.scrollWidth - width,
    small: [...small],
    wide: wide.slice(0, 3).map((element) => `${element.tagName} ${element.textContent.trim().slice(0, 40)}`),
    sheets: [...document.querySelectorAll(".sheet")].filter(shown).length,
    narrow: [...document.querySelectorAll(".narrow")].filter(shown).length,
    policy: document.querySelector('meta[http-equiv="Content-Security-Policy"]')?.content ?? "",
  };
}

async function at_width(browser, file, width) {
  const { result, complaints } = await browser.visit(file, async (page) => {
    await page.setViewport({ width, height: 740 });
    return page.evaluate(measured);
  });
  return { ...result, complaints };
}

export async function phone_complaints(browser, file) {
  const name = path.basename(file);
  const phone = await at_width(browser, file, 360);
  const desk = await at_width(browser, file, 1280);
  const complaints = [...phone.complaints, ...desk.complaints].map((said) => `${name}: ${said}`);
  if (phone.scrolls > 0) complaints.push(`${name} is scrolled sideways by ${phone.scrolls} px: ${phone.wide.join("; ")}`);
  for (const words of phone.small.slice(0, 3)) complaints.push(`${name} has small type: ${words}`);
  if (phone.sheets > 0 && phone.narrow > 0) complaints.push(`${name} shows the pages of paper on a telephone`);
  if (desk.narrow > 0) complaints.push(`${name} shows on a wide screen what is for a telephone`);
  if (!phone.policy.includes("default-src 'none'")) complaints.push(`${name} has no policy`);
  if (/unsafe|\*|http/.test(phone.policy)) complaints.push(`${name} allows too much: ${phone.policy}`);
  return complaints;
}

export default async function phone({ report, boats, browser }) {
  let seen = 0;
  for (const boat of boats.filter((one) => looked_at_on_a_phone.includes(one.name))) {
    const complaints = [];
    for (const file of boat.files(".html")) {
      complaints.push(...(await phone_complaints(browser, file)));
      seen += 1;
    }
    report.none(`papers of ${boat.name} on a telephone`, complaints);
  }
  report.none("papers that were seen on a telephone", seen > 35 ? [] : [`${seen} papers`]);
}
