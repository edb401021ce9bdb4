#pragma once

#include "backend/backend.hpp"

#include <string>
#include <vector>

namespace sheerpole::rig_drawing {

/// A sheet of ISO 216, lying on its long side but for A4; frame and margins of ISO 5457:1999 (20 mm on the
/// left, 10 mm elsewhere), title block of ISO 7200:2004 (180 mm, in the lower right corner); from memory of
/// the standards.
struct SheetSize {
  std::string name; ///< "A3"
  double width = 420.0, height = 297.0;

  PaperBox frame() const { return {20.0, 10.0, width - 10.0, height - 10.0}; }
};
const std::vector<SheetSize>& sheet_sizes();
/// With nothing to view, tables and title block fill the frame of an upright A4, the only size that ISO
/// 5457:1999 has upright (from memory).
const SheetSize& upright_sheet();

inline constexpr double title_block_width = 180.0;
inline constexpr double title_block_height = 56.0;

/// Frame, centring marks and the foot of all papers, in the margin below.
void draw_frame(const SheetSize& size, const CheckedRig& checked, Drawing& sheet);

/// `scale` is the denominator; 0: no view.
void draw_title_block(const SheetSize& size, const CheckedRig& checked, double scale, ShapeGroup& into);

/// On top of the title block what became of the design since: each layer that the file states with its day,
/// by whom, its note and how many values it states over others, then the revision that is drawn. Nothing
/// where the file states neither.
double revisions_height(const CheckedRig& checked);
void draw_revisions(const SheetSize& size, const CheckedRig& checked, ShapeGroup& into);

/// A table with a rule under each row, heading bold; texts are wrapped, and broken where they
/// have a line feed. `widths` add up to its width.
/// Returns the y below it.
struct DrawnTable {
  std::vector<std::string> headings; ///< empty: none
  std::vector<double> widths;
  std::vector<std::vector<std::string>> rows;
  std::vector<bool> bold = {};  ///< of the columns; empty: none
  std::vector<bool> right = {}; ///< set to the right edge
};
double table_height(const DrawnTable& table);
double draw_table(const DrawnTable& table, PaperPoint at, const std::string& id, ShapeGroup& into);

/// Texts one below the other, numbered from 1; returns the y below.
double notes_height(const std::vector<std::string>& notes, double width);
double draw_notes(const std::vector<std::string>& notes, PaperPoint at, double width, ShapeGroup& into);

} // namespace sheerpole::rig_drawing
