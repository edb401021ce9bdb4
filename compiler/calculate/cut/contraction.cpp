#include "calculate/cut/contraction.hpp"

#include "calculate/cut/cut_phrase.hpp"
#include "calculate/facts.hpp"
#include "calculate/length/length_sum.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"

#include <cmath>

namespace sheerpole {

namespace {

/// "test splice of 2026-04-11 by the owner"
Remarks told(const Record& record) {
  const Words date{fact_text(record.facts, fact_names.date)};
  const Words by{fact_text(record.facts, fact_names.by)};
  if (date.text.empty())
    return {{by.text.empty() ? Remark(Derivation::test_splice) : Remark(Derivation::test_splice_by, {by})}};
  return {{by.text.empty() ? Remark(Derivation::test_splice_on, {date})
                           : Remark(Derivation::test_splice_on_by, {date, by})}};
}

} // namespace

std::optional<TestSplice> test_splice(const Rig& rig, const LineMaterial& material) {
  const Record* record = last_record_of(rig, RecordKind::test_splice, material.name);
  if (record == nullptr)
    return std::nullopt;
  const auto bury = fact_length(record->facts, fact_names.bury);
  const auto before = fact_length(record->facts, fact_names.before);
  const auto after = fact_length(record->facts, fact_names.after);
  const auto set = fact_length(record->facts, fact_names.set);
  if (!bury || !before || !after || after->value > before->value)
    return std::nullopt;
  TestSplice result;
  result.place = record->place;
  const Length shortened = before->value - after->value;
  result.contraction.value = shortened / bury->value;
  result.contraction.provenance =
      combine({&before->provenance, &after->provenance, &bury->provenance},
              {Derivation::shortened_over, {told(*record), before->value, after->value, bury->value}});
  Provenance& provenance = result.contraction.provenance;
  if (provenance.source_class == SourceClass::unstated)
    provenance.source_class = SourceClass::measured; // who makes a test splice has measured it
  provenance.place = record->place;
  if (set && shortened > Length{} && set->value >= after->value && set->value <= before->value) {
    Sourced<double> recovered;
    recovered.value = (set->value - after->value) / shortened;
    recovered.provenance = provenance;
    recovered.provenance.derivation = {Derivation::set_to, {told(*record), after->value, set->value}};
    add_assumptions(recovered.provenance.assumptions, set->provenance.assumptions);
    result.recovered = std::move(recovered);
  }
  return result;
}

namespace {

/// The source class is that of the fraction: the buried length is as stated and only scales it.
Term share_of(TermKind kind, const Sourced<double>& share, Length whole, double sign, const Term& base) {
  Term term{kind,
            whole * (sign * share.value),
            share.provenance,
            base.of,
            {CutPhrase::share_of, {Share{share.value}, whole}}};
  add_assumptions(term.provenance.assumptions, base.provenance.assumptions);
  return term;
}

} // namespace

Contraction contraction_of(const Rig& rig, const LineMaterial& material, const Splice& splice) {
  Contraction result;
  const auto test = test_splice(rig, material);
  result.recovered = splice.recovered;
  if (splice.contraction) {
    result.share = splice.contraction;
    if (test &&
        std::fabs(test->contraction.value - splice.contraction->value) > 0.1 * splice.contraction->value)
      result.note = {CutPhrase::test_splice_gives, {Share{test->contraction.value}}};
    return result;
  }
  if (test) {
    result.share = test->contraction;
    if (!result.recovered)
      result.recovered = test->recovered;
    return result;
  }
  const bool heat_set = material.construction.heat_set;
  if (!fact_text(splice.particulars, fact_names.contraction_rule).empty() && heat_set) {
    result.left_out = true;
    result.note = CutPhrase::equals_first_creep;
  }
  return result;
}

std::vector<Term> contraction_terms(const Contraction& contraction, const Term& bury,
                                    const Term* spare_bury) {
  std::vector<Term> terms{share_of(TermKind::contraction, *contraction.share, bury.amount, 1.0, bury)};
  Term all = terms.front();
  if (spare_bury != nullptr) {
    terms.push_back(
        share_of(TermKind::contraction_of_spare, *contraction.share, spare_bury->amount, 1.0, *spare_bury));
    all.amount += terms.back().amount;
    add_assumptions(all.provenance.assumptions, terms.back().provenance.assumptions);
  }
  if (contraction.recovered)
    terms.push_back(
        share_of(TermKind::contraction_given_back, *contraction.recovered, all.amount, -1.0, all));
  return terms;
}

} // namespace sheerpole
