#include "limits/limit.hpp"

#include "units/si_factors.hpp"

#include <algorithm>
#include <array>

namespace sheerpole {

namespace {

using enum LimitClass;

/// A threshold about which nobody quarrels much.
constexpr LimitRow agreed(Limit limit, std::string_view name, Dimension dimension,
                          std::optional<double> value, std::string_view example, LimitClass limit_class,
                          std::string_view source, std::string_view meaning) {
  return {limit, name, dimension, value, example, limit_class, source, false, meaning};
}

/// One about which sources or hands disagree.
constexpr LimitRow disputed(Limit limit, std::string_view name, Dimension dimension,
                            std::optional<double> value, std::string_view example, LimitClass limit_class,
                            std::string_view source, std::string_view meaning) {
  return {limit, name, dimension, value, example, limit_class, source, true, meaning};
}

/// The same of a number of things.
constexpr LimitRow counted(LimitRow row) {
  row.is_count = true;
  return row;
}

constexpr std::array table{
    agreed(Limit::pin_play, "pin-play", dimension::length, 0.0005, "0.5 mm", common_practice,
           "that a pin should fit is published, the number is not",
           "play of a pin in its hole, or pin-play-share of the pin if that is more"),
    agreed(Limit::pin_play_share, "pin-play-share", dimension::number, 0.05, "5 %", common_practice, "",
           "the same as a share of the diameter of the pin"),
    agreed(Limit::side_play, "side-play", dimension::length, 0.003, "3 mm", common_practice,
           "1.5 mm either side",
           "play of a plate sideways in a jaw, both sides together, or side-play-share of a thin plate if "
           "that is "
           "less"),
    agreed(Limit::side_play_share, "side-play-share", dimension::number, 0.6, "60 %", project, "",
           "the same of a plate thinner than 5 mm, as a share of its thickness"),
    agreed(Limit::edge_usual, "edge-usual", dimension::number, 1.5, "150 %", common_practice, "",
           "from the centre of a hole to the end of its plate, over the diameter of the hole"),
    agreed(Limit::edge_least, "edge-least", dimension::number, 1.25, "125 %", common_practice, "",
           "the same, the least in use; said in the finding"),
    disputed(Limit::seat_usual, "seat-usual", dimension::number, 2.0, "200 %", common_practice,
             "tables of bend ratios disagree", "diameter of a seat over that of the rope on it"),
    disputed(Limit::seat_least, "seat-least", dimension::number, 1.0, "100 %", common_practice,
             "tables of bend ratios disagree", "the same, the least in use; said in the finding"),
    disputed(Limit::seat_width, "seat-width", dimension::number, 1.5, "150 %", project, "",
             "width of the groove over the diameter of the rope, beyond which the rope lies flat"),
    agreed(Limit::pin_bearing, "pin-bearing", dimension::number, 2.0, "200 %", project, "",
           "what a hole bears over the stated load of the stay"),
    disputed(Limit::edge_radius, "edge-radius", dimension::number, 0.5, "50 %", common_practice, "",
             "radius of an edge or a tip that rope bears on, over the diameter of the rope"),
    agreed(Limit::adjuster_reserve, "adjuster-reserve", dimension::number, 0.1, "10 %", project, "",
           "share of an adjuster's range that should be left either way"),
    disputed(Limit::thread_engaged, "thread-engaged", dimension::number, 1.0, "100 %", common_practice,
             "three turns is the other rule in use", "thread in the body over the diameter of the thread"),
    disputed(Limit::thread_engaged_stainless, "thread-engaged-stainless", dimension::number, 1.25, "125 %",
             common_practice, "1.25 to 1.5 diameters are in use",
             "the same, of a part whose `metal` is stainless, bronze or titanium"),
    disputed(Limit::thread_engaged_aluminium, "thread-engaged-aluminium", dimension::number, 2.0, "200 %",
             common_practice, "", "the same, of a part whose `metal` is aluminium"),
    disputed(
        Limit::take_up_left, "take-up-left", dimension::number, 1.0 / 3.0, "33.3333 %", common_practice, "",
        "share of an adjuster's range that should be left to tighten after bedding-in, stretch and creep"),
    disputed(Limit::first_fit_closed, "first-fit-closed", dimension::number, 2.0 / 3.0, "66.6667 %",
             common_practice, "", "how far a screw may be closed as set"),
    disputed(
        Limit::lashing_strength, "lashing-strength", dimension::number, 1.5, "150 %", common_practice,
        "weak",
        "strength of a lashing over what it has to hold: the stated load, else the break load of the line"),
    disputed(Limit::lashing_legs, "lashing-legs", dimension::number, 1.0, "100 %", common_practice,
             "friction keeps the two legs of a pass from sharing alike",
             "legs of cord counted for each pass of a lashing; each pass has two"),
    disputed(Limit::knot_factor, "knot-factor", dimension::number, 0.5, "50 %", published,
             "published tests of knots: 30 to 50 % of the cord; the careful end is taken in `lashing-legs`",
             "share of the cord's break load that its knot may be taken to hold"),
    disputed(Limit::bury_least, "bury-least", dimension::rope_diameters, 50.0, "50 d", common_practice,
             "found rules lie between 31 and 100 d, hardly any below 50 d",
             "tail buried in a splice of the kind `bury`; less blocks unless it is accepted"),
    disputed(Limit::bury_usual, "bury-usual", dimension::rope_diameters, 72.0, "72 d", common_practice,
             "50, 60 and 63 d are in use as well; a splicing sheet of a 12-strand rope asks for 63 d",
             "the same as usually made"),
    disputed(Limit::taper_least, "taper-least", dimension::number, 0.15, "15 %", common_practice,
             "found rules ask for 20 to 33 %", "share of the bury that is tapered"),
    disputed(Limit::eye_least, "eye-least", dimension::number, 3.0, "300 %", common_practice, "",
             "length of an eye from its bearing to the throat, over the diameter of what it bears on"),
    disputed(Limit::eye_usual, "eye-usual", dimension::number, 5.0, "500 %", common_practice, "",
             "the same as usually made"),
    disputed(Limit::eye_angle, "eye-angle", dimension::angle, 15.0 * degree, "15 deg", common_practice, "",
             "half the angle between the legs of an eye at the throat"),
    agreed(Limit::eye_ways_apart, "eye-ways-apart", dimension::length, 0.005, "5 mm", project, "",
           "rope of an eye by a test wrap against that by geometry"),
    disputed(
        Limit::contraction_apart, "contraction-apart", dimension::number, 0.3, "30 %", project,
        "2.8 times the 10 % by which one hand is taken to scatter (the factor: ISO 5725-6, from memory)",
        "how far the test splices of one rope may be apart, over their mean"),
    agreed(Limit::hang_apart, "hang-apart", dimension::length, 0.006, "6 mm", project,
           "about 1/4 in, what can be read off a stay that hangs",
           "where a stay hangs at the dry fit against where it should"),
    agreed(Limit::routes_apart, "routes-apart", dimension::length, 0.005, "5 mm", project,
           "about what a tape and a list of points agree to", "two ways to one pin-to-pin length"),
    agreed(
        Limit::routes_far_apart, "routes-far-apart", dimension::number, 0.05, "5 %", project,
        "far beyond what a tape, a cord or a drawing is off by; slips of a unit, of a digit or of a point "
        "lie beyond it",
        "the same as a share of the longer; beyond it nothing is cut"),
    agreed(Limit::estimate_apart, "estimate-apart", dimension::number, 0.1, "10 %", project,
           "an estimate is good enough to order line by; a slip of a unit or of a digit lies beyond it",
           "pin-to-pin length against the estimate of the stay, as a share of the longer"),
    agreed(Limit::size_off, "size-off", dimension::number, 2.0, "200 %", project,
           "the usual ranges are common practice, the factor is a choice",
           "how many times a size may lie outside the range that is usual over its line"),
    agreed(Limit::size_far_off, "size-far-off", dimension::number, 5.0, "500 %", project,
           "a slip of a digit is a factor of ten", "the same; beyond it nothing is cut"),
    agreed(Limit::path_rise, "path-rise", dimension::length, 0.1, "100 mm", project, "",
           "the last point of a path above its first"),
    agreed(Limit::pair_apart, "pair-apart", dimension::length, 0.003, "3 mm", common_practice, "",
           "port against starboard, or pair-apart-share of the length if that is more; the boat's "
           "pair-tolerance goes before it"),
    agreed(Limit::pair_apart_share, "pair-apart-share", dimension::number, 0.0005, "0.05 %",
           common_practice, "", "the same as a share of the body"),
    disputed(Limit::pair_far_apart, "pair-far-apart", dimension::number, 0.02, "2 %", project,
             "boats are built out of true by less",
             "the same, from where on a slip is likelier than the boat"),
    agreed(Limit::foretriangle_apart, "foretriangle-apart", dimension::length, 0.02, "20 mm", project, "",
           "foretriangle as stated against the points"),
    disputed(Limit::bisector_usual, "bisector-usual", dimension::angle, 2.0 * degree, "2 deg",
             common_practice, "weak",
             "how far a spreader may be from halving the angle of the line over its tip; a note beyond it"),
    disputed(Limit::bisector_most, "bisector-most", dimension::angle, 5.0 * degree, "5 deg",
             common_practice, "weak", "the same; a warning beyond it"),
    agreed(Limit::stay_angle_least, "stay-angle-least", dimension::angle, 10.0 * degree, "10 deg",
           common_practice, "", "angle between a shroud and the mast"),
    agreed(Limit::stay_angle_usual, "stay-angle-usual", dimension::angle, 12.0 * degree, "12 deg",
           common_practice, "", "the same; a note below it"),
    agreed(Limit::plate_off_usual, "plate-off-usual", dimension::angle, 2.0 * degree, "2 deg",
           common_practice, "", "pull of a stay out of the plane of its chainplate; a note beyond it"),
    agreed(Limit::plate_off_most, "plate-off-most", dimension::angle, 5.0 * degree, "5 deg",
           common_practice, "", "the same; a warning beyond it"),
    agreed(Limit::junction_off, "junction-off", dimension::length, 0.01, "10 mm", project, "",
           "how far a junction may stand off the line on which its stays pull straight"),
    agreed(Limit::stays_apart, "stays-apart", dimension::length, 0.01, "10 mm", project, "",
           "clear distance between two stays, from surface to surface, or a stay and a spar or spreader"),
    disputed(Limit::break_factor, "break-factor", dimension::number, 2.5, "250 %", common_practice,
             "worked examples of the rigger's handbook method use 2.25 to 2.75; other advice goes from 2 "
             "inshore to 4 offshore",
             "strength of a stay over the load that the file states for it"),
    agreed(Limit::stiffness_apart, "stiffness-apart", dimension::number, 0.1, "10 %", exact,
           "unlike stretch pulls the mast over; the number is a choice", "EA of port against starboard"),
    disputed(Limit::creep_load, "creep-load", dimension::number, 0.15, "15 %", common_practice,
             "of the general grade of HMPE", "steady load of an HMPE rope over its break load"),
    disputed(Limit::creep_load_most, "creep-load-most", dimension::number, 0.2, "20 %", common_practice,
             "of the general grade of HMPE", "the same; said in the finding"),
    disputed(Limit::rope_heat, "rope-heat", dimension::temperature_point, 323.15, "50 degC",
             common_practice, "", "temperature that an HMPE rope gets to on the boat"),
    disputed(Limit::rope_heat_most, "rope-heat-most", dimension::temperature_point, 343.15, "70 degC",
             common_practice, "", "the same; said in the finding"),
    disputed(Limit::cold_loss, "cold-loss", dimension::number, 0.5, "50 %", exact,
             "the loss is worked out; the number is a choice",
             "share of the dock tension that may be lost on the coldest day"),
    agreed(Limit::gross_modulus, "gross-modulus", dimension::stress, 150000000000.0, "150 GPa", exact,
           "about 141 GPa is what the wires of 1x19 come to on their metal",
           "EA of a stranded wire over the area of its full circle"),
    agreed(
        Limit::break_load_low, "break-load-low", dimension::stress, 300000000.0, "300 MPa", exact,
        "slips of units and of lbf, kgf and N fall outside",
        "break load of a line over the square of its diameter, at least; a third of it for polyester and "
        "polyamide"),
    agreed(Limit::break_load_high, "break-load-high", dimension::stress, 2000000000.0, "2000 MPa", exact,
           "slips of units and of lbf, kgf and N fall outside", "the same, at most"),
    disputed(Limit::buckling_factor, "buckling-factor", dimension::number, 1.5, "150 %", common_practice,
             "", "Euler load of a panel of the mast over its compression"),
    disputed(Limit::pretension_least, "pretension-least", dimension::number, 0.05, "5 %", common_practice,
             "weak", "dock tension of a wire over its break load, at least"),
    disputed(Limit::pretension_most, "pretension-most", dimension::number, 0.25, "25 %", common_practice,
             "taken by some as a moderate figure", "the same, at most"),
    agreed(Limit::tape_sag, "tape-sag", dimension::length, 0.003, "3 mm", exact,
           "the sag is worked out; the number is a choice",
           "how much the sag of a tape may lengthen a reading"),
    agreed(Limit::made_apart, "made-apart", dimension::length, 0.003, "3 mm", common_practice, "",
           "a length as made or fitted against the same as designed"),
    disputed(Limit::lowered_tight, "lowered-tight", dimension::length, 0.005, "5 mm", common_practice,
             "a stay in line with the pin of the tabernacle keeps its length",
             "by how much a stay may be too short on the way while a mast is lowered"),
    disputed(Limit::reading_age, "reading-age", dimension::time, std::nullopt, "2 years", owner, "",
             "age of the reading that a length rests on, at the boat's report-date"),
    disputed(Limit::inspection_age, "inspection-age", dimension::time, std::nullopt, "1 year", owner, "",
             "time since a stay was last looked at"),
    disputed(Limit::wire_age, "wire-age", dimension::time, std::nullopt, "10 years", owner,
             "10 and 15 years are published as ages to note and to ask for a survey",
             "age of a wire, a rod or a chain in service"),
    disputed(Limit::rope_age, "rope-age", dimension::time, std::nullopt, "5 years", owner, "",
             "age of a rope in service"),
    disputed(Limit::hardware_age, "hardware-age", dimension::time, std::nullopt, "15 years", owner, "",
             "age of a part in service"),
    counted(disputed(Limit::untraced_numbers, "untraced-numbers", dimension::number, std::nullopt, "0",
                     owner, "", "how many numbers that reach a cut may be without a source")),
};

constexpr bool in_order() {
  for (std::size_t i = 0; i < table.size(); ++i)
    if (table[i].limit != static_cast<Limit>(i))
      return false;
  return table.size() == limit_count;
}
static_assert(in_order(), "the rows stand in the order of the enumeration");

} // namespace

std::string_view name_of(LimitClass limit_class) {
  switch (limit_class) {
  case LimitClass::published:
    return "published";
  case LimitClass::from_memory:
    return "from memory";
  case LimitClass::common_practice:
    return "common practice, no source";
  case LimitClass::exact:
    return "exact";
  case LimitClass::project:
    return "choice of the project, no source";
  case LimitClass::owner:
    return "the owner's own";
  }
  return "";
}

std::span<const LimitRow> all_limits() {
  return table;
}

const LimitRow& row_of(Limit limit) {
  return table[static_cast<std::size_t>(limit)];
}

const LimitRow* find_limit(std::string_view name) {
  const auto* found =
      std::find_if(table.begin(), table.end(), [&](const LimitRow& row) { return row.name == name; });
  return found == table.end() ? nullptr : found;
}

} // namespace sheerpole
