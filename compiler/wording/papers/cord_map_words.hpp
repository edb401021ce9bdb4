#pragma once

#include "wording/phrase.hpp"

namespace sheerpole {

/// What the cord maps say.
enum class CordMapPhrase : std::uint16_t {
  and_word,
  to,
  not_stated,
  below_the_knot,
  none,
  expected,
  day,
  pull,
  by,
  between_ends_and_pins,
  laid_out_on_rope,
  second_pass,
  by_day,
  upper_end,
  cord_map,
  knots,
  one_mark_is_good_to,
  stretch_at_pull_used,
  knot_comes_before_knot_apart,
  cord_map_begins,
  no_reading_names_this_cord,
  cord_its_knots_where_they,
  cord_not_to_scale_not,
  knot_in_full,
  each_knot_has_its_own,
  cord_map_of,
  knots_one_messenger_cord_and,
  page_for_each_messenger_cord,
  cord_maps_of,
};

constexpr std::string_view table_of(CordMapPhrase) {
  return "cord-map";
}

std::string_view words(CordMapPhrase phrase);

} // namespace sheerpole
