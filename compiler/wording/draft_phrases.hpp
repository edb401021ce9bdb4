#pragma once

#include "model/remark.hpp"

#include <string_view>

namespace sheerpole {

/// Why a number may not be cut to yet, and what to do about it.
enum class DraftPhrase : std::uint16_t {
  is_assumed,
  measure_it,
  is_missing,
  the_length_x,
  set_on_command_line,
  write_it_down,
  in_hand_short,
  take_another_piece,
};

constexpr PhraseSubject subject_of(DraftPhrase) {
  return PhraseSubject::draft;
}

std::string_view words(DraftPhrase phrase);

} // namespace sheerpole
