#include "backend/drawing/drawing.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole {

namespace {

/// Moves shapes where they lie.
class Placing {
public:
  Placing(PaperPoint at, double scale) : at_(at), scale_(scale) {}

  void operator()(LineShape& line) const {
    move(line.from);
    move(line.to);
    rescale(line.style);
  }
  void operator()(PolylineShape& polyline) const { move_points(polyline); }
  void operator()(PolygonShape& polygon) const { move_points(polygon); }
  void operator()(CircleShape& circle) const {
    move(circle.centre);
    circle.radius *= scale_;
    rescale(circle.style);
  }
  void operator()(RectangleShape& rectangle) const {
    move(rectangle.box);
    rescale(rectangle.style);
  }
  void operator()(ModulesShape& modules) const {
    move(modules.corner);
    modules.module *= scale_;
  }
  void operator()(PictureShape& picture) const { move(picture.box); }
  void operator()(TextShape& text) const {
    move(text.at);
    text.size *= scale_;
  }
  void operator()(ShapeGroup& group) const {
    for (DrawnNode& child : group.children)
      std::visit(*this, child.content());
  }

private:
  PaperPoint at_;
  double scale_;

  void move(PaperPoint& point) const { point = {at_.x + point.x * scale_, at_.y + point.y * scale_}; }
  void move(PaperBox& box) const {
    box = {at_.x + box.left * scale_, at_.y + box.top * scale_, at_.x + box.right * scale_,
           at_.y + box.bottom * scale_};
  }
  void rescale(ShapeStyle& style) const {
    style.stroke_width *= scale_;
    for (double& dash : style.dashes)
      dash *= scale_;
  }
  template <class Shape>
  void move_points(Shape& shape) const {
    for (PaperPoint& point : shape.points)
      move(point);
    rescale(shape.style);
  }
};

} // namespace

double distance(PaperPoint a, PaperPoint b) {
  return std::hypot(a.x - b.x, a.y - b.y);
}

double distance_to_line(PaperPoint p, PaperPoint a, PaperPoint b) {
  const double dx = b.x - a.x;
  const double dy = b.y - a.y;
  const double square = dx * dx + dy * dy;
  const double t = square > 0 ? std::clamp(((p.x - a.x) * dx + (p.y - a.y) * dy) / square, 0.0, 1.0) : 0.0;
  return distance(p, {a.x + t * dx, a.y + t * dy});
}

PaperPoint place_on_path(const std::vector<PaperPoint>& path, double share) {
  double length = 0.0;
  for (std::size_t i = 0; i + 1 < path.size(); ++i)
    length += distance(path[i], path[i + 1]);
  double left = share * length;
  for (std::size_t i = 0; i + 1 < path.size(); ++i) {
    const double piece = distance(path[i], path[i + 1]);
    if (left <= piece && piece > 0) {
      const double t = left / piece;
      return {path[i].x + t * (path[i + 1].x - path[i].x), path[i].y + t * (path[i + 1].y - path[i].y)};
    }
    left -= piece;
  }
  return path.back();
}

ShapeGroup placed(const ShapeGroup& group, PaperPoint at, double scale) {
  ShapeGroup moved = group;
  Placing(at, scale)(moved);
  return moved;
}

} // namespace sheerpole
