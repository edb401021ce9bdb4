#include "plugins/diagram/views/page_plan.hpp"

#include "plugins/diagram/sheet.hpp"

#include <algorithm>
#include <array>
#include <optional>

namespace sheerpole {

namespace {

struct Paper {
  const char* name;
  double width;
  double height;
};

// ISO 216, trimmed sizes, landscape.
constexpr std::array<Paper, 4> papers{
    {{"A3", 420, 297}, {"A2", 594, 420}, {"A1", 841, 594}, {"A0", 1189, 841}}};

/// Denominators in use on drawings, each times a power of ten (common practice, no source; 1, 2 and 5 are
/// in ISO 5455).
constexpr std::array<double, 10> mantissas{1.0, 1.25, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 7.5};

constexpr double largest_denominator = 1e7;

PagePlan measure(const Rig& rig, double scale, bool deck_both_sides) {
  PagePlan plan;
  plan.scale = scale;
  const double millimetres_per_metre = 1000.0 / scale;
  plan.side = measure_view(rig, ViewKind::side, millimetres_per_metre, true);
  plan.front = measure_view(rig, ViewKind::front, millimetres_per_metre, true);
  plan.deck = measure_view(rig, ViewKind::deck, millimetres_per_metre, deck_both_sides);
  return plan;
}

double needed_width(const PagePlan& plan, const PageRoom& room) {
  return 2 * sheet_margin + plan.side.width() + plan.front.width() +
         std::max(plan.deck.width(), room.key_width) + 2 * view_gap;
}

double needed_height(const PagePlan& plan, const PageRoom& room) {
  const double views = std::max(
      {plan.side.column_height, plan.front.column_height, plan.deck.column_height + room.key_height});
  return room.head + heading_height + views + caption_height + room.foot;
}

double longest_dimension(const PagePlan& plan) {
  return std::max({plan.side.view_height, plan.deck.view_height, plan.front.view_width});
}

} // namespace

PagePlan plan_page(const Rig& rig, const PageRoom& room) {
  const ViewExtent side = extent_of(rig, ViewKind::side);
  const double largest = std::max({side.right - side.left, side.bottom - side.top, 0.1}); // metres
  std::optional<PagePlan> smallest;
  for (const Paper& paper : papers)
    for (double power = 10.0; power < largest_denominator; power *= 10.0)
      for (const double mantissa : mantissas) {
        const double scale = mantissa * power;
        if (largest * 1000.0 / scale > paper.width)
          continue; // spares placing the labels of views that are too large anyway
        PagePlan plan = measure(rig, scale, true);
        const bool large_enough = longest_dimension(plan) >= 90.0 || scale == 10.0;
        if (!large_enough) {
          power = largest_denominator; // smaller still: try the next sheet
          break;
        }
        const auto fits = [&] {
          return needed_width(plan, room) <= paper.width && needed_height(plan, room) <= paper.height;
        };
        if (!fits())
          plan = measure(rig, scale, false);
        if (fits()) {
          plan.paper = paper.name;
          plan.width = paper.width;
          plan.height = paper.height;
          return plan;
        }
        smallest = std::move(plan);
      }
  PagePlan plan = smallest ? std::move(*smallest) : measure(rig, largest * 10.0, true);
  plan.width = needed_width(plan, room);
  plan.height = needed_height(plan, room);
  return plan;
}

} // namespace sheerpole
