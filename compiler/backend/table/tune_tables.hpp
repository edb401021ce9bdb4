#pragma once

#include "backend/table/table.hpp"
#include "calculate/tune/tune_report.hpp"
#include "results/checked_rig.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// What stands on every view and paper of tune.
const std::vector<std::string>& tune_cautions();

/// Everything that the balance of the rig rests on, and what is lacking.
Table tune_inputs_table(const CheckedRig& checked, const TuneModel& model);
/// Why nothing is worked out, one row a reason. Empty of rows when the rig stands.
Table tune_lacking_table(const CheckedRig& checked, const TunedRig& tuned);
/// Columns in which nobody says anything are left out, but for the first.
Table without_empty_columns(Table table);
/// How the rig stands: one row a stay, a leg of one that is clamped, a mast's head and bend.
Table standing_table(const CheckedRig& checked, const TuneReport& report);
/// What one turn tighter does: a row for each adjuster, a column for each stay.
Table turn_table(const CheckedRig& checked, const TuneReport& report);
/// The same, how far each number may be off.
Table turn_doubt_table(const CheckedRig& checked, const TuneReport& report);
/// How far each number of how it stands may be off: at worst, by propagation, by draws. Without rows where
/// no bound is stated.
Table tune_doubt_table(const CheckedRig& checked, const TuneReport& report);
/// The same as `sheerpole show` asks for it.
Table show_tune_doubt(const CheckedRig& checked);
/// The same in one row for each adjuster and thing that it changes, for a spreadsheet.
Table turn_list(const CheckedRig& checked, const TuneReport& report);
/// The turns for what is wished for, in order.
Table turn_plan_table(const CheckedRig& checked, const TuneReport& report);
/// Each wish: now, wished, with these turns.
Table wish_table(const CheckedRig& checked, const TuneReport& report);
/// Tension on the coldest and the warmest day and after times: one row a stay.
Table later_table(const CheckedRig& checked, const TuneReport& report);
/// "DRAFT: ...", one line a reason.
std::vector<std::string> tune_draft_words(const CheckedRig& checked, const TuneModel& model);
/// Numbered names of the stays, as the columns of the turn table have them.
std::string numbered_stays(const CheckedRig& checked, const TuneModel& model);
/// Least tension of a stay that pulls, and how slack those are that do not.
std::vector<std::string> margin_words(const CheckedRig& checked, const TuneReport& report);

} // namespace sheerpole
