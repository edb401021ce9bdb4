#include "calculate/cut/contraction.hpp"
#include "rules/by_side.hpp"
#include "rules/check_table.hpp"
#include "rules/splices/look_at_splices.hpp"
#include "units/quantity_text.hpp"
#include "wording/checks/splice_phrases.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <set>
#include <string>

/// How much the splices shorten a rope, and whether there is room for it.
namespace sheerpole::contractions {

namespace {

using P = SpliceCheckPhrase;

constexpr double rounding = 1e-9;

double apart(const TestSplices& tests) {
  const auto [least, most] =
      std::minmax_element(tests.all.begin(), tests.all.end(), [](const TestSplice& a, const TestSplice& b) {
        return a.contraction.value < b.contraction.value;
      });
  return most->contraction.value - least->contraction.value;
}

Remark shares_of(const TestSplices& tests) {
  Remarks shares{{}, Join::and_word};
  for (const TestSplice& test : tests.all)
    shares.all.push_back({P::one_share, {Share{test.contraction.value}}});
  return {P::tests_give, {Count{static_cast<std::int64_t>(tests.all.size())}, std::move(shares)}};
}

void compare_tests(const Rig& rig, const LineMaterial& rope, const TestSplices& tests,
                   CheckReport& report) {
  if (tests.all.size() < 2)
    return; // one is compared with nothing
  const double most = *rig.limits.value(Limit::contraction_apart);
  const Remark words = shares_of(tests);
  const double over_mean = apart(tests) / tests.contraction->value;
  if (!(over_mean > most + rounding)) {
    report.pass(rope.name, words);
    return;
  }
  auto finding = diagnose("test-splices-differ", {{"rope", rope.name},
                                                  {"words", say(rig, words)},
                                                  {"apart", percent_text(over_mean)},
                                                  {"most", percent_text(most)}})
                     .at(tests.all.front().place)
                     .about(rope.name);
  for (std::size_t i = 1; i < tests.all.size(); ++i)
    finding = std::move(finding).and_at(tests.all[i].place, said(P::another_test));
  report.find(std::move(finding));
}

void check_test_splices_differ(const Rig& rig, const Derived& /*derived*/, CheckReport& report) {
  for (const LineMaterial& rope : rig.materials) {
    const TestSplices of_any = test_splices(rig, rope, Splice{}); // those that name no splice
    compare_tests(rig, rope, of_any, report);
    for (const Splice& splice : rig.splices)
      if (const TestSplices tests = test_splices(rig, rope, splice); tests.all.size() > of_any.all.size())
        compare_tests(rig, rope, tests, report);
  }
}

/// Each splice that states how much it shortens its rope.
const void* stated_by(const SplicedEnd& end) {
  return end.splice->contraction ? end.splice : nullptr;
}

/// What is stated may be as far from the mean of the tests as the tests are, and as half of what they may
/// be apart.
void check_contraction_differs(const Rig& rig, const Derived& derived, CheckReport& report) {
  const double limit = *rig.limits.value(Limit::contraction_apart);
  look_at_splices(
      rig, derived, report, stated_by,
      [&](const SplicedEnd& end, const Stay& stay, const std::string& name, StayReport& of_stay) {
        const TestSplices tests = test_splices(rig, *end.rope, *end.splice);
        if (!tests.contraction)
          return; // one way only
        const Sourced<double>& stated = *end.splice->contraction;
        const double mean = tests.contraction->value;
        const double most = std::max(apart(tests) / 2.0, limit / 2.0 * mean);
        const Remark words(P::stated_and_tests, {Words{end.splice->name}, Words{end.rope->name},
                                                 Share{stated.value}, Share{mean}});
        if (std::fabs(stated.value - mean) <= most + rounding) {
          of_stay.pass(words);
          return;
        }
        const bool measured = stated.provenance.source_class == SourceClass::measured;
        of_stay.find(diagnose("contraction-differs",
                              {{"stay", name},
                               {"words", say(rig, words)},
                               {"most", percent_text(most)},
                               {"taken", said(measured ? P::stated_is_taken : P::tests_are_taken)}})
                         .at(stated.provenance.place.value_or(end.splice->place), said(P::stated_here))
                         .and_at(tests.all.front().place, said(P::a_test))
                         .and_at(stay.stack[end.item].place, said(P::spliced_here))
                         .about(name));
      });
}

/// The splices of one rope, by how the cut counts what their buries take.
struct CountedIn {
  std::set<std::string> splices; // more than one is asked for
  std::optional<SplicedEnd> by_creep;
  std::optional<SplicedEnd> by_share;
  double share = 0.0; ///< of `by_share`
};

std::map<const LineMaterial*, CountedIn> counted_in_ropes(const Rig& rig) {
  std::map<const LineMaterial*, CountedIn> ropes;
  for (const Stay& stay : rig.stays)
    for (const SplicedEnd& end : spliced_ends(rig, stay)) {
      CountedIn& of_rope = ropes[end.rope];
      if (!of_rope.splices.insert(end.splice->name).second)
        continue;
      const Contraction contraction = contraction_of(rig, *end.rope, *end.splice);
      if (contraction.by_first_creep && !of_rope.by_creep)
        of_rope.by_creep = end;
      if (!contraction.by_first_creep && contraction.share && !of_rope.by_share) {
        of_rope.by_share = end;
        of_rope.share = contraction.share->value;
      }
    }
  return ropes;
}

/// The first creep gives back what the buries of a rope take, or it does not: of two stays that count it in
/// two ways one is wrong once it has crept.
void check_contraction_two_ways(const Rig& rig, const Derived& /*derived*/, CheckReport& report) {
  const auto ropes = counted_in_ropes(rig);
  for (const LineMaterial& rope : rig.materials) { // in the order of the file
    const auto found = ropes.find(&rope);
    if (found == ropes.end() || found->second.splices.size() < 2)
      continue;
    const auto& [splices, by_creep, by_share, share] = found->second;
    if (!by_creep || !by_share) {
      if (by_creep || by_share)
        report.pass(rope.name, {P::counted_one_way, {Count{static_cast<std::int64_t>(splices.size())}}});
      continue;
    }
    const Length off = by_creep->bury() * share;
    const Remark words(P::counted_two_ways,
                       {Words{by_creep->splice->name}, Words{by_share->splice->name}, Share{share}, off});
    report.find(diagnose("contraction-two-ways", {{"rope", rope.name}, {"words", say(rig, words)}})
                    .at(by_creep->splice->place, said(P::counts_none))
                    .and_at(by_share->splice->place, said(P::counts_it))
                    .about(rope.name));
  }
}

void check_first_fit_no_room(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  if (!stay.first_fit)
                    return; // no splice goes by the rule
                  const FirstFit& fit = *stay.first_fit;
                  if (!fit.short_by) {
                    of_stay.not_checked(P::no_test_for_first_fit);
                    return;
                  }
                  const Remark words(P::first_fit_needs, {*fit.short_by, fit.to_slacken});
                  if (fit.has_room())
                    of_stay.pass(words);
                  else
                    of_stay.find(diagnose("first-fit-no-room", {{"stay", name}, {"words", say(rig, words)}})
                                     .at(rig[stay.stay].place)
                                     .about(name));
                });
}

} // namespace

const CheckTable checks{
    CheckRow{"test-splices-differ", check_test_splices_differ, {Limit::contraction_apart}},
    CheckRow{"contraction-differs", check_contraction_differs, {Limit::contraction_apart}},
    CheckRow{"contraction-two-ways", check_contraction_two_ways},
    CheckRow{"first-fit-no-room", check_first_fit_no_room},
};

} // namespace sheerpole::contractions
