#include "statics/turn_search.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace sheerpole::statics {

namespace {

/// What is off by less than this share of a wish's measure is met.
constexpr double rounding = 1e-9;

/// How many screws are turned by hand for one turn.
double hands(const Screw& screw) {
  return static_cast<double>(std::max<std::size_t>(screw.pulls.size(), 1));
}

std::vector<double> values_at(const TurnsNearState& near, std::span<const double> turns) {
  std::vector<double> values = near.values;
  for (std::size_t i = 0; i < values.size(); ++i)
    for (std::size_t k = 0; k < turns.size(); ++k)
      values[i] += near.by_turn[i][k] * (turns[k] - near.turns[k]);
  return values;
}

/// Ends of a thread in whole steps, from where the screw is now.
double first_step(const Screw& screw) {
  return std::ceil(screw.least_turns / screw.step_turns - rounding);
}
double last_step(const Screw& screw) {
  return std::floor(screw.most_turns / screw.step_turns + rounding);
}

/// Turns of any size: coordinate descent on half the squares of what is off and a price on each turn.
std::vector<double> turns_of_any_size(std::span<const Screw> screws, std::span<const Wish> wishes,
                                      const TurnsNearState& near, double price, std::vector<double> turns) {
  constexpr int most_rounds = 400;
  std::vector<double> values = values_at(near, turns);
  for (int round = 0; round < most_rounds; ++round) {
    double moved = 0.0;
    for (std::size_t k = 0; k < screws.size(); ++k) {
      double slope = 0.0, curvature = 0.0;
      for (std::size_t i = 0; i < wishes.size(); ++i) {
        const double by = near.by_turn[i][k] / wishes[i].one_off;
        slope += by * off_wish(wishes[i], values[i]) / wishes[i].one_off;
        curvature += by * by;
      }
      if (!(curvature > 0.0))
        continue;
      const double without_price = turns[k] - slope / curvature, cut = price * hands(screws[k]) / curvature;
      const double wanted = std::copysign(std::max(std::abs(without_price) - cut, 0.0), without_price);
      const double better = std::clamp(wanted, screws[k].least_turns, screws[k].most_turns);
      for (std::size_t i = 0; i < wishes.size(); ++i)
        values[i] += near.by_turn[i][k] * (better - turns[k]);
      moved = std::max(moved, std::abs(better - turns[k]));
      turns[k] = better;
    }
    if (moved < 1e-6)
      break;
  }
  return turns;
}

/// Steps up and down, of one screw and of two at once; keeps the best turns that were not worked out
/// before.
class StepSearch {
public:
  StepSearch(std::span<const Screw> screws, std::span<const Wish> wishes, const TurnsNearState& near,
             const std::vector<std::vector<double>>& tried, const Merit& to_beat)
      : screws_(screws), wishes_(wishes), near_(near), tried_(tried), found_merit_(to_beat) {}

  const std::optional<std::vector<double>>& found() const { return found_; }

  /// Goes on from turns until no step betters them.
  void from(std::vector<double> turns) {
    constexpr int most_rounds = 200;
    best_merit_ = look_at(turns);
    for (int round = 0; round < most_rounds; ++round) {
      next_ = turns;
      for (std::size_t k = 0; k < screws_.size(); ++k)
        for (const double step : steps_of(k, turns)) {
          std::vector<double> one = turns;
          one[k] += step;
          consider(one);
          for (std::size_t j = 0; j < k; ++j)
            for (const double other : steps_of(j, turns)) {
              std::vector<double> two = one;
              two[j] += other;
              consider(two);
            }
        }
      if (next_ == turns)
        return;
      turns = next_;
    }
  }

private:
  Merit look_at(const std::vector<double>& turns) {
    const Merit merit = merit_of(screws_, wishes_, turns, values_at(near_, turns));
    if (merit.better_than(found_merit_) && std::ranges::find(tried_, turns) == tried_.end()) {
      found_merit_ = merit;
      found_ = turns;
    }
    return merit;
  }

  void consider(const std::vector<double>& turns) {
    if (const Merit merit = look_at(turns); merit.better_than(best_merit_)) {
      best_merit_ = merit;
      next_ = turns;
    }
  }

  /// One up, one down, and back to where the screw is now, as far as the thread goes.
  std::vector<double> steps_of(std::size_t k, const std::vector<double>& turns) const {
    const Screw& screw = screws_[k];
    std::vector<double> steps;
    for (const double step : {screw.step_turns, -screw.step_turns, -turns[k]}) {
      const double after = (turns[k] + step) / screw.step_turns;
      if (step != 0.0 && after >= first_step(screw) - rounding && after <= last_step(screw) + rounding)
        steps.push_back(step);
    }
    return steps;
  }

  std::span<const Screw> screws_;
  std::span<const Wish> wishes_;
  const TurnsNearState& near_;
  const std::vector<std::vector<double>>& tried_;
  Merit found_merit_, best_merit_;
  std::optional<std::vector<double>> found_;
  std::vector<double> next_;
};

} // namespace

double off_wish(const Wish& wish, double value) {
  return value < wish.least ? value - wish.least : value > wish.most ? value - wish.most : 0.0;
}

bool Merit::better_than(const Merit& other) const {
  if (std::isinf(other.off))
    return !std::isinf(off);
  const double tie = rounding * (1.0 + std::min(off, other.off));
  return off < other.off - tie || (off <= other.off + tie && turns < other.turns - rounding);
}

Merit merit_of(std::span<const Screw> screws, std::span<const Wish> wishes, std::span<const double> turns,
               std::span<const double> values) {
  Merit merit;
  for (std::size_t i = 0; i < wishes.size(); ++i) {
    const double off = std::abs(off_wish(wishes[i], values[i])) / wishes[i].one_off;
    if (off > rounding)
      merit.off += off * off;
  }
  for (std::size_t k = 0; k < screws.size(); ++k)
    merit.turns += hands(screws[k]) * std::abs(turns[k]);
  return merit;
}

std::optional<std::vector<double>>
better_turns_near(std::span<const Screw> screws, std::span<const Wish> wishes, const TurnsNearState& near,
                  const std::vector<std::vector<double>>& tried, const Merit& to_beat) {
  StepSearch search(screws, wishes, near, tried, to_beat);
  search.from(near.turns);
  std::vector<double> sizes = near.turns;
  for (const double price : {1.0, 0.1, 0.01, 0.001}) {
    sizes = turns_of_any_size(screws, wishes, near, price, std::move(sizes));
    std::vector<double> rounded = sizes;
    for (std::size_t k = 0; k < screws.size(); ++k)
      rounded[k] = screws[k].step_turns * std::clamp(std::round(sizes[k] / screws[k].step_turns),
                                                     first_step(screws[k]), last_step(screws[k]));
    search.from(std::move(rounded));
  }
  return search.found();
}

std::vector<std::size_t> screws_at_end(std::span<const Screw> screws, std::span<const Wish> wishes,
                                       const TurnsNearState& near) {
  std::vector<std::size_t> ends;
  for (std::size_t k = 0; k < screws.size(); ++k) {
    double slope = 0.0;
    for (std::size_t i = 0; i < wishes.size(); ++i)
      slope += near.by_turn[i][k] * off_wish(wishes[i], near.values[i]) /
               (wishes[i].one_off * wishes[i].one_off);
    const double steps = near.turns[k] / screws[k].step_turns;
    if ((slope < 0.0 && steps >= last_step(screws[k]) - rounding) ||
        (slope > 0.0 && steps <= first_step(screws[k]) + rounding))
      ends.push_back(k);
  }
  return ends;
}

} // namespace sheerpole::statics
