#include "calculate/change/sensitivity.hpp"

#include "calculate/adjust/state_lengths.hpp"
#include "calculate/length/path_length.hpp"
#include "model/kind_words.hpp"
#include "units/si_factors.hpp"

#include <algorithm>
#include <set>

namespace sheerpole {

namespace {

constexpr Length step = Length::millimetres(10.0);
constexpr Length least_shown = Length::millimetres(0.005);

/// The places of a path.
std::vector<Vector3> places_of(const Rig& rig, const Stay& stay) {
  std::vector<Vector3> places;
  for (const PathStop& stop : stay.path)
    places.push_back(rig[stop.point].position);
  return places;
}

Length length_of(const std::vector<Vector3>& places) {
  Length sum;
  for (std::size_t i = 0; i + 1 < places.size(); ++i)
    sum += distance(places[i], places[i + 1]);
  return sum;
}

class StaySensitivity {
public:
  StaySensitivity(const Rig& rig, const DerivedStay& derived, std::vector<Sensitivity>& result)
      : rig_(rig), derived_(derived), stay_(rig[derived.stay]), places_(places_of(rig, stay_)),
        length_(length_of(places_)), result_(result) {}

  void add() {
    if (places_.size() > 1) {
      add_points();
      add_spars();
    }
    add_parts();
  }

private:
  const Rig& rig_;
  const DerivedStay& derived_;
  const Stay& stay_;
  std::vector<Vector3> places_;
  Length length_;
  std::vector<Sensitivity>& result_;

  /// How the path changes when its places are these.
  void moved(const std::string& what, SmallChange by, const std::vector<Vector3>& places) {
    const Length change = length_of(places) - length_;
    if (change < least_shown && -change < least_shown)
      return;
    result_.push_back({derived_.stay, what, by, change, change, derived_.route == LengthRoute::path});
  }

  void add_points() {
    std::set<std::string> seen;
    for (const PathStop& stop : stay_.path) {
      const Point& point = rig_[stop.point];
      if (!seen.insert(point.name).second)
        continue;
      for (const auto& [axis, by] :
           {std::pair(&Vector3::x, SmallChange::forward), std::pair(&Vector3::y, SmallChange::to_starboard),
            std::pair(&Vector3::z, SmallChange::up)}) {
        std::vector<Vector3> places = places_;
        for (std::size_t i = 0; i < places.size(); ++i)
          if (stay_.path[i].point == stop.point)
            places[i].*axis += step;
        moved(point.name, by, places);
      }
    }
  }

  void add_spars() {
    for (const Spar& spar : rig_.spars) {
      std::vector<Vector3> raised = places_;
      std::vector<Vector3> leant = places_;
      bool carries = false;
      // What lies aft of its heel rises outboard when it turns the other way.
      const double angle = spar.sort == SparSort::boomkin ? -degree : degree;
      for (std::size_t i = 0; i < places_.size(); ++i) {
        if (rig_[stay_.path[i].point].spar != spar.name)
          continue;
        carries = true;
        raised[i].z += step;
        leant[i] = turned_about_heel(places_[i], spar, angle);
      }
      if (!carries)
        continue;
      const bool lies = spar.sort == SparSort::bowsprit || spar.sort == SparSort::boomkin;
      moved(spar.name, lies ? SmallChange::further_up : SmallChange::further_aft, leant);
      moved(spar.name, SmallChange::up, raised);
    }
  }

  void add_parts() {
    std::set<std::string> seen;
    for (const StackItem& item : stay_.stack) {
      if (item.kind != StackItem::Kind::part)
        continue;
      const Part& part = rig_[item.part];
      if (part.role == Part::Role::boat_fitting || part.role == Part::Role::worn ||
          !seen.insert(part.name).second)
        continue;
      int count = 0;
      for (const StackItem& other : stay_.stack)
        if (other.kind == StackItem::Kind::part && other.part == item.part)
          count += other.count;
      result_.push_back({derived_.stay, part.name,
                         part.role == Part::Role::adjuster ? SmallChange::set_longer : SmallChange::longer,
                         Length{}, -(step * static_cast<double>(count)), true});
    }
  }
};

} // namespace

std::vector<Sensitivity> sensitivities(const Rig& rig, const Derived& derived) {
  std::vector<Sensitivity> result;
  for (const DerivedStay& stay : derived.stays)
    StaySensitivity(rig, stay, result).add();
  return result;
}

} // namespace sheerpole
