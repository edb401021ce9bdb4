#include "calculate/geometry/stay_clearance.hpp"
#include "rules/by_side.hpp"
#include "rules/geometry_checks.hpp"
#include "rules/near_miss_words.hpp"
#include "rules/tip_words.hpp"
#include "units/quantity_text.hpp"

#include <utility>

namespace sheerpole {

namespace {

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

std::string words_of(const SparClearance& at, const std::string& spar) {
  if (at.clear < Length{})
    return "goes through " + spar + ", " + tenths_of(-at.clear) + " inside its surface";
  return "passes " + spar + " at " + tenths_of(at.clear);
}

Diagnostic finding_of(const Stay& stay, const std::string& name, std::size_t segment,
                      const SpacePoint& place, const std::string& other, std::string words,
                      Span other_place) {
  return diagnose("stay-through-spar",
                  {{"stay", name}, {"words", std::move(words)}, {"height", height_text(place)}})
      .at(stay.path[segment].place, "from here down")
      .and_at(other_place, other)
      .about(name)
      .build();
}

} // namespace

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
                      of_stay.find(finding_of(stay, name, at.segment, at.place, body.spar->name,
                                              words_of(at, body.spar->name), body.spar->place));
                    else
                      add(body.spar->name);
                  }
                  for (const NearMiss* miss : by_stay[derived_stay.stay.index()]) {
                    const Spreader& spreader = rig.spreaders[miss->other];
                    const std::string other =
                        spreader.side == stay.side ? without_side(spreader.name) : spreader.name;
                    of_stay.find(finding_of(stay, name, miss->segment, miss->place, other,
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

} // namespace sheerpole
