#pragma once

#include "units/force.hpp"
#include "units/length.hpp"

#include <cstddef>
#include <string>
#include <string_view>

namespace sheerpole {

/// So many decimals at the most and no idle zeros: "57.15", "9".
std::string trimmed_number(double value, int decimals);

/// The blank inside a long number: thin, and no line is broken there (U+202F).
inline constexpr std::string_view thin_blank = "\u202f";

/// A number for people: a whole part of five figures and more in threes, "12\u202f817", "-12\u202f817.5";
/// one of four as it is. Source: the SI Brochure, 9th edition, 5.4.4 (a thin space, no commas; with four
/// figures customarily none). The number is what the text begins with, behind a minus; the rest is kept.
std::string in_threes(std::string_view number);

/// The text without those blanks, for what is read back by a program.
std::string without_thin_blanks(std::string text);

/// A length inside a sentence: millimetres with two decimals at most, "57.15 mm", "9 mm".
std::string length_text(Length length);

/// A share inside a sentence, one decimal at most: "50 %", "33.3 %".
std::string percent_text(double share);

/// A share of a tension inside a sentence, three decimals: "0.080".
std::string share_text(double share);

/// A ratio inside a sentence, two decimals: "1.57".
std::string times_text(double ratio);

/// A force inside a sentence: whole newtons below 1 kN, else kilonewtons with two decimals at most, "12.3
/// kN".
std::string force_text(Force force);

/// An angle inside a sentence: degrees with one decimal at most, "9.7 deg", "12 deg".
std::string angle_text(double radians);

/// Whether the blank at `blank` stands inside a quantity, so that no line is broken there: "12 mm", "39
/// 1/2", "3' 6 1/8\"", "X - 609.7", "X(forestay) + 1.2 m", "24.3 ± 0.2".
bool blank_in_quantity(std::string_view text, std::size_t blank);

/// A temperature inside a sentence, whole degrees: "-10 degC".
std::string temperature_text(double kelvin);

} // namespace sheerpole
