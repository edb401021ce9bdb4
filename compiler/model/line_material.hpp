#pragma once

#include "base/id.hpp"
#include "model/sourced.hpp"
#include "units/force.hpp"
#include "units/length.hpp"
#include "units/named_size.hpp"

#include <optional>
#include <string>

namespace sheerpole {

using MaterialId = Id<struct MaterialTag>;

/// What a stay is made of: a rope or a wire of one size.
struct LineMaterial {
  enum class Kind { rope, wire };
  Kind kind = Kind::rope;
  std::string name;
  std::string title;
  std::string construction; ///< `12-strand HMPE heat-set`, `1x19`
  std::string grade;        ///< `316 stainless`; may be empty
  NamedSize size;
  Sourced<Length> diameter;
  std::optional<Sourced<Force>> break_load;
  Span place;
};

} // namespace sheerpole
