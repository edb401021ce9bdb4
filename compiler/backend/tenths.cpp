#include "backend/tenths.hpp"

#include "units/format_length.hpp"

#include <fmt/format.h>

#include <charconv>
#include <cstdlib>

namespace sheerpole {

Tenths Tenths::of(Length length) {
  // By way of the written number: the two must not disagree about a half.
  std::string text = format_millimetres(length, 1);
  text.erase(text.find('.'), 1);
  Tenths tenths;
  std::from_chars(text.data(), text.data() + text.size(), tenths.count);
  return tenths;
}

std::string format_tenths(Tenths tenths) {
  const std::int64_t size = tenths.count < 0 ? -tenths.count : tenths.count;
  return fmt::format("{}{}.{}", tenths.count < 0 ? "-" : "", size / 10, size % 10);
}

std::string format_signed(Tenths tenths) {
  return (tenths.count < 0 ? "" : "+") + format_tenths(tenths);
}

std::string format_tenths(Length length) {
  return format_tenths(Tenths::of(length));
}

std::string format_signed(Length length) {
  return format_signed(Tenths::of(length));
}

std::string with_x(bool unknown, std::int64_t amount, const std::string& size, std::string_view x) {
  if (!unknown)
    return (amount < 0 ? "-" : "") + size;
  if (amount == 0)
    return std::string(x);
  return fmt::format("{} {} {}", x, amount < 0 ? "-" : "+", size);
}

std::string format_total(bool unknown, Tenths total, std::string_view x) {
  return with_x(unknown, total.count, format_tenths(Tenths{std::abs(total.count)}), x);
}

std::string x_of_stay(std::string_view stay) {
  return fmt::format("X({})", stay);
}

std::string format_turns(Length travel, const std::optional<Length>& travel_per_turn) {
  if (!travel_per_turn || *travel_per_turn == Length{})
    return {};
  return format_fixed(travel / *travel_per_turn, 1);
}

} // namespace sheerpole
