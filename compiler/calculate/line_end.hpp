#pragma once

#include "model/rig.hpp"

#include <string_view>

namespace sheerpole {

/// Which end of a line in the stack.
enum class Where { aloft, below };

constexpr std::string_view name_of(Where where) {
  return where == Where::aloft ? "aloft" : "below";
}

/// What one end of a line is made fast to: the neighbour in the stack. Both pointers are null when the line
/// ends bare.
struct LineEnd {
  Where where = Where::aloft;
  const StackItem* item = nullptr;
  const Part* part = nullptr;

  bool bare() const { return part == nullptr; }
  /// The end of the part that has this type and takes the line: the one that faces it, else the other one,
  /// because a part may be used either way round. Null when neither has the type.
  const End* of_type(std::string_view type) const;
};

/// The end of the line at stack[line] that lies in the direction `where`.
LineEnd line_end(const Rig& rig, const Stay& stay, std::size_t line, Where where);

} // namespace sheerpole
