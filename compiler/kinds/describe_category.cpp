#include "kinds/property_row.hpp"

namespace sheerpole {

std::string_view describe(Category category) {
  switch (category) {
  case Category::boat:
    return "a boat";
  case Category::points:
    return "a block of points";
  case Category::spreader:
    return "a spreader";
  case Category::material:
    return "a rope or a wire";
  case Category::splice:
    return "a splice";
  case Category::part:
    return "a part";
  case Category::stay:
    return "a stay";
  case Category::stack:
    return "a stack";
  case Category::reading:
    return "a reading";
  case Category::point:
    return "a point";
  case Category::none:
    break;
  }
  return "a name";
}

} // namespace sheerpole
