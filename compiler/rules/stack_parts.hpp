#pragma once

#include "model/rig.hpp"
#include "rules/by_side.hpp"

#include <cstddef>
#include <optional>
#include <string_view>
#include <vector>

namespace sheerpole {

/// A part where it stands in a stack.
struct StackPart {
  std::size_t item = 0; ///< in the stack
  const Part* part = nullptr;
};

/// Each part of a stack once, where it stands first, from aloft to deck.
std::vector<StackPart> parts_of(const Rig& rig, const Stay& stay);

/// The word by which a text says that there is nothing of it.
inline bool says_none(std::string_view text) {
  return text == "none";
}

/// Where a fact is stated; nothing when it is not.
std::optional<Span> place_of(const std::vector<Particular>& facts, std::string_view name);

/// Reports a finding unless the stay has one with the same words: two like things are named once.
void find_once(StayReport& report, DiagnosticBuilder&& builder);

} // namespace sheerpole
