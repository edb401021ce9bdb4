#include "wording/papers/chain_words.hpp"

namespace sheerpole {

std::string_view words(ChainPhrase phrase) {
  using enum ChainPhrase;
  switch (phrase) {
  case one_link:
    return "1 link of {}, {}";
  case links:
    return "{} links of {}, {}";
  case nearest_whole_link:
    return "at the whole link nearest to {}";
  case as_worked_out:
    return "as long as worked out";
  case shorter_than_worked_out:
    return "{} shorter than worked out, {}: {}";
  case longer_than_worked_out:
    return "{} longer than worked out, {}: {}";
  case is_set_longer:
    return "{} is set longer by as much";
  case is_set_shorter:
    return "{} is set shorter by as much";
  case are_set_longer:
    return "{} together are set longer by as much";
  case are_set_shorter:
    return "{} together are set shorter by as much";
  case cannot_be_set_longer:
    return "{} cannot be set longer by as much";
  case cannot_be_set_shorter:
    return "{} cannot be set shorter by as much";
  case stay_comes_out_shorter:
    return "the stay has no adjuster and comes out shorter by as much";
  case stay_comes_out_longer:
    return "the stay has no adjuster and comes out longer by as much";
  case of_piece:
    return "{}: {}, {}.";
  case nothing_cut:
    return "nothing cut";
  case cut_at_nearest_whole_link:
    return "CUT AT THE WHOLE LINK NEAREST TO";
  case worked_out:
    return "worked out";
  case shorter:
    return "{} shorter than worked out";
  case longer:
    return "{} longer than worked out";
  case bearing_of_chain:
    return "Bearing: the inside of the end link.";
  case inside_of_link:
    return "inside of link {}";
  case goes_by_links:
    return "Chain: {}, {}.";
  case every_link:
    return "A chain is cut at a whole link, every {}.";
  case pitch_not_given:
    return "A chain is cut at a whole link; the file does not give the length of one.";
  case count_links:
    return "Links to count: {}. Link 1 bears aloft. Mark link {}.";
  case count_again:
    return "Count again from link {} back to link 1. Laid out it is {} from bearing to bearing.";
  case part_it_past_link:
    return "Take the chain off its spool past link {}, not at it.";
  case part_it_well_past_link:
    return "Take the chain off its spool well past link {}.";
  case dry_fit_by_links:
    return "Dry fit, nothing cut: hang it by link 1 and link {}. {}";
  case cut_past_link:
    return "Cut the next link past link {}. What is left: {}.";
  case cut_at_link_nearest_to_mark:
    return "Cut at the whole link nearest to mark {}.";
  case make_fast_to_link:
    return "{}: make {} fast to link {}.";
  case make_fast_to_end_link:
    return "{}: make {} fast to the end link.";
  case at_link:
    return "at link {}";
  case hung_by_its_links:
    return "{}: {}, {}; hung by the links it bears on, nothing cut";
  case chain_loses_a_link:
    return "; a chain loses a link";
  }
  return {};
}

} // namespace sheerpole
