#include "rules/splice_checks.hpp"

#include <array>

namespace sheerpole {

namespace {

constexpr std::array<CheckRow, 0> rows{};

} // namespace

std::span<const CheckRow> splice_checks() {
  return rows;
}

} // namespace sheerpole
