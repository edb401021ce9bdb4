#include "plugins/rig-drawing/rig_views.hpp"

#include "backend/drawing/svg_writer.hpp"
#include "calculate/facts.hpp"
#include "calculate/geometry/spar_lines.hpp"
#include "model/fact_name.hpp"
#include "plugins/rig-drawing/iso_style.hpp"
#include "wording/papers/rig_drawing_words.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

namespace sheerpole::rig_drawing {

namespace {

/// Half of what a spar is thick on paper at least, so that its two sides stay apart.
constexpr double least_half_width = 0.55;
constexpr double spreader_half_width = 0.45;
constexpr double overrun = 4.0; ///< of the waterline and the centreline beyond the rig
constexpr double same_place = 0.05;

bool shown(const RigView& view, const Spar& spar) {
  if (view.mast.empty())
    return true;
  const Spar* mast = find_spar(*view.rig, view.mast);
  return mast != nullptr && stands(spar) && &carrier_of(*view.rig, spar) == mast;
}

/// A bar of even thickness from one place on paper to another.
PolygonShape bar(PaperPoint from, PaperPoint to, double half_width, ShapeStyle style, std::string id) {
  const double length = std::max(distance(from, to), 1e-9);
  const double x = -(to.y - from.y) / length * half_width;
  const double y = (to.x - from.x) / length * half_width;
  return {{{from.x + x, from.y + y}, {to.x + x, to.y + y}, {to.x - x, to.y - y}, {from.x - x, from.y - y}},
          std::move(style),
          std::move(id)};
}

double half_width_of(const Spar& spar, double millimetres_per_metre) {
  const auto girth = fact_length(spar.particulars, fact_names.girth);
  const double half =
      girth ? girth->value.metres() / (2.0 * std::numbers::pi) * millimetres_per_metre : 0.0;
  return std::max(half, least_half_width);
}

void draw_spar(const RigView& view, const Spar& spar, ShapeGroup& into) {
  const auto end = end_of(*view.rig, spar);
  if (!end)
    return;
  const PaperPoint heel = view.projection.at(spar.heel);
  const PaperPoint tip = view.projection.at(*end);
  const double half = half_width_of(spar, view.projection.millimetres_per_metre);
  const std::string id = view.id("spar", spar.name);
  ShapeGroup group{id, spar.title.empty() ? spar.name : spar.title, {}, {}};
  if (view.projection.view == View::plan && stands(spar)) {
    group.add(CircleShape{heel, half, spar_style(), {}});
  } else if (distance(heel, tip) > 2.0 * half) {
    group.add(bar(heel, tip, half, spar_style(), {}));
    if (stands(spar) && spar.sort != SparSort::topmast) // where it stands
      group.add(LineShape{{heel.x - 2.0 * half, heel.y}, {heel.x + 2.0 * half, heel.y}, solid(0.7), {}});
  }
  if (!group.children.empty())
    into.add(std::move(group));
}

void draw_hull(const RigView& view, ShapeGroup& into) {
  if (!view.hull)
    return;
  const HullOutline& hull = *view.hull;
  ShapeGroup group{view.id("hull", ""), say(RigDrawingPhrase::hull_outline_only), {}, {}};
  const auto add = [&](std::vector<PaperPoint> points) {
    group.add(PolylineShape{std::move(points), outline_style(), {}});
  };
  const auto on_paper = [&](const std::vector<Vector3>& places) {
    std::vector<PaperPoint> points;
    for (const Vector3& place : places)
      points.push_back(view.projection.at(place));
    return points;
  };
  switch (view.projection.view) {
  case View::profile:
    if (!hull.sheer.empty())
      add(on_paper(hull.sheer));
    if (!hull.sheer.empty() && hull.waterline.size() == 2) {
      add(on_paper({hull.sheer.front(), hull.waterline.front()}));
      add(on_paper({hull.sheer.back(), hull.waterline.back()}));
    }
    break;
  case View::plan:
    if (!hull.deck.empty()) {
      std::vector<PaperPoint> starboard = on_paper(hull.deck);
      std::vector<PaperPoint> port = starboard;
      for (PaperPoint& place : port)
        place.y = 2.0 * view.projection.origin.y - place.y;
      if (distance(starboard.back(), port.back()) > same_place)
        add({starboard.back(), port.back()});
      add(std::move(starboard));
      add(std::move(port));
    }
    break;
  case View::astern:
    if (!hull.deck.empty() && hull.half_beam && !hull.sheer.empty()) {
      const double sheer = hull.sheer[hull.sheer.size() / 2].z.metres();
      for (const double side : {-1.0, 1.0})
        add({view.projection.at(0, side * *hull.half_beam, sheer),
             view.projection.at(0, side * *hull.half_beam, 0.35 * sheer),
             view.projection.at(0, side * 0.88 * *hull.half_beam, 0.0)});
    }
    break;
  }
  if (!group.children.empty())
    into.add(std::move(group));
}

void draw_axes(const RigView& view, const Extent& extent, ShapeGroup& into) {
  const Projection& on = view.projection;
  const double s = on.millimetres_per_metre;
  if (on.view != View::plan)
    into.add(LineShape{{on.origin.x + extent.left * s - overrun, on.origin.y},
                       {on.origin.x + extent.right * s + overrun, on.origin.y},
                       axis_style(),
                       view.id("waterline", "")});
  else
    into.add(LineShape{{on.origin.x + extent.left * s - overrun, on.origin.y},
                       {on.origin.x + extent.right * s + overrun, on.origin.y},
                       axis_style(),
                       view.id("centreline", "")});
  if (on.view == View::astern)
    into.add(LineShape{{on.origin.x, on.origin.y + extent.top * s - overrun},
                       {on.origin.x, on.origin.y + overrun},
                       axis_style(),
                       view.id("centreline", "")});
}

} // namespace

std::string RigView::id(std::string_view what, std::string_view name) const {
  std::string text(name_of(projection.view));
  if (!mast.empty())
    text += "-" + element_id(mast);
  text += "-" + std::string(what);
  return name.empty() ? text : text + "-" + element_id(name);
}

std::optional<Vector3> end_of(const Rig& rig, const Spar& spar) {
  const SparLine line = spar_line(spar);
  double length = 0.0;
  if (const auto stated = fact_length(spar.particulars, fact_names.length))
    length = stated->value.metres();
  else
    for (const Point& point : rig.points)
      if (point.spar == spar.name)
        length = std::max(length, from_spar(line, space_point(point.position)).along.metres());
  if (!(length > 0.0))
    return std::nullopt;
  return Vector3{spar.heel.x + Length::metres(length * line.along.x),
                 spar.heel.y + Length::metres(length * line.along.y),
                 spar.heel.z + Length::metres(length * line.along.z)};
}

Extent extent_of(const RigView& view) {
  const Projection metre{view.projection.view, 1.0, {}};
  Extent extent;
  bool first = true;
  const auto add = [&](const Vector3& place) {
    if (first) {
      const PaperPoint at = metre.at(place);
      extent = {at.x, at.x, at.y, at.y};
    }
    first = false;
    extent.add(metre, place);
  };
  for (const Stay& stay : view.rig->stays)
    for (const PathStop& stop : stay.path)
      add((*view.rig)[stop.point].position);
  for (const Spreader& spreader : view.rig->spreaders)
    for (const PointId point : {spreader.root, spreader.tip})
      add((*view.rig)[point].position);
  for (const Spar& spar : view.rig->spars)
    if (shown(view, spar)) {
      add(spar.heel);
      if (const auto end = end_of(*view.rig, spar))
        add(*end);
    }
  const auto metres = [](double x, double y, double z) {
    return Vector3{Length::metres(x), Length::metres(y), Length::metres(z)};
  };
  if (view.hull && view.projection.view != View::astern)
    for (const double x : {view.hull->bow, view.hull->stern})
      for (const double side : {-1.0, 1.0})
        add(metres(x, side * view.hull->half_beam.value_or(0.0), 0.0));
  if (view.hull && view.projection.view == View::astern && view.hull->half_beam && !view.hull->deck.empty())
    for (const double side : {-1.0, 1.0})
      add(metres(0.0, side * *view.hull->half_beam, 0.0));
  if (view.projection.view != View::profile && !first)
    add(metres((extent.left + extent.right) / 2.0 * (view.projection.view == View::plan ? 1.0 : 0.0), 0.0,
               0.0));
  extent.bottom = std::max(extent.bottom, 0.0);
  return extent;
}

std::vector<StayInView> stays_in(const RigView& view) {
  std::vector<StayInView> result;
  for (const Stay& stay : view.rig->stays) {
    if (stay.path.size() < 2)
      continue;
    StayInView drawn{&stay, {}};
    for (const PathStop& stop : stay.path)
      drawn.path.push_back(view.projection.at((*view.rig)[stop.point].position));
    result.push_back(std::move(drawn));
  }
  return result;
}

bool sides_coincide(const RigView& view) {
  const std::vector<StayInView> stays = stays_in(view);
  return std::all_of(stays.begin(), stays.end(), [&](const StayInView& a) {
    return std::all_of(stays.begin(), stays.end(), [&](const StayInView& b) {
      return a.stay->base != b.stay->base ||
             (a.path.size() == b.path.size() &&
              std::equal(a.path.begin(), a.path.end(), b.path.begin(),
                         [](PaperPoint p, PaperPoint q) { return distance(p, q) <= same_place; }));
    });
  });
}

void draw_view(const RigView& view, const Extent& extent, ShapeGroup& into) {
  const Rig& rig = *view.rig;
  draw_axes(view, extent, into);
  draw_hull(view, into);
  for (const Spar& spar : rig.spars)
    if (shown(view, spar))
      draw_spar(view, spar, into);
  for (const Spreader& spreader : rig.spreaders) {
    ShapeGroup group{view.id("spreader", spreader.name),
                     spreader.title.empty() ? spreader.name : spreader.title,
                     {},
                     {}};
    group.add(bar(view.projection.at(rig[spreader.root].position),
                  view.projection.at(rig[spreader.tip].position), spreader_half_width, {0.35, 0.0, {}, 1.0},
                  {}));
    into.add(std::move(group));
  }
  std::vector<bool> used(rig.points.size());
  for (const StayInView& drawn : stays_in(view)) {
    ShapeGroup group{view.id("stay", drawn.stay->name),
                     drawn.stay->title.empty() ? drawn.stay->name : drawn.stay->title,
                     {},
                     {}};
    group.add(PolylineShape{drawn.path, stay_style(rig[drawn.stay->material].kind), {}});
    into.add(std::move(group));
    for (const PathStop& stop : drawn.stay->path)
      used[stop.point.index()] = true;
  }
  for (std::size_t i = 0; i < rig.points.size(); ++i)
    if (used[i])
      into.add(CircleShape{view.projection.at(rig.points[i].position),
                           0.5,
                           {0.25, 0.0, {}, 1.0},
                           view.id("pin", rig.points[i].name)});
}

} // namespace sheerpole::rig_drawing
