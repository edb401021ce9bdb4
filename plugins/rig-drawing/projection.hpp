#pragma once

#include "backend/drawing/drawing.hpp"
#include "model/rig.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace sheerpole::rig_drawing {

/// From where the rig is seen. First-angle projection (ISO 128-3:2022, from memory): what is seen from the
/// left stands on the right, what is seen from above stands below.
enum class View {
  profile, ///< from starboard: bow to the right, up is up
  astern,  ///< looking forward: starboard to the right, up is up
  plan     ///< from above: bow to the right, starboard down
};

std::string_view name_of(View view);

/// One view on the sheet.
struct Projection {
  View view = View::profile;
  double millimetres_per_metre = 10.0;
  PaperPoint origin; ///< where the boat's axes meet

  PaperPoint at(const Vector3& place) const;
  PaperPoint at(double x_metres, double y_metres, double z_metres) const;
};

/// Metres to the right and down from the origin.
struct Extent {
  double left = 0.0, right = 0.0, top = 0.0, bottom = 0.0;

  double width() const { return right - left; }
  double height() const { return bottom - top; }
  void add(const Projection& metre, const Vector3& place);
};

} // namespace sheerpole::rig_drawing
