#include "wording/papers/spool_plan_words.hpp"

namespace sheerpole {

std::string_view words(SpoolPlanPhrase phrase) {
  using enum SpoolPlanPhrase;
  switch (phrase) {
  case piece:
    return "piece";
  case piece_that_is_draft:
    return "piece NOT YET to be cut";
  case left_and_kept:
    return "left and kept";
  case kept_back_as_spare:
    return "kept back as spare";
  case waste:
    return "waste";
  case cut:
    return "cut";
  case spool_plan:
    return "Spool plan";
  case sheet_each_bar_is_stock:
    return "Sheet {} of {}. Each bar is a stock from its free end, left; all bars are to one scale, and a "
           "long rest is broken off. Millimetres.";
  case draft_some_pieces_rest_on:
    return "DRAFT: some pieces rest on numbers that are assumed or estimated; spool-plan.txt says which. "
           "They come last on their stock, and room is kept for them: they have no place to be cut at yet.";
  case bound:
    return "Bound: {}.";
  case nothing_it_is_in_stock:
    return "Nothing of it is in stock.";
  case to_buy:
    return "To buy: {}.";
  case pieces:
    return "pieces";
  case not_planned_spool_plan_txt:
    return "Not planned: {}; spool-plan.txt says why.";
  case there_is_nothing_to_cut:
    return "There is nothing to cut.";
  case spool_plan_for_sheet:
    return "Spool plan for {}, sheet {} of {}";
  case each_spool_coil_or_offcut:
    return "Each spool, coil or offcut that is begun as a bar with the pieces that are cut from it, in the "
           "order of cutting.";
  case sheerpole_reports_what_rig_files:
    return "Sheerpole reports what the rig files state; it has not seen the line.";
  case draft:
    return "; NOT YET";
  case not_to_be_cut_to:
    return "; {}, not to be cut to";
  case how_to_read_it:
    return "How to read it";
  case whole_millimetres_piece_is_cut:
    return "Whole millimetres. A piece is the cut of the cut list with the spare that is stated, rounded "
           "up; what is in hand is rounded down. Every sum is the sum of the rows as printed.";
  case positions_run_from_free_end:
    return "Positions run from the free end of the stock to the cut, each piece with its kerf behind it. "
           "Feet and inches are the same position to the nearest 1/16 in. Measure from the free end of "
           "each stock, cut in this order, and check each piece against the cut list before you cut.";
  case as_little_as_can_be:
    return "Offcuts go first, the shorter ones before the longer, and as little as possible is cut off "
           "spools and coils. A rest too short to keep is waste.";
  case plan_knows_kind_size_and:
    return "The plan knows the kind, size and length of what is in hand, not its age or state. Inspect it "
           "before you use it.";
  case summary:
    return "Summary";
  case pieces_from_stock_mm_to:
    return "pieces  from stock mm       to buy mm  line";
  case not_planned:
    return "; {} not planned";
  case length_is_x_planned_by:
    return "the length is X, planned by {}: before it is cut X is laid out by its cord, or known";
  case draft_not_to_be_cut:
    return "   NOT YET - do not cut these by this plan";
  case holds_back:
    return "         holds back  ";
  case no_from_mm_to_mm:
    return "     no.   from mm     to mm  to ft in          piece mm  kerf mm  piece";
  case not_yet:
    return "not yet";
  case taken_or_kept:
    return "     {}    = {} taken or kept";
  case mm_taken:
    return "     {}{}{}  = {} mm taken";
  case not_yet_behind:
    return "     not yet:  ";
  case room_is_kept_for_it:
    return "room is kept for it behind all that may be cut, and it has no place to be cut at. The rest is "
           "reckoned as if all of that room were used.";
  case left:
    return "     left:  ";
  case sum_what_is_begun:
    return "   Sum of what is begun";
  case pieces_behind:
    return "     pieces          {}";
  case pieces_mm:
    return "     pieces          {} mm";
  case kerf:
    return "     kerf            {}";
  case kept:
    return "     kept            {}";
  case waste_behind:
    return "     waste           {}";
  case stock_begun_mm:
    return "     = stock begun   {} mm";
  case bound_behind:
    return "   Bound    ";
  case of_batch:
    return " of batch ";
  case pair:
    return "   Pair    ";
  case comes_from_two_stocks_port:
    return "{}: {} comes from two stocks, port from {}, starboard from {}. Two batches do not stretch, "
           "shrink and creep alike.";
  case mm_are_kept_back_as:
    return "{} mm of {} are kept back as its spare; {} would go into them.";
  case nothing_it_is_in_stock_behind:
    return "   Nothing of it is in stock.";
  case to_buy_behind:
    return "   To buy  ";
  case longer_than_every_stock_in:
    return "; longer than every stock in hand";
  case made_of:
    return "   made of  ";
  case cutting:
    return "   cutting  ";
  case in_stock_and_nothing_is:
    return "   In stock, and nothing is cut from it.";
  case not_planned_and_in_no:
    return "   Not planned, and in no sum";
  case spool_plan_capitals:
    return "SPOOL PLAN";
  case draft_capitals:
    return "DRAFT";
  case there_is_nothing_to_cut_and:
    return "There is nothing to cut and nothing in stock.";
  case boat_without_name:
    return "boat without a name";
  case no_of:
    return " no. {} of {}";
  case of_mm:
    return ", {} of {} mm";
  case batch:
    return ", batch {}";
  case nothing:
    return "nothing";
  case mm_are_waste:
    return "{} mm are waste";
  case are_kept_as_offcut:
    return "are kept as the offcut {}";
  case which_is_from_then_on:
    return ", which is {} from then on";
  case stay_on_the:
    return "stay on the {}{}";
  case mm_them_spare_that_is:
    return ", {} mm of them the spare that is kept back";
  case pieces_find_no_place_in:
    return "of pieces find no place in the stock";
  case leaves:
    return "leaves";
  case are_cut_off_spools_and:
    return "are cut off spools and coils";
  case cuts_off:
    return "cuts off";
  case offcuts_are_begun:
    return "of offcuts are begun";
  case begins:
    return "begins";
  case and_no_plan_less_proven:
    return "{} {}, and no plan {} less: proven";
  case no_plan_less_than_not:
    return "{} {}; no plan {} less than {}: not proven, the search came to its limit";
  case it_speaks_pieces_that_are:
    return "{}. It speaks of the pieces that are not longer than every stock";
  case kerf_mm:
    return "kerf {} mm";
  case not_stated:
    return " (not stated)";
  case loses_a_link:
    return " (the link that is cut is lost)";
  case rest_mm_or_more_is:
    return "; a rest of {} mm or more is kept";
  case every_rest_is_kept_no:
    return "; every rest is kept (no least offcut is stated)";
  case spare_on_each_piece:
    return "; spare on each piece {}";
  case no_spare_on_pieces:
    return "; no spare on the pieces";
  case sold_in_spools_mm:
    return "; sold in spools of {} mm";
  case kerf_word:
    return "kerf";
  case least_offcut:
    return "least offcut";
  case spare:
    return "spare";
  case spool_as_it_is_sold:
    return "spool as it is sold";
  case files_state_differently_and_greatest:
    return "; the files state differently, and the greatest counts, of ";
  case at_the_least:
    return "{} at the least";
  case at_least_mm_m:
    return "at least {} mm ({} m)";
  case each:
    return " each";
  case with_kerf_mm:
    return " with a kerf of {} mm{}";
  case in_one_length:
    return ", in one length";
  case longest_is_no_piece_can:
    return ". The longest is {}; no piece can be made of two lengths";
  case whole_spool:
    return "whole spool";
  case whole_spools:
    return "whole spools";
  case that_is:
    return ". That is {}";
  case piece_is_longer_than_whole:
    return ". A piece is longer than a whole spool as it is sold";
  case what_to_cut_from_which:
    return "what to cut from which spool, coil or offcut, what is left, and what is to be bought";
  case spool_plan_begins:
    return "Spool plan, {}";
  case numbers_short_pieces_have_no:
    return "The numbers of the short pieces have no room here; the list has them from the free end on.";
  case mm_cut_at_mm:
    return "{}. {} mm, cut at {} mm: {}";
  case its_x_estimated:
    return ", its X estimated";
  case kept_for_it_to_be:
    return "{}. {} kept for it, {} to be cut: {}; NOT YET{}";
  case left_of:
    return ". Left: {}.";
  case left_each:
    return "{}. Left: {}.";
  case stock_as_it_is_when:
    return "Stock as it is when the spool plan for {} has been carried out. It takes the place of what {} "
           "states of stock: use the one or the other. Measure what is left before you plan with it again.";
  case piece_of:
    return "\npiece of {}";
  case number:
    return "  number: {}\n";
  case stock:
    return "  stock: {}\n";
  case batch_behind:
    return "  batch: {}\n";
  case pieces_that_spool_plan_cuts:
    return "Pieces of {} that the spool plan cuts, each with the stock it is of. Take those that were cut "
           "into the file of the boat, with the day: labels, order list and records then say where they "
           "are from, and they are not planned again.";
  case scale_bar:
    return "Scale bar of {} m";
  case what_the_patterns_mean:
    return "What the patterns mean";
  }
  return {};
}

} // namespace sheerpole
