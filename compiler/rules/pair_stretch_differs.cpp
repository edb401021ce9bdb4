#include "calculate/strength/force_text.hpp"
#include "calculate/strength/stay_stiffness.hpp"
#include "rules/by_side.hpp"
#include "rules/strength_checks.hpp"
#include "units/quantity_text.hpp"
#include "wording/say.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole {

namespace {

bool same_lines(const DerivedStay& a, const DerivedStay& b) {
  return std::equal(a.pieces.begin(), a.pieces.end(), b.pieces.begin(), b.pieces.end(),
                    [](const Piece& one, const Piece& other) { return one.material == other.material; });
}

std::string names_of(const Rig& rig, const DerivedStay& stay) {
  std::string names;
  for (const Piece& piece : stay.pieces)
    names += (names.empty() ? "" : " and ") + rig[piece.material].name;
  return names;
}

/// Whether one side has rope where the other has wire, rod or chain.
bool rope_against_wire(const Rig& rig, const DerivedStay& a, const DerivedStay& b) {
  const auto is_rope = [&](const DerivedStay& stay) {
    return rig[rig[stay.stay].material].kind == LineMaterial::Kind::rope;
  };
  return is_rope(a) != is_rope(b);
}

void compare(const Rig& rig, const DerivedStay& port, const DerivedStay& starboard, double most,
             CheckReport& report) {
  const Stay& stay = rig[port.stay];
  if (port.pieces.empty() && starboard.pieces.empty())
    return;
  if (same_lines(port, starboard)) {
    report.pass(stay.base, "of " + names_of(rig, port) + " on both sides");
    return;
  }
  const StayStiffness to_port = stay_stiffness(rig, port.pieces);
  const StayStiffness to_starboard = stay_stiffness(rig, starboard.pieces);
  const auto side = [&](const char* name, const DerivedStay& one, const StayStiffness& stiffness) {
    return std::string(name) + " of " + names_of(rig, one) +
           (stiffness.stiffness ? ", EA " + force_text(*stiffness.stiffness) : "");
  };
  std::string words = side("port", port, to_port) + "; " + side("starboard", starboard, to_starboard);
  bool differs = rope_against_wire(rig, port, starboard);
  if (differs)
    words += ": rope on one side and wire on the other";
  if (to_port.stiffness && to_starboard.stiffness) {
    const Force more = std::max(*to_port.stiffness, *to_starboard.stiffness);
    const Force less = std::min(*to_port.stiffness, *to_starboard.stiffness);
    const double apart = 1.0 - less / more;
    words += ", " + percent_text(apart) + " apart";
    differs = differs || is_below(most, apart);
  } else if (!differs) {
    report.not_checked(stay.base,
                       words + "; " + say(rig, (to_port.stiffness ? to_starboard : to_port).not_stated));
    return;
  }
  if (differs) {
    const Stay& other = rig[starboard.stay];
    auto finding = diagnose("pair-stretch-differs",
                            {{"stay", stay.base}, {"words", words}, {"most", percent_text(most)}})
                       .at(stay.place)
                       .about(stay.base);
    if (!(other.place == stay.place))
      finding = std::move(finding).and_at(other.place, "starboard");
    report.find(std::move(finding));
  } else {
    report.pass(stay.base, words + "; at most " + percent_text(most));
  }
}

} // namespace

void check_pair_stretch_differs(const Rig& rig, const Derived& derived, CheckReport& report) {
  const auto most = rig.limits.value(Limit::stiffness_apart);
  if (!most)
    return;
  for (const DerivedStay& port : derived.stays)
    if (rig[port.stay].side == Side::port)
      if (const DerivedStay* starboard = other_side(rig, derived, port))
        compare(rig, port, *starboard, *most, report);
}

} // namespace sheerpole
