#pragma once

#include "model/field.hpp"
#include "model/kind_words.hpp"
#include "model/particular.hpp"
#include "model/point.hpp"
#include "source/span.hpp"

#include <array>
#include <string>
#include <vector>

namespace sheerpole {

/// A mast, bowsprit, boomkin or gaff. Points on it are stated in its frame: boat axes moved to its heel and
/// turned with it.
struct Spar {
  std::string name;
  std::string title;
  SparSort sort = SparSort::unstated;
  Vector3 heel;
  std::array<std::array<double, 3>, 3> axes{}; ///< unit vectors of its frame in boat axes: x, y, z
  Provenance provenance;                       ///< of its place and lean together
  std::vector<Particular> particulars = {};
  Span place;
};

constexpr auto fields_of(const Spar*) {
  using enum FieldRole;
  return std::tuple(
      field("name", "", &Spar::name, identity), field("title", "", &Spar::title, identity),
      field("sort", "sort", &Spar::sort, geometry), field("heel", "heel", &Spar::heel, geometry),
      field("axes", "axis", &Spar::axes, geometry), field("provenance", "", &Spar::provenance, identity),
      field("particulars", "", &Spar::particulars, geometry), field("place", "", &Spar::place, identity));
}
static_assert(all_members_are_listed<Spar>());

} // namespace sheerpole
