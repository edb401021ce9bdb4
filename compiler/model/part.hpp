#pragma once

#include "model/end.hpp"
#include "model/field.hpp"
#include "model/ids.hpp"
#include "model/kind_words.hpp"
#include "model/particular.hpp"
#include "model/sourced.hpp"
#include "units/length.hpp"
#include "units/thread.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// The screw of an adjuster.
struct Screw {
  Thread thread;
  bool pair = true; ///< a right- and a left-handed thread that work together: one turn moves two pitches
  Provenance provenance;
};

constexpr auto fields_of(const Screw*) {
  using enum FieldRole;
  return std::tuple(field("thread", "", &Screw::thread, geometry),
                    field("pair", "screw", &Screw::pair, geometry),
                    field("provenance", "", &Screw::provenance, identity));
}
static_assert(all_members_are_listed<Screw>());

/// A piece of hardware as the parts library describes it; a stack may use it many times.
struct Part {
  enum class Role {
    boat_fitting, ///< tang, chainplate: belongs to the boat; pin-to-pin begins or ends at its pin
    fixed,        ///< has one length
    worn,         ///< sits on the line or in a joint; adds no length
    adjuster      ///< has a range and is set
  };
  PartKind kind = PartKind::link;
  std::string name;
  std::string title;
  Role role = Role::fixed;
  std::optional<Sourced<Length>> length;              ///< fixed
  std::optional<Sourced<Length>> shortest;            ///< adjuster, screwed in or hauled tight
  std::optional<Sourced<Length>> longest;             ///< adjuster, at the last thread that may be used
  std::optional<Sourced<Length>> step = std::nullopt; ///< hole-adjuster: from hole to hole
  std::optional<Screw> screw;
  std::optional<Sourced<Length>> engaged_at_longest; ///< thread left in the body, each stud, at `longest`
  End upper;
  End lower;
  std::optional<Sourced<Length>> wrap;      ///< rope that a test wrap used beyond the bearing
  std::vector<Particular> particulars = {}; ///< the rest of what is stated
  Span place;

  /// The end that takes the rope or the wire, whichever way round the part is used: a rope-seat, a
  /// wire-socket.
  const End* line_end(EndType type) const {
    return upper.type == type ? &upper : lower.type == type ? &lower : nullptr;
  }
};

constexpr auto fields_of(const Part*) {
  using enum FieldRole;
  return std::tuple(
      field("kind", "", &Part::kind, identity), field("name", "", &Part::name, identity),
      field("title", "", &Part::title, identity), field("role", "", &Part::role, identity),
      field("length", "length", &Part::length, geometry),
      field("shortest", "shortest", &Part::shortest, geometry),
      field("longest", "longest", &Part::longest, geometry), field("step", "step", &Part::step, geometry),
      field("screw", "thread", &Part::screw, geometry),
      field("engaged_at_longest", "engaged-at-longest", &Part::engaged_at_longest, geometry),
      field("wrap", "wrap", &Part::wrap, geometry), field("upper", "upper", &Part::upper, geometry),
      field("lower", "lower", &Part::lower, geometry),
      field("particulars", "", &Part::particulars, geometry), field("place", "", &Part::place, identity));
}
static_assert(all_members_are_listed<Part>());

} // namespace sheerpole
