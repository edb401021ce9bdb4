#pragma once

#include "calculate/tune/tune_report.hpp"
#include "results/checked_rig.hpp"

#include <string>
#include <vector>

// How what turns do is written, for the tables and papers of tune.
namespace sheerpole {

/// "6.55".
std::string format_kilonewtons(double newtons);
/// "+1.2", "-0.3", "0.0".
std::string format_signed(double value, int decimals);
/// "cap-shroud, both sides", "forestay".
std::string turned_words(const CheckedRig& checked, const TuneModel& model, const TurnedStays& turned);
/// "2.54 mm".
std::string step_words(const TuneModel& model, const TurnedStays& turned);
/// "+1.5 turns", "-1 hole", "3 mm".
std::string turns_words(const TuneModel& model, const TurnedStays& turned, double turns);
/// "tension", "head aft", "bend forward at spreader-root".
std::string quantity_words(const CheckedRig& checked, const TunedRig& tuned, std::size_t quantity);
/// Its short heading: the number of a stay, "aft", "stb", "bend 1", with the mast where there are several.
std::string column_words(const CheckedRig& checked, const TunedRig& tuned, std::size_t quantity);
/// "0.12", half of the 95 % range by propagation; empty when no bound moves anything.
std::string doubt_words(const TuneReport& report, std::size_t quantity);
/// What the tables of turns show: tensions, heads, bends forward.
std::vector<std::size_t> shown_quantities(const TunedRig& tuned);

} // namespace sheerpole
