#pragma once

#include "calculate/adjust/account.hpp"
#include "calculate/behaviour/behaviour_phrase.hpp"
#include "calculate/bench/bench_marks.hpp"
#include "calculate/bench/hoisted_fit.hpp"
#include "calculate/change/line_fate.hpp"
#include "calculate/cut/cut_phrase.hpp"
#include "calculate/length/length_sum.hpp"
#include "calculate/reading/reading_length.hpp"
#include "model/remark.hpp"

#include <string_view>

namespace sheerpole {

/// Why a number may not be cut to yet, and what to do about it.
enum class DraftPhrase : std::uint16_t {
  is_assumed,
  measure_it,
  measure_or_rule,
  is_missing,
  the_length_x,
  set_on_command_line,
  write_it_down,
  nothing_read_in_place,
  read_it_in_place,
  readings_contradict,
  say_which,
  measured_once,
  measure_again,
  ways_differ,
  find_out_which,
  in_hand_short,
  take_another_piece,
};

constexpr PhraseSubject subject_of(DraftPhrase) {
  return PhraseSubject::draft;
}

std::string_view words(DraftPhrase phrase);

// The phrases of lengths and of what follows from them, one table a subject. `{}` stands for each argument
// in turn, `{0}`, `{1}` for one by its place.

std::string_view words(Derivation derivation);
std::string_view words(ReadingPhrase phrase);
std::string_view words(LengthPhrase phrase);
std::string_view words(CutPhrase phrase);
std::string_view words(BenchPhrase phrase);
std::string_view words(HangPhrase phrase);
std::string_view words(AdjusterPhrase phrase);
std::string_view words(BehaviourPhrase phrase);
std::string_view words(ChangePhrase phrase);

} // namespace sheerpole
