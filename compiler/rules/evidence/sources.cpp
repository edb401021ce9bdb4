#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "rules/by_side.hpp"
#include "rules/check_table.hpp"
#include "units/format_length.hpp"
#include "units/parse_quantity.hpp"
#include "units/quantity_text.hpp"
#include "wording/checks/any_check_phrases.hpp"
#include "wording/checks/evidence_phrases.hpp"
#include "wording/length_words.hpp"

#include <cstdint>
#include <iterator>
#include <set>
#include <tuple>
#include <vector>

/// What stands behind a number and behind what hangs on the boat.
namespace sheerpole::sources {

namespace {

using Common = AnyCheckPhrase;

using P = EvidenceCheckPhrase;

/// The length at the beginning of a value as written, its source and tolerance left aside. Nothing for
/// anything else.
std::optional<Length> length_of(std::string text) {
  for (;;) {
    const auto read = parse_quantity(text);
    if (read.ok())
      return read.value().dimension == dimension::length ? std::optional(Length::from_si(read.value().si))
                                                         : std::nullopt;
    const std::size_t blank = text.find_last_of(' ');
    if (blank == std::string::npos)
      return std::nullopt;
    text.erase(blank);
  }
}

void check_made_differs(const Rig& rig, const Derived& /*derived*/, CheckReport& report) {
  const Length most = *rig.limits.length(Limit::made_apart);
  for (const Difference& difference : rig.differences) {
    if (difference.origin != Difference::Origin::layer)
      continue;
    const Remark what(P::property_of, {Words{difference.subject}, Words{difference.property}});
    const auto was = length_of(difference.was);
    const auto is = length_of(difference.is);
    if (!was || !is) {
      report.not_checked(difference.subject, not_seen("made-differs", {{"property", difference.property}}));
      continue;
    }
    const Length apart = *is > *was ? *is - *was : *was - *is;
    if (apart <= most)
      report.pass(difference.subject, passed("made-differs", {{"property", difference.property},
                                                              {"is", length_text(*is)},
                                                              {"was", length_text(*was)}}));
    else
      report.find(diagnose("made-differs", {{"what", say(rig, what)},
                                            {"origin", difference.origin_name},
                                            {"is", length_text(*is)},
                                            {"was", length_text(*was)},
                                            {"apart", length_text(apart)},
                                            {"most", length_text(most)}})
                      .at(difference.place)
                      .about(difference.subject));
  }
}

/// A number that reaches a cut and says nothing of where it is from.
struct Untraced {
  std::string name;
  Span place;
};

/// Each once, however many cuts it reaches, in the order in which the cuts meet them.
std::vector<Untraced> untraced_of(const Rig& rig, const Derived& derived) {
  std::set<std::tuple<std::uint32_t, std::uint32_t, std::uint32_t>> seen;
  std::vector<Untraced> all;
  const auto look = [&](const LengthSum& sum) {
    for (const Term& term : sum.terms) {
      const Provenance& from = term.provenance;
      if (from.source_class != SourceClass::unstated || !from.place)
        continue;
      const Span& span = *from.place;
      if (seen.emplace(span.source.value, span.begin, span.end).second)
        all.push_back({term_name(rig, term), span});
    }
  };
  for (const DerivedStay& stay : derived.stays) {
    look(stay.pin_to_pin);
    for (const Piece& piece : stay.pieces) {
      look(piece.body);
      look(piece.cut);
    }
  }
  return all;
}

void check_number_without_source(const Rig& rig, const Derived& derived, CheckReport& report) {
  const double most = *rig.limits.value(Limit::untraced_numbers);
  const std::vector<Untraced> all = untraced_of(rig, derived);
  const Remark count = all.empty()       ? Remark(P::none_untraced)
                       : all.size() == 1 ? Remark(P::one_untraced)
                                         : Remark(P::several_untraced, {Count{std::ssize(all)}});
  if (static_cast<double>(all.size()) <= most) {
    report.pass(said(Common::this_rig), count);
    return;
  }
  constexpr std::size_t named = 3;
  std::string names;
  for (std::size_t i = 0; i < all.size() && i < named; ++i)
    names += (names.empty() ? "" : ", ") + all[i].name;
  if (all.size() > named)
    names = say(rig, {P::and_more, {Words{names}, Count{std::ssize(all) - std::int64_t{named}}}});
  auto builder = diagnose("number-without-source",
                          {{"count", say(rig, count)}, {"most", format_number(most)}, {"names", names}})
                     .at(all.front().place, said(P::no_source_behind))
                     .about(said(Common::this_rig));
  for (std::size_t i = 1; i < all.size() && i < named; ++i)
    builder = std::move(builder).and_at(all[i].place, said(P::nor_here));
  report.find(std::move(builder));
}

void check_installed_without_evidence(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(
      rig, derived, report,
      [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
        const Stay& stay = rig[derived_stay.stay];
        const std::string installed = fact_text(stay.particulars, fact_names.installed);
        const std::string evidence = fact_text(stay.particulars, fact_names.evidence);
        if (installed.empty())
          return;
        if (!evidence.empty())
          of_stay.pass(passed("installed-without-evidence", {{"date", installed}, {"evidence", evidence}}));
        else
          of_stay.find(diagnose("installed-without-evidence", {{"thing", name}, {"date", installed}})
                           .at(stay.place)
                           .about(name));
      });
  for (const Part& part : rig.parts) {
    const std::string installed = fact_text(part.particulars, fact_names.installed);
    const std::string evidence = fact_text(part.particulars, fact_names.evidence);
    if (installed.empty())
      continue;
    if (!evidence.empty())
      report.pass(part.name,
                  passed("installed-without-evidence", {{"date", installed}, {"evidence", evidence}}));
    else
      report.find(diagnose("installed-without-evidence", {{"thing", part.name}, {"date", installed}})
                      .at(part.place)
                      .about(part.name));
  }
}

} // namespace

const CheckTable checks{
    CheckRow{"made-differs", check_made_differs, {Limit::made_apart}},
    CheckRow{"number-without-source", check_number_without_source, {Limit::untraced_numbers}},
    CheckRow{"installed-without-evidence", check_installed_without_evidence}};

} // namespace sheerpole::sources
