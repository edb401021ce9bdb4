#include "backend/page/document.hpp"

#include "backend/drawing/drawing.hpp"
#include "backend/page/page_flow.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

/// Share of the width that the words of a list of facts get.
constexpr double facts_share = 0.3;
constexpr double kept_below_heading = 35.0;
/// Between the edges of a page and its inside stand margins and the foot.
constexpr double foot_room = 14.0;
/// Of a picture, millimetres.
constexpr double widest_picture = 150.0;
constexpr double highest_picture = 98.0;

class PageWriter {
public:
  PageWriter(const Document& document, PaperSize paper)
      : page_(paper, {.name = document.name.empty() ? document.title : document.name,
                      .about = document.foot,
                      .draft = document.draft}),
        height_(paper_of(paper).height - 2.0 * page_margin - foot_room) {}

  void operator()(const DocumentHeading& heading) {
    constexpr double level_two = 5.0;
    constexpr double deeper = 4.0;
    if (heading.level == 2)
      page_.space(3.0);
    page_.heading(heading.text, heading.level == 2 ? level_two : deeper, kept_below_heading, heading.id);
  }
  void operator()(const DocumentText& text) {
    page_.text(text.text, {.size = text.small ? 2.8 : 3.3});
    page_.space(1.0);
  }
  void operator()(const DocumentNotice& notice) { page_.notice(notice.text, {.size = 3.4, .bold = true}); }
  void operator()(const DocumentFacts& facts) {
    FlowTable table{.columns = {{"", facts_share}, {"", 1.0 - facts_share}}, .size = 3.1};
    for (const auto& [words, value] : facts.rows)
      table.rows.push_back({{.text = words, .bold = true}, {.text = value, .rule = value.empty()}});
    page_.table(table);
  }
  void operator()(const DocumentTable& stated) {
    FlowTable table{.columns = {}, .size = 2.7};
    for (const DocumentColumn& column : stated.columns)
      table.columns.push_back({column.heading, column.share, column.right});
    for (const std::vector<std::string>& row : stated.rows) {
      std::vector<FlowCell> cells;
      cells.reserve(row.size());
      for (const std::string& cell : row)
        cells.push_back({.text = cell});
      table.rows.push_back(std::move(cells));
    }
    page_.room_for(8.0 + (table.rows.empty() ? 0.0 : page_.head_height(table)));
    page_.text(stated.caption, {.size = 3.1, .bold = true});
    if (!table.rows.empty())
      page_.table(table);
    for (const std::string& note : stated.notes)
      page_.text(note, {.size = 2.7});
    page_.space(2.0);
  }
  void operator()(const DocumentFigure& figure) {
    const Drawing& drawing = figure.drawing;
    const double scale = std::min({1.0, page_.width() / drawing.width, height_ / drawing.height});
    page_.drawing(drawing.height * scale, [&](ShapeGroup& group, PaperPoint at) {
      ShapeGroup shown = placed(drawing.content, at, scale);
      if (shown.title.empty()) { // said for it where it cannot be seen
        shown.title = drawing.title;
        shown.description = drawing.description;
      }
      group.add(std::move(shown));
    });
    if (!figure.caption.empty())
      page_.text(figure.caption, {.size = 2.8});
    page_.space(2.0);
  }
  void operator()(const DocumentPicture& picture) {
    // Two to a page where they are upright, and none wider than what shows a strand.
    const double scale = std::min(widest_picture / picture.width, highest_picture / picture.height);
    const double high = picture.height * scale;
    page_.room_for(high + 12.0);
    page_.drawing(high, [&](ShapeGroup& group, PaperPoint at) {
      ShapeGroup shown;
      shown.title = picture.words;
      shown.add(PictureShape{
          {at.x, at.y, at.x + picture.width * scale, at.y + high}, picture.bytes, picture.jpeg});
      group.add(std::move(shown));
    });
    page_.space(1.0);
    page_.text(picture.caption, {.size = 2.8});
    page_.space(3.0);
  }
  void operator()(const DocumentToWrite& lines) {
    for (const std::string& words : lines.words)
      page_.to_write(words, {.size = 3.3});
    page_.space(2.0);
  }

  PageFlow page_;

private:
  double height_; ///< of the inside of a page
};

} // namespace

std::vector<Drawing> pages_of_document(const Document& document, PaperSize paper) {
  PageWriter writer(document, paper);
  writer.page_.text(document.title, {.size = 7.0, .bold = true});
  writer.page_.space(2.0);
  for (const DocumentBlock& block : document.blocks)
    std::visit(writer, block);
  return writer.page_.pages(document.title, document.about);
}

} // namespace sheerpole
