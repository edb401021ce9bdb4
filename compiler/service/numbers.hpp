#pragma once

#include "kinds/property_row.hpp"
#include "service/open_boat.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole::service {

/// How a number is known, for a form that asks for it.
enum class NumberState {
  missing,      ///< nothing is stated, and a length waits for it
  not_measured, ///< a stay of which nothing was read in place
  assumed,
  stated, ///< without a source
  drawn,
  maker,
  standard,
  practice,
  computed,
  measured
};

/// The word of the language where there is one, else "missing", "not-measured", "stated".
std::string_view name_of(NumberState state);

/// A number that is stated or missing, with its place in the text.
struct NumberEntry {
  NumberState state = NumberState::stated;
  std::string of = {};              ///< `toggle-12`, `cap-shroud.port`; a `let` or a point by its name
  std::string property = {};        ///< `length`; empty for a `let` or a point
  const PropertyRow* row = nullptr; ///< what it may be; null where anything goes
  std::string written = {};         ///< as it stands; empty when it is missing
  std::string words = {};           ///< what is missing, in words; may be empty
  std::string mend = {};            ///< what to do about it; may be empty
  Span place = {};                  ///< the value; of a missing one what it is missing of
  /// Where a value is written: what stands there makes way, and `before` and `after` come around it.
  /// Nothing where a person has to say more than a value.
  std::optional<TextEdit> write = {};
  std::string before = {};
  std::string after = {};
  std::vector<std::string> pieces = {}; ///< of the missing and the assumed: which wait for it
};

/// The numbers of all files of a boat: what is missing first, stay by stay, then what is stated, in the
/// order of files and places.
std::vector<NumberEntry> numbers(const OpenBoat& boat);

} // namespace sheerpole::service
