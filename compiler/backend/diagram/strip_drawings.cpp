#include "backend/diagram/strip_drawings.hpp"

#include "backend/diagram/sheet.hpp"
#include "backend/diagram/strips/strip_layout.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

constexpr std::string_view not_to_scale = "Its parts from aloft, left, to deck, right. Not to scale. "
                                          "Millimetres; the numbers under the ticks are "
                                          "distances from the upper pin.";

/// Draws "WAS" or "IS" and the strip below it; returns the y below both.
double draw_named(std::string_view word, const Strip* strip, double width, double y, ShapeGroup& into) {
  if (strip == nullptr)
    return draw_text_block({std::string(word) + ": not there"}, {0.0, y}, plain_text_size, true, into) +
           2.0;
  y = draw_text_block({std::string(word)}, {0.0, y}, plain_text_size, true, into);
  Strip named = *strip;
  named.name += "-" + std::string(word == "WAS" ? "was" : "is");
  const StripLayout layout = lay_out_strip(named, width);
  draw_strip(named, layout, {0.0, y}, width, into);
  return y + layout.height + 3.0;
}

} // namespace

Drawing strip_drawing(const Strip& strip, double width) {
  const StripLayout layout = lay_out_strip(strip, width);
  Drawing drawing;
  drawing.width = width;
  drawing.height = layout.height;
  drawing.title = "Strip of " + strip.name;
  drawing.description = not_to_scale;
  draw_strip(strip, layout, {0.0, 0.0}, width, drawing.content);
  return drawing;
}

Drawing changed_strip_drawing(const Strip* was, const Strip* is, double width) {
  Drawing drawing;
  drawing.width = width;
  const Strip* named = is == nullptr ? was : is;
  drawing.title = "Strips of " + (named == nullptr ? std::string("a stay") : named->name) + ", was and is";
  drawing.description = not_to_scale;
  double y = draw_named("WAS", was, width, 0.0, drawing.content);
  y = draw_named("IS", is, width, y, drawing.content);
  drawing.height = y;
  return drawing;
}

const Strip* find_strip(const std::vector<Strip>& strips, const Stay& stay) {
  const auto of = [&](const std::string& name) {
    return std::find_if(strips.begin(), strips.end(), [&](const Strip& one) { return one.name == name; });
  };
  auto found = of(stay.name);
  if (found == strips.end())
    found = of(stay.base);
  return found == strips.end() ? nullptr : &*found;
}

} // namespace sheerpole
