#include "backend/drawing/drawing.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole {

namespace {

class Placing {
public:
  Placing(PaperPoint at, double scale) : at_(at), scale_(scale) {}

  DrawnNode operator()(LineShape line) const {
    move(line.from);
    move(line.to);
    rescale(line.style);
    return {std::move(line)};
  }
  DrawnNode operator()(PolylineShape polyline) const { return of_points(std::move(polyline)); }
  DrawnNode operator()(PolygonShape polygon) const { return of_points(std::move(polygon)); }
  DrawnNode operator()(CircleShape circle) const {
    move(circle.centre);
    circle.radius *= scale_;
    rescale(circle.style);
    return {std::move(circle)};
  }
  DrawnNode operator()(RectangleShape rectangle) const {
    PaperBox& box = rectangle.box;
    box = {at_.x + box.left * scale_, at_.y + box.top * scale_, at_.x + box.right * scale_,
           at_.y + box.bottom * scale_};
    rescale(rectangle.style);
    return {std::move(rectangle)};
  }
  DrawnNode operator()(ModulesShape modules) const {
    move(modules.corner);
    modules.module *= scale_;
    return {std::move(modules)};
  }
  DrawnNode operator()(PictureShape picture) const {
    PaperBox& box = picture.box;
    box = {at_.x + box.left * scale_, at_.y + box.top * scale_, at_.x + box.right * scale_,
           at_.y + box.bottom * scale_};
    return {std::move(picture)};
  }
  DrawnNode operator()(TextShape text) const {
    move(text.at);
    text.size *= scale_;
    return {std::move(text)};
  }
  DrawnNode operator()(ShapeGroup group) const {
    for (DrawnNode& child : group.children)
      child = std::visit(*this, std::move(child.content));
    return {std::move(group)};
  }

private:
  PaperPoint at_;
  double scale_;

  void move(PaperPoint& point) const { point = {at_.x + point.x * scale_, at_.y + point.y * scale_}; }
  void rescale(ShapeStyle& style) const {
    style.stroke_width *= scale_;
    for (double& dash : style.dashes)
      dash *= scale_;
  }
  template <class Shape>
  DrawnNode of_points(Shape shape) const {
    for (PaperPoint& point : shape.points)
      move(point);
    rescale(shape.style);
    return {std::move(shape)};
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
  return std::get<ShapeGroup>(Placing(at, scale)(group).content);
}

} // namespace sheerpole
