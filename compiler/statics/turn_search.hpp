#pragma once

#include "statics/turn_plan.hpp"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace sheerpole::statics {

/// By how much a value is outside its wish: below 0 short of it, over 0 beyond, 0 when it is met.
double off_wish(const Wish& wish, double value);

/// How the wishes change with the screws near a state.
struct TurnsNearState {
  std::vector<double> turns;  ///< by screw, of the state
  std::vector<double> values; ///< by wish, in it
  /// [wish][screw]: for each turn
  std::vector<std::vector<double>> by_turn;
};

/// How good turns are: what is off, squared, in the wishes' own measure; then how many turns.
struct Merit {
  double off = 0.0, turns = 0.0;
  /// Less off by more than rounding, or the same and fewer turns.
  bool better_than(const Merit& other) const;
};

Merit merit_of(std::span<const Screw> screws, std::span<const Wish> wishes, std::span<const double> turns,
               std::span<const double> values);

/// The best turns in whole steps within the threads that a straight line from the state has for better than
/// `to_beat`, other than those that were worked out already; nothing where there are none.
std::optional<std::vector<double>>
better_turns_near(std::span<const Screw> screws, std::span<const Wish> wishes, const TurnsNearState& near,
                  const std::vector<std::vector<double>>& tried, const Merit& to_beat);

/// Screws at their end of which more would make less off.
std::vector<std::size_t> screws_at_end(std::span<const Screw> screws, std::span<const Wish> wishes,
                                       const TurnsNearState& near);

} // namespace sheerpole::statics
