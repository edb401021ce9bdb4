#include "plugins/change-sheet/change_sheet.hpp"

#include "backend/boat_title.hpp"
#include "backend/change/change_blocks.hpp"
#include "backend/diagram/strip_drawings.hpp"
#include "backend/drawing/place_group.hpp"
#include "backend/drawing/svg_writer.hpp"
#include "backend/page/document_html.hpp"
#include "backend/page/document_pages.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

Document change_document(const BackendRequest& request) {
  Document document;
  document.title = "Change sheet of " + boat_title(request.checked);
  document.about = "From " + request.previous_name + " to " + request.name;
  if (!request.checked.draft_reasons().empty())
    document.draft = {"Lengths of the new rig rest on numbers that are assumed, tried out or missing."};
  document.blocks.emplace_back(DocumentNotice{
      "One stay at a time, and hold the mast by something else meanwhile. Measure a piece at its tension "
      "before a splice is opened or a terminal cut off: afterwards it can not be measured."});
  document.blocks.emplace_back(DocumentHeading{"What changes", 2, "changes"});
  add_change(*request.previous, request.checked, document);
  document.blocks.emplace_back(
      DocumentText{"Stays that are not named here stay as they are. It is taken that the old pieces were "
                   "made as the old "
                   "file says. Local codes and a licensed professional rigger come before this sheet.",
                   true});
  return document;
}

/// All changed stays below each other on one sheet.
Drawing change_drawing(const Document& document) {
  constexpr double margin = 10.0;
  Drawing sheet;
  sheet.width = 200.0;
  sheet.title = document.title;
  sheet.description = document.about;
  double y = margin;
  for (const DocumentBlock& block : document.blocks)
    if (const auto* figure = std::get_if<DocumentFigure>(&block)) {
      ShapeGroup strip = placed(figure->drawing.content, {margin, y}, 1.0);
      strip.id.clear(); // there are several of a word
      sheet.content.add(std::move(strip));
      y += figure->drawing.height + 6.0;
    }
  if (y == margin) {
    sheet.content.add(TextShape{
        {margin, y + 4.0}, "No stay has to be made or set otherwise.", 4.0, TextAnchor::start, false, ""});
    y += 8.0;
  }
  sheet.height = y + margin;
  return sheet;
}

} // namespace

BackendDescription ChangeSheet::describe() const {
  return {.name = "change-sheet",
          .summary = "against another rig: the stays that change, why, and what becomes of their lines",
          .outputs = {},
          .sometimes = {"change-sheet.txt", "change-sheet.json", "change-sheet.svg", "change-sheet.html"},
          .papers = {"change-sheet.pdf"}};
}

OutputBundle ChangeSheet::generate(const BackendRequest& request) const {
  if (request.previous == nullptr)
    return {};
  Document document = change_document(request);
  OutputBundle bundle;
  bundle.files.push_back({"change-sheet.txt", change_text(request)});
  bundle.files.push_back({"change-sheet.json", change_json(request)});
  bundle.files.push_back({"change-sheet.svg", write_svg(change_drawing(document))});
  bundle.files.push_back({"change-sheet.html", html_of_document(document, request.paper)});
  bundle.papers.push_back({"change-sheet.pdf", document.title, pages_of_document(document, request.paper)});
  return bundle;
}

} // namespace sheerpole
