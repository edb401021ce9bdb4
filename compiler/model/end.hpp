#pragma once

#include "model/field.hpp"
#include "model/kind_words.hpp"
#include "model/sourced.hpp"
#include "units/length.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// One dimension of an end.
struct EndDimension {
  EndDimensionName name = EndDimensionName::gap;
  Sourced<Length> length; ///< zero when the dimension is a text only
  std::string text; ///< the named size or word as written, for dimensions that are names: "5/8 in", "1x19"
};

constexpr auto fields_of(const EndDimension*) {
  using enum FieldRole;
  return std::tuple(field("name", "", &EndDimension::name, identity),
                    field("text", "", &EndDimension::text, geometry),
                    field("length", "", &EndDimension::length, geometry));
}
static_assert(all_members_are_listed<EndDimension>());

/// One end of a part: its type and what is known of it.
struct End {
  EndType type = EndType::unstated;
  std::vector<EndDimension> dimensions;
  std::optional<Span> place;

  bool stated() const { return type != EndType::unstated; }
  const EndDimension* find(EndDimensionName name) const {
    for (const EndDimension& dimension : dimensions)
      if (dimension.name == name)
        return &dimension;
    return nullptr;
  }
};

constexpr auto fields_of(const End*) {
  using enum FieldRole;
  return std::tuple(field("type", "", &End::type, geometry),
                    field("dimensions", "", &End::dimensions, geometry),
                    field("place", "", &End::place, identity));
}
static_assert(all_members_are_listed<End>());

} // namespace sheerpole
