// Every CSV file and every table of `sheerpole show ... --form csv`, read by Papa Parse (RFC 4180): no fault, every row as
// long as the heading, no heading twice, and no cell that a spreadsheet takes for a formula (OWASP, "CSV Injection").

import { readFileSync } from "node:fs";
import path from "node:path";
import Papa from "papaparse";
import { two_at_a_time } from "./papers.mjs";

const formula = /^[=+\-@\t\r\n＝＋－＠]/;
const number = /^[+-]?(\d+\.?\d*|\.\d+)$/;

/** Complaints about one CSV text. */
export function csv_complaints(name, text) {
  // The line end of the last record begins no record.
  const body = text.replace(/\r\n$/, "");
  const complaints = Papa.parse(body, { header: true, delimiter: "," }).errors.map(
    (fault) => `${name}: row ${fault.row}: ${fault.message}`,
  );
  const rows = Papa.parse(body, { delimiter: "," }).data;
  if (!text.endsWith("\r\n")) complaints.push(`${name}: the last record does not end with CRLF`);
  const [heading] = rows;
  if (new Set(heading).size !== heading.length) complaints.push(`${name}: a heading twice: ${heading}`);
  rows.forEach((row, i) => {
    if (row.length !== heading.length) complaints.push(`${name}: row ${i} has ${row.length} fields of ${heading.length}`);
    for (const cell of row)
      if (formula.test(cell) && !number.test(cell)) complaints.push(`${name}: row ${i}: a formula: ${cell}`);
  });
  return complaints;
}

/** Texts of the rig that a spreadsheet would take for a formula. */
function formulas_in(boat) {
  return boat.texts().filter((text) => formula.test(text) && !number.test(text));
}

export default async function csv_files({ report, boats, sheerpole }) {
  const tables = (await sheerpole.say("list", "tables"))
    .split("\n")
    .slice(2)
    .map((line) => line.split(" ")[0])
    .filter((name) => name !== "");
  report.none("tables are listed", tables.length >= 20 && tables.includes("sources") ? [] : [`only ${tables}`]);

  const cells = new Set();
  for (const boat of boats) {
    const texts = boat.files(".csv").map((file) => [path.basename(file), readFileSync(file, "utf8")]);
    if (["nasty", "smallest"].includes(boat.name))
      texts.push(
        ...(await two_at_a_time(tables, async (table) => [
          `show ${table}`,
          await sheerpole.say("show", table, boat.rig, "--form", "csv"),
        ])),
      );
    for (const [name, text] of texts) {
      report.none(`CSV ${boat.name}/${name}`, csv_complaints(name, text));
      if (boat.name === "nasty") for (const cell of Papa.parse(text).data.flat()) cells.add(cell);
    }
  }

  // Those that a table shows are there with an apostrophe and otherwise as they are written; some table shows most of them.
  const nasty = boats.find((boat) => boat.name === "nasty");
  const formulas = [...new Set(formulas_in(nasty))];
  const shown = formulas.filter((text) => cells.has(`'${text}`));
  report.none(
    "texts that look like formulas come out as text",
    shown.length >= 20 ? [] : [`only ${shown.length} of ${formulas.length} in the cells: ${shown.join(" | ")}`],
  );
  report.none(
    "numbers stay numbers",
    [...cells].some((cell) => /^-\d/.test(cell) && number.test(cell)) ? [] : ["no cell is a negative number"],
  );

  report.caught("a row that is too short", csv_complaints("a", "a,b\r\n1,2\r\n3\r\n"), /fields/);
  report.caught("a quote that does not end", csv_complaints("a", 'a,b\r\n1,"2\r\n'), /[Qq]uote/);
  report.caught("a bare line feed at the end", csv_complaints("a", "a,b\r\n1,2\n"), /CRLF/);
  for (const cell of ["=1+1", "+a", "-a", "@a", "\ta", "-12 ppm/K", "-1+1", "＝1"])
    report.caught(`the formula ${JSON.stringify(cell)}`, csv_complaints("a", `a,b\r\n1,${cell}\r\n`), /formula/);
  report.none("a number is no formula", csv_complaints("a", "a,b\r\n-12.5,+1\r\n"));
}
