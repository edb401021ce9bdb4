#pragma once

#include "model/field.hpp"
#include "model/remark.hpp"
#include "source/span.hpp"
#include "units/parse_quantity.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// Where a number is from. `unstated` is a number whose source the file does not name.
enum class SourceClass { measured, drawn, maker, standard, practice, assumed, computed, unstated };

/// The word of the language: "measured"; empty for unstated, which has none.
std::string_view word_of(SourceClass source_class);

/// What a number was made of by a calculation.
enum class Derivation : std::uint16_t {
  from_points,
  no_number_yet,
  mark_on,
  on_cord,
  on_cord_at_one_knot,
  on_cord_at_knots,
  with_mark,
  each,
  from_seat,
  hookes_law,
  modulus_times_area,
  of_method_with_headsails,
  as_shop_delivers,
  // Of a test splice: when and by whom, and what it gave.
  test_splice,
  test_splice_on,
  test_splice_by,
  test_splice_on_by,
  shortened_over,
  set_to,
  share_through_junction ///< the share and the stay whose load it is
};
constexpr PhraseSubject subject_of(Derivation) {
  return PhraseSubject::derivation;
}

/// How a number is known.
struct Provenance {
  SourceClass source_class = SourceClass::unstated;
  std::string note; ///< `certificate 1142`; for a number that the file computes, what from
  std::string
      written; ///< the value as written in the file: `7 3/8 in`, `27 d`; empty when nothing was written
  LengthUnit written_in = LengthUnit::none; ///< of a sum the largest of those in it
  std::optional<Span> place;
  /// Names of the assumed values that a computed number rests on. For an assumed number itself: one entry.
  std::vector<std::string> assumptions;
  /// What a calculation made the number of, an enumerator of Derivation with what fills it in; it names
  /// nothing by an id, since it goes with the number into comparisons of two rigs. Empty for all that the
  /// file says.
  Remark derivation = {};
};

constexpr auto fields_of(const Provenance*) {
  using enum FieldRole;
  return std::tuple(field("source_class", "", &Provenance::source_class, evidence),
                    field("note", "", &Provenance::note, evidence),
                    field("written", "", &Provenance::written, evidence),
                    field("written_in", "", &Provenance::written_in, evidence),
                    field("place", "", &Provenance::place, identity),
                    field("assumptions", "", &Provenance::assumptions, evidence),
                    field("derivation", "", &Provenance::derivation, evidence));
}
static_assert(all_members_are_listed<Provenance>());

} // namespace sheerpole
