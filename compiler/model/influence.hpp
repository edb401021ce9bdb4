#pragma once

#include "model/field.hpp"
#include "model/ids.hpp"
#include "source/span.hpp"
#include "units/dimension.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// One `± …` of the file: an input whose true value is known to lie within the bound, and no better. What
/// the file states once is one input however often its value is used; each coordinate of a point is one.
struct StatedBound {
  std::string name;    ///< "length of toggle-12", "x of the place of plate-a"
  double bound = 0.0;  ///< not negative; coherent SI unit of `dimension`
  Dimension dimension; ///< a difference of temperatures for a temperature
  Span place;          ///< the `± …`
};

constexpr auto fields_of(const StatedBound*) {
  using enum FieldRole;
  return std::tuple(field("name", "", &StatedBound::name, identity),
                    field("bound", "", &StatedBound::bound, geometry),
                    field("dimension", "", &StatedBound::dimension, identity),
                    field("place", "", &StatedBound::place, identity));
}
static_assert(all_members_are_listed<StatedBound>());

/// How a value follows one stated bound: by how much it moves, in its own coherent SI unit, when that input
/// is off by its whole bound upwards. Linear in the bound; what is stated once moves together.
struct Influence {
  BoundId bound;
  double amount = 0.0;
};

using Influences = std::vector<Influence>;

} // namespace sheerpole
