#include "plugins/rig-drawing/projection.hpp"

#include <algorithm>

namespace sheerpole::rig_drawing {

std::string_view name_of(View view) {
  return view == View::profile ? "profile" : view == View::astern ? "astern" : "plan";
}

PaperPoint Projection::at(double x, double y, double z) const {
  const double across = view == View::astern ? y : x;
  const double down = view == View::plan ? y : -z;
  return {origin.x + across * millimetres_per_metre, origin.y + down * millimetres_per_metre};
}

PaperPoint Projection::at(const Vector3& place) const {
  return at(place.x.metres(), place.y.metres(), place.z.metres());
}

void Extent::add(const Projection& metre, const Vector3& place) {
  const PaperPoint at = metre.at(place);
  left = std::min(left, at.x);
  right = std::max(right, at.x);
  top = std::min(top, at.y);
  bottom = std::max(bottom, at.y);
}

} // namespace sheerpole::rig_drawing
