#include "wording/papers/order_words.hpp"

namespace sheerpole {

std::string_view words(OrderPhrase phrase) {
  using enum OrderPhrase;
  switch (phrase) {
  case work_order:
    return "WORK ORDER   {}";
  case piece_to_make_every_length:
    return "{} piece{} to make. Every length is measured straight under the pull that is given with it; "
           "from where to where stands beside it. A mouth is where the wire comes out of its terminal.";
  case customer:
    return "customer";
  case shop:
    return "shop";
  case job_number:
    return "job number";
  case wanted_by_day:
    return "wanted by, day";
  case length_within:
    return "length within";
  case port_and_starboard_alike_within:
    return "port and starboard alike within";
  case how_they_go_bag_coil:
    return "how they go: bag, coil, bundle";
  case to:
    return "to";
  case bare_end:
    return "bare end";
  case eye_throat_to_throat:
    return "; eye {}, throat to throat";
  case splices:
    return "splices";
  case splices_set_at:
    return "set at {} kN, as the test splice, before the piece is measured as made";
  case setting_load_to_agree:
    return "set under load before the piece is measured as made; at what load is not stated: agree on it";
  case under_n:
    return "under {} N";
  case pull_not_given_hand_tight:
    return "pull not given: hand-tight, and write it down";
  case of:
    return "of";
  case length:
    return "length";
  case for_do_not_make_it:
    return "{}, for {}: do not make it yet";
  case measured_once_do_not_make_it:
    return "{}: measure again first, do not make it yet";
  case bearing_to_bearing:
    return "{}, bearing to bearing, {}";
  case mouth_to_mouth:
    return "{}, from mouth to mouth of its terminals, {}";
  case on_the_boat:
    return "on the boat";
  case cord_goes_with_this_order:
    return "the cord goes with this order: {}";
  case aloft:
    return "aloft";
  case below:
    return "below";
  case known:
    return "known";
  case colour:
    return "colour";
  case batch:
    return "batch";
  case length_as_made_pull:
    return "length as made, pull";
  case by_day:
    return "by, day";
  case work_order_begins:
    return "Work order";
  case for_shop_that_makes_pieces:
    return "for a shop that makes the pieces: lengths, ends, pulls, and what the two have to agree on";
  case no_piece_has_to_be:
    return "No piece has to be made.";
  case made_already_and_not_part:
    return "Made already, and not part of this order: {}.";
  case nothing_is_cut_before_shop:
    return "Nothing is cut before the shop has asked about what it does not understand, and has the answer "
           "in writing.";
  case price_and_what_it_holds:
    return "Price, and what it holds:";
  case agreed_before_work_begins_customer:
    return "Agreed before work begins, customer, day:";
  case agreed_before_work_begins_shop:
    return "Agreed before work begins, shop, day:";
  case handed_over_with_lengths_as:
    return "Handed over with lengths as made, day:";
  case this_order_follows_from_rig:
    return "This order follows from the rig file and nothing else. Nobody has judged from it whether the "
           "rig is strong enough: local rules and a licensed professional rigger come before it.";
  case work_order_of:
    return "Work order of {}";
  case what_shop_has_to_know:
    return "What a shop has to know to make the pieces, with blanks to agree on.";
  case item:
    return "item";
  case what:
    return "what";
  case size:
    return "size";
  case needed:
    return "needed";
  case in_hand:
    return "in hand";
  case to_order:
    return "to order";
  case their_no:
    return "their no.";
  case here:
    return "here";
  case line_is_ordered_in_tenths:
    return "Line is ordered in tenths of a metre, each piece rounded up, with spare, kerf and what the "
           "notes say; what stock holds is by the spool plan, which adds the cuts up in whole millimetres "
           "and says what has to lie in one length.";
  case nothing_is_to_be_ordered:
    return "Nothing to order.";
  case order_list_of:
    return "Order list of {}\n";
  case draft_not_to_be_cut:
    return "DRAFT, not to be cut to: {}.\n";
  case pieces_of_line:
    return "Pieces of line: {}.\n";
  case from:
    return "From {}";
  case supplier_not_stated:
    return "Supplier not stated";
  case rig_file_states_nothing_to:
    return "\nThe rig file has nothing to order.\n";
  case inch_sizes_and_metric_sizes:
    return "{}\nInch sizes and metric sizes that look alike are two things: 5/16 in is not 8 mm.\n\n{}\n";
  case order_list:
    return "Order list";
  case order_list_capitals:
    return "ORDER LIST   {}";
  case inch_size_and_metric_size:
    return "An inch size and a metric size that look alike are two things: 5/16 in is not 8 mm. What "
           "belongs to the boat, tangs and chainplates, is not ordered here; measure it, do not copy it "
           "from old parts.";
  case pieces_of_line_begins:
    return "Pieces of line: {}.";
  case account_deliver_to_wanted_by:
    return "Account, deliver to, wanted by:";
  case rig_file_states_nothing_to_order:
    return "The rig file has nothing to order.";
  case order_list_of_begins:
    return "Order list of {}";
  case lines_hardware_and_small_parts:
    return "Lines, hardware and small parts to buy.";
  case what_is_to_be_bought:
    return "what to buy: lines, hardware and small parts, less what is in hand";
  case in_hand_by_stock_file:
    return "in hand by the stock of the file; to order is what finds no place on it, by the spool plan";
  case cut_lacks_input:
    return "the cut of {} lacks an input";
  case from_behind:
    return " from ";
  case is_on_record_as_cut:
    return "{} is on record as cut{} and is not in it";
  case is_made_what_is_in:
    return "{} is made of the line in hand for it and is not counted here";
  case taken_by_earlier_plan:
    return "an earlier plan has taken {} from the stock, so it is not in it";
  case no_length_left:
    return "no length is left in stock for {}; the longest to buy in one length is {}";
  case so_many_pieces:
    return "{} pieces";
  case test_splice:
    return "the test splice";
  case test_splice_from_stock:
    return "the test splice comes off what is left in stock";
  case margin:
    return "the order-margin";
  case x_may_lie_in_stock:
    return "the stock is not counted against what is X; once its length is known the spool plan says "
           "whether it fits";
  case what_is_in_hand_for:
    return "what is in hand for {} is too short, so it is in it";
  case with_spare_on_each_piece:
    return "with {} % spare on each piece";
  case is_cord_stay_and_has:
    return "{} is the cord of the stay and has no number yet: measure it, or state `estimate` in the stay";
  case to_order_by_nothing_is:
    return "{}, to order by; nothing is cut to it";
  case with_for_test_splice_since:
    return "with {} for a test splice, since the file has no record of one";
  case ordered_twice_by_order_margin:
    return "ordered twice, by the order-margin";
  case with_more_by_order_margin:
    return "with {} % more, by the order-margin";
  case pin:
    return "pin {}";
  case rod:
    return "rod {}";
  case wire:
    return "wire {}";
  case hand_not_stated:
    return ", hand not stated";
  case hand:
    return ", {} hand";
  case right_and_left_hand:
    return ", right and left hand";
  case with:
    return " with ";
  case other_stay:
    return "other stay";
  case other_stays:
    return "other stays";
  case one_plate_at_for_and:
    return "one plate at the {}, for {} and {} {}";
  case parts_are_holes_same_plate:
    return "the parts are the holes of the same plate: {}";
  case that_on_made_piece_is:
    return "that on the made piece of {} is not in it";
  case that_hangs_by_its_record:
    return "that of {} hangs, by its record, and is not in it";
  case or_word:
    return " or ";
  case them_to_make_line_in:
    return "{} of them to make the line in hand fit {}";
  case them_comes_out_where_line:
    return "{} of them comes out where the line in hand is made to fit {}";
  case ring:
    return "ring";
  case split_pin:
    return "split pin";
  case for_pin:
    return "{} for a pin of {}";
  case for_pin_no_stated_size:
    return "{} for a pin of no stated size";
  case not_stated:
    return "not stated";
  case cord_of_lashings:
    return "{}, cord of lashings";
  case gap_x_passes_x_turns:
    return "gap x passes x 2; turns round the seats and tails are not in it";
  case no_cord_without_passes:
    return "no cord is ordered for it: the number of passes is not stated";
  case no_cord_named:
    return "no cord is ordered for it: the file does not name it";
  case no_cord_named_and_no_passes:
    return "no cord is ordered for it: the file does not name it, nor the number of passes";
  case twice:
    return ", twice";
  case times:
    return ", {} times";
  case points_its_path:
    return "the points of its path";
  case its_stated_length:
    return "its stated length";
  case estimate_stay:
    return "the estimate of the stay";
  case x_taken_as_m_by:
    return "{}: X taken as {} m by {}";
  case and_word:
    return " and ";
  case nothing:
    return "nothing";
  case and_same_again:
    return ", and the same again";
  case and_more:
    return ", and {} % more";
  case lines:
    return "Lines";
  case hardware:
    return "Hardware";
  case small_parts:
    return "Small parts";
  }
  return {};
}

} // namespace sheerpole
