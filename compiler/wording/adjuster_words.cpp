#include "wording/length_phrases.hpp"

namespace sheerpole {

std::string_view words(AdjusterPhrase phrase) {
  switch (phrase) {
  case AdjusterPhrase::days:
    return "{} days";
  case AdjusterPhrase::one_year:
    return "1 year";
  case AdjusterPhrase::years:
    return "{} years";
  case AdjusterPhrase::as_written:
  case AdjusterPhrase::each:
    return "{}";
  case AdjusterPhrase::bedding_in:
    return "bedding-in";
  case AdjusterPhrase::cut_off_already:
    return "cut off already";
  case AdjusterPhrase::bedding_not_stated:
    return "bedding of {} is not stated";
  case AdjusterPhrase::length_unknown:
    return "the length is unknown";
  case AdjusterPhrase::share_of_body:
    return "{} % of {}";
  case AdjusterPhrase::creep_in:
    return "creep in {}";
  case AdjusterPhrase::coldest_day:
    return "coldest day, {}";
  case AdjusterPhrase::warmest_day:
    return "warmest day, {}";
  case AdjusterPhrase::line_and_path:
    return "line {}, path {}";
  case AdjusterPhrase::uncertainty_of_length:
    return "uncertainty of the length";
  case AdjusterPhrase::no_bound:
    return "no bound is stated";
  case AdjusterPhrase::by_propagation:
    return "95 % range, by the law of propagation";
  case AdjusterPhrase::at_first_fit:
    return "first fit";
  case AdjusterPhrase::until_set:
    return "contraction of the splices, which the first creep gives back; counts until they have set";
  case AdjusterPhrase::until_set_not_known:
    return "no test splice says by how much the splices shorten the stay until they have set";
  case AdjusterPhrase::first_fit_no_room:
    return "at first fit the stay is {} short until its splices have set, and its adjusters give out {}";
  case AdjusterPhrase::first_fit_mend:
    return "set the adjuster further closed, or take the rule equals-first-creep out and count the "
           "contraction";
  case AdjusterPhrase::came_out_longer:
    return "the piece came out {} longer than it was to be";
  case AdjusterPhrase::came_out_shorter:
    return "the piece came out {} shorter than it was to be";
  case AdjusterPhrase::on_record:
    return "{}";
  case AdjusterPhrase::no_adjuster:
    return "there is no adjuster to set";
  }
  return {};
}

} // namespace sheerpole
