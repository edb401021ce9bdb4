#include "wording/checks/splice_phrases.hpp"

namespace sheerpole {

std::string_view words(SpliceCheckPhrase phrase) {
  using enum SpliceCheckPhrase;
  switch (phrase) {
  case splice_on:
    return "{} on {}";
  case buries:
    return "{} on {} buries {}, {} d";
  case diameters:
    return "{} d";
  case spliced_here:
    return "spliced here";
  case the_bury:
    return "the bury";
  case tapered_over:
    return "{} on {} is tapered over {} of {}";
  case buried_of:
    return "{} of {}";
  case length_is_x:
    return "the length of {} is X";
  case between_throats:
    return "{} in {} of {} between the throats";
  case between_bearings:
    return "{} in {} of {} between the bearings";
  case pear_shaped:
    return "{} round {}: pear-shaped, both legs lie in its groove";
  case no_diameter:
    return "{} round {}: the diameter of the rope-seat is not stated";
  case no_throat:
    return "{} round {}: the throat of the rope-seat is not stated";
  case throat_within:
    return "{} round {}: the throat lies within the rope on the seat";
  case legs_leave:
    return "{} round {}: each leg leaves the throat at {} from the pull";
  case bearing_to_throat:
    return "{} round {}: {} from bearing to throat, {} times the seat of {}";
  case two_ways:
    return "{} round {}: the test wrap gives {}, the geometry of the seat {}";
  case stated_and_seat:
    return "{} round {}: the splice states {}, the geometry of the seat gives {}";
  case the_eye_allowance:
    return "the eye allowance of the splice";
  case the_test_wrap:
    return "the test wrap";
  case not_hollow:
    return "{} buries its tail in {}, {}, which has no hollow core";
  case the_rope:
    return "the rope";
  case hollow:
    return "{} buries its tail in {}, which is hollow";
  case hollow_not_told:
    return "{} on {}: its construction does not tell whether it is hollow";
  case one_share:
    return "{}";
  case tests_give:
    return "{} test splices give {} of the bury";
  case another_test:
    return "another test splice";
  case stated_and_tests:
    return "{} on {} states a contraction of {}, its test splices give {}";
  case stated_is_taken:
    return "what is stated as measured is taken";
  case tests_are_taken:
    return "the test splices are taken";
  case stated_here:
    return "stated here";
  case a_test:
    return "a test splice";
  case counted_one_way:
    return "{} splices count in one way what their buries take";
  case counted_two_ways:
    return "{} counts nothing of what its bury takes, since the first creep gives it back; {} counts {} of "
           "the "
           "bury, {} at each eye";
  case counts_none:
    return "counts nothing";
  case counts_it:
    return "counts it";
  case no_test_for_first_fit:
    return "no test splice says by how much the splices shorten the stay until they have set";
  case first_fit_needs:
    return "at first fit its splices make it {} short, and its adjusters give out {}";
  case it_hung:
    return "it hung at {}, {} was worked out";
  case a_slip:
    return "{} ({})";
  case likely_slip:
    return "; likely slip: {}";
  case too_short:
    return "short";
  case too_long:
    return "long";
  case card_released:
    return "the dry fit releases it";
  case card_not_released:
    return "the dry fit does not release it: DRAFT";
  case lacks_an_input:
    return "{} in hand, and the cut lacks an input";
  case enough_up_to_x:
    return "{} in hand is enough while X is no more than {}; nobody knows X";
  case all_in_hand_used:
    return "{} in hand for {}, {} over the least cut: nothing is cut away";
  case some_cut_away:
    return "{} in hand for {}, {} over the least cut, of which {} is cut away";
  case gives_up_spare:
    return "{} {} of its spare bury can be given up";
  case gives_up_tail:
    return "{} {} of the tail that is held by and trimmed";
  case no_end_gives_up:
    return "neither end has spare bury or tail to give up";
  case not_enough_by:
    return "not enough by {}";
  case stated_in_hand:
    return "what is in hand";
  case no_stock_of:
    return "is no stock of {}";
  case stock_used_twice:
    return "counts {}, and {} pieces are to be made of it";
  case stock_is_of:
    return "{}, {}";
  case write_less_spare:
    return "if the spare bury is given up, write `spare-bury: {}`";
  case longer_piece_takes:
    return "if you can get a longer piece, it takes `{}`";
  case other_stock_is_longer:
    return "{} is long enough, and nothing is made of it yet";
  }
  return {};
}

} // namespace sheerpole
