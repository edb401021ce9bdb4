#pragma once

#include "model/field.hpp"
#include "model/particular.hpp"
#include "model/sourced.hpp"
#include "units/length.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

struct Boat {
  std::string title;
  std::string sister_of = {}; ///< title of the boat that this one is made from; may be empty
  std::vector<Particular> particulars = {};
  std::optional<Sourced<Length>> pair_tolerance;   ///< port and starboard within this are one cut
  std::optional<Sourced<Length>> remake_tolerance; ///< a piece that is off by no more is not made anew
  std::string report_date = {};                    ///< ISO 8601; may be empty
};

constexpr auto fields_of(const Boat*) {
  using enum FieldRole;
  return std::tuple(field("title", "", &Boat::title, identity),
                    field("sister_of", "", &Boat::sister_of, identity),
                    field("particulars", "", &Boat::particulars, evidence),
                    field("pair_tolerance", "", &Boat::pair_tolerance, geometry),
                    field("remake_tolerance", "", &Boat::remake_tolerance, geometry),
                    field("report_date", "", &Boat::report_date, evidence));
}
static_assert(all_members_are_listed<Boat>());

} // namespace sheerpole
