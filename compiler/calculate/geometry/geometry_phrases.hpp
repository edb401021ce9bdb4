#pragma once

#include "model/remark.hpp"

#include <cstdint>

namespace sheerpole {

/// What the calculations of geometry have to say; in English in wording/geometry_words.cpp.
enum class GeometryPhrase : std::uint16_t {
  against_spar,
  against_nearest_spar,
  against_upright,
  stays_to_one_side,
  no_other_stay,
  too_many_stays,
  ends_in_one_line
};

constexpr PhraseSubject subject_of(GeometryPhrase) {
  return PhraseSubject::geometry;
}

} // namespace sheerpole
