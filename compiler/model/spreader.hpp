#pragma once

#include "model/field.hpp"
#include "model/particular.hpp"
#include "model/point.hpp"
#include "source/span.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// One spreader on one side, from its root on the mast to its tip.
struct Spreader {
  std::string name; ///< `upper-spreader.port`
  std::string title;
  Side side = Side::centre;
  PointId root;
  PointId tip;
  Span place;
  std::string hold = {};                    ///< fixed or swinging; empty when not stated
  std::vector<Particular> particulars = {}; ///< the rest of what is stated
};

constexpr auto fields_of(const Spreader*) {
  using enum FieldRole;
  return std::tuple(
      field("name", "", &Spreader::name, identity), field("title", "", &Spreader::title, identity),
      field("side", "sides", &Spreader::side, identity), field("root", "root", &Spreader::root, geometry),
      field("tip", "tip", &Spreader::tip, geometry), field("hold", "hold", &Spreader::hold, evidence),
      field("particulars", "", &Spreader::particulars, geometry),
      field("place", "", &Spreader::place, identity));
}
static_assert(all_members_are_listed<Spreader>());

} // namespace sheerpole
