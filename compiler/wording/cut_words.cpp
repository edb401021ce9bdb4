#include "wording/length_phrases.hpp"

namespace sheerpole {

std::string_view words(CutPhrase phrase) {
  switch (phrase) {
  case CutPhrase::by_test_wrap:
    return "test wrap";
  case CutPhrase::round_seat:
    return "round a seat of {}, throat {} from its centre";
  case CutPhrase::share_of:
    return "{} of {}";
  case CutPhrase::mean_share_of:
    return "{} of {}, mean of {} test splices";
  case CutPhrase::stretch_over_stiffness:
    return "{} N less {} N over EA {} kN, of {}";
  case CutPhrase::stretch_of_buries:
    return "{} buried, stretches {} % as much";
  case CutPhrase::bedding_of_cut:
    return "{} % of what is cut";
  case CutPhrase::kept_of_in_hand:
    return "kept of the {} over the least cut that are in hand";
  case CutPhrase::wrap_gives_more:
    return "the test wrap gives {}, {} more";
  case CutPhrase::wrap_gives_less:
    return "the test wrap gives {}, {} less";
  case CutPhrase::splice_gives_more:
    return "the allowance of the splice gives {}, {} more";
  case CutPhrase::splice_gives_less:
    return "the allowance of the splice gives {}, {} less";
  case CutPhrase::seat_gives_more:
    return "the geometry of the seat gives {}, {} more";
  case CutPhrase::seat_gives_less:
    return "the geometry of the seat gives {}, {} less";
  case CutPhrase::test_splice_gives:
    return "the test splices give a contraction of {}";
  case CutPhrase::tests_before_stated:
    return "the splice states a contraction of {}; the test splices go before it";
  case CutPhrase::one_test_splice:
    return "one test splice: by how much the next one differs is not known";
  case CutPhrase::setting_before_rule:
    return "the rule equals-first-creep is not taken: what setting gives back is stated or measured";
  case CutPhrase::equals_first_creep:
    return "contraction taken to equal the first creep, the cut counts neither, and until it sets the stay "
           "is short by it: common practice for heat-set rope, no source";
  case CutPhrase::pitch_not_stated:
    return "a chain is cut at a whole link; its pitch is not stated";
  case CutPhrase::whole_links_of_unknown:
    return "a chain is cut at a whole link, every {}";
  case CutPhrase::whole_links_longer:
    return "a chain is cut at a whole link: {} links of {} make {}, {} longer";
  case CutPhrase::whole_links_shorter:
    return "a chain is cut at a whole link: {} links of {} make {}, {} shorter";
  case CutPhrase::eye_allowance_missing:
    return "eye allowance of splice {} at {}";
  case CutPhrase::eye_allowance_mend:
    return "wrap the rope round {} and state wrap, or state eye-allowance in the splice, or diameter and "
           "throat of the rope-seat";
  case CutPhrase::splice_missing:
    return "splice at {}";
  case CutPhrase::splice_mend:
    return "name the splice in the stack, for example {} (splice: long-bury)";
  case CutPhrase::contraction_missing:
    return "contraction of splice {}";
  case CutPhrase::contraction_mend:
    return "make a test splice on this rope, measure how much shorter it got and state contraction";
  case CutPhrase::contraction_mend_or_rule:
    return "make a test splice on this rope, measure how much shorter it got and state contraction; or, as "
           "it is heat-set, state contraction-rule: equals-first-creep";
  case CutPhrase::rule_for_heat_set_only:
    return "the rule equals-first-creep is for heat-set rope only; make a test splice on this rope";
  case CutPhrase::eye_ways_apart:
    return "Test eye round {}: {}; the shape of the seat: {}. They are {} apart: wrap again before "
           "cutting.";
  case CutPhrase::eye_ways_block:
    return "the test eye round {} used {}, the shape of its seat asks for {}, more than one rope diameter "
           "apart";
  case CutPhrase::eye_allowance_apart:
    return "Eye round {}: the splice states {}; the shape of the seat: {}. They are {} apart: wrap the "
           "rope round this very part before cutting.";
  case CutPhrase::eye_allowance_block:
    return "the splice states an eye round {} of {}, the shape of its seat asks for {}, more than three "
           "rope "
           "diameters apart";
  case CutPhrase::eye_ways_mend:
    return "wrap the rope round {} again, or measure diameter and throat of its rope-seat again";
  case CutPhrase::wrap_this_part_mend:
    return "wrap the rope round {} and state what it took as its wrap, or measure diameter and throat of "
           "its "
           "rope-seat again";
  case CutPhrase::crown_block:
    return "{} counts {} towards the line, but by its shape the crown lies {} beyond the pin: the stay "
           "comes out {} short there";
  case CutPhrase::eyes_long_block:
    return "by the shape of their seats its eyes take {} less than the cut has for them, and only {} can "
           "be taken up";
  case CutPhrase::eyes_short_block:
    return "by the shape of their seats its eyes take {} more than the cut has for them, and only {} can "
           "be let out";
  case CutPhrase::eyes_mend:
    return "wrap the rope round each of its parts and state what it took as its wrap";
  case CutPhrase::crown_mend:
    return "measure {} from the middle of the pin to the crown, and write the length with a minus";
  case CutPhrase::ways_far_apart:
    return "its length is {} by one way and {} by another";
  case CutPhrase::ways_far_apart_mend:
    return "put the one right that is wrong, or leave it out";
  case CutPhrase::insertion_missing:
    return "insertion depth of {}";
  // A wire comes to a part aloft from below, so its socket is at the lower end of that part.
  case CutPhrase::insertion_mend_upper:
    return "state `lower: wire-socket (inserted: … mm)` in {}, from its maker or with a depth gauge";
  case CutPhrase::insertion_mend_lower:
    return "state `upper: wire-socket (inserted: … mm)` in {}, from its maker or with a depth gauge";
  case CutPhrase::wire_of_eye_missing:
    return "wire that the eye of {} uses";
  case CutPhrase::wire_of_eye_mend_upper:
    return "make a test eye and state `lower: wire-socket (inserted: … mm)` in {}: its length before less "
           "what it has from its crown on";
  case CutPhrase::wire_of_eye_mend_lower:
    return "make a test eye and state `upper: wire-socket (inserted: … mm)` in {}: its length before less "
           "what it has from its crown on";
  case CutPhrase::stretch_missing:
    return "stretch of the unknown length of {}";
  case CutPhrase::stretch_mend:
    return "state estimate in the stay, or measure it";
  case CutPhrase::dock_tension_missing:
    return "dock-tension of {}";
  case CutPhrase::dock_tension_mend:
    return "state the tension for which the pin-to-pin length holds";
  case CutPhrase::bench_tension_missing:
    return "bench-tension of {}";
  case CutPhrase::bench_tension_mend:
    return "state the pull under which the line is marked";
  case CutPhrase::stiffness_missing:
    return "stiffness of {}";
  case CutPhrase::stiffness_mend:
    return "state stiffness from its maker, or modulus and metallic-area";
  case CutPhrase::bedding_missing:
    return "bedding of {}";
  case CutPhrase::bedding_mend:
    return "state bedding from its maker, or say bedding-from: adjuster";
  case CutPhrase::buries_stretch_less:
    return "buries stretch less than plain rope: it may be up to {} mm short";
  case CutPhrase::stretch_not_counted:
    return "stretch from bench to dock: dock-tension is not stated";
  case CutPhrase::bedding_not_taken_up:
    return "bedding-in of {} mm: the stay has no adjuster to take it up; bedding-from: cut counts it";
  }
  return {};
}

} // namespace sheerpole
