#pragma once

#include "backend/table/table.hpp"
#include "results/checked_rig.hpp"
#include "wording/papers/tables_words.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// A table about the rig that can be asked for by name.
struct NamedTable {
  std::string_view name; ///< `take-up`
  TablesPhrase summary;  ///< one line, in a rigger's words
  Table (*build)(const CheckedRig& checked);
};

/// All of them, in the order in which they are listed.
const std::vector<NamedTable>& rig_tables();

/// Points: name, x forward, y to starboard, z up, in mm, and how each is known.
Table points_table(const CheckedRig& checked);
/// One row a stay and way to its length: the way that is used, with hardware and body, then the other ways.
Table lengths_table(const CheckedRig& checked);
/// One row a piece to cut: line, body, cut.
Table pieces_table(const CheckedRig& checked);
/// One row an adjuster: how far it can go both ways, in mm and turns.
Table take_up_table(const CheckedRig& checked);
/// Marks of every piece from both ends, and the dry fit.
Table marks_table(const CheckedRig& checked);
/// The terms of every reading that is used, and what could not be corrected.
Table readings_table(const CheckedRig& checked);
/// One row a stay: the cut's range by the worst case, the law of propagation and Monte Carlo.
Table uncertainty_table(const CheckedRig& checked);
/// One row a stay and input, the largest share of the variance first; then inputs without a bound.
Table shares_table(const CheckedRig& checked);
/// One row a stay and temperature: growth of line and path, slack, share of the take-up.
Table temperature_table(const CheckedRig& checked);
/// One row an entry of every adjuster's account, and what is left at each date.
Table account_table(const CheckedRig& checked);
/// One row a tension reading, and the sag at the dock tension.
Table tension_table(const CheckedRig& checked);
/// How the rig stands at the dock; what is lacking when that is not known.
Table show_standing(const CheckedRig& checked);
/// What one turn tighter does, the same way.
Table show_tune(const CheckedRig& checked);
/// The turns for what is wished for, the same way.
Table show_turns(const CheckedRig& checked);
/// Tension on other days and after times, the same way.
Table show_days(const CheckedRig& checked);
/// What the balance of the rig rests on.
Table show_tune_inputs(const CheckedRig& checked);
/// One row a stay that replaces another line.
Table replaced_table(const CheckedRig& checked);
/// One row a stay and thing that moves it: how far, for 10 mm or a degree.
Table sensitivity_table(const CheckedRig& checked);
/// "1 x toggle-12 out", "1 x toggle-12 more", "by the adjuster alone".
std::string changed_stack_words(const Rig& rig, const ChangedStack& stack);
/// What each joint that was not there before comes to: "turnbuckle-12 to plate-10 fits".
std::vector<std::string> changed_joint_words(const Rig& rig, const ChangedStack& stack);
/// "2 x toggle-24 and 1 x link-50", with `between` between the kinds; empty for none.
std::string counts_words(const Rig& rig, const PartCounts& parts, std::string_view between);

/// One row a stay and a way to stand its stack: what can be tightened and slackened then.
Table play_table(const CheckedRig& checked);
/// One row a way to make a line in hand fit.
Table fits_table(const CheckedRig& checked);
/// One row a comparison at every joint, with the totals of the results.
Table joints_table(const CheckedRig& checked);
/// One row a link of every stay: its break load, how it came about, where it is from; what is not stated.
Table strength_table(const CheckedRig& checked);
/// Every number and factor of every load-screening, and what it came to.
Table loads_table(const CheckedRig& checked);
/// One row a check: how many of each result, and the thresholds that it uses.
Table checks_table(const CheckedRig& checked);
/// One row a result of every check, passed, found, not checked or waived.
Table results_table(const CheckedRig& checked);
/// One row a threshold: what holds for this rig, what holds when nothing is stated, and what that rests on.
Table limits_table(const CheckedRig& checked);
/// One row an item of each stack, from aloft to deck, with the distance from the upper pin to its lower
/// end.
Table stack_table(const CheckedRig& checked);
/// Its rows of one stay, without the stay: no., kind, item, how many, length, distance. `x` is how they
/// call the X of the stay.
std::vector<std::vector<std::string>> stack_rows(const CheckedRig& checked, const DerivedStay& derived,
                                                 std::string x);
/// The hardware: length or range, ends, source.
Table parts_table(const CheckedRig& checked);
/// Values that a layer, a sister ship or the command line states over others.
Table differences_table(const CheckedRig& checked);
/// How adjusters are set in the states of the rig.
Table states_table(const CheckedRig& checked);
/// What became of each piece, stage by stage, against what was wanted.
Table made_table(const CheckedRig& checked);
/// What was found at inspections.
Table inspections_table(const CheckedRig& checked);
/// Every number of the rig files with its source.
Table sources_table(const CheckedRig& checked);

/// One thing that is stated for the record: no length, check or order rests on it.
struct RecordedFact {
  std::string of;       ///< what states it: "survey spring", "the boat"
  std::string property; ///< "not-seen"
  std::string text;     ///< as stated
  Provenance provenance;
  Span place;
  bool of_boat = false; ///< of the boat or of a spar of hers
};
/// In the order of the rig: the boat, her spars, and so on.
std::vector<RecordedFact> recorded_facts(const CheckedRig& checked);
/// The same as a table.
Table record_table(const CheckedRig& checked);

} // namespace sheerpole
