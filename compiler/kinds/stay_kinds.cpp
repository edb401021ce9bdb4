#include "kinds/rows.hpp"

namespace sheerpole {

namespace {

using enum ValueType;
using namespace rows;

constexpr std::string_view methods[] = {"tape", "messenger", "old-stay", "laser"};
constexpr std::string_view stay_blocks[] = {"stack", "changes"};
constexpr std::string_view state_blocks[] = {"position"};
constexpr std::string_view duties[] = {"standing", "carries-sail", "running", "removable", "temporary"};

constexpr PropertyRow line_rows[] = {
    length_row("length", Need::optional, 0.001, longest, "455 mm",
               "a length of its own, bearing to bearing; one line in the stack goes without and takes what "
               "is left"),
    reference_row("material", Need::optional, Category::material, "chain-8",
                  "another material than the stay's own, for this piece"),
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
    date_row("installed", Need::optional, "when it went on the boat"),
    text_row("evidence", Need::optional, "\"invoice of 2019\"", "what shows its age or origin"),
    text_row("note", Need::optional, "\"chafes at the lower tip\"", "anything a reader should know"),
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

constexpr PropertyRow state[] = {
    text_row("note", Need::optional, "\"light airs\"", "when the rig stands like this"),
};

constexpr PropertyRow position[] = {
    reference_row("stowed-at", Need::optional, Category::point, "mast-base",
                  "where the stay is made off when it is not in use"),
    text_row("note", Need::optional, "\"led forward\"", "anything a reader should know"),
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
