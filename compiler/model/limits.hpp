#pragma once

#include "model/sourced.hpp"
#include "source/span.hpp"
#include "units/dimension.hpp"
#include "units/length.hpp"

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// A threshold of the checks. Each has a name that a rig file can set or switch off in its block `limits`.
enum class Limit : std::uint8_t {
  pin_play,
  pin_play_share,
  side_play,
  edge_usual,
  edge_least,
  seat_usual,
  seat_least,
  seat_width,
  pin_bearing,
  edge_radius,
  adjuster_reserve,
  thread_engaged,
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
  routes_apart,
  path_rise,
  pair_apart,
  pair_apart_share,
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
  reading_age,
  inspection_age,
  wire_age,
  rope_age,
  hardware_age,
  untraced_numbers,
};

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

/// One row of the table of thresholds.
struct LimitRow {
  Limit limit;
  std::string_view name; ///< `pin-play`
  Dimension dimension;
  std::optional<double> value; ///< used when the file says nothing; coherent SI; nothing: the owner's own
  std::string_view written;    ///< the same as a rig file would say it: "0.5 mm"
  LimitClass limit_class;
  std::string_view source;  ///< what the class leaves open: who, and how firm it is
  std::string_view checks;  ///< findings that use it, with blanks between
  bool disputed = false;    ///< sources or hands disagree about it
  std::string_view meaning; ///< what it bounds
};

/// All thresholds, in the order of the enumeration.
std::span<const LimitRow> all_limits();
const LimitRow& row_of(Limit limit);
const LimitRow* find_limit(std::string_view name);

/// What the rig file says of one threshold.
struct StatedLimit {
  Limit limit{};
  std::optional<double> value; ///< nothing: switched off
  Provenance provenance;       ///< its text and source
  Span place;
};

/// The thresholds that hold for a rig: those stated in its files, else those of the table.
class Limits {
public:
  /// What is stated later counts.
  void state(StatedLimit stated);
  const std::vector<StatedLimit>& stated() const { return stated_; }
  const StatedLimit* find(Limit limit) const;

  /// In the coherent SI unit. Nothing when it is switched off, or is the owner's own and not stated.
  std::optional<double> value(Limit limit) const;
  std::optional<Length> length(Limit limit) const;
  bool switched_off(Limit limit) const;

  /// As written in the file or in the table: "0.5 mm"; "off"; "none stated".
  std::string text(Limit limit) const;

private:
  std::vector<StatedLimit> stated_;
};

} // namespace sheerpole
