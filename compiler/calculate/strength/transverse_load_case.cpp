#include "calculate/strength/transverse_load_case.hpp"

#include "calculate/physics/finite_value.hpp"

namespace sheerpole {

namespace {

bool is_share(double value) {
  return value >= 0.0 && value <= 1.0;
}

} // namespace

std::optional<Force> side_force_at(double righting_moment_newton_metres, Length above_waterline) {
  if (!(righting_moment_newton_metres > 0.0) || above_waterline <= Length())
    return std::nullopt;
  return finite_force(righting_moment_newton_metres / above_waterline.metres());
}

std::optional<ReefedMainLoad> reefed_main_load(double righting_moment_newton_metres, Length luff,
                                               Length boom, Length freeboard, const ReefedMain& reefed) {
  if (luff <= Length() || boom < Length() || !is_share(reefed.head_share) || !is_share(reefed.boom_share) ||
      !is_share(reefed.luff_left) || !is_share(reefed.centre_up_luff))
    return std::nullopt;
  const auto head = finite_length(boom.metres() + reefed.luff_left * luff.metres());
  const auto centre = finite_length(freeboard.metres() + boom.metres() +
                                    reefed.centre_up_luff * reefed.luff_left * luff.metres());
  const auto total = centre ? side_force_at(righting_moment_newton_metres, *centre) : std::nullopt;
  if (!head || !total)
    return std::nullopt;
  return ReefedMainLoad{.total = *total,
                        .head = reefed.head_share * *total,
                        .boom = reefed.boom_share * *total,
                        .head_height = *head,
                        .boom_height = boom};
}

std::optional<std::vector<Force>> share_between_levels(std::span<const Length> heights, Force force,
                                                       Length at) {
  Length below;
  for (const Length height : heights) {
    if (height <= below)
      return std::nullopt;
    below = height;
  }
  if (heights.empty() || at < Length() || at > heights.back())
    return std::nullopt;
  std::vector<Force> shares(heights.size());
  std::size_t upper = 0;
  while (heights[upper] < at)
    ++upper;
  const Length lower_height = upper == 0 ? Length() : heights[upper - 1];
  const double to_upper = (at - lower_height) / (heights[upper] - lower_height);
  shares[upper] = to_upper * force;
  if (upper > 0)
    shares[upper - 1] = (1.0 - to_upper) * force;
  return shares;
}

} // namespace sheerpole
