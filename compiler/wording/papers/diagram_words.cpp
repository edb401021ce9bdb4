#include "wording/papers/diagram_words.hpp"

namespace sheerpole {

std::string_view words(DiagramPhrase phrase) {
  using enum DiagramPhrase;
  switch (phrase) {
  case rig_three_views_one_scale:
    return "the rig in three views to one scale, and each stay as a strip of its parts from aloft to deck";
  case no_stays_stated_rig_file:
    return "No stays are stated in the rig file.";
  case not_drawn_because_no_path:
    return "Not drawn, because no path is stated: {}.";
  case side_view_view_from_astern:
    return "Side view, view from astern and deck view of the standing rigging to one scale. No stays.";
  case side_view_view_from_astern_begins:
    return "Side view, view from astern and deck view of the standing rigging to one scale. Stays: ";
  case rig_diagram:
    return "Rig diagram of {}";
  case rig_file_states_no_points:
    return "The rig file states no points, so there is no view to draw.";
  case rig_diagram_rig_file_states:
    return "Rig diagram. The rig file states no points, so there is no view to draw. No stays are stated "
           "either.";
  case rig_diagram_rig_file_states_begins:
    return "Rig diagram. The rig file states no points, so there is no view to draw. The strips show each "
           "stay from aloft to deck.";
  case rig_diagram_begins:
    return "Rig diagram";
  case on_paper:
    return " on {}";
  case rig_diagram_views_1_when:
    return "Rig diagram. {} views, 1:{} when printed at full size{}. Do not take lengths from this sheet: "
           "a view shows a stay shorter than it is.";
  case three:
    return "Three";
  case four:
    return "Four";
  case view_of:
    return "{} of {}";
  case scale_1_when_printed_full:
    return "To the scale 1:{} when printed at full size.";
  case draft_do_not_cut:
    return "DRAFT: do not cut to it. {}.";
  case sheerpole_reports_what_rig_file:
    return "Sheerpole reports what the rig file states; it does not size a rig.";
  case draft:
    return "{} (DRAFT)";
  case pin_pin_summary:
    return "{}: pin-to-pin {} mm, {}";
  case strips_stays_sheet_not_scale:
    return "Strips of the stays, sheet {} of {}. Not to scale. Millimetres. The numbers under the ticks "
           "are distances from the upper pin, each rounded by itself.";
  case strip:
    return "Strip of {}";
  case parts_from_upper_end_left:
    return "Its parts from the upper end, left, to the lower end, right. Not to scale. Millimetres; the "
           "numbers under the ticks are distances from the upper pin.";
  case strips_stays_sheet:
    return "Strips of the stays of {}, sheet {} of {}";
  case rig_file_states_no_stays:
    return "The rig file states no stays.";
  case each_stay_as_row_parts:
    return "Each stay as a row of its parts from the upper end, left, to the lower end, right.";
  case strips_stays_no_stays_stated:
    return "Strips of the stays. No stays are stated in the rig file.";
  case stay_strips:
    return "Stay strips";
  case turns:
    return ", {} turns";
  case cannot_tighten:
    return "cannot tighten: {} mm past the range";
  case tighten_mm:
    return "to tighten {} mm{}";
  case cannot_slacken:
    return "cannot slacken: {} mm past the range";
  case slacken_mm:
    return "to slacken {} mm{}";
  case body_mm:
    return "body {} mm, {} {}";
  case x_stay:
    return ". X of this stay: {}";
  case length_not_known_yet:
    return "length not known yet";
  case from:
    return ". From the {} to the {}";
  case length_not_known:
    return "length not known";
  case body_of:
    return "body, {} of {}";
  case body:
    return "body";
  case adds_no_length:
    return "adds no length";
  case length_not_stated:
    return "length not stated";
  case x_mm:
    return "{} x {} = {} mm";
  case set_to:
    return "set to {}";
  case port_starboard_alike:
    return "port and starboard alike";
  case pin_pin_mm:
    return "pin-to-pin {} mm";
  case above:
    return "above";
  case below:
    return "below";
  case one_metre_of_boat_is:
    return "1 m of the boat is {} mm of the sheet. The origin of the boat's axes is at x {} mm, y {} mm.";
  case where_port_starboard_differ_both:
    return "Where port and starboard differ, both are drawn.";
  case port_starboard_coincide_one_line:
    return "Port and starboard coincide: one line stands for both.";
  case aft:
    return "AFT";
  case forward:
    return "FORWARD";
  case port:
    return "PORT";
  case centreline:
    return "centreline";
  case starboard:
    return "STARBOARD";
  case centreline_bow:
    return "centreline, bow";
  case side_view_seen_from_starboard:
    return "Side view, seen from starboard, bow to the right";
  case seen_from_astern_looking_forward:
    return "Seen from astern, looking forward";
  case seen_from_astern:
    return "The {}, seen from astern";
  case deck_view_seen_from_above:
    return "Deck view, seen from above, bow up";
  case labels_starboard_hold_for_port:
    return "Labels to starboard hold for port too.";
  case too_many_stays_points_name:
    return "Too many stays and points to name here; the strips name each stay.";
  case points_too_close_together_here:
    return "Points too close together here are named in the other views.";
  case port_starboard:
    return ", port and starboard";
  case scale_bar_metres:
    return "Scale bar of {} metres";
  case scale_bar_feet:
    return "Scale bar of {} feet";
  case key_lines:
    return "Key to the lines";
  case wire:
    return "wire";
  case rope:
    return "rope";
  case spreader:
    return "spreader";
  case waterline_or_centreline_no_part:
    return "waterline or centreline, no part of the rig";
  case point_as_named_rig_file:
    return "point, as named in the rig file";
  case scale_1:
    return "Scale 1:{}";
  }
  return {};
}

} // namespace sheerpole
