#pragma once

#include <string>
#include <vector>

namespace sheerpole {

/// One column of a table: a share of the width of the page, and where its text stands.
struct FlowColumn {
  std::string heading;
  double share = 1.0; ///< of all shares of the table
  bool right = false; ///< numbers
};

/// One cell; several lines where its text is long.
struct FlowCell {
  std::string text;
  bool bold = false;
  bool tick = false;     ///< a box to tick, before the text
  bool rule = false;     ///< a line to write on, in place of a text
  std::string link = {}; ///< where its text leads to on a screen: "bench-cards.html"; empty: nowhere
};

/// A box to tick, and a line to write on.
inline const FlowCell cell_to_tick{.text = {}, .tick = true};
inline const FlowCell cell_to_write{.text = {}, .rule = true};

/// Between the texts of two columns of a card, which is read with wet hands: millimetres.
inline constexpr double card_gutter = 5.0;

struct FlowTable {
  std::vector<FlowColumn> columns;
  std::vector<std::vector<FlowCell>> rows = {};
  double size = 3.2;   ///< em, millimetres
  double gutter = 2.4; ///< between the texts of two columns, millimetres
};

} // namespace sheerpole
