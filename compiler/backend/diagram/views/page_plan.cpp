#include "backend/diagram/views/page_plan.hpp"

#include "backend/diagram/sheet.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <vector>

namespace sheerpole {

namespace {

/// Denominators in use on drawings, each times a power of ten (common practice, no source; 1, 2 and 5 are
/// in ISO 5455).
constexpr std::array<double, 10> mantissas{1.0, 1.25, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 7.5};

struct Paper {
  const char* name;
  double width;
  double height;
};

// ISO 216, trimmed sizes, landscape.
constexpr std::array<Paper, 4> papers{
    {{"A3", 420, 297}, {"A2", 594, 420}, {"A1", 841, 594}, {"A0", 1189, 841}}};

/// Of the longest dimension of the rig: smaller is hard to read, millimetres.
constexpr double smallest_view = 90.0;

PagePlan measure(const Rig& rig, double scale, bool deck_both_sides, LabelSites sites) {
  PagePlan plan;
  plan.scale = scale;
  const double millimetres_per_metre = 1000.0 / scale;
  plan.side = measure_view(rig, ViewKind::side, millimetres_per_metre, true, sites);
  plan.front = measure_view(rig, ViewKind::front, millimetres_per_metre, true, sites);
  plan.deck = measure_view(rig, ViewKind::deck, millimetres_per_metre, deck_both_sides, sites);
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

struct FoundScale {
  double scale = 0.0;
  bool deck_both_sides = true;
};

/// The largest usual scale that fits the paper, unless that makes the rig too small to read.
std::optional<FoundScale> fitting_scale(const Rig& rig, const PageRoom& room, const Paper& paper) {
  const ViewExtent side = extent_of(rig, ViewKind::side);
  const double largest = std::max({side.right - side.left, side.bottom - side.top, 0.1}); // metres
  for (const double scale : usual_denominators()) {
    if (largest * 1000.0 / scale > paper.width)
      continue; // spares finding the labels of views that are too large anyway
    for (const bool deck_both_sides : {true, false}) {
      const PagePlan plan = measure(rig, scale, deck_both_sides, LabelSites::rough);
      if (scale > smallest_denominator && longest_dimension(plan) < smallest_view)
        return std::nullopt;
      if (needed_width(plan, room) <= paper.width && needed_height(plan, room) <= paper.height)
        return FoundScale{scale, deck_both_sides};
    }
  }
  return std::nullopt;
}

/// The largest usual scale at which the rig alone is no longer than the shorter side of the largest paper.
double scale_without_paper(const Rig& rig) {
  const ViewExtent side = extent_of(rig, ViewKind::side);
  const double largest = std::max(side.right - side.left, side.bottom - side.top); // metres
  for (const double scale : usual_denominators())
    if (largest * 1000.0 / scale <= papers.back().height)
      return scale;
  return largest_denominator;
}

} // namespace

std::vector<double> usual_denominators() {
  std::vector<double> denominators;
  for (double power = smallest_denominator; power < largest_denominator; power *= 10.0)
    for (const double mantissa : mantissas)
      denominators.push_back(mantissa * power);
  return denominators;
}

PagePlan plan_page(const Rig& rig, const PageRoom& room) {
  for (const Paper& paper : papers)
    if (const std::optional<FoundScale> found = fitting_scale(rig, room, paper)) {
      PagePlan plan = measure(rig, found->scale, found->deck_both_sides, LabelSites::exact);
      plan.paper = paper.name;
      plan.width = paper.width;
      plan.height = paper.height;
      return plan;
    }
  PagePlan plan = measure(rig, scale_without_paper(rig), true, LabelSites::exact);
  plan.width = needed_width(plan, room);
  plan.height = needed_height(plan, room);
  return plan;
}

} // namespace sheerpole
