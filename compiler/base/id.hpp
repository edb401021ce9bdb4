#pragma once

#include <compare>
#include <cstddef>
#include <cstdint>

namespace sheerpole {

/// The place of one thing in a vector of its own kind. Two tags never mix.
template <class Tag>
struct Id {
  std::uint32_t value = 0;
  constexpr std::size_t index() const { return value; }
  friend constexpr auto operator<=>(Id, Id) = default;
};

} // namespace sheerpole
