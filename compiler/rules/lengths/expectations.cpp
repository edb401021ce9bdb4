#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "rules/check_table.hpp"
#include "rules/user/user_rules.hpp"
#include "units/quantity_text.hpp"
#include "wording/checks/length_phrases.hpp"

#include <iterator>

/// What the files themselves expect of a number, and the test splices that they rest on.
namespace sheerpole::expectations {

namespace {

using P = LengthCheckPhrase;

void check_expectation_missed(const Rig& rig, const Derived& derived, CheckReport& report) {
  for (const Expectation& expectation : rig.expectations) {
    const Length bound = *expectation.value.tolerance;
    for (const StayId id : expectation.stays) {
      const Stay& stay = rig[id];
      const std::vector<Length> values = stay_quantity(derived.stays[id.index()], expectation.quantity);
      if (values.size() != 1) {
        report.not_checked(stay.name, {P::no_one_number, {Words{expectation.quantity}}});
        report.mention(diagnose("expectation-not-checked",
                                {{"stay", stay.name},
                                 {"quantity", expectation.quantity},
                                 {"reason", values.empty() ? said(P::no_number_yet)
                                                           : say(rig, {P::several_numbers,
                                                                       {Count{std::ssize(values)}}})}})
                           .at(expectation.place)
                           .and_at(stay.place, said(P::the_stay))
                           .about(stay.name));
        continue;
      }
      const Length off = values.front() - expectation.value.value;
      const Length size = off < Length{} ? -off : off;
      if (size <= bound + threshold::negligible) {
        report.pass(stay.name, {P::quantity_is, {Words{expectation.quantity}, values.front()}});
        continue;
      }
      report.find(diagnose("expectation-missed", {{"stay", stay.name},
                                                  {"quantity", expectation.quantity},
                                                  {"found", length_text(values.front())},
                                                  {"expected", length_text(expectation.value.value)},
                                                  {"bound", length_text(bound)},
                                                  {"off", length_text(size)}})
                      .at(expectation.place, say(rig, {P::as_calculated, {values.front()}}))
                      .and_at(stay.place, said(P::the_stay))
                      .about(stay.name));
    }
  }
}

void check_test_splice_reversed(const Rig& rig, const Derived& /*derived*/, CheckReport& report) {
  for (const Record& record : rig.records) {
    if (record.kind != RecordKind::test_splice)
      continue;
    const auto before = fact_length(record.facts, fact_names.before);
    const auto after = fact_length(record.facts, fact_names.after);
    const auto set = fact_length(record.facts, fact_names.set);
    if (!before || !after)
      continue;
    const auto find = [&](P what, Length is, P against, Length was) {
      report.find(diagnose("test-splice-reversed", {{"rope", record.of},
                                                    {"what", say(rig, {what, {is}})},
                                                    {"against", say(rig, {against, {was}})}})
                      .at(record.place)
                      .about(record.of));
    };
    if (after->value > before->value)
      find(P::longer_after, after->value, P::before, before->value);
    else if (set && set->value < after->value)
      find(P::shorter_when_set, set->value, P::after_splicing, after->value);
    else if (set && set->value > before->value)
      find(P::longer_when_set, set->value, P::before, before->value);
    else
      report.pass(record.of, {P::from_to, {before->value, after->value}});
  }
}

} // namespace

const CheckTable checks{CheckRow{"expectation-missed", check_expectation_missed},
                        CheckRow{"test-splice-reversed", check_test_splice_reversed}};

} // namespace sheerpole::expectations
