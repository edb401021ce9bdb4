#include "backend/diagram/views/page_plan.hpp"

#include "backend/diagram/sheet.hpp"
#include "backend/diagram/views/view_frame.hpp"
#include "calculate/geometry/spar_lines.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <utility>
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

/// What a view from astern shows.
struct ShownMast {
  std::shared_ptr<const Rig> rig;
  const Spar* mast = nullptr; ///< null: all of the rig
};

/// The masts that stays end on or at.
std::vector<ShownMast> shown_masts(const Rig& rig) {
  std::vector<ShownMast> shown;
  for (const Spar* mast : masts_of(rig))
    if (Rig of_mast = rig_of_mast(rig, *mast); !of_mast.stays.empty())
      shown.push_back({std::make_shared<const Rig>(std::move(of_mast)), mast});
  if (shown.size() < 2) // held by whoever asks for the page
    return {{std::shared_ptr<const Rig>(std::shared_ptr<void>(), &rig), nullptr}};
  return shown;
}

/// Without the deck view.
PagePlan measure_upright(const Rig& rig, const std::vector<ShownMast>& masts, double scale,
                         LabelSites sites) {
  PagePlan plan;
  plan.scale = scale;
  const double millimetres_per_metre = 1000.0 / scale;
  plan.side = measure_view(rig, ViewKind::side, millimetres_per_metre, true, sites);
  for (const ShownMast& shown : masts)
    plan.fronts.push_back({shown.rig, measure_view(*shown.rig, ViewKind::front, millimetres_per_metre, true,
                                                   sites, shown.mast)});
  return plan;
}

void measure_deck(const Rig& rig, bool both_sides, LabelSites sites, PagePlan& plan) {
  plan.deck = measure_view(rig, ViewKind::deck, 1000.0 / plan.scale, both_sides, sites);
}

PagePlan measure(const Rig& rig, const std::vector<ShownMast>& masts, double scale, bool deck_both_sides,
                 LabelSites sites) {
  PagePlan plan = measure_upright(rig, masts, scale, sites);
  measure_deck(rig, deck_both_sides, sites, plan);
  return plan;
}

double needed_width(const PagePlan& plan, const PageRoom& room) {
  double fronts = 0.0;
  for (const MastView& front : plan.fronts)
    fronts += front.block.width() + view_gap;
  return 2 * sheet_margin + plan.side.width() + fronts + std::max(plan.deck.width(), room.key_width) +
         view_gap;
}

double needed_height(const PagePlan& plan, const PageRoom& room) {
  double views = std::max(plan.side.column_height, plan.deck.column_height + room.key_height);
  for (const MastView& front : plan.fronts)
    views = std::max(views, front.block.column_height);
  return room.head + heading_height + views + caption_height + room.foot;
}

double longest_dimension(const PagePlan& plan) {
  double longest = std::max(plan.side.view_height, plan.deck.view_height);
  for (const MastView& front : plan.fronts)
    longest = std::max(longest, front.block.view_width);
  return longest;
}

struct FoundScale {
  double scale = 0.0;
  bool deck_both_sides = true;
};

/// The largest usual scale that fits the paper, unless that makes the rig too small to read.
std::optional<FoundScale> fitting_scale(const Rig& rig, const std::vector<ShownMast>& masts,
                                        const PageRoom& room, const Paper& paper) {
  const ViewExtent side = extent_of(rig, ViewKind::side);
  const double largest = std::max({side.right - side.left, side.bottom - side.top, 0.1}); // metres
  for (const double scale : usual_denominators()) {
    if (largest * 1000.0 / scale > paper.width)
      continue; // spares finding the labels of views that are too large anyway
    PagePlan plan = measure_upright(rig, masts, scale, LabelSites::rough);
    for (const bool deck_both_sides : {true, false}) {
      measure_deck(rig, deck_both_sides, LabelSites::rough, plan);
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
  const std::vector<ShownMast> masts = shown_masts(rig);
  for (const Paper& paper : papers)
    if (const std::optional<FoundScale> found = fitting_scale(rig, masts, room, paper)) {
      PagePlan plan = measure(rig, masts, found->scale, found->deck_both_sides, LabelSites::exact);
      plan.paper = paper.name;
      plan.width = paper.width;
      plan.height = paper.height;
      return plan;
    }
  PagePlan plan = measure(rig, masts, scale_without_paper(rig), true, LabelSites::exact);
  plan.width = needed_width(plan, room);
  plan.height = needed_height(plan, room);
  return plan;
}

} // namespace sheerpole
