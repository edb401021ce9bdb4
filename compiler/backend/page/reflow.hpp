#pragma once

#include "backend/drawing/drawing.hpp"
#include "backend/page/flow_table.hpp"

#include <string>
#include <variant>
#include <vector>

namespace sheerpole {

// What stands on the pages of a paper, in its order and without their measures: a narrow screen shows it
// in place of the drawn pages, which would be too small to read there.

struct ReflowText {
  enum class Kind { heading, text, notice, tick, to_write };
  Kind kind = Kind::text;
  std::string text;
  bool bold = false;
};

struct ReflowDrawing {
  Drawing drawing;
};

struct ReflowRule {};

using ReflowBlock = std::variant<ReflowText, FlowTable, ReflowDrawing, ReflowRule>;

struct Reflow {
  std::vector<ReflowBlock> blocks;
  std::string foot; ///< what the foot of each page says
};

} // namespace sheerpole
