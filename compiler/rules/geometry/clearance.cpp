#include "calculate/geometry/deck_outline.hpp"
#include "calculate/geometry/stay_clearance.hpp"
#include "rules/by_side.hpp"
#include "rules/check_table.hpp"
#include "rules/geometry/spreader_tips.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"

#include <array>
#include <cmath>
#include <utility>

/// What stays run into: each other, spars, spreaders and the deck.
namespace sheerpole::clearance {

namespace {

std::vector<std::vector<const NearMiss*>> misses_by_stay(const Rig& rig, const NearMisses& misses) {
  std::vector<std::vector<const NearMiss*>> result(rig.stays.size());
  for (const NearMiss& miss : misses.found)
    result[miss.stay.index()].push_back(&miss);
  return result;
}

std::string tenths_of(Length length) {
  return format_millimetres(length, 1) + " mm";
}

std::string height_text(const SpacePoint& place) {
  return format_fixed(std::abs(place.z.metres()), 2) +
         (place.z < Length{} ? " m below the waterline" : " m above the waterline");
}

void check_stays_cross(const Rig& rig, const Derived& derived, CheckReport& report) {
  const auto limit = rig.limits.length(Limit::stays_apart);
  if (!limit)
    return;
  const NearMisses misses = crossing_stays(rig, *limit);
  const auto by_stay = misses_by_stay(rig, misses);
  std::vector<bool> met(rig.stays.size(), false); // each two are told of the first of them
  for (const NearMiss& miss : misses.found)
    met[miss.stay.index()] = met[miss.other] = true;
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  if (stay.path.size() < 2) {
                    of_stay.not_checked("it has no path through points");
                    return;
                  }
                  for (const NearMiss* miss : by_stay[derived_stay.stay.index()]) {
                    const Stay& other = rig.stays[miss->other];
                    const std::string other_name = other.side == stay.side ? other.base : other.name;
                    of_stay.find(diagnose("stays-cross",
                                          {{"stay", name},
                                           {"other", other_name},
                                           {"distance", tenths_of(miss->distance)},
                                           {"least", length_text(least_distance(rig, stay, other, *limit))},
                                           {"height", height_text(miss->place)}})
                                     .at(stay.path[miss->segment].place, "from here down")
                                     .and_at(other.place, "the other stay")
                                     .about(name));
                  }
                  if (!met[derived_stay.stay.index()])
                    of_stay.pass("no other stay within " + length_text(*limit));
                });
  if (!misses.complete)
    report.not_checked("this rig",
                       "so many stays lie close together that not all were held against each other");
}

/// A spar whose girth and length are stated.
struct Body {
  const Spar* spar = nullptr;
  SparBody body;
};

std::string missing_of(const Spar& spar) {
  const bool girth = find_fact(spar.particulars, "girth") != nullptr;
  const bool length = find_fact(spar.particulars, "length") != nullptr;
  if (!girth && !length)
    return "its girth and its length are not stated";
  return girth ? "its length is not stated" : "its girth is not stated";
}

std::vector<Body> bodies_of(const Rig& rig, CheckReport& report) {
  std::vector<Body> result;
  for (const Spar& spar : rig.spars) {
    if (const auto body = spar_body(spar))
      result.push_back({&spar, *body});
    else
      report.not_checked(spar.name, missing_of(spar));
  }
  return result;
}

std::string through_words(const SparClearance& at, const std::string& spar) {
  if (at.clear < Length{})
    return "goes through " + spar + ", " + tenths_of(-at.clear) + " inside its surface";
  return "passes " + spar + " at " + tenths_of(at.clear);
}

Diagnostic through_finding(const Stay& stay, const std::string& name, std::size_t segment,
                           const SpacePoint& place, const std::string& other, std::string words,
                           Span other_place) {
  return diagnose("stay-through-spar",
                  {{"stay", name}, {"words", std::move(words)}, {"height", height_text(place)}})
      .at(stay.path[segment].place, "from here down")
      .and_at(other_place, other)
      .about(name)
      .build();
}

void check_stay_through_spar(const Rig& rig, const Derived& derived, CheckReport& report) {
  const auto limit = rig.limits.length(Limit::stays_apart);
  if (!limit)
    return;
  const std::vector<Body> bodies = bodies_of(rig, report);
  const NearMisses misses = stays_on_spreaders(rig, *limit);
  const auto by_stay = misses_by_stay(rig, misses);
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  if (stay.path.size() < 2) {
                    of_stay.not_checked("it has no path through points");
                    return;
                  }
                  std::string clear_of;
                  const auto add = [&](const std::string& words) {
                    clear_of += (clear_of.empty() ? "" : " and ") + words;
                  };
                  for (const Body& body : bodies) {
                    const SparClearance at = spar_clearance(rig, stay, *body.spar, body.body, *limit);
                    if (at.hit)
                      of_stay.find(through_finding(stay, name, at.segment, at.place, body.spar->name,
                                                   through_words(at, body.spar->name), body.spar->place));
                    else
                      add(body.spar->name);
                  }
                  for (const NearMiss* miss : by_stay[derived_stay.stay.index()]) {
                    const Spreader& spreader = rig.spreaders[miss->other];
                    const std::string other =
                        spreader.side == stay.side ? without_side(spreader.name) : spreader.name;
                    of_stay.find(through_finding(stay, name, miss->segment, miss->place, other,
                                                 "passes " + other + " at " + tenths_of(miss->distance),
                                                 spreader.place));
                  }
                  if (!rig.spreaders.empty() && by_stay[derived_stay.stay.index()].empty())
                    add("the spreaders");
                  if (!clear_of.empty() && of_stay.found().empty())
                    of_stay.pass("clear of " + clear_of);
                });
  if (!misses.complete)
    report.not_checked("this rig",
                       "so many stays and spreaders lie close together that not all were looked at");
}

/// A chainplate may stand a little below the edge of the deck.
constexpr Length spared_at_ends = Length::millimetres(200.0);

void check_stay_through_deck(const Rig& rig, const Derived& derived, CheckReport& report) {
  const auto outline = deck_outline(rig);
  if (!outline) {
    report.not_checked("this rig", "the edge of the deck is not stated (deck-edge of the boat)");
    return;
  }
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  if (stay.path.size() < 2) {
                    of_stay.not_checked("it has no path through points");
                    return;
                  }
                  const std::vector<SpaceSegment> segments = segments_of(rig, stay);
                  for (std::size_t i = 0; i < segments.size(); ++i)
                    if (const auto through = through_deck(segments[i], *outline, spared_at_ends))
                      of_stay.find(
                          diagnose("stay-through-deck",
                                   {{"stay", name}, {"depth", format_millimetres(through->below) + " mm"}})
                              .at(stay.path[i + 1].place, "on the way here")
                              .about(name));
                  if (of_stay.found().empty())
                    of_stay.pass("it does not go through the deck");
                });
}

constexpr std::array rows{
    CheckRow{"stays-cross", check_stays_cross, {Limit::stays_apart}},
    CheckRow{"stay-through-spar", check_stay_through_spar, {Limit::stays_apart}},
    CheckRow{"stay-through-deck", check_stay_through_deck},
};

} // namespace

std::span<const CheckRow> checks() {
  return rows;
}

} // namespace sheerpole::clearance
