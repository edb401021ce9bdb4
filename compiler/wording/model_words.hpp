#pragma once

#include "model/limits.hpp"
#include "model/part.hpp"
#include "model/provenance.hpp"
#include "model/records.hpp"
#include "units/force.hpp"

#include <string>
#include <string_view>

namespace sheerpole {

/// "measured"; "no source given" for unstated.
std::string_view name_of(SourceClass source_class);

/// "boat fitting", "fixed", "worn", "adjuster".
std::string_view name_of(Part::Role role);

/// What is said of a number beside its class: the note of the file, `certificate 1142`, or what a
/// calculation made it of, "from points". May be empty.
std::string note_words(const Provenance& provenance);

/// A force with where it is from: "18 kN (assumed, from the designer's sheet)".
std::string force_text(const Sourced<Force>& force);

/// A threshold as written in the file or in the table: "0.5 mm"; "off"; "none stated".
std::string limit_text(const Limits& limits, Limit limit);

/// A value stated over another, as every table has it.
struct DifferenceWords {
  std::string by;   ///< "layer fitted", "sister ship", "command line", "shop loft"
  std::string of;   ///< "plate-a.port"; "bench cards" for what a shop says of its papers
  std::string what; ///< "place"
  std::string was;  ///< as written; empty when nothing was stated
  std::string is;   ///< as written; of bench cards "inches, rounded to 1/32 in"
};
DifferenceWords words_of(const Difference& difference);

} // namespace sheerpole
