#include "calculate/strength/tackle_advantage.hpp"

namespace sheerpole {

std::optional<double> tackle_advantage(int parts, HaulingPart hauling_part, double sheave_efficiency) {
  if (parts < 1 || parts > 100 || !(sheave_efficiency > 0.0) || !(sheave_efficiency <= 1.0))
    return std::nullopt;
  double tension = hauling_part == HaulingPart::from_fixed_block ? sheave_efficiency : 1.0;
  double sum = 0.0;
  for (int part = 0; part < parts; ++part) {
    sum += tension;
    tension *= sheave_efficiency;
  }
  return sum;
}

} // namespace sheerpole
