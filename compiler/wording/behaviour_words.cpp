#include "wording/length_phrases.hpp"

namespace sheerpole {

std::string_view words(BehaviourPhrase phrase) {
  switch (phrase) {
  case BehaviourPhrase::not_stated_of_line:
  case BehaviourPhrase::not_stated_of_stay:
  case BehaviourPhrase::not_stated_of_name:
    return "{} of {} is not stated";
  case BehaviourPhrase::length_unknown:
    return "the length is unknown";
  case BehaviourPhrase::no_path:
    return "there is no path through points";
  case BehaviourPhrase::no_point_on_spar:
    return "none of its points is on a spar (points on SPAR, or carries)";
  case BehaviourPhrase::no_reference_temperature:
    return "reference-temperature of the boat is not stated";
  case BehaviourPhrase::no_creep_temperature:
    return "neither creep-temperature nor reference-temperature is stated";
  case BehaviourPhrase::no_free_length:
    return "over, the free length, is not stated";
  case BehaviourPhrase::no_marked_length:
    return "over, the marked length, is not stated";
  case BehaviourPhrase::creep_of_first_year_only:
    return "creep of {} is stated for the first year only";
  case BehaviourPhrase::creep_beyond_stated:
    return "creep of {} at {} of its break load and {} lies beyond what is stated";
  case BehaviourPhrase::outside_formula:
    return "its numbers are outside what the formula holds for";
  case BehaviourPhrase::share_of_first_year:
    return "{} of {}, all of the first year";
  case BehaviourPhrase::metal_does_not_creep:
    return "metal does not creep at these loads and temperatures: common practice, no source";
  case BehaviourPhrase::creep_by_table:
    return "{} % a year of {} at {} of break and {}, by the table of creep rates";
  case BehaviourPhrase::creep_by_eyring:
    return "{} % a year of {} at {} of break and {}, by Eyring's law from one point";
  case BehaviourPhrase::mersenne_by_swing:
    return "4 x {} kg/m x ({})^2 x ({} Hz)^2, Mersenne";
  case BehaviourPhrase::mersenne_by_pulse:
    return "4 x {} kg/m x ({})^2 / ({} s)^2, Mersenne";
  case BehaviourPhrase::hooke_by_stretch:
    return "{} over {} x EA {} kN, Hooke";
  case BehaviourPhrase::shown_by_gauge:
    return "as the gauge shows it";
  }
  return {};
}

} // namespace sheerpole
