#include "backend/diagram/line_style.hpp"

namespace sheerpole {

ShapeStyle line_style(LineMaterial::Kind kind) {
  switch (kind) {
  case LineMaterial::Kind::rope:
    return {0.5, 0.0, {3.6, 1.2}, {}};
  case LineMaterial::Kind::chain:
    return {0.6, 0.0, {0.9, 0.7}, {}};
  case LineMaterial::Kind::rod:
    return {0.7, 0.0, {}, {}};
  case LineMaterial::Kind::wire:
    break;
  }
  return {0.4, 0.0, {}, {}};
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
