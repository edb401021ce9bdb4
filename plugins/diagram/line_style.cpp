#include "plugins/diagram/line_style.hpp"

namespace sheerpole {

ShapeStyle line_style(LineMaterial::Kind kind) {
  if (kind == LineMaterial::Kind::wire)
    return {0.4, 0.0, {}, {}};
  return {0.5, 0.0, {3.6, 1.2}, {}};
}

ShapeStyle reference_line_style() {
  return {0.13, 0.25, {5.0, 1.0, 0.4, 1.0}, {}};
}

ShapeStyle spreader_style() {
  return {1.0, 0.55, {}, {}};
}

CircleShape point_mark(PaperPoint at, std::string id) {
  return {at, 0.55, {0.0, 0.0, {}, 0.0}, std::move(id)};
}

} // namespace sheerpole
