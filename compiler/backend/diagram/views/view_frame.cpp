#include "backend/diagram/views/view_frame.hpp"

#include <algorithm>
#include <limits>

namespace sheerpole {

std::string_view name_of(ViewKind kind) {
  switch (kind) {
  case ViewKind::side:
    return "side";
  case ViewKind::front:
    return "front";
  case ViewKind::deck:
    return "deck";
  }
  return "side";
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

} // namespace sheerpole
