#include "kinds/rows.hpp"

namespace sheerpole {

namespace {

using enum ValueType;
using namespace rows;

constexpr std::string_view screening_methods[] = {"righting-moment-share", "joint-equilibrium"};
constexpr std::string_view distributions[] = {"rectangular", "triangular", "normal-at-two"};

constexpr PropertyRow tape[] = {
    length_row("nominal-length", Need::optional, 0.5, longest, "30 m", "the length that it is marked with"),
    length_row("true-length", Need::optional, 0.5, longest, "30_002 mm",
               "the length that a comparison found, at its standard temperature and pull"),
    quantity_row("standard-temperature", dimension::temperature_point, 200.0, "20 degC",
                 "temperature at which it is right"),
    force_row("standard-pull", "50 N", "pull at which it is right"),
    quantity_row("thermal", dimension::per_kelvin, -1.0, "11.5 ppm/K", "coefficient of thermal expansion"),
    quantity_row("section", dimension::area, 0.0, "2.6 mm2", "cross-section of the band"),
    quantity_row("modulus", dimension::stress, 1.0, "200 GPa", "modulus of elasticity of the band"),
    quantity_row("linear-mass", dimension::linear_mass, 0.0, "20 g/m", "mass per length of the band"),
    length_row(
        "error", Need::optional, 0.0, 1.0, "2 mm",
        "what it may be off by when all corrections are made; one error for all that is read with it"),
    note_row("\"compared in March\"", "anything a reader should know"),
};

constexpr PropertyRow cord[] = {
    ratio_row(
        "stretch", 0.0, 0.5, "1.2 %",
        "how much longer it is under the pull used aloft than slack; its bound is how far the pull on "
        "the bench may stretch it otherwise"),
    length_row("knot-width", Need::optional, 0.0, 0.2, "6 mm",
               "width of a knot: its mark may be off by half of it either way"),
    note_row("\"washed and dried before use\"", "anything a reader should know"),
};

constexpr PropertyRow test_splice[] = {
    length_row("bury", Need::required, 0.01, 20.0, "648 mm", "tail buried in the test piece"),
    length_row(
        "before", Need::required, 0.01, longest, "2_000 mm",
        "between two marks on the standing part, the bury between them, before the weave was opened"),
    length_row("after", Need::required, 0.01, longest, "1_950 mm", "between the same marks, spliced"),
    length_row("set", Need::optional, 0.01, longest, "1_982 mm", "between the same marks, pre-tensioned"),
    force_row("setting-load", "14 kN", "load at which it was set"),
    reference_row("splice", Need::optional, Category::splice, "long-bury",
                  "the splice that was made, for which alone it counts; not stated: it counts for every "
                  "splice that buries in this rope"),
    date_row("date", Need::optional, "when"),
    text_row("by", Need::optional, "\"owner\"", "who"),
    note_row("\"two cycles of ten minutes\"", "anything a reader should know"),
};

constexpr PropertyRow creep_rate[] = {
    {.name = "load",
     .type = quantity,
     .need = Need::required,
     .dimension = dimension::number,
     .other_dimension = dimension::force,
     .least = 0.0,
     .example = "15 %",
     .help = "steady load, as a share of the break load or as a force"},
    {.name = "temperature",
     .type = quantity,
     .need = Need::required,
     .dimension = dimension::temperature_point,
     .least = 200.0,
     .example = "20 degC",
     .help = "steady temperature"},
    {.name = "stretch",
     .type = quantity,
     .need = Need::required,
     .dimension = dimension::number,
     .least = 0.0,
     .most = 0.5,
     .example = "0.02 %",
     .help = "how much longer it gets in the time `over`"},
    {.name = "over",
     .type = quantity,
     .need = Need::required,
     .dimension = dimension::time,
     .least = 1.0,
     .example = "1 year",
     .help = "the time in which it does"},
};

constexpr PropertyRow tension_reading[] = {
    force_row("tension", "4.2 kN ± 0.2 kN", "as a gauge shows it"),
    quantity_row("frequency", dimension::frequency, 0.01, "6.4 Hz", "of the first swing of the whole stay"),
    quantity_row("pulse", dimension::time, 0.001, "0.15 s", "time in which a tap runs to the end and back"),
    length_row("stretch", Need::optional, 0.0, 1.0, "3 mm", "how much longer the marked length got"),
    length_row("over", Need::optional, 0.01, longest, "2 m",
               "the marked length, or for a swing or a pulse the free length"),
    date_row("date", Need::optional, "when"),
    text_row("by", Need::optional, "\"owner\"", "who"),
    note_row("\"alongside, no wind\"", "anything a reader should know"),
};

constexpr PropertyRow tension_wish[] = {
    {.name = "tension",
     .type = quantity,
     .need = Need::required,
     .dimension = dimension::number,
     .other_dimension = dimension::force,
     .least = 0.0,
     .example = "15 % ± 1 %",
     .help = "the tension that is wished for, or its share of the line's break load; within its bound, not "
             "stated: within 2 % of it"},
    note_row("\"as the sailmaker asks\"", "anything a reader should know"),
};

constexpr PropertyRow mast_wish[] = {
    length_row("head-aft", Need::optional, -2.0, 2.0, "20 mm ± 2 mm",
               "how much further aft its head is wished for than it stands now; within its bound, not "
               "stated: within 1 mm"),
    length_row("head-to-starboard", Need::optional, -2.0, 2.0, "5 mm ± 1 mm",
               "how much further to starboard its head is wished for than it stands now"),
    length_row("bend", Need::optional, -2.0, 2.0, "25 mm ± 2 mm",
               "how far forward of the straight line from heel to head it is wished to stand, more than it "
               "does as drawn"),
    reference_row("at", Need::optional, Category::point, "spreader-root",
                  "the fitting at which the bend is meant; not stated: the lowest spreader"),
    note_row("\"as the sailmaker asks\"", "anything a reader should know"),
};

constexpr PropertyRow take_up[] = {
    {.name = "after",
     .type = quantity_list,
     .dimension = dimension::time,
     .least = 1.0,
     .most = 200.0 * 365.25 * 86400.0, // years
     .example = "30 days, 1 year, 5 years",
     .help = "the times after setting up for which the account is drawn"},
    quantity_row("coldest", dimension::temperature_point, 150.0, "-10 degC",
                 "coldest day on which the rig must stand"),
    quantity_row("warmest", dimension::temperature_point, 150.0, "40 degC",
                 "warmest day on which the rig must stand"),
    quantity_row("creep-temperature", dimension::temperature_point, 150.0, "25 degC",
                 "steady temperature to which creep is worked out; not stated: the reference temperature"),
};

constexpr PropertyRow uncertainty[] = {
    choice_row("distribution", Need::optional, distributions, "rectangular",
               "how a true value lies within its stated bound; not stated: rectangular, anywhere alike. "
               "normal-at-two takes the bound as two standard uncertainties"),
    {.name = "draws",
     .type = number,
     .least = 1000.0,
     .most = 1e6,
     .example = "100_000",
     .help = "trials of the Monte Carlo method; not stated: 100 000"},
    {.name = "seed",
     .type = number,
     .least = 0.0,
     .most = 1e15,
     .example = "1",
     .help = "where its row of random numbers begins; not stated: 1"},
};

/// Rope for a length that is not known yet is ordered with something over; ordering it twice is common
/// practice, no source.
constexpr PropertyRow order_margin = {
    .name = "order-margin",
    .type = quantity,
    .dimension = dimension::number,
    .least = 0.0,
    .most = 10.0,
    .example = "10 %",
    .help = "share that is ordered on top of what the pieces need; `double` orders it twice",
    .or_word = "double"};

constexpr PropertyRow cutting[] = {
    length_row("kerf", Need::optional, 0.0, 0.1, "2 mm", "what each cut takes"),
    length_row("least-offcut", Need::optional, 0.0, longest, "1 m",
               "the shortest rest that is kept; anything shorter is waste"),
    ratio_row("spare", 0.0, 10.0, "5 %", "share added to each piece, to be trimmed"),
    length_row("sold-in", Need::optional, 0.1, 10000.0, "100 m",
               "the length of a whole spool as it is sold; the plan then says how many are to be bought"),
    order_margin,
    text_row(
        "taken-for", Need::optional, "\"5d41402abc4b\"",
        "marks of the pieces that have been taken from stock already, as a spool plan writes them: they "
        "are not taken again"),
};

constexpr PropertyRow fit[] = {
    length_row("line-length", Need::required, 0.01, longest, "11_330 mm",
               "body of the line as it is in hand, bearing to bearing"),
    ratio_row("open-from", 0.0, 1.0, "30 %", "least that the adjuster shall be open"),
    ratio_row("open-to", 0.0, 1.0, "70 %", "most that the adjuster shall be open"),
    list_row("parts", Need::optional, Category::part, "toggle-12, link-50",
             "parts that may be added to the stack, any number of each up to what is in hand"),
};

constexpr PropertyRow in_hand[] = {
    {.name = "pieces",
     .type = count,
     .need = Need::required,
     .least = 1,
     .most = 1000,
     .example = "2",
     .help = "how many of them"},
    note_row("\"in the bosun's locker\"", "anything a reader should know"),
};

constexpr PropertyRow dry_fit[] = {
    length_row("hung-at", Need::required, -5.0, longest, "20 in",
               "from the pin at the deck up to the lower bearing of the line as it hung, along the stay"),
    length_row("hoist-gap", Need::optional, -5.0, 20.0, "4 in",
               "how far below the pin aloft it hung; not stated: as the stay states"),
    date_row("date", Need::optional, "when; of several the latest counts"),
    text_row("by", Need::optional, "\"owner\"", "who"),
    note_row("\"light wind, alongside\"", "pull, temperature, wind"),
};

constexpr PropertyRow load_screening[] = {
    choice_row("method", Need::required, screening_methods, "righting-moment-share",
               "righting-moment-share: a share of the righting moment over the half beam; "
               "joint-equilibrium: statics of mast, spreaders and shrouds under a side force"),
    quantity_row("righting-moment", dimension::moment, 1.0, "30_000 lbf-ft",
                 "at 30 degrees of heel; not stated: that of the boat"),
    length_row("half-beam", Need::optional, 0.05, 60.0, "5.5 ft",
               "from the middle of the boat to the chainplate; not stated: as the chainplate's point says"),
    {.name = "load-factor",
     .type = number,
     .least = 0.01,
     .most = 100.0,
     .example = "1.5",
     .help = "by how much the total is more than the moment over the half beam; not stated: 1.5"},
    ratio_row("share", 0.001, 1.0, "45 %", "what of the total this shroud carries, by the method's table"),
    {.name = "break-factor",
     .type = number,
     .least = 0.01,
     .most = 100.0,
     .example = "2.5",
     .help = "break load asked for over the load"},
    force_row("side-force", "3_200 N",
              "of joint-equilibrium: at the top of the shroud; not stated: the righting moment over its "
              "height above the waterline"),
    note_row("\"for the surveyor\"", "anything a reader should know"),
};

constexpr KindRow kinds[] = {
    {.name = "tape",
     .category = Category::tape,
     .group = "Numbers",
     .properties = tape,
     .help = "a measuring tape with what is needed to correct what is read off it"},
    {.name = "cord",
     .category = Category::cord,
     .group = "Numbers",
     .properties = cord,
     .help = "a messenger cord on which stays are kept as knots, without a number; readings name it"},
    {.name = "test-splice",
     .category = Category::record,
     .group = "Numbers",
     .naming = Naming::may,
     .of = Category::material,
     .properties = test_splice,
     .help = "a splice made to be measured: how much this rope shortens over a bury and what setting gives "
             "back; all of a rope count together, in whatever order they stand"},
    {.name = "creep-rate",
     .category = Category::record,
     .group = "Numbers",
     .naming = Naming::none,
     .of = Category::material,
     .properties = creep_rate,
     .help = "one line of a maker's table of creep"},
    {.name = "tension-reading",
     .category = Category::record,
     .group = "Numbers",
     .naming = Naming::none,
     .of = Category::stay,
     .properties = tension_reading,
     .help = "what was read of a stay's tension: a gauge, a swing, a pulse or a stretch"},
    {.name = "tension-wish",
     .category = Category::record,
     .group = "Numbers",
     .naming = Naming::none,
     .of = Category::stay,
     .properties = tension_wish,
     .help = "asks for the turns that bring a stay to a tension, at the dock"},
    {.name = "mast-wish",
     .category = Category::record,
     .group = "Numbers",
     .naming = Naming::none,
     .of = Category::spar,
     .properties = mast_wish,
     .help = "asks for the turns that bring a mast's head or its bend to where it is wished, at the dock"},
    {.name = "take-up",
     .category = Category::record,
     .group = "Numbers",
     .naming = Naming::none,
     .properties = take_up,
     .help = "the days and temperatures for which the accounts of the adjusters are drawn"},
    {.name = "uncertainty",
     .category = Category::record,
     .group = "Numbers",
     .naming = Naming::none,
     .properties = uncertainty,
     .help = "how stated bounds are read and combined"},
    {.name = "cutting",
     .category = Category::record,
     .group = "Numbers",
     .naming = Naming::none,
     .of = Category::material,
     .properties = cutting,
     .help = "how a rope or wire is cut from stock"},
    {.name = "fit",
     .category = Category::record,
     .group = "Numbers",
     .naming = Naming::none,
     .of = Category::stay,
     .properties = fit,
     .help = "asks for the parts and the setting with which a line in hand fits the stay"},
    {.name = "load-screening",
     .category = Category::record,
     .group = "Numbers",
     .naming = Naming::none,
     .of = Category::stay,
     .properties = load_screening,
     .help = "asks for the loads of a shroud by a named method; it screens and does not size a rig"},
    {.name = "in-hand",
     .category = Category::record,
     .group = "Numbers",
     .naming = Naming::none,
     .of = Category::part,
     .properties = in_hand,
     .help = "how many of a part are in hand"},
    {.name = "dry-fit",
     .category = Category::record,
     .group = "Numbers",
     .naming = Naming::none,
     .of = Category::stay,
     .properties = dry_fit,
     .help = "where the lower bearing hung when the stay was hoisted with its eyes seized and nothing cut"},
};

} // namespace

std::span<const KindRow> number_kinds() {
  return kinds;
}

} // namespace sheerpole
