#include "kinds/rows.hpp"

namespace sheerpole {

namespace {

using enum ValueType;

/// A threshold: a quantity, or the word `off`.
constexpr PropertyRow limit_row(std::string_view name, Dimension dimension, std::string_view example,
                                std::string_view help) {
  return {.name = name,
          .type = quantity,
          .dimension = dimension,
          .least = 0.0,
          .or_off = true,
          .example = example,
          .help = help};
}

// The values that hold when a file states none are in compiler/model/limits.cpp; a test keeps the two
// alike.
constexpr PropertyRow limits[] = {
    limit_row("pin-play", dimension::length, "0.5 mm",
              "play of a pin in its hole, or pin-play-share of the pin if that is more"),
    limit_row("pin-play-share", dimension::number, "5 %", "the same as a share of the diameter of the pin"),
    limit_row("side-play", dimension::length, "3 mm",
              "play of a plate sideways in a jaw, both sides together"),
    limit_row("edge-usual", dimension::number, "150 %",
              "from the centre of a hole to the end of its plate, over the diameter of the hole"),
    limit_row("edge-least", dimension::number, "125 %", "the same, the least in use; said in the finding"),
    limit_row("seat-usual", dimension::number, "200 %", "diameter of a seat over that of the rope on it"),
    limit_row("seat-least", dimension::number, "100 %", "the same, the least in use; said in the finding"),
    limit_row("seat-width", dimension::number, "150 %",
              "width of the groove over the diameter of the rope, beyond which the rope lies flat"),
    limit_row("pin-bearing", dimension::number, "200 %",
              "what a hole bears over the stated load of the stay"),
    limit_row("edge-radius", dimension::number, "50 %",
              "radius of an edge or a tip that rope bears on, over the diameter of the rope"),
    limit_row("adjuster-reserve", dimension::number, "10 %",
              "share of an adjuster's range that should be left either way"),
    limit_row("thread-engaged", dimension::number, "100 %",
              "thread in the body over the diameter of the thread"),
    limit_row(
        "take-up-left", dimension::number, "33.3333 %",
        "share of an adjuster's range that should be left to tighten after bedding-in, stretch and creep"),
    limit_row("first-fit-closed", dimension::number, "66.6667 %", "how far a screw may be closed as set"),
    limit_row(
        "lashing-strength", dimension::number, "150 %",
        "strength of a lashing over what it has to hold: the stated load, else the break load of the line"),
    limit_row("lashing-legs", dimension::number, "100 %",
              "legs of cord counted for each pass of a lashing; each pass has two"),
    limit_row("knot-factor", dimension::number, "50 %",
              "share of the cord's break load that its knot may be taken to hold"),
    limit_row("bury-least", dimension::rope_diameters, "63 d",
              "tail buried in a splice of the kind `bury`"),
    limit_row("bury-usual", dimension::rope_diameters, "72 d", "the same as usually made"),
    limit_row("taper-least", dimension::number, "15 %", "share of the bury that is tapered"),
    limit_row("eye-least", dimension::number, "300 %",
              "length of an eye from its bearing to the throat, over the diameter of what it bears on"),
    limit_row("eye-usual", dimension::number, "500 %", "the same as usually made"),
    limit_row("eye-angle", dimension::angle, "15 deg",
              "half the angle between the legs of an eye at the throat"),
    limit_row("eye-ways-apart", dimension::length, "5 mm",
              "rope of an eye by a test wrap against that by geometry"),
    limit_row("routes-apart", dimension::length, "5 mm", "two ways to one pin-to-pin length"),
    limit_row("path-rise", dimension::length, "100 mm", "the last point of a path above its first"),
    limit_row("pair-apart", dimension::length, "3 mm",
              "port against starboard, or pair-apart-share of the length if that is more; the boat's "
              "pair-tolerance goes before it"),
    limit_row("pair-apart-share", dimension::number, "0.05 %", "the same as a share of the body"),
    limit_row("foretriangle-apart", dimension::length, "20 mm",
              "foretriangle as stated against the points"),
    limit_row(
        "bisector-usual", dimension::angle, "2 deg",
        "how far a spreader may be from halving the angle of the line over its tip; a note beyond it"),
    limit_row("bisector-most", dimension::angle, "5 deg", "the same; a warning beyond it"),
    limit_row("stay-angle-least", dimension::angle, "10 deg", "angle between a shroud and the mast"),
    limit_row("stay-angle-usual", dimension::angle, "12 deg", "the same; a note below it"),
    limit_row("plate-off-usual", dimension::angle, "2 deg",
              "pull of a stay out of the plane of its chainplate; a note beyond it"),
    limit_row("plate-off-most", dimension::angle, "5 deg", "the same; a warning beyond it"),
    limit_row("junction-off", dimension::length, "10 mm",
              "how far a junction may stand off the line on which its stays pull straight"),
    limit_row("stays-apart", dimension::length, "10 mm",
              "clear distance between two stays, or a stay and a spar or spreader"),
    limit_row("break-factor", dimension::number, "250 %",
              "strength of a stay over the load that the file states for it"),
    limit_row("stiffness-apart", dimension::number, "10 %", "EA of port against starboard"),
    limit_row("creep-load", dimension::number, "15 %", "steady load of an HMPE rope over its break load"),
    limit_row("creep-load-most", dimension::number, "20 %", "the same; said in the finding"),
    limit_row("rope-heat", dimension::temperature_point, "50 degC",
              "temperature that an HMPE rope gets to on the boat"),
    limit_row("rope-heat-most", dimension::temperature_point, "70 degC", "the same; said in the finding"),
    limit_row("cold-loss", dimension::number, "50 %",
              "share of the dock tension that may be lost on the coldest day"),
    limit_row("gross-modulus", dimension::stress, "150 GPa",
              "EA of a stranded wire over the area of its full circle"),
    limit_row("break-load-low", dimension::stress, "300 MPa",
              "break load of a line over the square of its diameter, at least"),
    limit_row("break-load-high", dimension::stress, "2000 MPa", "the same, at most"),
    limit_row("buckling-factor", dimension::number, "150 %",
              "Euler load of a panel of the mast over its compression"),
    limit_row("pretension-least", dimension::number, "5 %",
              "dock tension of a wire over its break load, at least"),
    limit_row("pretension-most", dimension::number, "25 %", "the same, at most"),
    limit_row("tape-sag", dimension::length, "3 mm", "how much the sag of a tape may lengthen a reading"),
    limit_row("made-apart", dimension::length, "3 mm",
              "a length as made or fitted against the same as designed"),
    limit_row("reading-age", dimension::time, "2 years",
              "age of the reading that a length rests on, at the boat's report-date"),
    limit_row("inspection-age", dimension::time, "1 year", "time since a stay was last looked at"),
    limit_row("wire-age", dimension::time, "10 years", "age of a wire, a rod or a chain in service"),
    limit_row("rope-age", dimension::time, "5 years", "age of a rope in service"),
    limit_row("hardware-age", dimension::time, "15 years", "age of a part in service"),
    {.name = "untraced-numbers",
     .type = number,
     .least = 0.0,
     .or_off = true,
     .example = "0",
     .help = "how many numbers that reach a cut may be without a source"},
};

constexpr KindRow kinds[] = {
    {.name = "limits",
     .category = Category::limits,
     .group = "Records",
     .naming = Naming::none,
     .properties = limits,
     .help = "the thresholds that the checks use in place of their own, each with its source, or `off`"},
};

} // namespace

std::span<const KindRow> limit_kinds() {
  return kinds;
}

} // namespace sheerpole
