#include "kinds/rows.hpp"

namespace sheerpole {

namespace {

using enum ValueType;
using namespace rows;

constexpr std::string_view methods[] = {"tape", "messenger", "old-stay", "laser"};
constexpr std::string_view stay_blocks[] = {"stack", "changes"};
constexpr std::string_view state_blocks[] = {"position"};
constexpr std::string_view duties[] = {"standing", "carries-sail", "running", "removable", "temporary"};

constexpr std::string_view yes[] = {"yes"};
constexpr std::string_view seizings[] = {"slack", "under-tension"};
constexpr std::string_view bedding_from[] = {"adjuster", "cut"};
constexpr std::string_view mast_positions[] = {"mast-up", "mast-down"};

constexpr PropertyRow line_rows[] = {
    length_row("length", Need::optional, 0.001, longest, "455 mm",
               "a length of its own, bearing to bearing; one line in the stack goes without and takes what "
               "is left"),
    reference_row("material", Need::optional, Category::material, "chain-8",
                  "another material than the stay's own, for this piece"),
    length_row(
        "in-hand", Need::optional, 0.001, longest, "25.2 m",
        "the rope or wire that this piece is made of, from end to end: what is over the least cut is "
        "kept as longer burys"),
    length_row(
        "in-hand-over", Need::optional, 0.0, longest, "10 ft 9 in",
        "the same as what is left over the least cut without spare bury, found by laying it out; for a "
        "length that is X"),
    reference_row("stock", Need::optional, Category::record, "offcut-3",
                  "the piece of stock that it is made of; its length is what is in hand"),
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
    {.name = "duty",
     .type = choice_list,
     .choices = duties,
     .example = "carries-sail, removable",
     .help = "what it does; several words with commas"},
    force_row("load", "18 kN", "the greatest load that it is to carry, by whoever worked it out"),
    quantity_row("hottest", dimension::temperature_point, 200.0, "45 degC",
                 "the temperature that its line gets to, by an exhaust or a dark spar in the sun"),
    force_row("dock-tension", "4.2 kN", "tension at the dock, for which the pin-to-pin length holds"),
    {.name = "taken-up",
     .type = quantity,
     .dimension = dimension::length,
     .other_dimension = dimension::turns,
     .least = -1000.0,
     .most = 1000.0,
     .example = "6 turns",
     .help =
         "how much its adjuster has taken since the line lay along its drawn path without tension, as a "
         "length or in turns of its screw"},
    choice_row("seized", Need::optional, seizings, "slack",
               "whether it was clamped at its tips while it was slack or when it was under tension"),
    quantity_row(
        "gives", dimension::give, 0.0, "0.2 mm/kN",
        "how far the hull gives to its pull at the lower end, along the stay, for each kilonewton; "
        "not stated: a stiff hull"),
    force_row("bench-tension", "200 N", "tension under which the line is laid out and marked on the bench"),
    choice_row("bedding-from", Need::optional, bedding_from, "adjuster",
               "what takes up the first lasting stretch: the adjuster, or the line that is cut shorter by "
               "it; not stated: the adjuster"),
    reference_row("replaces", Need::optional, Category::material, "wire-6",
                  "the line that hung here before, to compare with"),
    length_row(
        "hoist-gap", Need::optional, -5.0, 20.0, "4 in",
        "of the hoisted dry fit: how far below the pin aloft what is hoisted hangs from the halyard"),
    length_row("estimate", Need::optional, 0.05, longest, "11.7 m",
               "a guess at the pin-to-pin length, good enough to order line by; no cut is made to it"),
    cut_from_row,
    cut_from_reason_row,
    list_row("spare-parts", Need::optional, Category::part, "toggle-12, toggle-12",
             "parts in hand that may be put into its stack, each as often as it stands here"),
    choice_row("rigged", Need::optional, mast_positions, "mast-down",
               "whether it is dry-fitted and put on with the mast standing or lying: a diamond, a bridle, "
               "a jumper"),
    date_row("made", Need::optional, "when it was made; for its labels"),
    text_row("made-by", Need::optional, "\"north shed\"", "who spliced or pressed its ends"),
    text_row("job", Need::optional, "\"2026-114\"", "the number of the job under which it was made"),
    date_row("installed", Need::optional, "when it went on the boat"),
    text_row("evidence", Need::optional, "\"invoice of 2019\"", "what shows its age or origin"),
    note_row("\"chafes at the lower tip\"", "anything a reader should know"),
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
    length_row(
        "offset", Need::optional, -5.0, 5.0, "35 mm",
        "from the zero or hook of the tape, or the end of the cord, to the pin; taken off each run, or "
        "off X"),
    length_row("hoist-offset", Need::optional, -5.0, 5.0, "60 mm",
               "from the pin aloft to where the tape or the cord was hoisted, when that is lower; added to "
               "each run, or to X"),
    reference_row("with", Need::optional, Category::tape, "long-tape",
                  "the tape; it is corrected for what is stated of it"),
    force_row("pull", "50 N", "pull on the tape, or tension of the old stay as it was measured"),
    quantity_row("temperature", dimension::temperature_point, 200.0, "12 degC", "of the tape"),
    {.name = "spans",
     .type = quantity_list,
     .dimension = dimension::length,
     .least = 0.01,
     .most = longest,
     .example = "11.6 m",
     .help = "the lengths of tape that hung free, each between two supports; none for a tape that lay"},
    quantity_row(
        "slope", dimension::angle, 0.0, "78 deg",
        "how steep the tape hung, from level: 0 deg when level, 90 deg when plumb; needed with spans"),
    reference_row("old-line", Need::optional, Category::material, "wire-6",
                  "of an old stay: its line, which stretches from the pull to the dock tension"),
    reference_row("cord", Need::optional, Category::cord, "orange",
                  "of a reading by messenger: the cord on which it is knotted"),
    {.name = "knots",
     .type = count,
     .least = 1,
     .most = 30,
     .example = "4",
     .help = "the tally: how many little knots in the tail tell this knot of the cord from the others"},
    length_row("below-knot", Need::optional, -0.5, 0.5, "3 mm",
               "how far the bearing at the deck lies below the knot, for the twin that shares the knot of "
               "the other side; less than nothing: above it"),
    text_row("mark", Need::optional, "\"red tape mark\"", "what marks the length on the messenger cord"),
    {.name = "cord-length",
     .type = quantity_list,
     .dimension = dimension::length,
     .least = 0.01,
     .most = longest,
     .example = "11.64 m",
     .help = "of a messenger cord: from its end to its mark, measured later on the bench; each time"},
    choice_row("counts", Need::optional, yes, "yes",
               "that this reading counts, where others of the stay contradict it"),
    length_row("resolution", Need::optional, 0.0, 0.1, "0.5 mm",
               "what a run may be off by because the scale is read no finer; not stated: half the smallest "
               "division that the runs are written in (common practice, no source)"),
    {.name = "date", .type = date, .example = "2026-05-02", .help = "when"},
    text_row("by", Need::optional, "\"owner\"", "who"),
    text_row("note", Need::optional, "\"light wind, afloat\"", "conditions"),
};

constexpr std::string_view lowered_towards[] = {"aft", "forward"};

constexpr PropertyRow state[] = {
    reference_row(
        "lowers", Need::optional, Category::spar, "mast",
        "the spar that is lowered about its heel, or raised again: its stays are told as slack or "
        "too short on the way"),
    {.name = "by",
     .type = quantity,
     .dimension = dimension::angle,
     .least = 0.0,
     .most = 3.15,
     .example = "85 deg",
     .help = "how far it is lowered, from how it stands"},
    choice_row("towards", Need::optional, lowered_towards, "aft", "which way its head goes"),
    note_row("\"light airs\"", "when the rig stands like this"),
};

constexpr PropertyRow position[] = {
    reference_row("stowed-at", Need::optional, Category::point, "mast-base",
                  "where the stay is made off when it is not in use"),
    note_row("\"led forward\"", "anything a reader should know"),
};

constexpr KindRow kinds[] = {
    {.name = "stay",
     .category = Category::stay,
     .group = "Stays",
     .one_side = true,
     .properties = stay,
     .blocks = stay_blocks,
     .help = "one line of load from end to end; `stay cap-shroud.port` states one side apart"},
    {.name = "stack",
     .category = Category::stack,
     .group = "Stays",
     .naming = Naming::none,
     .inside = true,
     .holds_items = true,
     .help = "what the stay is made of, from aloft to deck"},
    {.name = "changes",
     .category = Category::changes,
     .group = "Stays",
     .naming = Naming::none,
     .inside = true,
     .holds_items = true,
     .help = "parts of the stack whose settings differ from those stated there"},
    {.name = "reading",
     .category = Category::reading,
     .group = "Stays",
     .naming = Naming::none,
     .of = Category::stay,
     .properties = reading,
     .help = "a raw measurement of a stay in place"},
    {.name = "state",
     .category = Category::state,
     .group = "Stays",
     .properties = state,
     .blocks = state_blocks,
     .help = "a named position of the rig: which adjusters move to what"},
    {.name = "position",
     .category = Category::position,
     .group = "Stays",
     .naming = Naming::none,
     .inside = true,
     .of = Category::stay,
     .holds_items = true,
     .properties = position,
     .help = "how one stay stands in a state: its adjusters as they are set there"},
};

} // namespace

std::span<const KindRow> stay_kinds() {
  return kinds;
}

std::span<const PropertyRow> line_settings() {
  return line_rows;
}

} // namespace sheerpole
