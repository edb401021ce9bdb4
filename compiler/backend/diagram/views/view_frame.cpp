#include "backend/diagram/views/view_frame.hpp"

#include "calculate/geometry/spar_lines.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <limits>

namespace sheerpole {

namespace {

double distance_to_path(PaperPoint p, const std::vector<PaperPoint>& path) {
  double nearest = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i + 1 < path.size(); ++i)
    nearest = std::min(nearest, distance_to_line(p, path[i], path[i + 1]));
  return nearest;
}

bool same_path(const std::vector<PaperPoint>& a, const std::vector<PaperPoint>& b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                    [](PaperPoint p, PaperPoint q) { return near_each_other(p, q, coincident); });
}

} // namespace

std::string_view name_of(ViewKind kind) {
  return kind == ViewKind::side ? "side" : kind == ViewKind::front ? "front" : "deck";
}

std::string id_of(const ViewFrame& frame) {
  return frame.mast.empty() ? std::string(name_of(frame.kind))
                            : fmt::format("{}-{}", name_of(frame.kind), frame.mast);
}

Rig rig_of_mast(const Rig& rig, const Spar& mast) {
  Rig result = rig;
  std::erase_if(result.stays, [&](const Stay& stay) {
    return mast_at(rig, stay, WhichEnd::upper) != &mast && mast_at(rig, stay, WhichEnd::lower) != &mast;
  });
  std::vector<bool> kept(rig.points.size(), false);
  for (const Stay& stay : result.stays)
    for (const PathStop& stop : stay.path)
      kept[stop.point.index()] = true;
  std::erase_if(result.spreaders, [&](const Spreader& spreader) {
    const auto on = mast_of(rig, rig[spreader.root]);
    return !on || &carrier_of(rig, *on->mast) != &mast;
  });
  for (const Spreader& spreader : result.spreaders)
    kept[spreader.root.index()] = kept[spreader.tip.index()] = true;
  std::vector<std::uint32_t> moved(rig.points.size(), 0);
  result.points.clear();
  for (std::size_t i = 0; i < rig.points.size(); ++i)
    if (kept[i]) {
      moved[i] = static_cast<std::uint32_t>(result.points.size());
      result.points.push_back(rig.points[i]);
    }
  for (Point& point : result.points)
    if (point.twin)
      point.twin =
          kept[point.twin->index()] ? std::optional(PointId{moved[point.twin->index()]}) : std::nullopt;
  for (Stay& stay : result.stays)
    for (PathStop& stop : stay.path)
      stop.point = PointId{moved[stop.point.index()]};
  for (Spreader& spreader : result.spreaders) {
    spreader.root = PointId{moved[spreader.root.index()]};
    spreader.tip = PointId{moved[spreader.tip.index()]};
  }
  return result;
}

PaperPoint ViewFrame::at(const Vector3& position) const {
  const Length across = kind == ViewKind::side ? position.x : position.y;
  const Length up = kind == ViewKind::deck ? position.x : position.z;
  return {origin.x + across.metres() * millimetres_per_metre,
          origin.y - up.metres() * millimetres_per_metre};
}

ViewExtent extent_of(const Rig& rig, ViewKind kind) {
  constexpr double nowhere = std::numeric_limits<double>::infinity();
  ViewExtent extent{nowhere, -nowhere, nowhere, -nowhere};
  for (const Point& point : rig.points) {
    const PaperPoint at = ViewFrame{kind, 1.0, {}}.at(point.position);
    extent.left = std::min(extent.left, at.x);
    extent.right = std::max(extent.right, at.x);
    extent.top = std::min(extent.top, at.y);
    extent.bottom = std::max(extent.bottom, at.y);
  }
  if (kind != ViewKind::side) {
    extent.left = std::min(extent.left, 0.0);
    extent.right = std::max(extent.right, 0.0);
  }
  if (kind != ViewKind::deck) {
    extent.top = std::min(extent.top, 0.0);
    extent.bottom = std::max(extent.bottom, 0.0);
  }
  return extent;
}

bool near_each_other(PaperPoint a, PaperPoint b, double within) {
  return std::abs(a.x - b.x) <= within && std::abs(a.y - b.y) <= within;
}

std::string shown_name(const Stay& stay) {
  return stay.title.empty() ? stay.base : stay.title;
}

std::vector<DrawnStay> drawn_stays(const Rig& rig, const ViewFrame& frame) {
  std::vector<DrawnStay> drawn;
  for (const Stay& stay : rig.stays) {
    if (stay.path.size() < 2)
      continue;
    DrawnStay next{&stay, {}, false};
    for (const PathStop& stop : stay.path)
      next.path.push_back(frame.at(rig[stop.point].position));
    if (stay.side == Side::centre) { // has no twin
      drawn.push_back(std::move(next));
      continue;
    }
    const auto twin = std::find_if(drawn.begin(), drawn.end(), [&](const DrawnStay& other) {
      return other.stay->base == stay.base && other.stay->side != stay.side &&
             other.stay->material == stay.material && same_path(other.path, next.path);
    });
    if (twin == drawn.end())
      drawn.push_back(std::move(next));
    else
      twin->both_sides = true;
  }
  return drawn;
}

PaperPoint middle_of(const DrawnStay& stay) {
  return place_on_path(stay.path, 0.5);
}

PaperPoint label_site(const std::vector<DrawnStay>& stays, std::size_t index) {
  constexpr double clear_enough = 5.0;
  constexpr int samples = 32;
  const std::vector<PaperPoint>& path = stays[index].path;
  PaperPoint best = place_on_path(path, 0.5);
  double best_score = -std::numeric_limits<double>::infinity();
  for (int i = 3; i <= samples - 3; ++i) {
    const double share = static_cast<double>(i) / samples;
    const PaperPoint site = place_on_path(path, share);
    double clear = clear_enough;
    for (std::size_t other = 0; other < stays.size(); ++other)
      if (other != index)
        clear = std::min(clear, distance_to_path(site, stays[other].path));
    // Far from the middle counts a little, so that equal sites do not end in a corner.
    const double score = clear - 1.5 * std::abs(share - 0.5);
    if (score > best_score + 1e-9) {
      best_score = score;
      best = site;
    }
  }
  return best;
}

} // namespace sheerpole
