// How large the page is with its compiler inside: it travels by phone and by memory stick.

import { statSync } from "node:fs";

const MOST_BYTES = 3_000_000;

export default async function size({ report, page_file, inside }) {
  const { size: bytes } = statSync(page_file);
  console.log(`the page has ${bytes} bytes${inside ? "" : ", without a compiler"}`);
  report.none(`at most ${MOST_BYTES} bytes`, bytes <= MOST_BYTES ? [] : [`${bytes} bytes`]);
}
