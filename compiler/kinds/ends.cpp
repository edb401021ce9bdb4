#include "kinds/kind_row.hpp"

namespace sheerpole {

namespace {

constexpr PropertyRow dimension_row(std::string_view name, std::string_view example,
                                    std::string_view help) {
  return {.name = name,
          .type = ValueType::quantity,
          .dimension = dimension::length,
          .least = 0.0,
          .most = 100.0,
          .example = example,
          .help = help};
}

constexpr PropertyRow size_row(std::string_view name, std::string_view example, std::string_view help) {
  return {.name = name, .type = ValueType::size, .example = example, .help = help};
}

constexpr std::string_view hands[] = {"right", "left"};

constexpr PropertyRow jaw[] = {
    dimension_row("gap", "17 mm", "clear width between the cheeks"),
    dimension_row("depth", "26 mm", "from the pin centre to the bottom of the jaw"),
    size_row("pin", "\"5/8 in\"", "the pin that belongs to the jaw"),
    dimension_row("outside", "30 mm", "width over both cheeks, along the pin"),
    dimension_row("grip", "34 mm", "of its pin: from under the head to the hole for the split pin"),
    size_row("split-pin", "\"4 mm\"", "the split pin that secures its pin"),
};
constexpr PropertyRow eye[] = {
    dimension_row("hole", "16.3 mm", "diameter of the hole"),
    dimension_row("thickness", "8 mm", "thickness of the plate or the eye, along the pin"),
    dimension_row("width", "40 mm", "width of the plate or the eye across the hole"),
    dimension_row("edge", "20 mm", "from the hole centre to the end of the plate"),
};
constexpr PropertyRow stud[] = {
    {.name = "thread", .type = ValueType::thread, .example = "\"1/2-20 UNF\"", .help = "its thread"},
    {.name = "hand",
     .type = ValueType::choice,
     .choices = hands,
     .example = "right",
     .help = "hand of the thread"},
    dimension_row("engaged", "25 mm", "length of thread inside the body as set"),
};
constexpr PropertyRow socket[] = {
    {.name = "thread", .type = ValueType::thread, .example = "\"M12\"", .help = "its thread"},
    {.name = "hand",
     .type = ValueType::choice,
     .choices = hands,
     .example = "left",
     .help = "hand of the thread"},
    dimension_row("depth", "60 mm", "length of thread in the body"),
};
constexpr PropertyRow rope_seat[] = {
    dimension_row("diameter", "28 mm", "diameter of the seat that the rope bears on"),
    dimension_row("width", "11 mm", "width of the groove"),
    dimension_row("throat", "38 mm",
                  "from the seat's centre to the throat, where the two legs of the eye meet"),
    dimension_row("edge-radius", "5 mm", "radius of the edge that the rope leaves the seat over"),
};
constexpr PropertyRow hook[] = {
    dimension_row("opening", "14 mm", "clear opening of the hook"),
};
constexpr PropertyRow wire_socket[] = {
    {.name = "construction",
     .type = ValueType::text,
     .example = "\"1x19\"",
     .help = "the wire it is made for"},
    size_row("size", "\"3/8 in\"", "the size of wire it is made for"),
    dimension_row(
        "inserted", "62 mm",
        "how far the wire goes in beyond the shoulder; of an eye round a thimble, a dead-eye or a "
        "mast, how much of the wire a test eye used beyond its bearing: laid out less finished"),
};
constexpr PropertyRow tee[] = {
    dimension_row("neck", "6 mm", "diameter of the neck, which passes the slot"),
    dimension_row("head", "15 mm", "length of the bar, which bears behind the plate"),
};
constexpr PropertyRow slot[] = {
    dimension_row("width", "7 mm", "width of the slot, which the neck lies in"),
    dimension_row("length", "17 mm", "length of the slot, which the bar goes through"),
};
constexpr PropertyRow holes[] = {
    {.name = "count", .type = ValueType::count, .example = "5", .help = "number of holes"},
    dimension_row("diameter", "16 mm", "diameter of one hole"),
};

constexpr EndRow ends[] = {
    {"jaw", jaw, "two cheeks with a pin through them; takes an eye or a plate"},
    {"eye", eye, "a plate or a ring with a hole; goes into a jaw"},
    {"stud", stud, "an outside thread"},
    {"socket", socket, "an inside thread"},
    {"rope-seat", rope_seat, "the round groove that a rope eye bears on"},
    {"hook", hook, "an open hook"},
    {"wire-socket", wire_socket, "takes the end of a wire"},
    {"tee", tee, "a bar across a neck, turned behind a slotted plate; it has no pin"},
    {"slot", slot, "a slotted plate that takes a tee"},
    {"holes", holes, "holes for a lashing"},
};

} // namespace

std::span<const EndRow> all_ends() {
  return ends;
}

const EndRow* find_end(std::string_view name) {
  for (const EndRow& row : ends)
    if (row.name == name)
      return &row;
  return nullptr;
}

} // namespace sheerpole
