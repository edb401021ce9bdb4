#include "backend/diagram/stay_strips.hpp"

#include "backend/diagram/sheet.hpp"
#include "backend/diagram/strips/strip_layout.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace sheerpole {

namespace {

constexpr double strip_gap = 4.0;

struct PlacedStrip {
  Strip strip;
  StripLayout layout;
};

std::string subtitle_of(std::size_t number, std::size_t of) {
  return fmt::format(
      "Strips of the stays, sheet {} of {}. Not to scale. Millimetres. The numbers under the ticks are "
      "distances from the upper pin, each rounded by itself.",
      number, of);
}

} // namespace

std::vector<Drawing> stay_strips(const CheckedRig& checked) {
  const Drawing usual; // A3 landscape
  const double width = usual.width - 2 * sheet_margin;
  ShapeGroup measured;
  const double top = draw_sheet_head(checked, subtitle_of(99, 99), usual.width, measured) + 4.0;
  const double bottom = usual.height - sheet_margin - sheet_foot_height;

  std::vector<std::vector<PlacedStrip>> sheets(1);
  double y = top;
  for (Strip& strip : strip_contents(checked)) {
    StripLayout layout = lay_out_strip(strip, width);
    if (y > top && y + layout.height > bottom) {
      sheets.emplace_back();
      y = top;
    }
    y += layout.height + strip_gap;
    sheets.back().push_back({std::move(strip), std::move(layout)});
  }

  std::vector<Drawing> drawings;
  for (std::size_t i = 0; i < sheets.size(); ++i) {
    Drawing drawing;
    drawing.title =
        fmt::format("Strips of the stays of {}, sheet {} of {}", boat_title(checked), i + 1, sheets.size());
    drawing.description = sheets[i].empty()
                              ? "The rig file states no stays."
                              : "Each stay as a row of its parts from aloft, left, to deck, right.";
    drawing.content.id = "sheet";
    const std::string subtitle = sheets[i].empty()
                                     ? "Strips of the stays. No stays are stated in the rig file."
                                     : subtitle_of(i + 1, sheets.size());
    draw_sheet_head(checked, subtitle, drawing.width, drawing.content);
    double strip_top = top;
    for (const PlacedStrip& placed : sheets[i]) {
      draw_strip(placed.strip, placed.layout, {sheet_margin, strip_top}, width, drawing.content);
      strip_top += placed.layout.height + strip_gap;
    }
    // A strip higher than the sheet stands alone on it, and the sheet grows.
    drawing.height = std::max(drawing.height, strip_top - strip_gap + sheet_foot_height + sheet_margin);
    draw_sheet_foot("", drawing.height, drawing.content);
    drawings.push_back(std::move(drawing));
  }
  return drawings;
}

} // namespace sheerpole
