#include "calculate/cut/contraction.hpp"

#include "calculate/cut/cut_phrase.hpp"
#include "calculate/facts.hpp"
#include "calculate/length/length_sum.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "units/parse_quantity.hpp"

#include <algorithm>
#include <cmath>
#include <tuple>
#include <utility>

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

/// Standard uncertainty of one mark by half of the smallest division that it is written in. Source: JCGM
/// 100:2008, F.2.2.1; that one reads to half a division is common practice, no source.
double read_to(const Sourced<Length>& mark) {
  const auto division = smallest_division(mark.provenance.written);
  return division ? division->metres() / 2.0 / std::sqrt(3.0) : 0.0;
}

bool counts_for(const Record& record, const LineMaterial& material, const Splice& splice) {
  if (record.kind != RecordKind::test_splice || record.of != material.name)
    return false;
  const Particular* named = find_fact(record.facts, fact_names.splice);
  return named == nullptr || named->names.empty() || named->names.front() == splice.name;
}

std::optional<TestSplice> read_test(const Record& record) {
  const auto bury = fact_length(record.facts, fact_names.bury);
  const auto before = fact_length(record.facts, fact_names.before);
  const auto after = fact_length(record.facts, fact_names.after);
  const auto set = fact_length(record.facts, fact_names.set);
  if (!bury || !before || !after)
    return std::nullopt;
  TestSplice result;
  result.place = record.place;
  result.date = fact_text(record.facts, fact_names.date);
  result.by = fact_text(record.facts, fact_names.by);
  const Length shortened = before->value - after->value;
  result.contraction.value = shortened / bury->value;
  result.read_to = std::hypot(read_to(*before), read_to(*after)) / bury->value.metres();
  result.contraction.provenance =
      combine({&before->provenance, &after->provenance, &bury->provenance},
              {Derivation::shortened_over, {told(record), before->value, after->value, bury->value}});
  Provenance& provenance = result.contraction.provenance;
  if (provenance.source_class == SourceClass::unstated)
    provenance.source_class = SourceClass::measured; // who makes a test splice has measured it
  provenance.place = record.place;
  if (set && shortened > Length{} && set->value >= after->value && set->value <= before->value) {
    Sourced<double> recovered;
    recovered.value = (set->value - after->value) / shortened;
    recovered.provenance = provenance;
    recovered.provenance.derivation = {Derivation::set_to, {told(record), after->value, set->value}};
    add_assumptions(recovered.provenance.assumptions, set->provenance.assumptions);
    result.recovered = std::move(recovered);
  }
  return result;
}

/// The mean of some shares, with the note of each.
Sourced<double> mean_of(const std::vector<const Sourced<double>*>& shares) {
  if (shares.size() == 1)
    return *shares.front();
  Sourced<double> mean;
  std::vector<const Provenance*> sources;
  Remarks told{{}, Join::semicolon};
  for (const Sourced<double>* share : shares) {
    mean.value += share->value / static_cast<double>(shares.size());
    sources.push_back(&share->provenance);
    told.all.push_back(share->provenance.derivation);
  }
  mean.provenance = combine(sources, {Derivation::each, {std::move(told)}});
  return mean;
}

std::optional<double> scatter_of(const std::vector<TestSplice>& tests, bool recovered_stated) {
  if (tests.size() < 2)
    return std::nullopt;
  const bool all_set =
      !recovered_stated &&
      std::all_of(tests.begin(), tests.end(), [](const TestSplice& one) { return one.recovered; });
  const auto count = static_cast<double>(tests.size());
  const auto lasting = [&](const TestSplice& one) {
    return one.contraction.value * (all_set ? 1.0 - one.recovered->value : 1.0);
  };
  double mean = 0.0;
  double finest = 0.0;
  for (const TestSplice& one : tests) {
    mean += lasting(one) / count;
    finest = std::max(finest, one.read_to);
  }
  double squares = 0.0;
  for (const TestSplice& one : tests)
    squares += (lasting(one) - mean) * (lasting(one) - mean);
  return std::max(finest, std::sqrt(squares / (count - 1.0)));
}

} // namespace

TestSplices test_splices(const Rig& rig, const LineMaterial& material, const Splice& splice) {
  TestSplices result;
  for (const Record& record : rig.records)
    if (counts_for(record, material, splice))
      if (auto test = read_test(record))
        result.all.push_back(std::move(*test));
  // A sum of rounded numbers depends on their order, so the order is made one.
  std::sort(result.all.begin(), result.all.end(), [](const TestSplice& a, const TestSplice& b) {
    return std::tie(a.date, a.contraction.value, a.by) < std::tie(b.date, b.contraction.value, b.by);
  });
  std::vector<const Sourced<double>*> shares;
  std::vector<const Sourced<double>*> recovered;
  for (const TestSplice& test : result.all) {
    shares.push_back(&test.contraction);
    if (test.recovered)
      recovered.push_back(&*test.recovered);
  }
  if (!shares.empty())
    result.contraction = mean_of(shares);
  if (!recovered.empty())
    result.recovered = mean_of(recovered);
  result.scatter = scatter_of(result.all, splice.recovered.has_value());
  return result;
}

namespace {

/// The source class is that of the fraction: the buried length is as stated and only scales it.
Term share_of(TermKind kind, const Sourced<double>& share, std::size_t tests, Length whole, double sign,
              const Term& base) {
  Term term{kind,
            whole * (sign * share.value),
            share.provenance,
            base.of,
            {CutPhrase::share_of, {Share{share.value}, whole}}};
  if (tests > 1)
    term.how = {CutPhrase::mean_share_of,
                {Share{share.value}, whole, Count{static_cast<std::int64_t>(tests)}}};
  add_assumptions(term.provenance.assumptions, base.provenance.assumptions);
  return term;
}

} // namespace

Contraction contraction_of(const Rig& rig, const LineMaterial& material, const Splice& splice) {
  Contraction result;
  const TestSplices tests = test_splices(rig, material, splice);
  const bool measured =
      splice.contraction && splice.contraction->provenance.source_class == SourceClass::measured;
  const bool by_tests = tests.contraction && !measured;
  result.share = by_tests ? tests.contraction : splice.contraction;
  result.tests = by_tests ? tests.all.size() : 0;
  if (by_tests && splice.contraction)
    result.notes.push_back({CutPhrase::tests_before_stated, {Share{splice.contraction->value}}});
  else if (measured && tests.contraction && splice.contraction->value != tests.contraction->value)
    result.notes.push_back({CutPhrase::test_splice_gives, {Share{tests.contraction->value}}});
  result.recovered = splice.recovered;
  if (!result.recovered && by_tests)
    result.recovered = tests.recovered;
  if (by_tests && tests.all.size() == 1)
    result.notes.push_back(CutPhrase::one_test_splice);
  if (fact_text(splice.particulars, fact_names.contraction_rule).empty())
    return result;
  if (!material.construction.heat_set) {
    if (result.share)
      result.notes.push_back(CutPhrase::rule_for_heat_set_only);
  } else if (result.recovered) {
    result.notes.push_back(CutPhrase::setting_before_rule);
  } else {
    result.by_first_creep = true;
    result.notes.push_back(CutPhrase::equals_first_creep);
  }
  return result;
}

std::vector<Term> contraction_terms(const Contraction& contraction, const Term& bury,
                                    const Term* spare_bury) {
  std::vector<Term> terms{
      share_of(TermKind::contraction, *contraction.share, contraction.tests, bury.amount, 1.0, bury)};
  Term all = terms.front();
  if (spare_bury != nullptr) {
    terms.push_back(share_of(TermKind::contraction_of_spare, *contraction.share, contraction.tests,
                             spare_bury->amount, 1.0, *spare_bury));
    all.amount += terms.back().amount;
    add_assumptions(all.provenance.assumptions, terms.back().provenance.assumptions);
  }
  if (contraction.recovered)
    terms.push_back(
        share_of(TermKind::contraction_given_back, *contraction.recovered, 0, all.amount, -1.0, all));
  return terms;
}

} // namespace sheerpole
