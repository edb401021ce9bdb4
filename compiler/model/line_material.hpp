#pragma once

#include "model/construction.hpp"
#include "model/field.hpp"
#include "model/ids.hpp"
#include "model/particular.hpp"
#include "model/sourced.hpp"
#include "units/force.hpp"
#include "units/length.hpp"
#include "units/named_size.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// What a stay is made of: a rope, wire, rod or chain of one size.
struct LineMaterial {
  enum class Kind { rope, wire, rod, chain };
  Kind kind = Kind::rope;
  std::string name;
  std::string title;
  Construction construction; ///< `12-strand HMPE heat-set`, `1x19`
  std::string grade;         ///< `316 stainless`; may be empty
  NamedSize size;
  Sourced<Length> diameter;
  std::optional<Sourced<Force>> break_load;
  std::vector<Particular> particulars = {}; ///< the rest of what is stated
  Span place;
};

constexpr auto fields_of(const LineMaterial*) {
  using enum FieldRole;
  return std::tuple(field("name", "", &LineMaterial::name, identity),
                    field("title", "", &LineMaterial::title, identity),
                    field("kind", "", &LineMaterial::kind, identity),
                    field("construction", "construction", &LineMaterial::construction, geometry),
                    field("grade", "grade", &LineMaterial::grade, evidence),
                    field("size", "size", &LineMaterial::size, geometry),
                    field("diameter", "diameter", &LineMaterial::diameter, geometry),
                    field("break_load", "break-load", &LineMaterial::break_load, evidence),
                    field("particulars", "", &LineMaterial::particulars, geometry),
                    field("place", "", &LineMaterial::place, identity));
}
static_assert(all_members_are_listed<LineMaterial>());

constexpr std::string_view name_of(LineMaterial::Kind kind) {
  switch (kind) {
  case LineMaterial::Kind::rope:
    return "rope";
  case LineMaterial::Kind::wire:
    return "wire";
  case LineMaterial::Kind::rod:
    return "rod";
  case LineMaterial::Kind::chain:
    return "chain";
  }
  return "line";
}

} // namespace sheerpole
