#pragma once

#include "wording/phrase.hpp"

namespace sheerpole {

/// What papers say of a piece of chain, which is cut by counting its links.
enum class ChainPhrase : std::uint16_t {
  one_link,
  links,
  nearest_whole_link,
  as_worked_out,
  shorter_than_worked_out,
  longer_than_worked_out,
  is_set_longer,
  is_set_shorter,
  are_set_longer,
  are_set_shorter,
  cannot_be_set_longer,
  cannot_be_set_shorter,
  stay_comes_out_shorter,
  stay_comes_out_longer,
  of_piece,
  nothing_cut,
  cut_at_nearest_whole_link,
  worked_out,
  shorter,
  longer,
  bearing_of_chain,
  inside_of_link,
  goes_by_links,
  every_link,
  pitch_not_given,
  count_links,
  count_again,
  part_it_past_link,
  part_it_well_past_link,
  dry_fit_by_links,
  cut_past_link,
  cut_at_link_nearest_to_mark,
  make_fast_to_link,
  make_fast_to_end_link,
  at_link,
  hung_by_its_links,
  chain_loses_a_link,
};

constexpr std::string_view table_of(ChainPhrase) {
  return "chain";
}

std::string_view words(ChainPhrase phrase);

} // namespace sheerpole
