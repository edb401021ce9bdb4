#include "kinds/property_row.hpp"

namespace sheerpole {

std::string_view describe(Category category) {
  switch (category) {
  case Category::boat:
    return "a boat";
  case Category::spar:
    return "a spar";
  case Category::eye_stack:
    return "a stack of eyes";
  case Category::changes:
    return "changes to a stack";
  case Category::state:
    return "a state";
  case Category::position:
    return "a position";
  case Category::layer:
    return "a layer";
  case Category::tape:
    return "a tape";
  case Category::cord:
    return "a cord";
  case Category::record:
    return "a record";
  case Category::limits:
    return "limits";
  case Category::rule:
    return "a rule";
  case Category::waiver:
    return "a waiver";
  case Category::inspection:
    return "an inspection";
  case Category::points:
    return "a block of points";
  case Category::spreader:
    return "a spreader";
  case Category::material:
    return "a rope, wire, rod or chain";
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
