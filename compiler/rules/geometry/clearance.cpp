#include "calculate/geometry/deck_outline.hpp"
#include "calculate/geometry/stay_clearance.hpp"
#include "model/fact_name.hpp"
#include "rules/by_side.hpp"
#include "rules/check_table.hpp"
#include "rules/geometry/spreader_tips.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"
#include "wording/checks/any_check_phrases.hpp"
#include "wording/checks/geometry_phrases.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

/// What stays run into: each other, spars, spreaders and the deck.
namespace sheerpole::clearance {

namespace {

using Common = AnyCheckPhrase;

using P = GeometryCheckPhrase;

std::vector<std::vector<const NearMiss*>> misses_by_stay(const Rig& rig, const NearMisses& misses) {
  std::vector<std::vector<const NearMiss*>> result(rig.stays.size());
  for (const NearMiss& miss : misses.found)
    result[miss.stay.index()].push_back(&miss);
  return result;
}

/// In millimetres, to a tenth.
Words tenths_of(Length length) {
  return {format_millimetres(length, 1)};
}

Words whole_millimetres(Length length) {
  return {format_millimetres(length)};
}

Remark height_words(const SpacePoint& place) {
  return {place.z < Length{} ? P::below_waterline : P::above_waterline,
          {Fixed{std::abs(place.z.metres()), 2}}};
}

/// Looks at each stay that runs through points, by its number; of another it is not known where it runs.
template <class Look>
void look_at_paths(const Rig& rig, const Derived& derived, CheckReport& report, const Look& look) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  if (stay.path.size() < 2)
                    of_stay.not_checked({Common::no_path_through_points});
                  else
                    look(stay, derived_stay.stay.index(), name, of_stay);
                });
}

/// The other of two stays, seen from the first: of its own side by its bare name.
std::string other_name(const Stay& stay, const Stay& other) {
  return other.side == stay.side ? other.base : other.name;
}

Diagnostic cross_finding(const Rig& rig, const NearMiss& miss, const std::string& name, Length limit) {
  const Stay& stay = rig[miss.stay];
  const Stay& other = rig.stays[miss.other];
  return diagnose("stays-cross",
                  {{"stay", name},
                   {"words", say(rig, miss.clear > Length{}
                                          ? Remark{P::passes_at,
                                                   {Words{other_name(stay, other)}, tenths_of(miss.clear)}}
                                          : Remark{P::runs_into, {Words{other_name(stay, other)}}})},
                   {"least", length_text(limit)},
                   {"height", say(rig, height_words(miss.place))}})
      .at(stay.path[miss.segment].place, said(P::from_here_down))
      .and_at(other.place, said(P::other_stay))
      .about(name)
      .build();
}

/// Of each stay the neighbour that comes nearest to it; null where none does. That the two of a pair come
/// near each other at their mast is no news.
std::vector<const NearMiss*> nearest_of_each(const Rig& rig, const NearMisses& misses) {
  std::vector<const NearMiss*> result(rig.stays.size());
  for (const NearMiss& miss : misses.found) {
    if (rig[miss.stay].base == rig.stays[miss.other].base)
      continue;
    for (const std::size_t stay : {miss.stay.index(), miss.other})
      if (result[stay] == nullptr || miss.clear < result[stay]->clear)
        result[stay] = &miss;
  }
  return result;
}

void check_stays_cross(const Rig& rig, const Derived& derived, CheckReport& report) {
  const auto limit = rig.limits.length(Limit::stays_apart);
  if (!limit)
    return;
  const NearMisses misses = neighbouring_stays(rig, neighbours_within, *limit);
  const auto by_stay = misses_by_stay(rig, misses);
  const auto nearest = nearest_of_each(rig, misses);
  look_at_paths(
      rig, derived, report,
      [&](const Stay& stay, std::size_t number, const std::string& name, StayReport& of_stay) {
        for (const NearMiss* miss : by_stay[number]) // each two are told of the first of them
          if (miss->clear < *limit)
            of_stay.find(cross_finding(rig, *miss, name, *limit));
        const NearMiss* next = nearest[number];
        if (next == nullptr)
          of_stay.pass({P::none_within, {misses.complete ? std::max(neighbours_within, *limit) : *limit}});
        else if (next->clear >= *limit)
          of_stay.pass({P::nearest_is,
                        {Words{other_name(
                             stay, rig.stays[next->other == number ? next->stay.index() : next->other])},
                         whole_millimetres(next->clear), Words{say(rig, height_words(next->place))}}});
      });
  if (!misses.complete)
    report.not_checked(said(Common::this_rig), {P::too_many_stays});
}

/// A spar whose girth and length are stated.
struct Body {
  const Spar* spar = nullptr;
  SparBody body;
};

P missing_of(const Spar& spar) {
  const bool girth = find_fact(spar.particulars, fact_names.girth) != nullptr;
  const bool length = find_fact(spar.particulars, fact_names.length) != nullptr;
  if (!girth && !length)
    return P::no_girth_no_length;
  return girth ? P::no_length : P::no_girth;
}

std::vector<Body> bodies_of(const Rig& rig, CheckReport& report) {
  std::vector<Body> result;
  for (const Spar& spar : rig.spars) {
    if (const auto body = spar_body(spar))
      result.push_back({&spar, *body});
    else
      report.not_checked(spar.name, {missing_of(spar)});
  }
  return result;
}

Remark through_words(const SparClearance& at, const std::string& spar) {
  if (at.clear < Length{})
    return {P::goes_through, {Words{spar}, tenths_of(-at.clear)}};
  return {P::passes_at, {Words{spar}, tenths_of(at.clear)}};
}

Diagnostic through_finding(const Rig& rig, const Stay& stay, const std::string& name, std::size_t segment,
                           const SpacePoint& place, const std::string& other, const Remark& words,
                           Span other_place) {
  return diagnose("stay-through-spar",
                  {{"stay", name}, {"words", say(rig, words)}, {"height", say(rig, height_words(place))}})
      .at(stay.path[segment].place, said(P::from_here_down))
      .and_at(other_place, other)
      .about(name)
      .build();
}

/// "mast and boom and the spreaders"
std::string all_of(const std::vector<std::string>& names) {
  std::string text;
  for (const std::string& name : names)
    text = text.empty() ? name : joined({text, name}, Join::and_word);
  return text;
}

void check_stay_through_spar(const Rig& rig, const Derived& derived, CheckReport& report) {
  const auto limit = rig.limits.length(Limit::stays_apart);
  if (!limit)
    return;
  const std::vector<Body> bodies = bodies_of(rig, report);
  const NearMisses misses = stays_on_spreaders(rig, *limit);
  const auto by_stay = misses_by_stay(rig, misses);
  look_at_paths(rig, derived, report,
                [&](const Stay& stay, std::size_t number, const std::string& name, StayReport& of_stay) {
                  std::vector<std::string> clear_of;
                  for (const Body& body : bodies) {
                    const SparClearance at = spar_clearance(rig, stay, *body.spar, body.body, *limit);
                    if (at.hit)
                      of_stay.find(through_finding(rig, stay, name, at.segment, at.place, body.spar->name,
                                                   through_words(at, body.spar->name), body.spar->place));
                    else
                      clear_of.push_back(body.spar->name);
                  }
                  for (const NearMiss* miss : by_stay[number]) {
                    const Spreader& spreader = rig.spreaders[miss->other];
                    const std::string other =
                        spreader.side == stay.side ? without_side(spreader.name) : spreader.name;
                    of_stay.find(through_finding(rig, stay, name, miss->segment, miss->place, other,
                                                 {P::passes_at, {Words{other}, tenths_of(miss->clear)}},
                                                 spreader.place));
                  }
                  if (!rig.spreaders.empty() && by_stay[number].empty())
                    clear_of.push_back(said(P::the_spreaders));
                  if (!clear_of.empty() && of_stay.found().empty())
                    of_stay.pass({P::clear_of, {Words{all_of(clear_of)}}});
                });
  if (!misses.complete)
    report.not_checked(said(Common::this_rig), {P::too_many_spreaders});
}

/// A chainplate may stand a little below the edge of the deck.
constexpr Length spared_at_ends = Length::millimetres(200.0);

void check_stay_through_deck(const Rig& rig, const Derived& derived, CheckReport& report) {
  const auto outline = deck_outline(rig);
  if (!outline) {
    report.not_checked(said(Common::this_rig), {P::no_deck_edge});
    return;
  }
  look_at_paths(
      rig, derived, report,
      [&](const Stay& stay, std::size_t /*number*/, const std::string& name, StayReport& of_stay) {
        const std::vector<SpaceSegment> segments = segments_of(rig, stay);
        for (std::size_t i = 0; i < segments.size(); ++i)
          if (const auto through = through_deck(segments[i], *outline, spared_at_ends))
            of_stay.find(diagnose("stay-through-deck",
                                  {{"stay", name}, {"depth", format_millimetres(through->below) + " mm"}})
                             .at(stay.path[i + 1].place, said(P::on_the_way))
                             .about(name));
        if (of_stay.found().empty())
          of_stay.pass({P::not_through_deck});
      });
}

} // namespace

const CheckTable checks{CheckRow{"stays-cross", check_stays_cross, {Limit::stays_apart}},
                        CheckRow{"stay-through-spar", check_stay_through_spar, {Limit::stays_apart}},
                        CheckRow{"stay-through-deck", check_stay_through_deck}};

} // namespace sheerpole::clearance
