#pragma once

#include "units/dimension.hpp"

#include <array>
#include <cstddef>
#include <cstdint>
#include <initializer_list>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace sheerpole {

/// A threshold of the checks. Each has a name that a rig file can set or switch off in its block `limits`.
enum class Limit : std::uint8_t {
  pin_play,
  pin_play_share,
  side_play,
  side_play_share,
  edge_usual,
  edge_least,
  seat_usual,
  seat_least,
  seat_width,
  pin_bearing,
  edge_radius,
  adjuster_reserve,
  thread_engaged,
  thread_engaged_stainless,
  thread_engaged_aluminium,
  take_up_left,
  first_fit_closed,
  lashing_strength,
  lashing_legs,
  knot_factor,
  bury_least,
  bury_usual,
  taper_least,
  eye_least,
  eye_usual,
  eye_angle,
  eye_ways_apart,
  contraction_apart,
  hang_apart,
  routes_apart,
  routes_far_apart,
  estimate_apart,
  size_off,
  size_far_off,
  path_rise,
  pair_apart,
  pair_apart_share,
  pair_far_apart,
  foretriangle_apart,
  bisector_usual,
  bisector_most,
  stay_angle_least,
  stay_angle_usual,
  plate_off_usual,
  plate_off_most,
  junction_off,
  stays_apart,
  break_factor,
  stiffness_apart,
  creep_load,
  creep_load_most,
  rope_heat,
  rope_heat_most,
  cold_loss,
  gross_modulus,
  break_load_low,
  break_load_high,
  buckling_factor,
  pretension_least,
  pretension_most,
  tape_sag,
  made_apart,
  lowered_tight,
  reading_age,
  inspection_age,
  wire_age,
  rope_age,
  hardware_age,
  untraced_numbers,
};

/// How many there are.
inline constexpr std::size_t limit_count = static_cast<std::size_t>(Limit::untraced_numbers) + 1;

/// What a threshold rests on.
enum class LimitClass : std::uint8_t {
  published,       ///< read in a publication, which is named
  from_memory,     ///< of a named publication that was not at hand
  common_practice, ///< of the trade, no source
  exact,           ///< statics, geometry or arithmetic
  project,         ///< a choice of the project, no source
  owner            ///< none but what the rig file states
};

/// "published", "from memory", "common practice, no source", "exact", "choice of the project, no source",
/// "the owner's own".
std::string_view name_of(LimitClass limit_class);

/// One row of the table of thresholds. It makes the threshold, its property in the block `limits`, its line
/// on the page of thresholds and its help.
struct LimitRow {
  Limit limit;
  std::string_view name; ///< `pin-play`
  Dimension dimension;
  std::optional<double> value; ///< used when the file says nothing; coherent SI; nothing: the owner's own
  std::string_view example;    ///< as a rig file would say it: the value, "0.5 mm"; of the owner's own any
  LimitClass limit_class;
  std::string_view source;  ///< what the class leaves open: who, and how firm it is
  bool disputed = false;    ///< sources or hands disagree about it
  std::string_view meaning; ///< what it bounds
  bool is_count = false;    ///< a plain number of things, without a unit

  /// "0.5 mm"; empty for the owner's own.
  std::string_view written() const { return value ? example : std::string_view(); }
};

/// All thresholds, in the order of the enumeration.
std::span<const LimitRow> all_limits();
const LimitRow& row_of(Limit limit);
const LimitRow* find_limit(std::string_view name);

/// Some of the thresholds: those that a check goes by.
class LimitSet {
public:
  constexpr LimitSet() = default;
  constexpr LimitSet(std::initializer_list<Limit> limits) {
    for (const Limit limit : limits)
      bits_[word(limit)] |= bit(limit);
  }
  constexpr bool contains(Limit limit) const { return (bits_[word(limit)] & bit(limit)) != 0; }
  constexpr bool empty() const { return bits_[0] == 0 && bits_[1] == 0; }

private:
  static constexpr std::size_t word(Limit limit) { return static_cast<std::size_t>(limit) / 64; }
  static constexpr std::uint64_t bit(Limit limit) {
    return std::uint64_t{1} << static_cast<std::size_t>(limit) % 64;
  }
  static_assert(limit_count <= 128, "one bit for each");

  std::array<std::uint64_t, 2> bits_ = {};
};

/// That a check goes by a threshold.
struct LimitUse {
  Limit limit;
  std::string check; ///< slug of its finding
};

} // namespace sheerpole
