#pragma once

#include "backend/drawing/drawing.hpp"
#include "backend/page/flow_table.hpp"
#include "backend/page/paper.hpp"
#include "backend/page/reflow.hpp"

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace sheerpole {

/// What stands on every page of a paper.
struct PageFrame {
  std::string name;  ///< of the paper: "Bench card"
  std::string about; ///< identity_words(): foot of the page, on the left
  /// Why nothing on it is final; one line each. Not empty: DRAFT across the top of every page.
  std::vector<std::string> draft;
  /// The paper says itself what it waits for: a hatched border round every sheet, and nothing across its
  /// top.
  bool hatched = false;
};

struct TextLook {
  double size = 3.5; ///< em, millimetres
  bool bold = false;
  double indent = 0.0; ///< millimetres
};

/// Sets texts, tables, boxes to tick and lines to write on one below the other, and goes on to a new page
/// where one is full. All text is measured (drawing/text_width.hpp): nothing is cut off, nothing overlaps.
/// Black on white. The heading of a table is repeated on each page that it goes on to; a row is
/// torn only when it is higher than a page.
class PageFlow {
public:
  PageFlow(PaperSize size, PageFrame frame);

  /// Keeps so much room below it on its page, so that it does not stand alone at the foot.
  /// `id`: a link of the document leads here.
  void heading(std::string_view text, double size = 5.0, double kept_below = 12.0, std::string id = {});
  void text(std::string_view text, TextLook look = {});
  /// A box to tick and what it is for.
  void tick(std::string_view text, TextLook look = {});
  /// Words and a line to write on behind them, to the margin.
  void to_write(std::string_view words, TextLook look = {});
  /// One line of a text that is laid out by blanks, in a face of fixed pitch, so that what stands under
  /// each other in the text does so here. It is not broken: the caller takes a size at which it fits.
  /// `begins`: a section begins with it.
  void fixed(std::string_view line, double size, bool begins = false);
  void table(const FlowTable& table);
  /// Height of its headings with the first row: what must not be torn from the words above a table.
  double head_height(const FlowTable& table) const;
  /// Words in a heavy frame across the page: what must not be missed.
  void notice(std::string_view text, TextLook look = {});
  /// A drawing of the caller's, this high, as wide as the page's inside; `left_top` is its corner.
  template <class Draw>
  void drawing(double height, Draw&& draw) {
    Drawing alone;
    alone.width = width();
    alone.height = height;
    draw(alone.content, PaperPoint{});
    std::vector<ReflowBlock> narrow;
    narrow.emplace_back(ReflowDrawing{std::move(alone)});
    place(height, draw, std::move(narrow), "Figure");
  }
  /// The same where the drawing is of words: `narrow` says them on a narrow screen.
  template <class Draw>
  void drawing(double height, Draw&& draw, std::vector<ReflowBlock> narrow) {
    place(height, draw, std::move(narrow), "P");
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
  /// The pages, with their numbers at the foot: 1 to the last of this flow, see number_pages(). Nothing
  /// may be added afterwards.
  std::vector<Drawing> pages(const std::string& title, const std::string& description);

private:
  void begin_page();
  double bottom() const;
  /// How much is drawn on this page, to be given to tag().
  std::size_t drawn() const { return page_.content.children.size(); }
  /// What was drawn since is one element of the structure of a PDF (ShapeGroup::tag).
  void tag(const char* name, std::size_t since);
  /// The same of a table: its rows are in it, the rules between them are not.
  void tag_table(std::size_t since);
  template <class Draw>
  void place(double height, Draw&& draw, std::vector<ReflowBlock> narrow, const char* name) {
    room_for(height);
    const std::size_t since = drawn();
    draw(page_.content, PaperPoint{page_margin, y_});
    // What the caller has tagged itself is not one figure.
    bool tagged = false;
    for (std::size_t i = since; i < drawn(); ++i)
      if (const auto* group = std::get_if<ShapeGroup>(&page_.content.children[i].content()))
        tagged = tagged || !group->tag.empty();
    if (!tagged)
      tag(name, since);
    y_ += height;
    for (ReflowBlock& block : narrow)
      reflow_.blocks.push_back(std::move(block));
  }
  void lines(const std::vector<std::string>& lines, double left, TextLook look, const char* name = "P");
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
  /// What of the column its text has, from its left edge.
  static double padding_before(const FlowTable& table, std::size_t column);
  static double padding_behind(const FlowTable& table, std::size_t column);
  void note(ReflowText::Kind kind, std::string_view text, const TextLook& look);
  /// Empty when no column has a heading.
  static std::vector<FlowCell> headings_of(const FlowTable& table);

  PaperExtent paper_;
  PageFrame frame_;
  std::vector<Drawing> done_;
  Drawing page_;
  std::vector<std::string> foot_; ///< lines of the foot, on the left
  Reflow reflow_;
  double y_ = 0.0;
  double page_top_ = 0.0; ///< below what stands at the head of every page
  bool fresh_ = true;     ///< nothing but the frame stands on this page
};

} // namespace sheerpole
