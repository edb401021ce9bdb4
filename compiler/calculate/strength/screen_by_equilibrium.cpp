#include "calculate/facts.hpp"
#include "calculate/strength/screening_inputs.hpp"
#include "calculate/strength/shroud_levels.hpp"
#include "calculate/strength/transverse_loads.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"

#include <algorithm>
#include <numbers>
#include <utility>

namespace sheerpole {

namespace {

std::string degrees(double radians) {
  return format_fixed(radians * 180.0 / std::numbers::pi, 3) + " deg";
}

const Spar* spar_of(const Rig& rig, const ShroudLevels& shrouds) {
  for (const ShroudLevel& level : shrouds.levels)
    for (const Spar& spar : rig.spars)
      if (spar.name == rig[level.point].spar)
        return &spar;
  return nullptr;
}

class Equilibrium {
public:
  Equilibrium(const Rig& rig, const Record& record, const Stay& stay, LoadScreening& screening)
      : rig_(rig), stay_(stay), screening_(screening), inputs_(rig, record, screening),
        shrouds_(shroud_levels(rig, stay)) {}

  void run() {
    inputs_.not_used({"half-beam", "load-factor", "share", "break-factor"});
    const auto force = side_force();
    screening_.not_checked.insert(screening_.not_checked.end(), shrouds_.misses.begin(),
                                  shrouds_.misses.end());
    if (force && screening_.not_checked.empty())
      solve(*force);
    if (!screening_.not_checked.empty())
      screening_.results.clear();
  }

private:
  void solve(Force force) {
    std::vector<MastLevel> levels;
    for (const ShroudLevel& level : shrouds_.levels)
      levels.push_back(level.level);
    levels.back().side_force = force;
    const auto held = transverse_equilibrium(levels, shrouds_.chainplate_from_axis);
    if (!held) {
      screening_.not_checked.emplace_back(
          "a line would have to push, or does not run downwards: look at the points of its path");
      return;
    }
    add_geometry();
    add_results(*held);
    add_panels(*held);
    add_notes();
    screening_.equilibrium = *held;
  }

  void result(std::string name, double newtons, std::string how) {
    screening_.results.push_back({std::move(name), {newtons, dimension::force}, std::move(how), {}});
  }

  /// As stated, else the righting moment over the height of the shroud's top above the waterline.
  std::optional<Force> side_force() {
    if (const auto stated = inputs_.side_force())
      return stated;
    const auto moment = inputs_.righting_moment(false);
    if (!moment || stay_.path.empty())
      return std::nullopt;
    const Point& top = rig_[stay_.path.front().point];
    const auto force = side_force_at(*moment, top.position.z);
    if (!force) {
      inputs_.lacks(top.base + " is not above the waterline");
      return std::nullopt;
    }
    Provenance place = top.provenance;
    place.written.clear();
    inputs_.taken("height of " + top.base + " above the waterline",
                  {top.position.z.metres(), dimension::length}, std::move(place));
    result("side force at " + top.base, force->newtons(), "righting-moment / height above the waterline");
    return force;
  }

  void add_geometry() {
    const auto length = [&](const std::string& name, Length value, PointId point) {
      Provenance place = rig_[point].provenance;
      place.written.clear();
      inputs_.taken(name, {value.metres(), dimension::length}, std::move(place));
    };
    const PointId plate = stay_.path.back().point;
    length("from the mast out to " + shrouds_.chainplate, shrouds_.chainplate_from_axis, plate);
    for (const ShroudLevel& level : shrouds_.levels) {
      length(level.place + " above " + shrouds_.chainplate, level.level.height, level.point);
      if (level.tip.empty())
        continue;
      length("from the mast out to " + level.tip, level.level.spreader_tip, level.point);
      length(level.tip + " above " + level.place, level.level.tip_rise, level.point);
    }
  }

  void add_results(const TransverseEquilibrium& held) {
    for (std::size_t k = held.levels.size(); k-- > 0;) {
      const LevelEquilibrium& at = held.levels[k];
      const ShroudLevel& level = shrouds_.levels[k];
      const std::string below = k == 0 ? shrouds_.chainplate : shrouds_.levels[k - 1].tip;
      if (!level.tip.empty()) {
        result("compression of " + level.spreader, at.spreader_compression.newtons(), "");
        result("lines from " + level.tip + " to " + below, at.vertical.newtons(),
               degrees(at.vertical_lean_radians) + " from upright");
      }
      result(level.diagonal + " from " + level.place + " to " + below, at.diagonal.newtons(),
             degrees(at.diagonal_to_mast_radians) + " to the mast");
      result("compression of the mast below " + level.place, at.mast_compression.newtons(),
             "of the side force alone");
    }
    result("pull of all lines on " + shrouds_.chainplate, held.chainplate_pull.newtons(), "upwards");
    screening_.results.push_back({"moment of the side force",
                                  {held.moment_newton_metres, dimension::moment},
                                  "about the height of " + shrouds_.chainplate,
                                  {}});
  }

  void add_panels(const TransverseEquilibrium& held) {
    const Spar* spar = spar_of(rig_, shrouds_);
    if (spar == nullptr)
      return;
    screening_.spar = spar->name;
    const bool at_partners = fact_text(spar->particulars, "step") == "keel";
    const auto partners = fact_length(spar->particulars, "partners");
    if (at_partners && !partners)
      return;
    const double upright = spar->axes[2][2]; // what a length along the mast is of height
    Length below = at_partners ? partners->value : spar->heel.z;
    std::string from = at_partners ? "partners" : "heel";
    for (std::size_t k = 0; k < held.levels.size() && upright > 0.0; ++k) {
      const Length height = rig_[shrouds_.levels[k].point].position.z;
      const std::string& to = shrouds_.levels[k].place;
      screening_.panels.push_back(
          {from + " to " + to, (height - below) / upright, held.levels[k].mast_compression});
      below = height;
      from = to;
    }
  }

  void add_notes() {
    screening_.notes.emplace_back(
        "no pretension, the leeward side slack, joints that turn freely, lines that "
        "do not slide on the tips; stays, halyards and sheets press the mast besides");
    if (shrouds_.off_middle > Length{})
      screening_.notes.push_back("lengths across are from where the shrouds are made fast, " +
                                 length_text(shrouds_.off_middle) + " from the middle of the mast");
  }

  const Rig& rig_;
  const Stay& stay_;
  LoadScreening& screening_;
  ScreeningInputs inputs_;
  ShroudLevels shrouds_;
};

} // namespace

void screen_by_equilibrium(const Rig& rig, const Record& record, const Stay& stay,
                           LoadScreening& screening) {
  Equilibrium(rig, record, stay, screening).run();
}

} // namespace sheerpole
