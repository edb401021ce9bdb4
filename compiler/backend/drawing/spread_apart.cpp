#include "backend/drawing/spread_apart.hpp"

#include <algorithm>
#include <cstddef>

namespace sheerpole {

namespace {

/// Each block of positions that push each other away stands at the mean of what its members want.
struct PushedBlock {
  double sum = 0.0;
  std::size_t count = 0;
  double mean() const { return sum / static_cast<double>(count); }
};

} // namespace

std::vector<double> spread_apart(const std::vector<double>& wanted, const std::vector<double>& heights,
                                 double top, double bottom) {
  // With the distance that the bands above take taken off, "at least this far apart" becomes "not falling":
  // isotonic regression, solved exactly by pooling adjacent violators (from memory of Barlow et al.,
  // Statistical Inference under Order Restrictions).
  std::vector<PushedBlock> blocks;
  std::vector<double> offsets; // of each middle from the middle of the first band
  for (std::size_t i = 0; i < wanted.size(); ++i) {
    offsets.push_back(i == 0 ? 0.0 : offsets.back() + (heights[i - 1] + heights[i]) / 2);
    blocks.push_back({wanted[i] - offsets[i], 1});
    while (blocks.size() > 1 && blocks[blocks.size() - 2].mean() >= blocks.back().mean()) {
      const PushedBlock last = blocks.back();
      blocks.pop_back();
      blocks.back().sum += last.sum;
      blocks.back().count += last.count;
    }
  }
  std::vector<double> placed;
  if (wanted.empty())
    return placed;
  const double highest = top + heights.front() / 2;
  const double lowest = bottom - heights.back() / 2 - offsets.back();
  for (const PushedBlock& block : blocks)
    for (std::size_t i = 0; i < block.count; ++i)
      placed.push_back(std::max(highest, std::min(block.mean(), lowest)) + offsets[placed.size()]);
  return placed;
}

} // namespace sheerpole
