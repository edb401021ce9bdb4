#pragma once

#include "model/field.hpp"
#include "source/span.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// Where a number is from. `unstated` is a number whose source the file does not name.
enum class SourceClass { measured, drawn, maker, standard, practice, assumed, computed, unstated };

/// The word of the language: "measured"; "no source given" for unstated.
std::string_view name_of(SourceClass source_class);

/// How a number is known.
struct Provenance {
  SourceClass source_class = SourceClass::unstated;
  std::string note; ///< `certificate 1142`, or for a computed number what it was computed from
  std::string
      written; ///< the value as written in the file: `7 3/8 in`, `27 d`; empty when nothing was written
  std::optional<Span> place;
  /// Names of the assumed values that a computed number rests on. For an assumed number itself: one entry.
  std::vector<std::string> assumptions;
};

constexpr auto fields_of(const Provenance*) {
  using enum FieldRole;
  return std::tuple(field("source_class", "", &Provenance::source_class, evidence),
                    field("note", "", &Provenance::note, evidence),
                    field("written", "", &Provenance::written, evidence),
                    field("place", "", &Provenance::place, identity),
                    field("assumptions", "", &Provenance::assumptions, evidence));
}
static_assert(all_members_are_listed<Provenance>());

} // namespace sheerpole
