#include "wording/checks/strength_phrases.hpp"

namespace sheerpole {

std::string_view words(StrengthCheckPhrase phrase) {
  using enum StrengthCheckPhrase;
  switch (phrase) {
  case holds_how:
    return "{} ({})";
  case link_amount:
    return "{} {}";
  case meant_weaker:
    return "{} is meant to be weaker: {}";
  case part_holds:
    return "{} holds {}";
  case others_first:
    return "; weaker as well: {}";
  case line_unknown:
    return "what the line holds is not known; not stated: {}";
  case holds_less:
    return "this holds less";
  case than_this:
    return "than this";
  case none_known_weaker:
    return "nothing that is known is weaker than {}";
  case nothing_weaker:
    return "nothing is weaker than {}";
  case no_break_load:
    return "no link's break load is known";
  case holds_times:
    return "holds {} ({}), {} times its load of {}";
  case holds_at_most:
    return "holds at most {} ({}), {} times its load of {}";
  case weakest_known:
    return "the weakest that is known";
  case its_load:
    return "its load";
  case lacking:
    return "not stated: {}";
  case not_stated_as_well:
    return "{}; not stated: {}";
  case lacks_of:
    return "{} of {}";
  case hole_not_stated:
    return "{}: {} is not stated";
  case bears:
    return "{} bears {} ({}), {} times the load of {}";
  case hole_in_this:
    return "the hole is in this";
  case the_load:
    return "the load";
  case pin_lacks:
    return "pin-stress or pin-break-load of the pin";
  case shared_not_stated:
    return "shared by {}; not stated: {}";
  case pull_on_one_pin:
    return "{} pull with {} = {} on one pin that holds {} ({}), {} times their sum";
  case pin_they_share:
    return "the pin that they share";
  case on_the_bench:
    return "{} on the bench is {} of what {} holds";
  case of_lines:
    return "of {} on both sides";
  case port_of:
    return "port of {}";
  case starboard_of:
    return "starboard of {}";
  case with_stiffness:
    return "{}, EA {}";
  case both_sides:
    return "{}; {}";
  case rope_against_wire:
    return "{}: rope on one side and wire on the other";
  case apart:
    return "{}, {} apart";
  case at_most_one:
    return "{}; at most {}";
  case at_most_two:
    return "{}; at most {}, the very most {}";
  case the_rope:
    return "the rope";
  case gets_to:
    return "{} gets to {}";
  case dock_share:
    return "dock tension {} is {} of the {} of {}";
  case gets_tighter:
    return "at {} it gets tighter, by {}";
  case loses_some:
    return "at {} it gains {} on its path, which takes {} ({}), {} of the {} at the dock";
  case loses_all:
    return "at {} it gains {} on its path, which takes {} ({}) and leaves nothing of the {} at the dock";
  case coldest_not_stated:
    return "coldest of take-up is not stated";
  case gigapascals:
    return "{} GPa";
  case on_full_circle:
    return "EA {} is {} GPa on the full circle of {}";
  case over_square:
    return "break load {} over ({})^2 is {} kN/mm2; {}";
  case lines_have_between:
    return "lines have {} to {} kN/mm2";
  case lines_have_more:
    return "lines have {} kN/mm2 or more";
  case lines_have_less:
    return "lines have {} kN/mm2 or less";
  case screening_of:
    return "load-screening of {}";
  case no_spar:
    return "none of its points is on a spar (points on SPAR, or carries)";
  case no_lowest_panel:
    return "where its lowest panel begins is not stated (heel, or partners of a mast that stands on the "
           "keel)";
  case buckles_at:
    return "from {}, {}, it buckles at {} (pinned ends, pi^2 x EI {} kNm2 / length^2), {} times its "
           "compression "
           "of {}: {} x {} by the {}, for stays, halyards and sheets press besides the side force";
  case gives_compression:
    return "gives the compression";
  case no_screening:
    return "no load-screening by joint-equilibrium gives its compression";
  }
  return {};
}

} // namespace sheerpole
