#pragma once

#include "backend/drawing/drawing.hpp"
#include "backend/page/paper.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// What stands on every page of a paper.
struct PageFrame {
  std::string name;  ///< of the paper: "Bench card"
  std::string about; ///< boat, revision: foot of the page, on the left
  /// Why nothing on it is final; one line each. Not empty: DRAFT across the top of every page.
  std::vector<std::string> draft;
};

struct TextLook {
  double size = 3.5; ///< em, millimetres
  bool bold = false;
  double indent = 0.0; ///< millimetres
};

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
  bool tick = false; ///< a box to tick, before the text
  bool rule = false; ///< a line to write on, in place of a text
};

/// A box to tick, and a line to write on.
inline const FlowCell cell_to_tick{.text = {}, .tick = true};
inline const FlowCell cell_to_write{.text = {}, .rule = true};

struct FlowTable {
  std::vector<FlowColumn> columns;
  std::vector<std::vector<FlowCell>> rows = {};
  double size = 3.2; ///< em, millimetres
};

/// Sets texts, tables, boxes to tick and lines to write on one below the other, and goes on to a new page
/// where one is full. All text is measured (drawing/text_width.hpp): nothing is cut off, nothing overlaps.
/// Black on white. The heading of a table is repeated on each page that it goes on to; a row is
/// torn only when it is higher than a page.
class PageFlow {
public:
  PageFlow(PaperSize size, PageFrame frame);

  /// Keeps so much room below it on its page, so that it does not stand alone at the foot.
  void heading(std::string_view text, double size = 5.0, double kept_below = 12.0);
  void text(std::string_view text, TextLook look = {});
  /// A box to tick and what it is for.
  void tick(std::string_view text, TextLook look = {});
  /// Words and a line to write on behind them, to the margin.
  void to_write(std::string_view words, TextLook look = {});
  /// One line of a text that is laid out by blanks, in a face of fixed pitch, so that what stands under
  /// each other in the text does so here. It is not broken: the caller takes a size at which it fits.
  void fixed(std::string_view line, double size);
  void table(const FlowTable& table);
  /// Height of its headings with the first row: what must not be torn from the words above a table.
  double head_height(const FlowTable& table) const;
  /// Words in a heavy frame across the page: what must not be missed.
  void notice(std::string_view text, TextLook look = {});
  /// A drawing of the caller's, this high, as wide as the page's inside; `left_top` is its corner.
  template <class Draw>
  void drawing(double height, Draw&& draw) {
    room_for(height);
    draw(page_.content, PaperPoint{page_margin, y_});
    y_ += height;
  }
  void space(double millimetres);
  void rule();
  void new_page();
  /// Goes to a new page unless so much room is left.
  void room_for(double millimetres);

  /// Height between what stands on every page.
  double height() const { return bottom() - page_top_; }
  /// Width between the margins.
  double width() const { return paper_.width - 2.0 * page_margin; }
  /// The pages, with their numbers at the foot. Nothing may be added afterwards.
  std::vector<Drawing> pages(const std::string& title, const std::string& description);

private:
  void begin_page();
  double bottom() const;
  void lines(const std::vector<std::string>& lines, double left, TextLook look);
  /// A row with its texts broken into lines.
  struct SetRow {
    const std::vector<FlowCell>* cells = nullptr;
    std::vector<std::vector<std::string>> lines; ///< of each cell
    double height = 0.0;
    void measure(double size);
  };
  SetRow set_row(const FlowTable& table, const std::vector<FlowCell>& row) const;
  void draw_row(const FlowTable& table, const SetRow& row, bool heading);
  void draw_cell(const FlowTable& table, const SetRow& row, std::size_t column, double left);
  double column_width(const FlowTable& table, std::size_t column) const;
  /// Empty when no column has a heading.
  static std::vector<FlowCell> headings_of(const FlowTable& table);

  PaperExtent paper_;
  PageFrame frame_;
  std::vector<Drawing> done_;
  Drawing page_;
  std::vector<std::string> foot_; ///< lines of the foot, on the left
  double y_ = 0.0;
  double page_top_ = 0.0; ///< below what stands at the head of every page
  bool fresh_ = true;     ///< nothing but the frame stands on this page
};

} // namespace sheerpole
