#include "kinds/rows.hpp"

namespace sheerpole {

namespace {

using enum ValueType;
using namespace rows;

constexpr std::string_view coverages[] = {"whole-rig", "part-of-rig"};
constexpr std::string_view places[] = {"afloat", "ashore"};
constexpr std::string_view spar_sorts[] = {"mast",    "mizzen", "topmast", "bowsprit",
                                           "boomkin", "gaff",   "boom"};
constexpr std::string_view steps[] = {"keel", "deck", "tabernacle", "bridge-beam"};
constexpr std::string_view spreader_holds[] = {"fixed", "swinging"};
constexpr std::string_view spreader_droops[] = {"hinged", "built-in"};
constexpr std::string_view heel_holds[] = {"pinned", "built-in"};

constexpr PropertyRow boat[] = {
    recorded(text_row("builder", Need::optional, "\"a yard on the firth\"", "who built her")),
    recorded(text_row("hull-number", Need::optional, "\"no. 14\"",
                      "the number that her builder or her country gave her")),
    recorded(text_row("launched", Need::optional, "\"1987\"", "when she was launched")),
    recorded(text_row("flag", Need::optional, "\"Irish\"", "her flag")),
    recorded(text_row("home-port", Need::optional, "\"Killary\"", "where she is at home")),
    recorded(text_row("owner", Need::optional, "\"the owner\"", "whose she is, as reports shall name her")),
    text_row("revision", Need::optional, "\"C\"", "of these files, as papers name it"),
    length_row("length-overall", Need::optional, 1.0, longest, "9.75 m", "length over all"),
    recorded(
        length_row("waterline-length", Need::optional, 1.0, longest, "8.60 m", "length of the waterline")),
    length_row("beam", Need::optional, 0.3, 60.0, "3.20 m", "greatest beam"),
    {.name = "displacement",
     .type = quantity,
     .dimension = dimension::mass,
     .least = 1.0,
     .for_record = true,
     .example = "4_100 kg",
     .help = "mass of the boat afloat"},
    {.name = "ballast",
     .type = quantity,
     .dimension = dimension::mass,
     .least = 0.0,
     .for_record = true,
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
    recorded(length_row("mainsail-foot", Need::optional, 0.2, longest, "4.05 m", "foot of the mainsail")),
    recorded(length_row("mizzen-hoist", Need::optional, 0.5, longest, "6.40 m", "luff of the mizzen")),
    recorded(length_row("mizzen-foot", Need::optional, 0.2, longest, "2.60 m", "foot of the mizzen")),
    length_row("sheer-at-mast", Need::optional, -5.0, 20.0, "1.120 m",
               "height of the sheer above the waterline, abreast of the mast"),
    {.name = "reference-temperature",
     .type = quantity,
     .dimension = dimension::temperature_point,
     .example = "20 degC",
     .help = "temperature at which the lengths of this file hold"},
    length_row(
        "remake-tolerance", Need::optional, 0.0, 0.1, "2 mm",
        "a piece that hangs there is not made anew for less; not stated: for half of the last printed "
        "digit"),
    {.name = "report-date",
     .type = date,
     .example = "2026-11-01",
     .help = "the day that this report speaks of; waivers that end before it are over"},
    {.name = "measured-where",
     .type = choice,
     .choices = places,
     .for_record = true,
     .example = "afloat",
     .help = "whether the boat was afloat or ashore when she was measured"},
    length_row("pair-tolerance", Need::optional, 0.0, 0.1, "1 mm",
               "port and starboard pieces within this are printed as 2 off; not stated: always apart"),
    cut_from_row,
    cut_from_reason_row,
    choice_row("covers", Need::optional, coverages, "whole-rig",
               "whether all stays of the boat are in these files"),
    list_row("deck-edge", Need::optional, Category::point, "stem-head, deck-waist, deck-quarter",
             "points on the edge of the deck from the bow aft, starboard or on the centreline"),
    recorded(text_row("mast", Need::optional, "\"deck-stepped, 13.20 m\"",
                      "what the mast is and where it stands")),
    note_row("\"invented boat for the examples\"", "anything a reader should know"),
};

/// What a spar has for all of its length, and a station of it at one place.
constexpr PropertyRow stiffnesses[] = {
    force_row("axial-stiffness", "112_000 kN", "EA: force over the share by which it gets shorter"),
    quantity_row("bending-stiffness", dimension::bending_stiffness, 0.0, "310 kNm2",
                 "EI, fore and aft; of a bowsprit up and down"),
    quantity_row("bending-stiffness-across", dimension::bending_stiffness, 0.0, "210 kNm2",
                 "EI, athwartships"),
    quantity_row("twisting-stiffness", dimension::bending_stiffness, 0.0, "190 kNm2",
                 "GJ, against twist about its own length; needed where spreaders are fixed"),
};

constexpr PropertyRow spar_before_stiffness[] = {
    choice_row("sort", Need::required, spar_sorts, "mast",
               "what it is; on a boomkin points lie aft of the heel"),
    {.name = "heel",
     .type = vector,
     .need = Need::required,
     .example = "(0.000, 0.000, 1.450) m",
     .help = "its heel, or the place that it turns about: the origin of points on it"},
    quantity_row("rake", dimension::angle, -1.6, "2 deg", "how far it leans aft; not stated: upright"),
    quantity_row("steeve", dimension::angle, -1.6, "12 deg",
                 "how far a bowsprit or a boomkin rises outboard; not stated: level"),
    {.name = "axis",
     .type = vector,
     .example = "(-0.05, 0.02, 1.00) m",
     .help = "direction of a mast from its heel, in place of the rake, when it leans sideways too"},
    length_row("length", Need::optional, 0.1, longest, "13.20 m", "from the heel to the other end"),
    length_row("girth", Need::optional, 0.01, 5.0, "565 mm", "round the spar where soft eyes sit"),
    choice_row("step", Need::optional, steps, "keel", "where it stands"),
    length_row("partners", Need::optional, -5.0, 20.0, "1.900 m",
               "height of the partners above the waterline"),
    length_row("partners-play", Need::optional, 0.0, 0.2, "2 mm",
               "how far the mast can move in the partners each way; not stated: wedged without play"),
    choice_row("hold", Need::optional, heel_holds, "pinned",
               "whether its heel may lean on the step or is built in"),
    quantity_row(
        "gives", dimension::give, 0.0, "0.1 mm/kN",
        "how far the hull gives under its heel, along the spar, for each kilonewton; not stated: a "
        "stiff hull"),
};
constexpr PropertyRow spar_behind_stiffness[] = {
    quantity_row("thermal", dimension::per_kelvin, -1.0, "24 ppm/K",
                 "coefficient of thermal expansion along it"),
    list_row(
        "carries", Need::optional, Category::point, "cap-tang, upper-tip, masthead",
        "points that stand on it and are stated in boat axes all the same: they move and turn with it"),
    recorded(text_row("material", Need::optional, "\"aluminium\"", "what it is made of")),
    note_row("\"keel-stepped\"", "anything a reader should know"),
};

constexpr auto spar = joined(spar_before_stiffness, stiffnesses, spar_behind_stiffness);

constexpr PropertyRow place_of_station[] = {
    length_row("from-heel", Need::required, 0.0, longest, "9.20 m",
               "where it is, along the spar from its heel"),
};
constexpr PropertyRow note_of_station[] = {
    note_row("\"as the maker's drawing has it\"", "anything a reader should know"),
};
constexpr auto spar_station = joined(place_of_station, stiffnesses, note_of_station);

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
    choice_row("hold", Need::optional, spreader_holds, "swinging",
               "whether it is fixed or swings at its root"),
    choice_row("droop", Need::optional, spreader_droops, "hinged",
               "whether its root lets it rise and droop or is built in"),
    force_row("axial-stiffness", "28_000 kN", "EA: force over the share by which it gets shorter"),
    quantity_row("bending-stiffness", dimension::bending_stiffness, 0.0, "9 kNm2",
                 "EI, fore and aft; needed of one that is fixed"),
    quantity_row("bending-stiffness-upright", dimension::bending_stiffness, 0.0, "4 kNm2",
                 "EI, up and down; needed of one whose root is built in"),
    length_row("edge-radius", Need::optional, 0.0, 1.0, "6 mm",
               "radius of the groove or edge that the line bears on at its tip, along the line"),
    text_row("chafe-gear", Need::optional, "\"leather boot\"",
             "what keeps the line from chafing at its tip; \"none\" when nothing does"),
};

constexpr PropertyRow eye_stack[] = {
    reference_row("seat", Need::required, Category::point, "hounds",
                  "the point where the lowest eye bears; the stays' paths begin there"),
    length_row("rise", Need::required, 0.0, 1.0, "30 mm",
               "how much higher each eye sits than the one below"),
    reference_row("on", Need::optional, Category::spar, "mast",
                  "the spar along which they are stacked; not stated: straight up"),
    list_row("order", Need::required, Category::stay, "shroud-1.starboard, shroud-1.port",
             "the stays from the lowest eye to the highest"),
};

constexpr KindRow kinds[] = {
    {.name = "boat",
     .category = Category::boat,
     .group = "The boat",
     .naming = Naming::may,
     .properties = boat,
     .help = "identity and particulars; `from` another boat makes her a sister ship"},
    {.name = "spar",
     .category = Category::spar,
     .group = "The boat",
     .properties = spar,
     .help = "a mast, bowsprit, boomkin or gaff; gives points on it a frame of its own"},
    {.name = "spar-station",
     .category = Category::record,
     .group = "The boat",
     .naming = Naming::none,
     .of = Category::spar,
     .properties = spar_station,
     .help = "how stiff a tapered spar is at one place; between two stations it changes evenly"},
    {.name = "points",
     .category = Category::points,
     .group = "The boat",
     .naming = Naming::none,
     .on_spar = true,
     .free_properties = true,
     .help =
         "named points: x forward, y to starboard, z up from the waterline, or `on` a spar from its heel; "
         "`mirrored` gives the port twin"},
    {.name = "spreader",
     .category = Category::spreader,
     .group = "The boat",
     .properties = spreader,
     .help = "a strut from the mast to a tip"},
    {.name = "eye-stack",
     .category = Category::eye_stack,
     .group = "The boat",
     .properties = eye_stack,
     .help = "soft eyes that sit one above the other on a spar, lowest first"},
};

} // namespace

std::span<const KindRow> boat_kinds() {
  return kinds;
}

} // namespace sheerpole
