#include "rules/splice_words.hpp"

#include "units/format_length.hpp"

#include <cmath>
#include <set>
#include <utility>

namespace sheerpole {

namespace {

template <class Key>
void look_at_each(const Rig& rig, const Derived& derived, CheckReport& report, const LookAtSplice& look,
                  const Key& key) {
  look_at_stays(
      rig, derived, report,
      [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
        const Stay& stay = rig[derived_stay.stay];
        std::set<std::pair<const void*, const void*>> seen; // asked, never gone through
        for (const SplicedEnd& end : spliced_ends(rig, stay))
          if (const void* thing = key(end); thing != nullptr && seen.insert({thing, end.rope}).second)
            look(end, stay, name, of_stay);
      });
}

} // namespace

double bury_diameters(const SplicedEnd& end) {
  return std::round(end.bury() / end.rope->diameter.value * 10.0) / 10.0;
}

std::string diameters_text(double diameters) {
  return format_number(std::round(diameters * 10.0) / 10.0) + " d";
}

std::string splice_name(const SplicedEnd& end) {
  return end.splice->name + " on " + end.rope->name;
}

std::string eye_name(const SplicedEnd& end) {
  return end.rope->name + " round " + end.end.part->name;
}

void look_at_buries(const Rig& rig, const Derived& derived, CheckReport& report, const LookAtSplice& look) {
  look_at_each(rig, derived, report, look,
               [](const SplicedEnd& end) -> const void* { return end.is_bury() ? end.splice : nullptr; });
}

void look_at_eyes(const Rig& rig, const Derived& derived, CheckReport& report, const LookAtSplice& look) {
  look_at_each(rig, derived, report, look,
               [](const SplicedEnd& end) -> const void* { return end.end.part; });
}

EyeSize eye_size(const Rig& rig, const EyeShape& shape) {
  constexpr double rounding = 1e-9;
  const auto below = [&](Limit limit) {
    const auto bound = rig.limits.value(limit);
    return bound && shape.seats < *bound - rounding;
  };
  if (below(Limit::eye_least))
    return EyeSize::too_short;
  const auto angle = rig.limits.value(Limit::eye_angle);
  if (angle && shape.half_angle_radians > *angle + rounding)
    return EyeSize::angle_wide;
  return below(Limit::eye_usual) ? EyeSize::below_usual : EyeSize::fine;
}

std::string eye_not_known(const SplicedEnd& end) {
  const End* seat = end.end.of_type("rope-seat");
  if (seat == nullptr || seat->find("diameter") == nullptr)
    return eye_name(end) + ": the diameter of the rope-seat is not stated";
  if (seat->find("throat") == nullptr)
    return eye_name(end) + ": the throat of the rope-seat is not stated";
  return eye_name(end) + ": the throat lies within the rope on the seat";
}

} // namespace sheerpole
