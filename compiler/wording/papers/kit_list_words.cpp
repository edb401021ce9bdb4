#include "wording/papers/kit_list_words.hpp"

namespace sheerpole {

std::string_view words(KitListPhrase phrase) {
  using enum KitListPhrase;
  switch (phrase) {
  case as_long_as_longest_stay:
    return "as long as the longest stay";
  case or_as_long_as_x:
    return ", or as long as X";
  case what_takes_most_all:
    return "what {} needs, the longest";
  case what_takes_most_and_an_end:
    return "what {} needs, the longest, with one end to make again";
  case or_if_it_is_longer:
    return "; or, if it is longer, ";
  case x_and_its_ends:
    return "X({}) and its ends";
  case as_long_as_longest:
    return "as long as the longest";
  case in_the_rig:
    return "{} in the rig";
  case messenger_cord_that_hardly_stretches:
    return "messenger cord that hardly stretches, its own colour";
  case from_pin_to_pin_longest:
    return "from pin to pin of the longest stay, with a metre to tie";
  case fid_or_splicing_needle_for:
    return "fid or splicing needle for {}";
  case cutter_that_goes_through_tried:
    return "cutter that goes through {}{}, tried on a piece of it";
  case tape:
    return "tape";
  case longer_than_longest_stay:
    return "longer than the longest stay";
  case marker_sharp_knife_whipping_twine:
    return "marker, sharp knife, whipping twine and needle, tape to seize an end";
  case goggles_and_gloves_before_wire:
    return "goggles and gloves, before a wire is cut or let go";
  case rope_blocks_and_clips_to:
    return "rope, blocks and clips to hold the mast meanwhile";
  case spanners_for_screws_and_their:
    return "spanners for the screws and their locks, split pins, pliers";
  case these_papers_and_rig_file:
    return "these papers, and the rig file on something that is not the phone";
  case what:
    return "what";
  case at_least:
    return "at least";
  case because:
    return "because";
  case where_it_lies:
    return "where it lies";
  case kit_list:
    return "Kit list";
  case what_to_keep_aboard_so:
    return "what to keep aboard so that a stay can be made again: line, parts, cord, tools";
  case kit_list_capitals:
    return "KIT LIST   {}";
  case what_stay_that_goes_can:
    return "What a stay that goes can be made of again, far from a shop. Tick it before a passage, and "
           "write where it lies. How to make the piece is on the emergency splice card.";
  case lengths_are_to_stow_by:
    return "Lengths are to stow by and not to cut to. How many to take is common practice, without a "
           "source.";
  case mast_that_has_lost_stay:
    return "A mast that has lost a stay falls when it is asked for more. Take the load off first: turn, "
           "sheet out, set up what holds it. Going aloft then can kill.";
  case to_make_it:
    return "Line and parts";
  case rig_file_states_nothing_that:
    return "The rig file has no line or parts for a stay.";
  case tools:
    return "Tools";
  case gone_through_by_day:
    return "Gone through by, day:";
  case this_list_follows_from_rig:
    return "This list follows from the rig file and nothing else. Nobody has judged whether what is made "
           "of it is strong enough: get to a licensed professional rigger.";
  case kit_list_of:
    return "Kit list of {}";
  case what_to_keep_aboard_so_that:
    return "What to keep aboard so that a stay can be made again.";
  }
  return {};
}

} // namespace sheerpole
