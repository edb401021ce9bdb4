#include "kinds/kind_row.hpp"

namespace sheerpole {

namespace {

using enum ValueType;

constexpr PropertyRow length_row(std::string_view name, Need need, double least, double most,
                                 std::string_view example, std::string_view help) {
  return {.name = name,
          .type = quantity,
          .need = need,
          .dimension = dimension::length,
          .least = least,
          .most = most,
          .example = example,
          .help = help};
}

constexpr PropertyRow text_row(std::string_view name, Need need, std::string_view example,
                               std::string_view help) {
  return {.name = name, .type = text, .need = need, .example = example, .help = help};
}

constexpr PropertyRow end_row(std::string_view name, std::string_view example, std::string_view help) {
  return {.name = name, .type = end, .example = example, .help = help};
}

/// A length that is written as such or in diameters of the rope at hand.
constexpr PropertyRow rope_measure_row(std::string_view name, Need need, std::string_view example,
                                       std::string_view help) {
  return {.name = name,
          .type = quantity,
          .need = need,
          .dimension = dimension::length,
          .other_dimension = dimension::rope_diameters,
          .least = 0.0,
          .most = 1000.0,
          .example = example,
          .help = help};
}

constexpr PropertyRow ratio_row(std::string_view name, double least, double most, std::string_view example,
                                std::string_view help) {
  return {.name = name,
          .type = quantity,
          .dimension = dimension::number,
          .least = least,
          .most = most,
          .example = example,
          .help = help};
}

constexpr std::string_view places[] = {"afloat", "ashore"};
constexpr std::string_view sides[] = {"port", "starboard"};
constexpr std::string_view screws[] = {"pair", "single"};
constexpr std::string_view methods[] = {"tape", "messenger", "old-stay", "laser"};
constexpr std::string_view stay_blocks[] = {"stack"};

// Lengths on a boat end at 200 m; the bound catches slips of a unit, not big boats.
constexpr double longest = 200.0;

constexpr PropertyRow boat[] = {
    length_row("length-overall", Need::optional, 1.0, longest, "9.75 m", "length over all"),
    length_row("waterline-length", Need::optional, 1.0, longest, "8.60 m", "length of the waterline"),
    length_row("beam", Need::optional, 0.3, 60.0, "3.20 m", "greatest beam"),
    {.name = "displacement",
     .type = quantity,
     .dimension = dimension::mass,
     .least = 1.0,
     .example = "4_100 kg",
     .help = "mass of the boat afloat"},
    {.name = "ballast",
     .type = quantity,
     .dimension = dimension::mass,
     .least = 0.0,
     .example = "1_450 kg",
     .help = "mass of the ballast"},
    {.name = "righting-moment",
     .type = quantity,
     .dimension = dimension::moment,
     .least = 0.0,
     .example = "23.5 kNm",
     .help = "righting moment at the angle righting-angle"},
    {.name = "righting-angle",
     .type = quantity,
     .dimension = dimension::angle,
     .least = 0.0,
     .example = "30 deg",
     .help = "heel at which the righting moment is stated"},
    length_row("foretriangle-height", Need::optional, 0.5, longest, "11.58 m",
               "from the sheer to the forestay pin"),
    length_row("foretriangle-base", Need::optional, 0.2, longest, "3.45 m",
               "from the mast to the stem fitting"),
    length_row("mainsail-hoist", Need::optional, 0.5, longest, "11.90 m", "luff of the mainsail"),
    length_row("mainsail-foot", Need::optional, 0.2, longest, "4.05 m", "foot of the mainsail"),
    length_row("sheer-at-mast", Need::optional, -5.0, 20.0, "1.120 m",
               "height of the sheer above the waterline, abreast of the mast"),
    {.name = "reference-temperature",
     .type = quantity,
     .dimension = dimension::temperature_point,
     .example = "20 degC",
     .help = "temperature at which the lengths of this file hold"},
    {.name = "measured-where",
     .type = choice,
     .choices = places,
     .example = "afloat",
     .help = "whether the boat was afloat or ashore when she was measured"},
    length_row("pair-tolerance", Need::optional, 0.0, 0.1, "1 mm",
               "port and starboard pieces within this are printed as 2 off; not stated: always apart"),
    text_row("mast", Need::optional, "\"deck-stepped, 13.20 m\"", "what the mast is and where it stands"),
    text_row("note", Need::optional, "\"invented boat for the examples\"", "anything a reader should know"),
};

constexpr PropertyRow spreader[] = {
    {.name = "root",
     .type = reference,
     .need = Need::required,
     .refers_to = Category::point,
     .example = "upper-root",
     .help = "where it meets the mast"},
    {.name = "tip",
     .type = reference,
     .need = Need::required,
     .refers_to = Category::point,
     .example = "upper-tip",
     .help = "where the stay passes"},
    {.name = "sides",
     .type = choice_list,
     .choices = sides,
     .example = "port, starboard",
     .help = "both sides unless said"},
};

constexpr PropertyRow rope[] = {
    text_row("construction", Need::required, "\"12-strand HMPE heat-set\"", "how it is made"),
    {.name = "size",
     .type = size,
     .need = Need::required,
     .example = "\"9 mm\"",
     .help = "size by which it is sold"},
    length_row("diameter", Need::optional, 0.0005, 0.1, "9 mm", "diameter, when it differs from the size"),
    {.name = "break-load",
     .type = quantity,
     .dimension = dimension::force,
     .least = 1.0,
     .example = "92 kN",
     .help = "break load, spliced"},
    {.name = "stiffness",
     .type = quantity,
     .dimension = dimension::force,
     .least = 1.0,
     .example = "3_200 kN",
     .help = "EA: force over strain"},
    {.name = "linear-mass",
     .type = quantity,
     .dimension = dimension::linear_mass,
     .least = 0.0,
     .example = "0.058 kg/m",
     .help = "mass per length"},
    {.name = "thermal",
     .type = quantity,
     .dimension = dimension::per_kelvin,
     .example = "-12 ppm/K",
     .help = "coefficient of thermal expansion along the line"},
};

constexpr PropertyRow wire[] = {
    text_row("construction", Need::required, "\"1x19\"", "how it is laid up"),
    text_row("grade", Need::optional, "\"316 stainless\"", "what it is made of"),
    {.name = "size",
     .type = size,
     .need = Need::required,
     .example = "\"3/8 in\"",
     .help = "size by which it is sold; inch and metric sizes are different products"},
    length_row("diameter", Need::optional, 0.0005, 0.1, "9.53 mm",
               "diameter, when it differs from the size"),
    {.name = "break-load",
     .type = quantity,
     .dimension = dimension::force,
     .least = 1.0,
     .example = "78 kN",
     .help = "break load"},
    {.name = "stiffness",
     .type = quantity,
     .dimension = dimension::force,
     .least = 1.0,
     .example = "7_040 kN",
     .help = "EA: force over strain"},
    {.name = "linear-mass",
     .type = quantity,
     .dimension = dimension::linear_mass,
     .least = 0.0,
     .example = "0.43 kg/m",
     .help = "mass per length"},
    {.name = "thermal",
     .type = quantity,
     .dimension = dimension::per_kelvin,
     .example = "16 ppm/K",
     .help = "coefficient of thermal expansion along the line"},
};

constexpr PropertyRow splice[] = {
    rope_measure_row("bury", Need::required, "72 d", "length of tail buried, in diameters or as a length"),
    rope_measure_row("eye-allowance", Need::optional, "12 d",
                     "rope used beyond the bearing; not stated: the part's wrap, or its geometry"),
    rope_measure_row("tail-to-trim", Need::optional, "20 mm",
                     "rope left to hold on to, trimmed away at the end"),
    ratio_row(
        "contraction", 0.0, 0.5, "8 %",
        "how much the standing part shortens, as a share of the bury, from a test splice on this rope"),
    ratio_row("recovered", 0.0, 1.0, "60 %", "share of the contraction that pre-tensioning gives back"),
    text_row("taper", Need::optional, "\"last third\"", "how the tail is tapered"),
};

constexpr PropertyRow boat_fitting[] = {
    end_row("upper", "eye (hole: 10.3 mm, thickness: 8 mm)", "its end towards aloft"),
    end_row("lower", "jaw (gap: 12 mm, pin: \"10 mm\")", "its end towards the deck"),
};

constexpr PropertyRow fixed_part[] = {
    length_row("length", Need::required, 0.0, 20.0, "82 mm",
               "from bearing to bearing, pin centre to pin centre"),
    end_row("upper", "jaw (gap: 17 mm, pin: \"5/8 in\")", "its end towards aloft, as usually fitted"),
    end_row("lower", "wire-socket (inserted: 62 mm)", "its end towards the deck, as usually fitted"),
    length_row("wrap", Need::optional, 0.0, 5.0, "159 mm",
               "rope that a test wrap round this part used beyond the bearing"),
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
};

constexpr PropertyRow range_part[] = {
    length_row("shortest", Need::required, 0.0, 50.0, "60 mm", "hauled up tight"),
    length_row("longest", Need::required, 0.001, 50.0, "260 mm", "eased as far as it may be used"),
    end_row("upper", "holes (count: 5, diameter: 16 mm)", "its end towards aloft"),
    end_row("lower", "eye (hole: 12 mm)", "its end towards the deck"),
};

constexpr PropertyRow splice_setting = {.name = "splice",
                                        .type = reference,
                                        .refers_to = Category::splice,
                                        .example = "long-bury",
                                        .help = "how the rope's end is made here"};
constexpr PropertyRow spare_setting = length_row("spare-bury", Need::optional, 0.0, 20.0, "1.2 m",
                                                 "rope kept in the splice for a later length");

constexpr PropertyRow part_settings[] = {splice_setting, spare_setting};

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

constexpr PropertyRow line_rows[] = {
    length_row("length", Need::optional, 0.001, longest, "455 mm",
               "a length of its own, bearing to bearing; one line in the stack goes without and takes what "
               "is left"),
};

constexpr PropertyRow stay[] = {
    {.name = "sides",
     .type = choice_list,
     .choices = sides,
     .example = "port, starboard",
     .help = "port, starboard or both; not stated: on the centreline"},
    {.name = "path",
     .type = path,
     .example = "cap-tang > tip-2 free > plate-a",
     .help = "the points it goes through, from aloft to deck"},
    length_row("pin-to-pin", Need::optional, 0.05, longest, "11_642 mm",
               "stated length from pin centre to pin centre, when there is no path or to compare with it"),
    {.name = "line",
     .type = reference,
     .need = Need::required,
     .refers_to = Category::material,
     .example = "hmpe-9",
     .help = "the rope or the wire"},
};

constexpr PropertyRow reading[] = {
    {.name = "method",
     .type = choice,
     .choices = methods,
     .example = "tape",
     .help = "how it was measured"},
    {.name = "runs",
     .type = quantity_list,
     .dimension = dimension::length,
     .least = 0.01,
     .most = longest,
     .example = "11_640 mm, 11_642 mm",
     .help = "each run as read"},
    length_row("offset", Need::optional, -5.0, 5.0, "35 mm", "hook or hoist offset, taken off each run"),
    text_row("mark", Need::optional, "\"red tape mark\"", "what marks the length on the messenger cord"),
    {.name = "date", .type = date, .example = "2026-05-02", .help = "when"},
    text_row("by", Need::optional, "\"owner\"", "who"),
    text_row("note", Need::optional, "\"light wind, afloat\"", "conditions"),
};

constexpr KindRow fixed_kind(std::string_view name, std::string_view help) {
  return {.name = name,
          .category = Category::part,
          .group = "Hardware",
          .properties = fixed_part,
          .settings = part_settings,
          .help = help};
}

constexpr KindRow range_kind(std::string_view name, std::string_view help) {
  return {.name = name,
          .category = Category::part,
          .group = "Hardware",
          .adjuster = true,
          .properties = range_part,
          .settings = length_settings,
          .help = help};
}

constexpr KindRow fitting_kind(std::string_view name, std::string_view help) {
  return {.name = name,
          .category = Category::part,
          .group = "Hardware",
          .boat_fitting = true,
          .properties = boat_fitting,
          .help = help};
}

constexpr KindRow kinds[] = {
    {.name = "boat",
     .category = Category::boat,
     .group = "The boat",
     .named = false,
     .properties = boat,
     .help = "identity and particulars"},
    {.name = "points",
     .category = Category::points,
     .group = "The boat",
     .named = false,
     .free_properties = true,
     .help = "named points: x forward, y to starboard, z up from the waterline; `mirrored` gives the port "
             "twin"},
    {.name = "spreader",
     .category = Category::spreader,
     .group = "The boat",
     .properties = spreader,
     .help = "a strut from the mast to a tip"},
    {.name = "rope",
     .category = Category::material,
     .group = "Lines",
     .properties = rope,
     .help = "a rope of one construction and size"},
    {.name = "wire",
     .category = Category::material,
     .group = "Lines",
     .properties = wire,
     .help = "a wire of one construction and size"},
    {.name = "splice",
     .category = Category::splice,
     .group = "Lines",
     .properties = splice,
     .help = "how an end of a rope is made"},
    fitting_kind("tang", "fitting on the mast; pin-to-pin begins at its pin"),
    fitting_kind("chainplate", "fitting on the hull; pin-to-pin ends at its pin"),
    fixed_kind("toggle", "a joint that lets the stay swing in two planes"),
    fixed_kind("terminal", "fitting on the end of a wire"),
    fixed_kind("thimble", "round or pear-shaped seat for a rope eye"),
    fixed_kind("deadeye", "block with holes that a rope eye goes round and a lashing through"),
    fixed_kind("link", "plate or strap between two pins"),
    fixed_kind("shackle", "bow with a pin"),
    fixed_kind("insulator", "breaks the wire for an aerial; the stay has one body more for each"),
    {.name = "turnbuckle",
     .category = Category::part,
     .group = "Hardware",
     .adjuster = true,
     .properties = screw_part,
     .settings = screw_settings,
     .help = "screw adjuster"},
    {.name = "lashing",
     .category = Category::part,
     .group = "Hardware",
     .adjuster = true,
     .properties = range_part,
     .settings = lashing_settings,
     .help = "several turns of cord over a gap"},
    range_kind("tackle", "blocks and a fall"),
    range_kind("lever", "quick-release lever"),
    {.name = "stay",
     .category = Category::stay,
     .group = "Stays",
     .properties = stay,
     .blocks = stay_blocks,
     .help = "one line of load from end to end"},
    {.name = "stack",
     .category = Category::stack,
     .group = "Stays",
     .named = false,
     .holds_items = true,
     .help = "what the stay is made of, from aloft to deck"},
    {.name = "reading",
     .category = Category::reading,
     .group = "Stays",
     .named = false,
     .of = Category::stay,
     .properties = reading,
     .help = "a raw measurement of a stay in place"},
};

} // namespace

std::span<const KindRow> all_kinds() {
  return kinds;
}

const KindRow* find_kind(std::string_view name) {
  for (const KindRow& kind : kinds)
    if (kind.name == name)
      return &kind;
  return nullptr;
}

const PropertyRow* find_property(std::span<const PropertyRow> rows, std::string_view name) {
  for (const PropertyRow& row : rows)
    if (row.name == name)
      return &row;
  return nullptr;
}

std::span<const PropertyRow> line_settings() {
  return line_rows;
}

} // namespace sheerpole
