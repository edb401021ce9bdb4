#include "calculate/facts.hpp"
#include "rules/length_checks.hpp"
#include "units/quantity_text.hpp"

namespace sheerpole {

void check_test_splice_reversed(const Rig& rig, const Derived& /*derived*/, CheckReport& report) {
  for (const Record& record : rig.records) {
    if (record.kind != "test-splice")
      continue;
    const auto before = fact_length(record.facts, "before");
    const auto after = fact_length(record.facts, "after");
    const auto set = fact_length(record.facts, "set");
    if (!before || !after)
      continue;
    const auto find = [&](const std::string& what, Length is, const std::string& against, Length was) {
      report.find(diagnose("test-splice-reversed", {{"rope", record.of},
                                                    {"what", what + ", " + length_text(is)},
                                                    {"against", against + ", " + length_text(was)}})
                      .at(record.place)
                      .about(record.of));
    };
    if (after->value > before->value)
      find("longer after", after->value, "before", before->value);
    else if (set && set->value < after->value)
      find("shorter when set", set->value, "after splicing", after->value);
    else if (set && set->value > before->value)
      find("longer when set", set->value, "before", before->value);
    else
      report.pass(record.of, "from " + length_text(before->value) + " to " + length_text(after->value));
  }
}

} // namespace sheerpole
