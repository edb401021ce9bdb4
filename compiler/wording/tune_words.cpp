#include "calculate/tune/tune_phrase.hpp"
#include "wording/phrase_table.hpp"

namespace sheerpole {

std::string_view words(TunePhrase phrase) {
  switch (phrase) {
  case TunePhrase::spar:
  case TunePhrase::spreader:
  case TunePhrase::stay:
  case TunePhrase::line:
    return "{}";
  case TunePhrase::station:
    return "{} at {}";
  case TunePhrase::no_path:
    return "{} has no path: nobody knows where it pulls";
  case TunePhrase::no_mast:
    return "no stay is made fast to a mast";
  case TunePhrase::no_stay:
    return "no stay holds {} above its heel";
  case TunePhrase::sort_not_in_model:
    return "{} carries a stay: gaffs and booms are not worked with";
  case TunePhrase::too_many_stays:
    return "{} stays are tuned together; more than {} are not worked out";
  case TunePhrase::stands_on_spar:
    return "{} stands on {}, and how its heel and the cap hold it cannot be stated";
  case TunePhrase::no_station_at_heel:
    return "the lowest spar-station of {} is at {}, and none is at its heel";
  case TunePhrase::no_station_at_head:
    return "the highest spar-station of {} is at {}, and none is at its head, {} from the heel";
  case TunePhrase::root_on_no_spar:
    return "the root of {} is on no mast";
  case TunePhrase::places_are_one:
    return "two places that follow each other on the path of {} are one";
  case TunePhrase::no_line_left:
    return "the hardware of {} is as long as its path: no line is left to stretch";
  case TunePhrase::length_of_part_missing:
    return "the length of {1} in {0} is not stated";
  case TunePhrase::no_tension_known:
    return "of {} neither taken-up nor a tension-reading nor dock-tension is stated";
  case TunePhrase::turns_without_screw:
    return "taken-up of {} is stated in turns, and nothing in it is turned";
  case TunePhrase::partners_off_mast:
    return "the partners of {} are not between its heel and its head";
  case TunePhrase::stiffness_out_of_range:
    return "a stiffness of {} is nothing, or no number that a rig has";
  case TunePhrase::place_out_of_range:
    return "a point is further off than any boat is long";
  case TunePhrase::length_out_of_range:
    return "more was taken up of {} than it is long";
  case TunePhrase::cannot_be_worked:
    return "spars and stays do not hang together so that they can be worked with";
  case TunePhrase::no_balance:
    return "no balance was found: look for a stay that is far too tight or far too slack, and for a number "
           "with a "
           "slip in it";
  case TunePhrase::something_loose:
    return "{} can move {} without resistance: nothing that pulls holds it";
  case TunePhrase::knife_edge:
    return "{} stands as on a knife's edge {}: a little more and it goes over";
  case TunePhrase::ran_away:
    return "{} runs off by more than tuning does: as drawn, nothing holds it there. A line that is free at "
           "its "
           "tip needs a spreader whose root does not let it droop";
  case TunePhrase::readings_do_not_fit:
    return "no lengths of the stays make the tensions that are stated, {} is furthest off: look for a "
           "gauge for another size, a "
           "reading of another stay, a stiffness with a slip in it";
  case TunePhrase::does_not_stand_with:
    return "with {} off by its whole bound the rig does not stand: no ± comes of it";
  case TunePhrase::wrong_hand:
    return "turned the wrong way: a thread of the other hand";
  case TunePhrase::miscounted_more:
    return "turns miscounted: it stands as with {} more";
  case TunePhrase::miscounted_less:
    return "turns miscounted: it stands as with {} fewer";
  case TunePhrase::stands_tighter:
    return "it stands as with {} turns more than stated";
  case TunePhrase::stands_slacker:
    return "it stands as with {} turns fewer than stated";
  case TunePhrase::took_more:
    return "it stands as if it had taken {} more than stated";
  case TunePhrase::took_less:
    return "it stands as if it had taken {} less than stated";
  case TunePhrase::gauge_of_another_size:
    return "all readings are {} times what the settings make: a gauge for another size, or wire of another "
           "size";
  case TunePhrase::wish_of_no_stay:
    return "the tension of {} is wished for, and it is not set up";
  case TunePhrase::wish_without_break_load:
    return "a share of its break load is wished for {}, and the break load of its line is not stated";
  case TunePhrase::wished_twice:
    return "the {1} of {0} is wished for twice: the later wish counts, and one of the command line is "
           "later "
           "than those of the file";
  case TunePhrase::wish_of_no_mast:
    return "something is wished of {}, which is no mast with stays";
  case TunePhrase::wish_of_no_place:
    return "{1} of {0} is wished for, and no spreader stands there";
  case TunePhrase::mast_taken_not_twisting:
    return "{} is taken not to twist, since twisting-stiffness is not stated and no spreader of it is "
           "fixed";
  case TunePhrase::tapered_evenly:
    return "between two stations of {} its stiffness is taken to change evenly";
  case TunePhrase::left_out:
    return "{} is taken as let go: no tension of it is stated";
  case TunePhrase::wedged_in_partners:
    return "{} is taken as wedged in the partners without play";
  case TunePhrase::by_dock_tension:
    return "{} is taken to have its dock-tension: nobody read it";
  case TunePhrase::rake_not_read:
    return "tensions alone do not tell where a masthead stands: it is taken as near to its drawn place as "
           "they let it";
  case TunePhrase::reading_without_bound:
    return "a reading of {} has no bound; against others it weighs as one of 5 %, and no ± comes of it";
  case TunePhrase::earlier_reading:
    return "the reading of {} of {} is left out: it was read again on {}";
  case TunePhrase::readings_of_several_days:
    return "the stays were read on several days, {} to {}: they tell one state only if nothing was turned "
           "between";
  case TunePhrase::hardware_is_rigid:
    return "hardware does not stretch; the hull is stiff where no give is stated";
  case TunePhrase::rests_on_assumed:
    return "{} of {} is assumed";
  case TunePhrase::put_in_with_value:
    return "put in `{}:` and write its value behind it";
  case TunePhrase::if_end_is_meant:
    return "if that end is meant, write `{}`";
  case TunePhrase::fore_and_aft:
    return "fore and aft";
  case TunePhrase::athwart:
    return "athwart";
  case TunePhrase::up_and_down:
    return "up and down";
  }
  return {};
}

} // namespace sheerpole
