// First files: what `begin` answers against what `sheerpole begin --print` prints.

const LINES = ["wire", "rope"];
const MEASURED = ["cord", "tape", "drawing"];

/** A first file of every kind of rig, line and way of measuring, half of them in inches. */
export function* first_files(core) {
  let count = 0;
  for (const start of core.ask({ ask: "starts" }).answer)
    for (const line of LINES)
      for (const measured of MEASURED) {
        const unit = (count += 1) % 2 === 0 ? "inches" : "millimetres";
        const answered = core.ask({ ask: "begin", rig: start.rig, line, measured, name: "Second Wind", unit });
        if (answered.answers === "error") throw new Error(answered.message);
        yield { start, rig: start.rig, line, measured, unit, ...answered.answer };
      }
}

export async function same_starts({ core, native, project, none }) {
  const faults = [];
  let count = 0;
  for (const { start, rig, line, measured, unit, file, text } of first_files(core)) {
    count += 1;
    if (file !== "second-wind.rig") faults.push(`${rig}: the file is called ${file}`);
    if (unit === "inches") continue; // the command line does not ask for a unit
    const numbers = start.numbers.flatMap(({ name, example }) => [`--${name}`, example]);
    const args = ["begin", "x.rig", "--print", "--boat", "Second Wind", "--rig", rig, "--line", line, "--measured-by", measured, ...numbers];
    if ((await native.output(args, project)) !== text) faults.push(`${rig}, ${line}, ${measured}: another text`);
  }
  none(`${count} first files`, faults);
  none("number of first files", count >= 100 ? [] : [`${count}`]);
}
