// Counts what passed and what failed. A subject hands over lists of complaints: an empty list is a pass.

export class Report {
  passed = 0;
  failed = 0;

  /** @param {string} name of what was looked at; @param {string[]} complaints one line each, of people's words */
  none(name, complaints) {
    if (complaints.length === 0) {
      this.passed += 1;
      return;
    }
    this.failed += 1;
    console.log(`FAILED ${name}`);
    for (const complaint of complaints.slice(0, 20)) console.log(`  ${complaint}`);
    if (complaints.length > 20) console.log(`  and ${complaints.length - 20} more`);
  }

  /** A planted fault: the look that is tested must complain of it, in these words or some others. */
  caught(name, complaints, words = /./) {
    this.none(
      `planted: ${name}`,
      complaints.some((complaint) => words.test(complaint))
        ? []
        : [`nothing says ${words} of it`, ...complaints.map((complaint) => `what is said: ${complaint}`)],
    );
  }
}
