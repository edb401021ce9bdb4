#include "wording/checks/geometry_phrases.hpp"

namespace sheerpole {

std::string_view words(GeometryCheckPhrase phrase) {
  using enum GeometryCheckPhrase;
  switch (phrase) {
  case falls:
    return "falls {}";
  case rises:
    return "rises {}";
  case off_clamped:
    return "{} (clamped) {} off";
  case off_free:
    return "{} (free) {} off";
  case would_halve:
    return "one that {} would halve the angle";
  case rises_off_bisector:
    return "{} rises {}, {} off the bisector{}";
  case and_others:
    return "; {}";
  case past_without_bending:
    return "goes past the tip without bending towards the mast";
  case pulls_outwards:
    return "pulls the tip outwards with {} of its tension";
  case pressed_inwards:
    return "{}: pressed inwards by {} of its tension";
  case the_tip:
    return "the tip";
  case the_spreader:
    return "the spreader";
  case no_stay_over:
    return "no stay goes over its tip";
  case swings_at_root:
    return "it swings at its root";
  case fixed_at_root:
    return "it is fixed at its root";
  case hold_not_stated:
    return "whether it swings or is fixed at its root is not stated (hold)";
  case clamped_one:
    return "{} is clamped to it";
  case clamped_several:
    return "{} are clamped to it";
  case ends_one:
    return "{} ends at it";
  case ends_several:
    return "{} end at it";
  case free_one:
    return "{} runs free over it";
  case free_several:
    return "{} run free over it";
  case angle_from:
    return "{} from {}";
  case stands_upright:
    return "which is upright";
  case leans_outboard:
    return "which leans outboard by {}";
  case leans_inboard:
    return "which leans inboard by {}";
  case leans_forward:
    return "which is set athwartships and leans forward by {}";
  case leans_aft:
    return "which is set athwartships and leans aft by {}";
  case out_of_plane:
    return "{} out of its plane";
  case the_plate:
    return "the plate";
  case plane_of_plate:
    return "{}: {} out of its plane, {}";
  case line_to_middle:
    return "the straight line from its other end to the middle between the ends of its legs";
  case plane_of_ends:
    return "the plane through the ends of its three stays";
  case stands_off:
    return "it is {} mm off {}";
  case would_push:
    return "one of its legs would have to push to hold it where it is";
  case on_its_line:
    return "{}: {} mm off {}; {}";
  case each_leg:
    return "each leg at {} carries {} of its tension";
  case one_leg:
    return "{} at {} carries {} of its tension";
  case stay_that_ends:
    return "the stay that ends there";
  case below_waterline:
    return "{} m below the waterline";
  case above_waterline:
    return "{} m above the waterline";
  case from_here_down:
    return "from here down";
  case other_stay:
    return "the other stay";
  case none_within:
    return "no other stay within {}";
  case nearest_is:
    return "{} is nearest, {} mm clear of it, {}";
  case runs_into:
    return "runs into {}";
  case too_many_stays:
    return "so many stays lie close together that not all were held against each other";
  case no_girth_no_length:
    return "its girth and its length are not stated";
  case no_length:
    return "its length is not stated";
  case no_girth:
    return "its girth is not stated";
  case goes_through:
    return "goes through {}, {} mm inside its surface";
  case passes_at:
    return "passes {} at {} mm";
  case the_spreaders:
    return "the spreaders";
  case clear_of:
    return "clear of {}";
  case too_many_spreaders:
    return "so many stays and spreaders lie close together that not all were checked";
  case no_deck_edge:
    return "the edge of the deck is not stated (deck-edge of the boat)";
  case on_the_way:
    return "on the way here";
  case not_through_deck:
    return "it does not go through the deck";
  case covers_not_stated:
    return "that the files hold all stays is not stated (covers of the boat)";
  case no_mast:
    return "no standing spar is stated (sort: mast, mizzen or topmast)";
  case no_stay_on_spar:
    return "no stay ends on it";
  case rests_on:
    return "{}, which rests on the {}";
  case would_be_longer:
    return "{} would be {} longer at half the beam";
  case beam_not_stated:
    return "the beam is not stated, so nobody knows by how much";
  case metres:
    return "{} m";
  case height_of_foretriangle:
    return "height of the foretriangle";
  case base_of_foretriangle:
    return "base of the foretriangle";
  case no_sheer:
    return "sheer-at-mast of the boat is not stated";
  case end_on_no_mast:
    return "the upper end of the forestay is on no stated mast";
  case no_headstay:
    return "no stay on the centreline is said to carry a sail (duty)";
  case stated_and_points:
    return "{} stated {} m, from points {} m";
  case stated_metres:
    return "stated {} m";
  case points_metres:
    return "from points {} m";
  case nothing_to_hold_against:
    return "nothing that is stated of the boat says where it can be";
  case inside_the_boat:
    return "it is where it can be";
  case before_mast:
    return "it is {} m before the nearest mast, and the boat is {} m long";
  case behind_mast:
    return "it is {} m behind the nearest mast, and the boat is {} m long";
  case the_length_overall:
    return "the length overall";
  case height_and_sheer:
    return "it is {} m above the waterline, and the sheer is at {} m";
  case the_sheer:
    return "the sheer";
  case wider_than_beam:
    return "it is {} m off the centreline, and half the beam is {} m";
  case the_beam:
    return "the beam";
  case close_pair:
    return "port and starboard are {} m apart, and the beam is {} m";
  case lies_along:
    return "{} comes off {} at {} alone";
  case its_upper_end:
    return "its upper end";
  case its_lower_end:
    return "its lower end";
  case long_under_sprit:
    return "{} is {} m long, and {} is {} m";
  case length_of_spar:
    return "its length";
  case low_aloft:
    return "it is {} m above the waterline, and {} goes from it down to {} at {} m";
  case above_hoist:
    return "it is {} m above the waterline, and a mainsail of {} m hoist is set above a sheer of {} m";
  case above_triangle:
    return "it is {} m above the waterline, and the foretriangle is {} m high above a sheer of {} m";
  case stated_here_too:
    return "the other fact";
  case high_for_length:
    return "it is {} m above the waterline, and the boat is {} m long";
  case beyond_spar:
    return "it is on {}, {} m from its heel, and the spar is {} m long";
  case inboard_on_spar:
    return "it is on {}, {} m from its heel, and the spar is {} m long: a stay goes to its outer end";
  case off_spar:
    return "it is {} m off the line of {}";
  case off_spar_in_boat_axes:
    return "it is {} m off the line of {}; its numbers are those of boat axes, and points on a spar "
           "are counted from its heel";
  case the_spar:
    return "the spar";
  case fore_face_leads_aft:
    return "it is {} m before the line of {}, and {} leads aft from it to {}";
  case aft_face_leads_forward:
    return "it is {} m behind the line of {}, and {} leads forward from it to {}";
  case steep_spreader:
    return "its spreader goes {} m up or down on {} m outwards";
  case the_root:
    return "the root";
  case swept_spreader:
    return "its spreader is swept by {}";
  case short_spreader:
    return "its spreader is {} m long, and half the beam is {} m";
  case sweeps_unlike:
    return "its spreader is swept aft by {}, that of {} by {}";
  case the_other_tip:
    return "the other tip";
  case leads_off:
    return "{} leads off {} by {}";
  case nothing_beside:
    return "no point beside it says where it can be";
  case agrees_with_neighbours:
    return "it agrees with the points beside it";
  case row_uneven:
    return "it is {} m from {}, and the others of its row are {} m apart";
  case the_next_one:
    return "the next one";
  case sides_unlike:
    return "it is {} m from where {} is on the other side";
  case the_other_side:
    return "the other side";
  case off_its_fitting:
    return "it is {} m from the other points of {}, which lie within {} m";
  case another_of_them:
    return "one of the others";
  case ahead_of_stem:
    return "it is {} m ahead of {}, and the hull has no width there";
  case behind_stern:
    return "it is {} m aft of {}, and the boat is {} m long";
  case the_stem:
    return "the foremost fitting";
  case below_deck_line:
    return "it is {} m above the waterline; from the sheer to {} the deck is at {} m there";
  case bobstay_high:
    return "it is {} m above the waterline, and the heel of {} only at {} m";
  case height_unlike:
    return "it is {} m above the waterline, {} and the others beside it at {} m";
  case swept_aft_plate_ahead:
    return "{} sweeps aft, and the shroud over it ends here, {} m ahead of {}";
  case swept_forward_plate_behind:
    return "{} sweeps forward, and the shroud over it ends here, {} m aft of {}";
  case tang_near_mast:
    return "it is {} m before the line of {}, and {} {} m";
  case tang_in_mast:
    return "it is {} m off the line of {}, and {} {} m to the side: a tang is on the outside of a mast";
  case between_masts_low:
    return "it is {} m above the heel of {}, and {} {} m: a stay from another mast ends near the head";
  case height_unlike_one:
    return "it is {} m above the waterline, {} beside it at {} m";
  case does_not_count:
    return "{} is off its line or in its lower half, and does not count";
  case leads_no_way:
    return "{} leads straight down to {}";
  case near_heel:
    return "it is {} m above the heel of {}, and no stay is made fast so low";
  case step_below_sheer:
    return "its heel is {} m above the waterline, and it is stepped on deck; the sheer is at {} m";
  case the_other_tang:
    return "the other tang";
  }
  return {};
}

} // namespace sheerpole
