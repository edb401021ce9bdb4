#include "backend/drawing/drawing.hpp"

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

ShapeGroup placed(const ShapeGroup& group, PaperPoint at, double scale) {
  return std::get<ShapeGroup>(Placing(at, scale)(group).content);
}

} // namespace sheerpole
