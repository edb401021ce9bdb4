#include "calculate/facts.hpp"
#include "calculate/strength/screening_inputs.hpp"
#include "calculate/strength/shroud_levels.hpp"
#include "calculate/strength/strength_phrases.hpp"
#include "calculate/strength/transverse_loads.hpp"
#include "model/fact_name.hpp"

#include <algorithm>
#include <numbers>
#include <utility>

namespace sheerpole {

namespace {

Fixed degrees(double radians) {
  return {radians * 180.0 / std::numbers::pi, 3};
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
      screening_.not_checked.emplace_back(StrengthPhrase::line_would_push);
      return;
    }
    add_geometry();
    add_results(*held);
    add_panels(*held);
    add_notes();
    screening_.equilibrium = *held;
  }

  void result(Remark name, double newtons, Remark how) {
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
      inputs_.lacks({StrengthPhrase::not_above_waterline, {Words{top.base}}});
      return std::nullopt;
    }
    Provenance place = top.provenance;
    place.written.clear();
    inputs_.taken({StrengthPhrase::height_above_waterline, {Words{top.base}}},
                  {top.position.z.metres(), dimension::length}, std::move(place));
    result({StrengthPhrase::side_force_at, {Words{top.base}}}, force->newtons(),
           StrengthPhrase::side_force_sum);
    return force;
  }

  void add_geometry() {
    const auto length = [&](Remark name, Length value, PointId point) {
      Provenance place = rig_[point].provenance;
      place.written.clear();
      inputs_.taken(std::move(name), {value.metres(), dimension::length}, std::move(place));
    };
    const PointId plate = stay_.path.back().point;
    length({StrengthPhrase::out_to, {Words{shrouds_.chainplate}}}, shrouds_.chainplate_from_axis, plate);
    for (const ShroudLevel& level : shrouds_.levels) {
      length({StrengthPhrase::above, {Words{level.place}, Words{shrouds_.chainplate}}}, level.level.height,
             level.point);
      if (level.tip.empty())
        continue;
      length({StrengthPhrase::out_to, {Words{level.tip}}}, level.level.spreader_tip, level.point);
      length({StrengthPhrase::above, {Words{level.tip}, Words{level.place}}}, level.level.tip_rise,
             level.point);
    }
  }

  static Remark name_of_level(const ShroudLevel& level) {
    return {StrengthPhrase::named, {Words{level.place}}};
  }
  static std::vector<Remark> diagonals_of(const ShroudLevel& level) {
    std::vector<Remark> names;
    for (const std::string& name : level.diagonals)
      names.push_back({StrengthPhrase::named, {Words{name}}});
    return names;
  }

  void add_results(const TransverseEquilibrium& held) {
    for (std::size_t k = held.levels.size(); k-- > 0;) {
      const LevelEquilibrium& at = held.levels[k];
      const ShroudLevel& level = shrouds_.levels[k];
      const Words below{k == 0 ? shrouds_.chainplate : shrouds_.levels[k - 1].tip};
      if (!level.tip.empty()) {
        result({StrengthPhrase::compression_of, {Words{level.spreader}}}, at.spreader_compression.newtons(),
               {});
        result({StrengthPhrase::lines_from_to, {Words{level.tip}, below}}, at.vertical.newtons(),
               {StrengthPhrase::from_upright, {degrees(at.vertical_lean_radians)}});
      }
      result({StrengthPhrase::diagonal_from_to,
              {Remarks{diagonals_of(level), Join::and_word}, Words{level.place}, below}},
             at.diagonal.newtons(), {StrengthPhrase::to_the_mast, {degrees(at.diagonal_to_mast_radians)}});
      result({StrengthPhrase::compression_below, {Words{level.place}}}, at.mast_compression.newtons(),
             StrengthPhrase::side_force_alone);
    }
    result({StrengthPhrase::pull_on, {Words{shrouds_.chainplate}}}, held.chainplate_pull.newtons(),
           StrengthPhrase::upwards);
    screening_.results.push_back({StrengthPhrase::moment,
                                  {held.moment_newton_metres, dimension::moment},
                                  {StrengthPhrase::about_height, {Words{shrouds_.chainplate}}},
                                  {}});
  }

  void add_panels(const TransverseEquilibrium& held) {
    const Spar* spar = spar_of(rig_, shrouds_);
    if (spar == nullptr)
      return;
    screening_.spar = spar->name;
    const bool at_partners = fact_text(spar->particulars, fact_names.step) == "keel";
    const auto partners = fact_length(spar->particulars, fact_names.partners);
    if (at_partners && !partners)
      return;
    const double upright = spar->axes[2][2]; // what a length along the mast is of height
    Length below = at_partners ? partners->value : spar->heel.z;
    Remark from = at_partners ? StrengthPhrase::partners : StrengthPhrase::heel;
    for (std::size_t k = 0; k < held.levels.size() && upright > 0.0; ++k) {
      const Length height = rig_[shrouds_.levels[k].point].position.z;
      Remark to = name_of_level(shrouds_.levels[k]);
      screening_.panels.push_back({{StrengthPhrase::panel, {Remarks{{from}}, Remarks{{to}}}},
                                   (height - below) / upright,
                                   held.levels[k].mast_compression});
      below = height;
      from = std::move(to);
    }
  }

  void add_notes() {
    screening_.notes.emplace_back(StrengthPhrase::taken_for_granted);
    if (shrouds_.off_middle > Length{})
      screening_.notes.push_back({StrengthPhrase::lengths_across, {shrouds_.off_middle}});
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
