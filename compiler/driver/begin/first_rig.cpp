#include "driver/begin/first_rig.hpp"

#include <fmt/format.h>

namespace sheerpole {

namespace {

/// Points, spreaders and stays of one kind of rig; the values are shares of the numbers that were given.
struct Shape {
  std::string_view name;
  std::string_view points;
  std::string_view spreaders;
  std::string_view stays;
};

constexpr std::string_view one_spreader = R"(spreader spreader "Spreader" {
  root: spreader-root
  tip: spreader-tip
}
)";

constexpr std::string_view masthead_points =
    R"(  fore-tang "Forestay tang": (0.1 m, 0 m, mast-height) assumed "at the masthead: measure"
  aft-tang "Backstay tang": (-0.15 m, 0 m, mast-height) assumed "at the masthead: measure"
  cap-tang "Cap shroud tang": (0 m, 0.08 m, mast-height) mirrored assumed "at the masthead: measure"
  spreader-root "Spreader root": (0 m, 0.07 m, mast-height * 0.53) mirrored assumed "half way up: measure"
  spreader-tip "Spreader tip": (0 m, beam * 0.3, mast-height * 0.54) mirrored assumed "a third of the beam out: measure"
  lower-tang "Lower shroud tang": (0 m, 0.07 m, mast-height * 0.52) mirrored assumed "under the spreaders: measure"
  stem "Stem fitting": (base, 0 m, deck-height * 1.2) assumed "measure"
  stern "Stern chainplate": (-base * 1.2, 0 m, deck-height) assumed "measure"
  cap-plate "Cap chainplate": (0 m, beam * 0.45, deck-height) mirrored assumed "measure both sides"
  lower-plate "Lower chainplate": (-base * 0.2, beam * 0.44, deck-height) mirrored assumed "measure both sides"
)";

constexpr std::string_view fractional_points =
    R"(  fore-tang "Forestay tang": (0.1 m, 0 m, mast-height * 0.88) assumed "at the hounds: measure"
  aft-tang "Backstay tang": (-0.2 m, 0 m, mast-height) assumed "at the masthead: measure"
  cap-tang "Cap shroud tang": (-0.05 m, 0.07 m, mast-height * 0.87) mirrored assumed "at the hounds: measure"
  spreader-root "Spreader root": (-0.03 m, 0.06 m, mast-height * 0.46) mirrored assumed "measure"
  spreader-tip "Spreader tip": (-0.4 m, beam * 0.33, mast-height * 0.465) mirrored assumed "swept aft: measure"
  lower-tang "Lower shroud tang": (-0.03 m, 0.06 m, mast-height * 0.45) mirrored assumed "under the spreaders: measure"
  stem "Stem fitting": (base, 0 m, deck-height * 1.2) assumed "measure"
  stern "Stern chainplate": (-base * 1.6, 0 m, deck-height) assumed "measure"
  cap-plate "Cap chainplate": (-base * 0.17, beam * 0.45, deck-height) mirrored assumed "measure both sides"
  lower-plate "Lower chainplate": (-base * 0.16, beam * 0.41, deck-height) mirrored assumed "measure both sides"
)";

constexpr std::string_view inner_points =
    R"(  inner-tang "Inner stay tang": (0.1 m, 0 m, mast-height * 0.75) assumed "measure"
  inner-pad "Inner stay deck pad": (base * 0.62, 0 m, deck-height * 1.15) assumed "measure"
)";

std::string stay(std::string_view name, std::string_view title, std::string_view path, bool sides) {
  return fmt::format("\nstay {} \"{}\" {{\n{}  path: {}\n  line: first-wire\n  stack {{\n    first-tang\n"
                     "    first-eye\n    line\n    first-screw (open: 50 %)\n    first-plate\n  }}\n}}\n",
                     name, title, sides ? "  sides: port, starboard\n" : "", path);
}

std::string sloop_stays() {
  return stay("forestay", "Forestay", "fore-tang > stem", false) +
         stay("backstay", "Backstay", "aft-tang > stern", false) +
         stay("cap-shroud", "Cap shroud", "cap-tang > spreader-tip clamped > cap-plate", true) +
         stay("lower-shroud", "Lower shroud", "lower-tang > lower-plate", true);
}

} // namespace

const std::vector<std::string_view>& first_rigs() {
  static const std::vector<std::string_view> names{"masthead-sloop", "fractional-sloop", "cutter"};
  return names;
}

std::string first_rig(const FirstNumbers& numbers) {
  const bool fractional = numbers.rig == "fractional-sloop";
  const bool cutter = numbers.rig == "cutter";
  std::string text = "language 1\n\n";
  text += fmt::format("# A first file of a {}. Every number in it is assumed, so every cut is a DRAFT.\n",
                      numbers.rig);
  text += R"(# What to do now, one line after the other:
#   1. Measure what says "measure", put the number in, and write `measured` for `assumed`.
#   2. Where a stay can be measured as a whole, add a block `reading of` it: that wins over the points.
#   3. Put your own hardware in the place of first-eye, first-screw and first-wire.
#   4. `sheerpole check` says what is still assumed. Cut nothing while it does.

)";
  text += fmt::format("boat \"{}\" {{\n}}\n\n", escaped(numbers.boat));
  text += fmt::format("let mast-height = {} assumed \"masthead above the waterline: measure\"\n",
                      numbers.mast_height);
  text += fmt::format("let beam = {} assumed \"greatest beam: measure\"\n", numbers.beam);
  text += fmt::format("let base = {} assumed \"mast to stem fitting: measure\"\n", numbers.base);
  text +=
      "let deck-height = beam * 0.35 assumed \"deck at the chainplates above the waterline: measure\"\n\n";
  text += "points {\n";
  text += fractional ? fractional_points : masthead_points;
  text += cutter ? inner_points : "";
  text += "}\n\n";
  text += one_spreader;
  text += "\n";
  text += first_parts();
  text += sloop_stays();
  if (cutter)
    text += stay("inner-stay", "Inner stay", "inner-tang > inner-pad", false);
  return text;
}

std::string_view first_parts() {
  return R"(# Parts to begin with: measure your own and put them in their place.
tang first-tang "Mast tang" {
}

chainplate first-plate "Chainplate" {
}

wire first-wire "Wire, size to be looked up" {
  construction: "1x19"
  size: "6 mm" assumed "look up your own"
}

terminal first-eye "Eye terminal" {
  length: 60 mm assumed "from pin to where the wire comes out: measure"
  lower: wire-socket (inserted: 50 mm assumed "how far the wire goes in: measure")
}

turnbuckle first-screw "Turnbuckle" {
  shortest: 240 mm assumed "fully closed, pin to pin: measure"
  longest: 360 mm assumed "open to the last thread to be used: measure"
  upper: wire-socket (inserted: 50 mm assumed "how far the wire goes in: measure")
}
)";
}

} // namespace sheerpole
