#include "backend/page/foot.hpp"

#include "backend/drawing/label_text.hpp"
#include "wording/papers/papers_words.hpp"

namespace sheerpole {

namespace {

constexpr std::string_view number_id = "page-number";
/// Room for "page 000 of 000", in ems.
constexpr double number_width = 13.5;

std::string number_words(std::size_t number, std::size_t of) {
  return say(PapersPhrase::page_of, number, of);
}

} // namespace

std::vector<std::string> foot_lines(std::string_view words, double width, double size) {
  // A page names its face, so that the set width counts and not that of a wide one.
  return wrap_label(words, size, (width - number_width * size) * wide_face_allowance, false);
}

double foot_height(std::size_t lines, double size) {
  return size * line_spacing * static_cast<double>(lines);
}

void add_foot(const std::vector<std::string>& lines, double margin, Drawing& page, double size) {
  const ShapeStyle thin{.stroke_width = 0.2, .stroke_grey = 0.0, .dashes = {}, .fill_grey = {}};
  const double base = page.height - margin - 0.25 * size;
  const double top = base - foot_height(lines.size(), size);
  page.content.add(LineShape{{margin, top}, {page.width - margin, top}, thin, ""});
  for (std::size_t line = 0; line < lines.size(); ++line)
    page.content.add(TextShape{{margin, base - foot_height(lines.size() - 1 - line, size)},
                               lines[line],
                               size,
                               TextAnchor::start,
                               false,
                               ""});
  page.content.add(TextShape{{page.width - margin, base},
                             number_words(1, 1),
                             size,
                             TextAnchor::end,
                             false,
                             std::string(number_id)});
}

void number_pages(std::vector<Drawing>& pages) {
  for (std::size_t i = 0; i < pages.size(); ++i)
    for (DrawnNode& node : pages[i].content.children)
      if (auto* text = std::get_if<TextShape>(&node.content()); text != nullptr && text->id == number_id)
        text->text = number_words(i + 1, pages.size());
}

} // namespace sheerpole
