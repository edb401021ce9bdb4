#pragma once

#include "model/rig.hpp"
#include "model/stated.hpp"
#include "model/trade_words.hpp"
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

/// What a fact says of how something is held, locked or kept apart, and where.
struct StatedFact {
  Stated how; ///< unstated when the fact is not there, or says nothing
  std::optional<Span> place = {};
  std::optional<OddText> odd = {}; ///< of what secures or locks: a text in no word of the trade
};
StatedFact stated_fact(const std::vector<Particular>& facts, std::string_view name);

/// Reports how `what` is held; that nothing does is the finding. A text in no word of the trade is not
/// checked; that it is odd is another check.
void report_stated(const StatedFact& held, const Remark& what, const Remark& not_stated,
                   DiagnosticBuilder&& finding, StayReport& report);
/// Where a fact is stated; nothing when it is not.
std::optional<Span> place_of(const std::vector<Particular>& facts, std::string_view name);

/// Reports a finding unless the stay has one with the same words: two like things are named once.
void find_once(StayReport& report, DiagnosticBuilder&& builder);

} // namespace sheerpole
