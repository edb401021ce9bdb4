#include "kinds/rows.hpp"

namespace sheerpole {

namespace {

using enum ValueType;
using namespace rows;

constexpr std::string_view splice_sorts[] = {"bury", "tucked", "sewn"};
constexpr std::string_view contraction_rules[] = {"equals-first-creep"};

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

constexpr PropertyRow more_of_line[] = {
    quantity_row("modulus", dimension::stress, 1.0, "110 GPa", "modulus of elasticity, with metallic-area"),
    quantity_row("metallic-area", dimension::area, 0.0, "24 mm2", "cross-section of the metal"),
    quantity_row("creep", dimension::number, 0.0, "0.1 %",
                 "lasting stretch in the first year at its usual load"),
    ratio_row("bedding", 0.0, 0.2, "0.3 %",
              "how much longer it stays for good after its first loads, as a share of its length"),
    text_row("supplier", Need::optional, "\"chandler at the slip\"", "who is asked for it"),
    text_row("batch", Need::optional, "\"coil 7\"", "the batch or coil that it came from"),
    date_row("made", Need::optional, "when it was made"),
    note_row("\"invented figures\"", "anything a reader should know"),
};

constexpr PropertyRow fibre_of_rope[] = {
    quantity_row("creep-energy", dimension::molar_energy, 1000.0, "118 kJ/mol",
                 "activation energy of its creep, with one creep-rate"),
    quantity_row("creep-volume", dimension::volume, 0.0, "0.045 nm3",
                 "activation volume of its creep, with one creep-rate"),
    quantity_row("fibre-section", dimension::area, 0.0, "48 mm2",
                 "cross-section of the fibre itself, which carries the load that creep-volume asks for"),
};

constexpr PropertyRow links_of_chain[] = {
    length_row("pitch", Need::optional, 0.001, 1.0, "28 mm", "inside length of one link"),
};

constexpr auto rope_rows = joined(joined(rope, more_of_line), fibre_of_rope);
constexpr auto wire_rows = joined(wire, more_of_line);
constexpr auto chain_rows = joined(wire_rows, links_of_chain);

constexpr PropertyRow splice[] = {
    rope_measure_row("bury", Need::required, "72 d", "length of tail buried, in diameters or as a length"),
    rope_measure_row("eye-allowance", Need::optional, "12 d",
                     "rope used beyond the bearing; not stated: the part's wrap, or its geometry"),
    rope_measure_row("tail-to-trim", Need::optional, "20 mm",
                     "rope left to hold on to, trimmed away at the end"),
    ratio_row(
        "contraction", 0.0, 0.5, "8 %",
        "how much the standing part shortens, as a share of the bury; test splices on this rope go before "
        "it unless it is measured"),
    choice_row(
        "contraction-rule", Need::optional, contraction_rules, "equals-first-creep",
        "for heat-set rope only: the first creep is taken to give back what the bury takes, so that the "
        "cut "
        "counts neither (common practice, no source); until then the stay is short by the contraction, for "
        "which the adjuster must have room"),
    rope_measure_row("taper-over", Need::optional, "24 d", "how much of the buried tail is tapered"),
    ratio_row("recovered", 0.0, 1.0, "60 %", "share of the contraction that pre-tensioning gives back"),
    text_row("taper", Need::optional, "\"last third\"", "how the tail is tapered"),
    text_row("throat", Need::optional, "\"not over 1 in 3\"", "how steep the legs of the eye may be"),
    choice_row("sort", Need::optional, splice_sorts, "bury",
               "how it holds; not stated: it buries its tail"),
    text_row("locking", Need::optional, "\"lock stitch\"",
             "what keeps the tail from working out; \"none\" when nothing does"),
    ratio_row("efficiency", 0.01, 1.0, "90 %", "share of the rope's break load that the splice holds"),
    ratio_row(
        "stretch-share", 0.1, 1.0, "60 %",
        "how much the buried part stretches, as a share of plain rope under the same pull; not stated: "
        "as much, and the cut says what that may leave out"),
    note_row("\"invented figures\"", "anything a reader should know"),
};

constexpr KindRow kinds[] = {
    {.name = "rope",
     .category = Category::material,
     .group = "Lines",
     .properties = rope_rows,
     .help = "a rope of one construction and size"},
    {.name = "wire",
     .category = Category::material,
     .group = "Lines",
     .properties = wire_rows,
     .help = "a wire of one construction and size"},
    {.name = "rod",
     .category = Category::material,
     .group = "Lines",
     .properties = wire_rows,
     .help = "a rod of one size, headed or threaded at its ends"},
    {.name = "chain",
     .category = Category::material,
     .group = "Lines",
     .properties = chain_rows,
     .help = "a chain of one size"},
    {.name = "splice",
     .category = Category::splice,
     .group = "Lines",
     .properties = splice,
     .help = "how an end of a rope is made"},
};

} // namespace

std::span<const KindRow> line_kinds() {
  return kinds;
}

} // namespace sheerpole
