#pragma once

#include "wording/phrase.hpp"

namespace sheerpole {

/// What the kit list names and why.
enum class KitListPhrase : std::uint16_t {
  as_long_as_longest_stay,
  or_as_long_as_x,
  what_takes_most_all,
  what_takes_most_and_an_end,
  or_if_it_is_longer,
  x_and_its_ends,
  as_long_as_longest,
  in_the_rig,
  messenger_cord_that_hardly_stretches,
  from_pin_to_pin_longest,
  fid_or_splicing_needle_for,
  cutter_that_goes_through_tried,
  tape,
  longer_than_longest_stay,
  marker_sharp_knife_whipping_twine,
  goggles_and_gloves_before_wire,
  rope_blocks_and_clips_to,
  spanners_for_screws_and_their,
  these_papers_and_rig_file,
  what,
  at_least,
  because,
  where_it_lies,
  kit_list,
  what_to_keep_aboard_so,
  kit_list_capitals,
  what_stay_that_goes_can,
  lengths_are_to_stow_by,
  mast_that_has_lost_stay,
  to_make_it,
  rig_file_states_nothing_that,
  tools,
  gone_through_by_day,
  this_list_follows_from_rig,
  kit_list_of,
  what_to_keep_aboard_so_that,
};

constexpr std::string_view table_of(KitListPhrase) {
  return "kit-list";
}

std::string_view words(KitListPhrase phrase);

} // namespace sheerpole
