#include "calculate/behaviour/replacement.hpp"

#include "calculate/facts.hpp"
#include "calculate/length/path_length.hpp"
#include "model/fact_name.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

/// Of an even line along the path, above its lowest point.
Length mean_height(const Rig& rig, const Stay& stay) {
  Length lowest = rig[stay.path.front().point].position.z;
  for (const PathStop& stop : stay.path)
    lowest = std::min(lowest, rig[stop.point].position.z);
  Length runs;
  double moment = 0.0; // square metres
  for (std::size_t i = 1; i < stay.path.size(); ++i) {
    const Vector3& a = rig[stay.path[i - 1].point].position;
    const Vector3& b = rig[stay.path[i].point].position;
    const Length run = distance(a, b);
    runs += run;
    moment += run.metres() * ((a.z + b.z) / 2.0 - lowest).metres();
  }
  return Length::metres(runs > Length{} ? moment / runs.metres() : 0.0);
}

} // namespace

std::optional<Replacement> replacement(const Rig& rig, const Stay& stay, const std::vector<Piece>& pieces) {
  if (!stay.replaces)
    return std::nullopt;
  Replacement result;
  result.old_line = *stay.replaces;
  const LineMaterial& now = rig[stay.material];
  const LineMaterial& before = rig[*stay.replaces];
  const auto new_stiffness = line_stiffness(now);
  const auto old_stiffness = line_stiffness(before);
  if (new_stiffness && old_stiffness)
    result.stiffness = new_stiffness->value / old_stiffness->value;
  else
    result.not_checked.push_back({BehaviourPhrase::not_stated_of_line,
                                  {Words{"stiffness"}, new_stiffness ? *stay.replaces : stay.material}});
  if (now.break_load && before.break_load)
    result.strength = now.break_load->value / before.break_load->value;
  else
    result.not_checked.push_back({BehaviourPhrase::not_stated_of_line,
                                  {Words{"break-load"}, now.break_load ? *stay.replaces : stay.material}});
  const auto new_mass = fact_number(now.particulars, fact_names.linear_mass);
  const auto old_mass = fact_number(before.particulars, fact_names.linear_mass);
  if (!new_mass || !old_mass) {
    result.not_checked.push_back({BehaviourPhrase::not_stated_of_line,
                                  {Words{"linear-mass"}, new_mass ? *stay.replaces : stay.material}});
    return result;
  }
  result.mass = new_mass->value / old_mass->value;
  Length length;
  for (const Piece& piece : pieces) {
    if (piece.body.unknown) {
      result.not_checked.push_back(BehaviourPhrase::length_unknown);
      return result;
    }
    length += piece.body.known();
  }
  result.new_kilograms = new_mass->value * length.metres();
  result.old_kilograms = old_mass->value * length.metres();
  if (stay.path.size() < 2)
    result.not_checked.push_back(BehaviourPhrase::no_path);
  else
    result.centre_height = mean_height(rig, stay);
  return result;
}

} // namespace sheerpole
