#include "kinds/rows.hpp"

namespace sheerpole {

namespace {

using enum ValueType;
using namespace rows;

constexpr std::string_view planes[] = {"fore-and-aft", "athwartships"};
constexpr std::string_view screws[] = {"pair", "single"};
constexpr std::string_view pin_axes[] = {"crossed", "parallel"};
constexpr std::string_view toggled_ends[] = {"upper", "lower", "both"};
constexpr std::string_view shapes[] = {"round", "pear"};
constexpr std::string_view lines[] = {"rope", "wire", "either"};
constexpr std::string_view bodies[] = {"open", "closed"};
constexpr std::string_view yes_no[] = {"yes", "no"};
constexpr std::string_view metals[] = {"stainless", "bronze", "aluminium", "titanium", "galvanised-steel"};

constexpr PropertyRow boat_fitting[] = {
    end_row("upper", "eye (hole: 10.3 mm, thickness: 8 mm)", "its end towards aloft"),
    end_row("lower", "jaw (gap: 12 mm, pin: \"10 mm\")", "its end towards the deck"),
};

constexpr PropertyRow plane_of_chainplate[] = {
    quantity_row("plane-lean", dimension::angle, -1.6, "14 deg",
                 "how far the plane of the plate leans inboard at its top, from upright; of a plate that "
                 "stands athwartships how far it leans forward"),
    choice_row("plane", Need::optional, planes, "athwartships",
               "which way the plate stands; not stated: fore and aft"),
};

constexpr PropertyRow length_of_part[] = {
    length_row("length", Need::required, 0.0, 20.0, "82 mm",
               "from bearing to bearing: between the centres of its pins, of a terminal from the centre of "
               "its pin to where the wire comes out"),
};

constexpr PropertyRow length_of_thimble[] = {
    length_row("length", Need::required, -0.5, 20.0, "16 mm",
               "from the centre of its pin towards the line, to the crown of the eye; negative where the "
               "crown lies beyond the pin, as on a pin that the eye goes round"),
};

constexpr PropertyRow length_of_deadeye[] = {
    length_row(
        "length", Need::required, -0.5, 20.0, "42 mm",
        "from the crown of the eye that lies round it towards the lanyard, to where that bears in its "
        "holes; negative where the crown lies beyond the holes, as of an eye right round it"),
};

constexpr PropertyRow fixed_part[] = {
    end_row("upper", "jaw (gap: 17 mm, pin: \"5/8 in\")", "its end towards aloft, as usually fitted"),
    end_row("lower", "wire-socket (inserted: 62 mm)", "its end towards the deck, as usually fitted"),
    length_row("wrap", Need::optional, 0.0, 5.0, "159 mm",
               "rope that a test wrap round this part used beyond the bearing"),
    choice_row("pins", Need::optional, pin_axes, "crossed",
               "of a part with two pins: how their axes stand to each other"),
    choice_row("made-for", Need::optional, lines, "rope", "the sort of line that its seat is made for"),
    choice_row("shape", Need::optional, shapes, "pear",
               "of its rope-seat: a pear has a groove for both legs of the eye as far as the throat"),
};

constexpr PropertyRow screw_part[] = {
    length_row("shortest", Need::required, 0.001, 20.0, "320 mm", "fully closed, pin centre to pin centre"),
    length_row("longest", Need::required, 0.001, 20.0, "470 mm",
               "open to the last thread that may be used"),
    {.name = "thread", .type = thread, .example = "\"5/8-18 UNF\"", .help = "thread of the studs"},
    {.name = "screw",
     .type = choice,
     .choices = screws,
     .example = "pair",
     .help = "pair: a right- and a left-handed stud; single: one stud turns"},
    length_row("engaged-at-longest", Need::optional, 0.0, 1.0, "16 mm",
               "thread of each stud still in the body at the longest"),
    end_row("upper", "wire-socket (inserted: 62 mm)", "its end towards aloft, as usually fitted"),
    end_row("lower", "jaw (gap: 17 mm, pin: \"5/8 in\")", "its end towards the deck, as usually fitted"),
    length_row("wrap", Need::optional, 0.0, 5.0, "159 mm",
               "rope that a test wrap round this part used beyond the bearing"),
    text_row("locked", Need::optional, "\"split pins through the studs\"",
             "what keeps its threads from turning; \"none\" when nothing does"),
    choice_row("toggle", Need::optional, toggled_ends, "lower",
               "which of its ends swings in two planes by a toggle of its own, whose length is counted in"),
    choice_row("body", Need::optional, bodies, "open", "whether the ends of the studs can be seen"),
    choice_row("witness-hole", Need::optional, yes_no, "yes",
               "of a closed body: whether a hole shows the end of each stud"),
};

constexpr PropertyRow range_part[] = {
    length_row("shortest", Need::required, 0.0, 50.0, "60 mm", "hauled up tight"),
    length_row("longest", Need::required, 0.001, 50.0, "260 mm", "eased as far as it may be used"),
    end_row("upper", "holes (count: 5, diameter: 16 mm)", "its end towards aloft"),
    end_row("lower", "eye (hole: 12 mm)", "its end towards the deck"),
};

constexpr PropertyRow cord_of_lashing[] = {
    reference_row("cord", Need::optional, Category::material, "cord-4", "what it is made of"),
    ratio_row("knot-factor", 0.01, 1.0, "50 %", "share of the cord's break load that its knot holds"),
};

constexpr PropertyRow hole_part[] = {
    length_row("shortest", Need::required, 0.0, 50.0, "60 mm",
               "pinned in the hole nearest to its other end"),
    length_row("longest", Need::required, 0.001, 50.0, "170 mm",
               "pinned in the hole farthest from its other end"),
    length_row("step", Need::required, 0.0005, 1.0, "10 mm", "from one hole to the next"),
    end_row("upper", "holes (count: 12, diameter: 6.5 mm)", "its end towards aloft"),
    end_row("lower", "jaw (gap: 5 mm, pin: \"6 mm\")", "its end towards the deck"),
};

constexpr PropertyRow soft_eye[] = {
    length_row("length", Need::required, 0.0, 5.0, "0 mm",
               "from the end of the path to where the eye bears; 0 mm when the path ends there"),
    length_row("girth", Need::optional, 0.0, 5.0, "565 mm", "round what the eye goes over"),
    length_row("serving", Need::optional, 0.0, 0.1, "3 mm", "what the serving adds to the rope's diameter"),
    length_row("wrap", Need::optional, 0.0, 5.0, "640 mm",
               "rope that a test wrap round it used beyond the bearing"),
    end_row("lower", "rope-seat (diameter: 180 mm)", "where the rope lies"),
};

constexpr PropertyRow worn_part[] = {
    length_row("length", Need::optional, 0.0, longest, "12.40 m",
               "its own length; it adds none to the stay"),
    {.name = "size", .type = size, .example = "\"8 mm\"", .help = "size by which it is sold"},
    end_row("upper", "eye (hole: 12 mm)", "its end towards aloft"),
    end_row("lower", "eye (hole: 12 mm)", "its end towards the deck"),
};

// What a part that carries load states of it.
constexpr PropertyRow load_of_part[] = {
    force_row("break-load", "62 kN", "break load"),
    text_row("weak-link", Need::optional, "\"goes before the mast does\"",
             "why it is meant to be the weakest part of its stay"),
};

constexpr PropertyRow strength_of_pin[] = {
    quantity_row("pin-stress", dimension::stress, 1.0, "300 MPa",
                 "shear stress that the material of its pin holds"),
    force_row("pin-break-load", "68 kN", "break load of its pin in double shear, when its maker states it"),
};

constexpr PropertyRow strength_of_hole[] = {
    quantity_row("bearing-stress", dimension::stress, 1.0, "400 MPa",
                 "pressure that its material holds in a hole, over diameter times thickness"),
};

// Of a pin that is a part of its own.
constexpr PropertyRow load_of_pin[] = {
    force_row("break-load", "62 kN", "break load"),
};

constexpr PropertyRow securing_of_pin[] = {
    text_row("secured", Need::optional, "\"split pin\"",
             "what keeps its pin from working out; \"none\" when nothing does"),
};

constexpr PropertyRow buying_of_part[] = {
    text_row("supplier", Need::optional, "\"chandler at the slip\"", "who is asked for it"),
    text_row("batch", Need::optional, "\"lot 12\"", "the batch that it came from"),
};

// What belongs to the boat is on no order and no label.
constexpr PropertyRow origin_of_fitting[] = {
    recorded(buying_of_part[0]),
    recorded(buying_of_part[1]),
};

// What may eat, or be eaten by, another metal that it touches.
constexpr PropertyRow metal_of_part[] = {
    choice_row("metal", Need::optional, metals, "stainless", "what it is made of"),
    text_row("barrier", Need::optional, "\"plastic sleeve and washers\"",
             "what keeps it apart from another metal"),
};

// A foil lies round the line and in no joint.
constexpr PropertyRow metal_of_foil[] = {
    recorded(metal_of_part[0]),
    recorded(metal_of_part[1]),
};

// What every part may state.
constexpr PropertyRow more_of_part[] = {
    recorded(quantity_row("mass", dimension::mass, 0.0, "0.45 kg", "mass of one")),
    choice_row("accessible", Need::optional, yes_no, "no",
               "whether its pin and what secures it can be looked at as the rig stands"),
    date_row("installed", Need::optional, "when it went on the boat"),
    text_row("evidence", Need::optional, "\"invoice of 2019\"", "what shows its age or origin"),
    note_row("\"invented figures\"", "anything a reader should know"),
};

constexpr auto pinned_rows =
    joined(load_of_part, strength_of_pin, strength_of_hole, securing_of_pin, metal_of_part, more_of_part);
constexpr auto metal_rows = joined(pinned_rows, buying_of_part);
constexpr auto fitting_rows = joined(boat_fitting, pinned_rows, origin_of_fitting);
constexpr auto chainplate_rows = joined(fitting_rows, plane_of_chainplate);
constexpr auto fixed_rows = joined(joined(length_of_part, fixed_part), metal_rows);
constexpr auto thimble_rows = joined(joined(length_of_thimble, fixed_part), metal_rows);
constexpr auto deadeye_rows = joined(joined(length_of_deadeye, fixed_part), metal_rows);
constexpr auto screw_rows = joined(screw_part, metal_rows);
constexpr auto range_rows = joined(range_part, metal_rows);
constexpr auto hole_rows = joined(hole_part, metal_rows);
// Cord and rope shear no pin, bear in no hole and are of no metal.
constexpr auto bought_rows = joined(more_of_part, buying_of_part);
constexpr auto lashing_rows = joined(range_part, cord_of_lashing, load_of_part, bought_rows);
// An eye in the rope is not bought apart from it.
constexpr auto soft_eye_rows = joined(soft_eye, load_of_part, more_of_part, origin_of_fitting);
// What is worn carries no load and needs no securing, but for the pin.
constexpr auto worn_rows = joined(worn_part, metal_of_part, bought_rows);
constexpr auto foil_rows = joined(worn_part, metal_of_foil, bought_rows);
constexpr auto pin_rows =
    joined(worn_part, load_of_pin, strength_of_pin, securing_of_pin, metal_of_part, bought_rows);

constexpr PropertyRow splice_setting = {.name = "splice",
                                        .type = reference,
                                        .refers_to = Category::splice,
                                        .example = "long-bury",
                                        .help = "how the rope's end is made here"};
constexpr PropertyRow spare_setting = length_row("spare-bury", Need::optional, 0.0, 20.0, "1.2 m",
                                                 "rope kept in the splice for a later length");

constexpr PropertyRow part_settings[] = {
    splice_setting,
    spare_setting,
    choice_row("removable", Need::optional, yes_no, "yes",
               "whether it may be left out to take up more than the adjuster does"),
};

/// An eye in the rope itself is not taken out.
constexpr PropertyRow soft_eye_settings[] = {splice_setting, spare_setting};

constexpr PropertyRow screw_settings[] = {
    ratio_row("open", 0.0, 1.0, "50 %",
              "0 % is fully closed, 100 % open to the last thread that may be used"),
    length_row("length", Need::optional, 0.0, 50.0, "395 mm",
               "its length as set, pin centre to pin centre"),
    splice_setting,
    spare_setting,
};

constexpr PropertyRow lashing_settings[] = {
    length_row("gap", Need::optional, 0.0, 50.0, "160 mm", "the gap as set"),
    {.name = "passes",
     .type = count,
     .least = 1,
     .most = 100,
     .example = "6",
     .help = "how often the cord goes there and back"},
};

constexpr PropertyRow length_settings[] = {
    length_row("length", Need::optional, 0.0, 50.0, "600 mm", "its length as set"),
    splice_setting,
    spare_setting,
};

constexpr PropertyRow hole_settings[] = {
    {.name = "hole",
     .type = count,
     .least = 1,
     .most = 200,
     .example = "6",
     .help = "the hole that it is pinned in, the first being the shortest"},
    length_row("length", Need::optional, 0.0, 50.0, "110 mm", "its length as set"),
    splice_setting,
    spare_setting,
};

constexpr KindRow fixed_kind(std::string_view name, std::string_view help,
                             std::span<const PropertyRow> rows = fixed_rows) {
  return {.name = name,
          .category = Category::part,
          .group = "Hardware",
          .properties = rows,
          .settings = part_settings,
          .help = help};
}

constexpr KindRow range_kind(std::string_view name, std::string_view help) {
  return {.name = name,
          .category = Category::part,
          .group = "Hardware",
          .adjuster = true,
          .properties = range_rows,
          .settings = length_settings,
          .help = help};
}

constexpr KindRow fitting_kind(std::string_view name, std::span<const PropertyRow> rows,
                               std::string_view help) {
  return {.name = name,
          .category = Category::part,
          .group = "Hardware",
          .boat_fitting = true,
          .properties = rows,
          .help = help};
}

constexpr KindRow worn_kind(std::string_view name, std::span<const PropertyRow> rows,
                            std::string_view help) {
  return {.name = name,
          .category = Category::part,
          .group = "Hardware",
          .worn = true,
          .properties = rows,
          .help = help};
}

constexpr KindRow kinds[] = {
    fitting_kind("tang", fitting_rows, "fitting on the mast; pin-to-pin begins at its pin"),
    fitting_kind("chainplate", chainplate_rows, "fitting on the hull; pin-to-pin ends at its pin"),
    fixed_kind("toggle", "a joint that lets the stay swing in two planes"),
    fixed_kind("terminal", "fitting on the end of a wire or a rod"),
    fixed_kind("thimble", "round or pear-shaped seat for a rope eye", thimble_rows),
    {.name = "soft-eye",
     .category = Category::part,
     .group = "Hardware",
     .properties = soft_eye_rows,
     .settings = soft_eye_settings,
     .help = "an eye in the rope itself, over a spar or a post"},
    fixed_kind("deadeye", "block with holes that a rope eye goes round and a lashing through",
               deadeye_rows),
    fixed_kind("link", "plate or strap between two pins"),
    fixed_kind("shackle", "bow with a pin"),
    fixed_kind("hook", "hook, with or without a snap"),
    fixed_kind("insulator", "breaks the wire for an aerial; the stay has one body more for each"),
    fixed_kind("junction", "plate where several stays meet, from its centre to the hole of this stay"),
    {.name = "turnbuckle",
     .category = Category::part,
     .group = "Hardware",
     .adjuster = true,
     .properties = screw_rows,
     .settings = screw_settings,
     .help = "screw adjuster"},
    {.name = "lashing",
     .category = Category::part,
     .group = "Hardware",
     .adjuster = true,
     .properties = lashing_rows,
     .settings = lashing_settings,
     .help = "several turns of cord over a gap"},
    range_kind("tackle", "blocks and a fall"),
    range_kind("lever", "quick-release lever"),
    range_kind("cylinder", "hydraulic cylinder"),
    {.name = "hole-adjuster",
     .category = Category::part,
     .group = "Hardware",
     .adjuster = true,
     .properties = hole_rows,
     .settings = hole_settings,
     .help = "plates with a row of holes, set by pinning one of them"},
    worn_kind("foil", foil_rows, "section or tube over the stay; goes on before the second end is closed"),
    worn_kind("cover", worn_rows, "boot, cover or chafe sleeve over a joint or the line"),
    worn_kind("bush", worn_rows, "sleeve that fills a hole to the size of its pin"),
    worn_kind("pin", pin_rows, "clevis pin in a joint"),
};

} // namespace

std::span<const KindRow> part_kinds() {
  return kinds;
}

} // namespace sheerpole
