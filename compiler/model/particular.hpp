#pragma once

#include "model/field.hpp"
#include "model/sourced.hpp"
#include "units/dimension.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// One fact that is kept as written: a particular of the boat, the mass of a part, the batch of a rope.
struct Particular {
  std::string name;
  Sourced<Quantity> value;                    ///< zero when it is a text, a word, a date or a name
  std::string text;                           ///< as written
  std::vector<Sourced<Quantity>> values = {}; ///< of a list of quantities: each
  std::vector<std::string> names = {};        ///< of a name or a list of names: each, with its side
};

constexpr auto fields_of(const Particular*) {
  using enum FieldRole;
  return std::tuple(
      field("name", "", &Particular::name, identity), field("text", "", &Particular::text, geometry),
      field("value", "", &Particular::value, geometry), field("values", "", &Particular::values, geometry),
      field("names", "", &Particular::names, geometry));
}
static_assert(all_members_are_listed<Particular>());

/// The fact of this name; null when it is not stated.
inline const Particular* find_fact(const std::vector<Particular>& facts, std::string_view name) {
  for (const Particular& fact : facts)
    if (fact.name == name)
      return &fact;
  return nullptr;
}

} // namespace sheerpole
