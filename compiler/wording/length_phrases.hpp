#pragma once

#include "calculate/adjust/account.hpp"
#include "calculate/behaviour/behaviour_phrase.hpp"
#include "calculate/bench/bench_marks.hpp"
#include "calculate/bench/hoisted_fit.hpp"
#include "calculate/change/line_fate.hpp"
#include "calculate/cut/cut_phrase.hpp"
#include "calculate/length/length_sum.hpp"
#include "calculate/reading/reading_length.hpp"

#include <string_view>

namespace sheerpole {

// The phrases of lengths and of what follows from them, one table a subject. `{}` stands for each argument
// in turn, `{0}`, `{1}` for one by its place.

std::string_view words(ReadingPhrase phrase);
std::string_view words(LengthPhrase phrase);
std::string_view words(CutPhrase phrase);
std::string_view words(BenchPhrase phrase);
std::string_view words(HangPhrase phrase);
std::string_view words(AdjusterPhrase phrase);
std::string_view words(BehaviourPhrase phrase);
std::string_view words(ChangePhrase phrase);

} // namespace sheerpole
