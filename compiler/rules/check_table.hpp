#pragma once

#include "calculate/derived.hpp"
#include "rules/check_report.hpp"
#include "units/length.hpp"

#include <span>
#include <string>
#include <string_view>
#include <vector>

/// What the checks take for nothing. The thresholds proper are in limits/limit.hpp and can be set in a rig
/// file.
namespace sheerpole::threshold {

/// Smaller than anything that can be set or measured on a boat; keeps the rounding of a sum from being
/// called a fault. Choice of the project, no source.
inline constexpr Length negligible = Length::millimetres(0.001);

/// The same for angles. Choice of the project, no source.
inline constexpr double negligible_radians = 1e-9;

} // namespace sheerpole::threshold

namespace sheerpole {

/// One check: it reads the rig and what was calculated, and reports what it came to about each thing that
/// it looked at.
struct CheckRow {
  std::string_view slug; ///< of its finding
  void (*run)(const Rig& rig, const Derived& derived, CheckReport& report) = nullptr;
  LimitSet limits = {};    ///< thresholds that it goes by; when none of them has a value it cannot look
  bool acceptable = false; ///< its finding is an error that a rig file may `accept`
};

using CheckTable = std::vector<CheckRow>;

// The tables: each subject has its checks, their helpers and its table in the file of its name.
// lengths/
namespace stay_lengths {
extern const CheckTable checks;
}
namespace made_pieces {
extern const CheckTable checks;
}
namespace usual_sizes {
extern const CheckTable checks;
}
namespace cut_inputs {
extern const CheckTable checks;
}
namespace expectations {
extern const CheckTable checks;
}
// joints/
namespace joint_comparisons {
extern const CheckTable checks;
}
// securing/
namespace pins_and_threads {
extern const CheckTable checks;
}
namespace articulation_checks {
extern const CheckTable checks;
}
namespace metals {
extern const CheckTable checks;
}
namespace access {
extern const CheckTable checks;
}
namespace rope_bearing {
extern const CheckTable checks;
}
namespace odd_words {
extern const CheckTable checks;
}
// adjusters/
namespace adjuster_range {
extern const CheckTable checks;
}
namespace state_checks {
extern const CheckTable checks;
}
namespace take_up_account {
extern const CheckTable checks;
}
namespace screws {
extern const CheckTable checks;
}
namespace reserve {
extern const CheckTable checks;
}
namespace lashings {
extern const CheckTable checks;
}
namespace removable_part_checks {
extern const CheckTable checks;
}
// splices/
namespace buries {
extern const CheckTable checks;
}
namespace eyes {
extern const CheckTable checks;
}
namespace contractions {
extern const CheckTable checks;
}
namespace in_hand_checks {
extern const CheckTable checks;
}
namespace dry_fits {
extern const CheckTable checks;
}
// geometry/
namespace spreaders {
extern const CheckTable checks;
}
namespace leads {
extern const CheckTable checks;
}
namespace clearance {
extern const CheckTable checks;
}
namespace neighbouring_points {
extern const CheckTable checks;
}
namespace boat_envelope {
extern const CheckTable checks;
}
namespace whole_rig {
extern const CheckTable checks;
}
// strength/
namespace chain {
extern const CheckTable checks;
}
namespace shared_pins {
extern const CheckTable checks;
}
namespace line_behaviour {
extern const CheckTable checks;
}
namespace line_numbers {
extern const CheckTable checks;
}
namespace mast_loads {
extern const CheckTable checks;
}
// tune/
namespace standing_rig {
extern const CheckTable checks;
}
// evidence/
namespace readings {
extern const CheckTable checks;
}
namespace repeated_readings {
extern const CheckTable checks;
}
namespace cord_checks {
extern const CheckTable checks;
}
namespace sources {
extern const CheckTable checks;
}
namespace ages {
extern const CheckTable checks;
}
namespace inspections {
extern const CheckTable checks;
}

/// All checks, table by table.
std::span<const CheckRow> all_checks();

/// Which check goes by which threshold, in the order of the thresholds and then of the checks.
std::vector<LimitUse> limit_uses();

/// The checks that go by a threshold, by their slugs, with blanks between.
std::string checks_of(Limit limit);

/// The check of this name; null when there is none.
const CheckRow* find_check(std::string_view slug);

} // namespace sheerpole
