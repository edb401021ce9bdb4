#pragma once

#include <cstddef>
#include <string>
#include <vector>

namespace sheerpole {

struct Column {
  std::string heading;
  bool right = false;    ///< numbers stand to the right
  std::string unit = {}; ///< of its numbers, where the heading does not end in it
  bool plus_x = false;   ///< lengths in mm that may be X and so much more, as format_total() writes them
};

/// A cell with a length to which nobody may cut yet. Whoever reads the table has `shown` in its place;
/// programs have the number, with the state of its piece in the same row.
struct HeldCell {
  std::size_t row = 0;
  std::size_t column = 0;
  std::string shown = {};
};

/// Rows of finished text, before any output form.
struct Table {
  std::string title;
  std::vector<Column> columns;
  std::vector<std::vector<std::string>> rows = {}; ///< each as long as `columns`
  std::vector<std::string> notes = {};             ///< lines below the table
  std::vector<HeldCell> held = {};                 ///< of the rows as they are
};

/// Title, headings with a rule under them, rows, notes. Columns are padded with blanks by the screen
/// columns that their signs take; no trailing blanks. A cell must not hold a line end. Held cells are not
/// shown.
std::string render_text(const Table& table);

/// RFC 4180: CRLF, fields quoted when they hold a comma, a quote or a line end; headings first. A text that
/// a spreadsheet would take for a formula has an apostrophe before it; a number never has. Title and notes
/// are not part of it.
std::string render_csv(const Table& table);

} // namespace sheerpole
