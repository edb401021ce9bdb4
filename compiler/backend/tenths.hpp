#pragma once

#include "calculate/derived.hpp"
#include "units/length.hpp"

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace sheerpole {

/// A length as it is printed: whole tenths of a millimetre, so that printed rows add up to the printed
/// total.
struct Tenths {
  std::int64_t count = 0;

  /// Rounds half away from zero, as format_millimetres() does.
  static Tenths of(Length length);
  Length length() const { return Length::millimetres(static_cast<double>(count) / 10.0); }

  Tenths& operator+=(Tenths other) {
    count += other.count;
    return *this;
  }
  friend Tenths operator+(Tenths a, Tenths b) { return {a.count + b.count}; }
  friend Tenths operator-(Tenths a, Tenths b) { return {a.count - b.count}; }
  friend auto operator<=>(Tenths, Tenths) = default;
};

/// Millimetres with one decimal: "11641.7", "-16.0", "0.0".
std::string format_tenths(Tenths tenths);

/// The same with its sign, as a row of a sum: "+11641.7", "-16.0".
std::string format_signed(Tenths tenths);

/// The same of a length that is rounded here.
std::string format_tenths(Length length);
std::string format_signed(Length length);

/// An amount that may have to be added to a length X that nobody has measured yet: "12.3", "-4.0"; with an
/// unknown X "X", "X + 12.3", "X - 4.0". `size` is its text without a sign, `amount` says its sign; `x` is
/// how the paper calls X.
std::string with_x(bool unknown, std::int64_t amount, const std::string& size, std::string_view x = "X");

/// "11641.7"; with an unknown length "X", "X + 12.3", "X - 4.0".
std::string format_total(bool unknown, Tenths total, std::string_view x = "X");

/// How a paper of several stays calls the X of one of them, as each stay has its own: "X(cap-shroud.port)".
std::string x_of_stay(std::string_view stay);

/// Turns of the adjuster's screw for this travel, rounded to 0.1: "11.8". Empty for an adjuster without a
/// screw.
std::string format_turns(Length travel, const std::optional<Length>& travel_per_turn);

} // namespace sheerpole
