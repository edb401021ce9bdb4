#include "calculate/facts.hpp"
#include "rules/check_table.hpp"
#include "rules/user/rule_facts.hpp"
#include "units/quantity_text.hpp"

#include <array>

/// What the files themselves expect of a number, and the test splices that they rest on.
namespace sheerpole::expectations {

namespace {

void check_expectation_missed(const Rig& rig, const Derived& derived, CheckReport& report) {
  for (const Expectation& expectation : rig.expectations) {
    const Length bound = *expectation.value.tolerance;
    for (const StayId id : expectation.stays) {
      const Stay& stay = rig[id];
      const std::vector<Length> values = stay_quantity(derived.stays[id.index()], expectation.quantity);
      if (values.size() != 1) {
        report.not_checked(stay.name, expectation.quantity + " has no one number");
        report.say(diagnose("expectation-not-checked",
                            {{"stay", stay.name},
                             {"quantity", expectation.quantity},
                             {"reason", values.empty()
                                            ? "it has no number yet"
                                            : "there are " + std::to_string(values.size()) + " of them"}})
                       .at(expectation.place)
                       .and_at(stay.place, "the stay")
                       .about(stay.name));
        continue;
      }
      const Length off = values.front() - expectation.value.value;
      const Length size = off < Length{} ? -off : off;
      if (size <= bound + threshold::negligible) {
        report.pass(stay.name, expectation.quantity + " is " + length_text(values.front()));
        continue;
      }
      report.find(diagnose("expectation-missed", {{"stay", stay.name},
                                                  {"quantity", expectation.quantity},
                                                  {"found", length_text(values.front())},
                                                  {"expected", length_text(expectation.value.value)},
                                                  {"bound", length_text(bound)},
                                                  {"off", length_text(size)}})
                      .at(expectation.place, length_text(values.front()) + " as calculated")
                      .and_at(stay.place, "the stay")
                      .about(stay.name));
    }
  }
}

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

constexpr std::array rows{
    CheckRow{"expectation-missed", check_expectation_missed},
    CheckRow{"test-splice-reversed", check_test_splice_reversed},
};

} // namespace

std::span<const CheckRow> checks() {
  return rows;
}

} // namespace sheerpole::expectations
