#include "calculate/test_splice.hpp"

#include "calculate/computed_provenance.hpp"
#include "calculate/facts.hpp"
#include "units/quantity_text.hpp"

namespace sheerpole {

namespace {

/// "test splice of 2026-04-11 by the owner"
std::string told(const Record& record) {
  std::string text = "test splice";
  if (const std::string date = fact_text(record.facts, "date"); !date.empty())
    text += " of " + date;
  if (const std::string by = fact_text(record.facts, "by"); !by.empty())
    text += " by " + by;
  return text;
}

} // namespace

std::optional<TestSplice> test_splice(const Rig& rig, const LineMaterial& material) {
  const Record* record = last_record_of(rig, "test-splice", material.name);
  if (record == nullptr)
    return std::nullopt;
  const auto bury = fact_length(record->facts, "bury");
  const auto before = fact_length(record->facts, "before");
  const auto after = fact_length(record->facts, "after");
  const auto set = fact_length(record->facts, "set");
  if (!bury || !before || !after || after->value > before->value)
    return std::nullopt;
  TestSplice result;
  result.place = record->place;
  const Length shortened = before->value - after->value;
  result.contraction.value = shortened / bury->value;
  result.contraction.provenance =
      combine({&before->provenance, &after->provenance, &bury->provenance},
              told(*record) + ": " + length_text(before->value) + " to " + length_text(after->value) +
                  " over a bury of " + length_text(bury->value));
  Provenance& provenance = result.contraction.provenance;
  if (provenance.source_class == SourceClass::unstated)
    provenance.source_class = SourceClass::measured; // who makes a test splice has measured it
  provenance.place = record->place;
  if (set && shortened > Length{} && set->value >= after->value && set->value <= before->value) {
    Sourced<double> recovered;
    recovered.value = (set->value - after->value) / shortened;
    recovered.provenance = provenance;
    recovered.provenance.note =
        told(*record) + ": " + length_text(after->value) + " set to " + length_text(set->value);
    add_assumptions(recovered.provenance.assumptions, set->provenance.assumptions);
    result.recovered = std::move(recovered);
  }
  return result;
}

} // namespace sheerpole
