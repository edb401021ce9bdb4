#include "wording/papers/rig_drawing_words.hpp"

namespace sheerpole {

std::string_view words(RigDrawingPhrase phrase) {
  using enum RigDrawingPhrase;
  switch (phrase) {
  case number:
    return "Number {}";
  case heights_above_waterline_millimetres:
    return "Heights above the waterline, millimetres";
  case hull_not_drawn_no_stay:
    return "Hull not drawn: no stay comes down at its stem, which would say where it lies.";
  case hull_not_drawn_neither_length:
    return "Hull not drawn: neither length overall nor the edge of the deck is given.";
  case sheer_not_drawn_no_height:
    return "Sheer not drawn: no height of the deck is given.";
  case hulls_not_drawn_plan_their:
    return "Hulls not drawn in plan: their shape is not given.";
  case hull_not_drawn_plan_beam:
    return "Hull not drawn in plan: its beam is not given.";
  case hull_outline_only_length_beam:
    return "Hull: outline only. Length and beam are as given; the shape is not.";
  case waterline:
    return "waterline";
  case millimetres_heights_from_waterline_take:
    return "Millimetres, heights from the waterline. Take no length from the drawing: a view shows a stay "
           "shorter than it is.";
  case lengths_in_tables_in:
    return "Lengths in the tables: {}.";
  case rig_file_gives_no_points:
    return "The rig file gives no points of stays, so there is no view.";
  case port_starboard_lie_on_one:
    return "Port and starboard lie on one line in the profile.";
  case port_starboard_do_not_lie:
    return "Port and starboard do not lie on one line in the profile.";
  case not_drawn_length_not_given:
    return "Not drawn, its length is not given: {}.";
  case no_spar_given_so_none:
    return "No spar is given, so none is drawn.";
  case spars_as_thick_as_their:
    return "Spars are drawn round, as thick as their girth says, where it is given.";
  case not_drawn_no_path_given:
    return "Not drawn, no path is given: {}.";
  case x_pin_pin_length_stay:
    return "X is the length of the cord of the stay in its row, from end to mark: the cord has it, the "
           "file "
           "does not. Each stay has its own, and so has each side.";
  case pieces_of_line:
    return "Pieces of line: {}.";
  case draft_do_not_cut:
    return "DRAFT: do not cut to it. {}.";
  case nobody_has_judged_from_whether:
    return "Nobody has judged from this whether the rig is strong enough. Local codes and a licensed "
           "professional rigger come first.";
  case from_astern:
    return "FROM ASTERN";
  case mast_from_astern:
    return "FROM ASTERN, {}";
  case no:
    return "No.";
  case stay:
    return "Stay";
  case line:
    return "Line";
  case pin_pin:
    return "Pin to pin";
  case cut:
    return "Cut";
  case adjuster:
    return "Adjuster";
  case what_lines_mean:
    return "What the lines mean";
  case shown:
    return "SHOWN";
  case pin:
    return "pin";
  case waterline_centreline:
    return "waterline, centreline";
  case hull_no_part_rig:
    return "hull outline, not part of the rig";
  case to_scale_at_full_size_on:
    return "1:{} at full size on {}";
  case base_from_below_pin:
    return "The base of the foretriangle runs from below the forestay's upper pin, which is taken to be at "
           "the "
           "fore side of the mast.";
  case base_foretriangle:
    return "base of foretriangle {}";
  case height:
    return "height of";
  case foretriangle:
    return "foretriangle";
  case waterline_measured:
    return "waterline {}";
  case length_overall:
    return "length overall {}";
  case no_size_of_paper:
    return "none of ISO 216";
  case rig_drawing:
    return "Rig drawing of {}";
  case profile_from_starboard_view_from:
    return "Profile from starboard, view from astern of each mast and deck plan of the standing rigging to "
           "one scale, with a table of its stays.";
  case measures:
    return "MEASURES";
  case profile_from_starboard:
    return "PROFILE, FROM STARBOARD";
  case deck_plan_from_above:
    return "DECK PLAN, FROM ABOVE";
  case rig_as_drawing_office_draws:
    return "the rig as a drawing office draws it: profile, from astern, deck plan, numbered stays and "
           "their table";
  case pieces:
    return "{}, in pieces";
  case hull_outline_only:
    return "Hull, outline only";
  case first_angle_projection:
    return "First-angle projection";
  case not_given:
    return "not given";
  case rig_drawing_sheerpole_reports_does:
    return "Rig drawing, {}. Sheerpole reports; it does not size a rig.";
  case rig_drawing_begins:
    return "Rig drawing, {}";
  case title_block:
    return "Title block";
  case owner:
    return "Owner";
  case drawn_by:
    return "Drawn by";
  case checked_by:
    return "Checked by";
  case status:
    return "Status";
  case draft:
    return "DRAFT";
  case as_file_states:
    return "as the file states";
  case title:
    return "Title";
  case rig_drawing_standing_rigging_general:
    return "Rig drawing: standing rigging, general arrangement";
  case first_angle:
    return "First angle";
  case scale:
    return "Scale";
  case none:
    return "none";
  case digest:
    return "Digest";
  case rig:
    return "rig {}";
  case date_report:
    return "Date of the report";
  case revision:
    return "Revision";
  case size:
    return "Size";
  case unit:
    return "Unit";
  case language:
    return "Language";
  case language_code:
    return "en";
  case sheet:
    return "Sheet";
  case one_of_one:
    return "1 of 1";
  case changes_nothing_in_file:
    return "changes nothing in the file";
  case one_value_changed:
    return "1 value changed";
  case values_changed:
    return "{} values changed";
  case what:
    return "What";
  case date:
    return "Date";
  case by:
    return "By";
  case as_layer:
    return "as {}";
  case drawing:
    return "this drawing";
  case notes:
    return "Notes";
  case notes_capitals:
    return "NOTES";
  case from_shortest_to_longest:
    return "{} ({} to {})";
  case and_word:
    return " and ";
  case length_overall_begins:
    return "Length overall";
  case waterline_begins:
    return "Waterline";
  case beam:
    return "Beam";
  case sheer_mast:
    return "Sheer at the mast";
  case foretriangle_height:
    return "Foretriangle, height";
  case foretriangle_base:
    return "Foretriangle, base";
  case mainsail_hoist:
    return "Mainsail, hoist";
  case mainsail_foot:
    return "Mainsail, foot";
  case mizzen_hoist:
    return "Mizzen, hoist";
  case mizzen_foot:
    return "Mizzen, foot";
  case length_not_given:
    return "length not given";
  case upright:
    return ", upright";
  case rake:
    return ", rake {}";
  case aft_up:
    return "{}, aft {}, up {}";
  case piece_row_column_print_full:
    return "{}: piece {} of {}, row {} of {}, column {} of {}. Print at full size; lay mark on mark.";
  case row_column:
    return "{}, row {}, column {}";
  case piece_sheet_full_size_with:
    return "A piece of the sheet at full size, with marks to join it to the others.";
  }
  return {};
}

} // namespace sheerpole
