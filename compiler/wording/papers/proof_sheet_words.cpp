#include "wording/papers/proof_sheet_words.hpp"

namespace sheerpole {

std::string_view words(ProofSheetPhrase phrase) {
  using enum ProofSheetPhrase;
  switch (phrase) {
  case times_standard_uncertainty_mm:
    return "{} times a standard uncertainty of {} mm";
  case degree:
    return " degree";
  case degrees:
    return " degrees";
  case of_freedom:
    return ", {}{} of freedom";
  case jcgm:
    return "{}; JCGM 100:2008";
  case what_to_measure_next_inputs:
    return "What to measure next: the inputs by their share of the doubt";
  case mm_by_scatter_its_mean:
    return " mm by the scatter of its mean";
  case mm_at_its_bound:
    return " mm at its bound";
  case which_moves_it_by:
    return "{}, which moves it by {}{} ({}){}";
  case and_more_smaller_share:
    return "      and {} more of smaller share";
  case no_bound_is_stated_for:
    return "No bound given for these; the ranges above take them as exact";
  case used_there_is_no_other:
    return "used; there is no other";
  case used_there_is_no_reading:
    return "used: there is no reading; what is stated counts before the points";
  case used:
    return "used: {}";
  case not_settled_see_reading_that:
    return "{}; NOT SETTLED, see the reading that is as good";
  case there_is_no_other:
    return "; there is no other";
  case what_was_read_in_place:
    return "; what was read in place counts before what is stated or drawn";
  case stated_to_be_one_that:
    return "; stated to be the one that counts";
  case as_good_as_any_other:
    return "; as good as any other";
  case latest_date_counts:
    return "; the latest date counts";
  case not_used_x_is_expected:
    return "not used; X is expected at {} mm, for ordering and never for the cut; ";
  case not_used_one_used_differs:
    return "not used; the one used differs by {} mm; ";
  case they_differ_by_mm_where:
    return "; they differ by {} mm where {} mm is allowed";
  case reading_not_used:
    return "  a reading not used";
  case ways_to_pin_to_pin:
    return "The ways to pin-to-pin";
  case by:
    return "by ";
  case by_of:
    return "by {}";
  case likely_slip:
    return "  likely slip";
  case explains_it_to_mm:
    return "{}: explains it to {} mm";
  case not_corrected:
    return "  not corrected";
  case the_sum:
    return "The sum{}";
  case cut:
    return "= CUT";
  case incomplete:
    return "; INCOMPLETE";
  case see_cut_list:
    return "{}, see the cut list{}";
  case cut_capitals:
    return "CUT";
  case incomplete_capitals:
    return ", INCOMPLETE";
  case missing:
    return "missing";
  case not_counted:
    return "not counted";
  case tension:
    return "Tension";
  case not_checked:
    return "not checked";
  case break_load:
    return "; {} % of the break load";
  case sag_longest_run:
    return "sag of the longest run";
  case less_than:
    return "less than 0.01";
  case over_mm_at_kn_line:
    return "over {} mm at {} kN; the line is {} mm longer than its chord";
  case in_place_of:
    return "{} in place of {}";
  case times_that_old_line:
    return "times that of the old line";
  case stiffness:
    return "stiffness";
  case break_load_word:
    return "break load";
  case mass:
    return "mass";
  case mass_stay:
    return "mass of the stay";
  case its_middle_m_above_lowest:
    return ", its middle {} m above the lowest point of the path";
  case was_kg:
    return "was {} kg{}";
  case how_well_it_is_known:
    return "How well it is known";
  case not_checked_behind:
    return "  not checked: ";
  case no_bound_is_stated_for_anything:
    return "no bounds given";
  case how_well_it_is_known_cut:
    return "How well it is known: the cut without burys and tails, which move no bearing";
  case by_how_much_it_may:
    return "by how much it may be off";
  case from_mm:
    return "from mm";
  case to_mm:
    return "to mm";
  case at_worst:
    return "at worst";
  case every_input_at_its_bound:
    return "every input at its bound";
  case law_of_propagation:
    return "law of propagation, 95 %";
  case monte_carlo:
    return "Monte Carlo, 95 %";
  case draws_seed_jcgm:
    return "of {} draws, seed {}; JCGM 101:2008";
  case adjuster_reaches_in_as_set:
    return "the adjuster reaches in {}, as set up and before any creep or cold: a count of draws, no "
           "promise";
  case draft:
    return "DRAFT";
  case cut_from_drawing_is_stated:
    return "cut-from: drawing is stated and does not count: the stay was read in place";
  case each_length_as_its_sum:
    return "each length as its sum with reading, person, conditions and source; how well it is known";
  case proof_sheet:
    return "PROOF SHEET";
  case how_every_length_came_about:
    return "How every length was worked out, to be checked with a pencil. Each row is rounded to 0.1 mm; "
           "each total is the sum of its rows as printed. Sheerpole works out and reports; it does not "
           "judge a rig.";
  case there_is_nothing_to_prove:
    return "There is nothing to prove: the rig has no stays.";
  case proof_sheet_begins:
    return "Proof sheet, {}";
  case proof_sheet_word:
    return "Proof sheet";
  case how_well_each_cut_is:
    return "How well each cut is known";
  case all_in_mm_cut_without:
    return "All in mm, of the cut without burys and tails, which move no bearing. Worst: every input at "
           "its bound.";
  case standard_k_and_law_propagation:
    return "Standard, k and 95 %: law of propagation, JCGM 100:2008. Drawn: 95 % of {} draws, seed {}, "
           "JCGM 101:2008.";
  case inputs_without_bound_are_not:
    return "Inputs without a bound are not in these ranges: sheerpole show measure-next names them.";
  case not_checked_no_bound_is:
    return "not checked: no bound is stated";
  case in:
    return "in {}";
  case what_was_read_in_place_word:
    return "what was read in place";
  case stated_pin_to_pin_length:
    return "the stated pin-to-pin length";
  case x_on_its_cord:
    return "X, on its cord";
  case place_of:
    return "place of {}";
  case lean_of:
    return "lean of {}";
  case height_of:
    return "height of {}";
  case length_of:
    return "length of {}";
  case aloft:
    return " aloft";
  case below:
    return " below";
  case contraction_of:
    return "contraction of {}{}";
  case its_length_no_way_to:
    return "its length: no way to it is stated";
  case what_to_measure_next_inputs_by:
    return "What to measure next: inputs by their share of the variance of the cut";
  case moves_cut_by_so_much:
    return "Moves the cut: by so much when the input is off by its bound, upwards.";
  case inputs_without_bound_come_last:
    return "Inputs without a bound come last: their effect on the range is not known. In a stay without "
           "any bound they are ranked by what 1 mm, 1 degree or 1 % of them does.";
  case not_known:
    return "not known";
  case for_word:
    return "{} for {}";
  case no_bound_is_stated:
    return "no bound is stated";
  case sensitivity_how_far_each_stay:
    return "Sensitivity: how far each stay moves when one thing does";
  case each_row_alone_worked_out:
    return "Each row alone, worked out whole; forward, to starboard and up in boat axes. What moves a stay "
           "by less than 0.005 mm is left out.";
  case counts_no_means_that_length:
    return "Counts: no means that the length is read or stated, so that it stays what it was read as; the "
           "row is what the way does.";
  case no_stay_has_path_or:
    return "No stay has a path or parts.";
  case by_a_swing:
    return "by a swing";
  case by_a_pulse:
    return "by a pulse";
  case by_a_stretch:
    return "by a stretch";
  case by_a_gauge:
    return "by a gauge";
  }
  return {};
}

} // namespace sheerpole
