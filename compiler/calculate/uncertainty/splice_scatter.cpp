#include "calculate/uncertainty/splice_scatter.hpp"

#include "calculate/cut/line_ends.hpp"
#include "calculate/facts.hpp"
#include "calculate/uncertainty/uncertainty_phrases.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"

#include <algorithm>
#include <cmath>
#include <string_view>
#include <utility>

namespace sheerpole {

namespace {

/// The numbers of a test splice, in the rig that they are kept in.
std::vector<Particular*> marks_of(Record& record) {
  std::vector<Particular*> result;
  for (Particular& fact : record.facts)
    for (const std::string_view name :
         {fact_names.bury.text, fact_names.before.text, fact_names.after.text, fact_names.set.text})
      if (fact.name == name)
        result.push_back(&fact);
  return result;
}

bool is_test_of(const Record& record, const Rig& rig, MaterialId rope) {
  return record.kind == RecordKind::test_splice && record.of == rig[rope].name;
}

} // namespace

double BuriesOnRope::standard() const {
  if (!tests.scatter || sum <= 0.0)
    return 0.0;
  return *tests.scatter * std::sqrt(1.0 / static_cast<double>(tests.all.size()) + squares / (sum * sum));
}

std::vector<BuriesOnRope> buries_of(const Rig& rig, StayId id) {
  std::vector<BuriesOnRope> result;
  for (const SplicedEnd& end : spliced_ends(rig, rig[id])) {
    if (!end.is_bury())
      continue;
    const auto rope = MaterialId{static_cast<std::uint32_t>(end.rope - rig.materials.data())};
    auto found = std::find_if(result.begin(), result.end(),
                              [&](const BuriesOnRope& one) { return one.rope == rope; });
    if (found == result.end()) {
      found = result.emplace(result.end());
      found->rope = rope;
    }
    if (contraction_of(rig, *end.rope, *end.splice).by_first_creep) {
      found->by_rule = true;
      continue;
    }
    const double bury =
        (end.bury() + (end.end.item->spare_bury ? end.end.item->spare_bury->value : Length{})).metres();
    found->sum += bury;
    found->squares += bury * bury;
    TestSplices tests = test_splices(rig, *end.rope, *end.splice);
    if (found->splices.empty() || tests.all.size() < found->tests.all.size())
      found->tests = std::move(tests);
    found->splices.push_back(end.splice);
  }
  return result;
}

std::map<const void*, double> follow_scatter(Rig& trial, const Rig& rig, const BuriesOnRope& buries) {
  std::map<const void*, double> result;
  const double standard = buries.standard();
  for (Record& record : trial.records) {
    const auto bury = fact_length(record.facts, fact_names.bury);
    if (!is_test_of(record, rig, buries.rope) || !bury)
      continue;
    for (const Particular* mark : marks_of(record))
      if (mark->name == fact_names.after.text || mark->name == fact_names.set.text)
        result[&mark->value.value] = -standard * bury->value.metres();
  }
  for (Splice& splice : trial.splices)
    if (splice.contraction && splice.contraction->provenance.source_class == SourceClass::measured &&
        std::any_of(buries.splices.begin(), buries.splices.end(),
                    [&](const Splice* one) { return one->name == splice.name; }))
      result[&splice.contraction->value] = standard;
  return result;
}

/// What the scatter of the test splices holds already: a mark that is off differs from test to test.
std::set<const void*> held_by_scatter(Rig& trial, const Rig& rig, StayId id) {
  std::set<const void*> result;
  for (const BuriesOnRope& buries : buries_of(rig, id))
    if (buries.tests.scatter)
      for (Record& record : trial.records)
        if (is_test_of(record, rig, buries.rope))
          for (const Particular* mark : marks_of(record))
            result.insert(&mark->value.value);
  return result;
}

/// What nobody knows of the splices of a stay.
std::vector<Remark> unknown_of_splices(const Rig& rig, StayId id) {
  std::vector<Remark> result;
  for (const BuriesOnRope& buries : buries_of(rig, id)) {
    if (buries.tests.all.size() == 1 && !buries.splices.empty())
      result.push_back({UncertaintyPhrase::repeatability_of, {buries.rope}});
    if (buries.by_rule)
      result.push_back({UncertaintyPhrase::first_creep_rule, {buries.rope}});
  }
  return result;
}

} // namespace sheerpole
