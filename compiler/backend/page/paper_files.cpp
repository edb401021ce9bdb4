#include "backend/page/paper_files.hpp"

#include "backend/drawing/label_text.hpp"
#include "backend/page/foot.hpp"
#include "backend/page/html.hpp"
#include "base/code_point.hpp"
#include "wording/papers/papers_words.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole {

namespace {

/// Wider lines than this go on below, so that the rest can still be read.
constexpr std::size_t most_columns = 130;
constexpr double largest_size = 3.2;

/// What stands together: no empty line in it.
using Block = std::vector<std::string>;

bool is_rule(std::string_view line) {
  return line.size() >= TextPage::width && line.find_first_not_of('=') == std::string_view::npos;
}

/// The line in pieces of at most `most_columns`.
std::vector<std::string> broken(std::string_view line) {
  std::vector<std::string> pieces;
  while (screen_columns(line) > most_columns) {
    std::size_t bytes = 0;
    for (std::size_t columns = 0;;) {
      const CodePoint next = first_code_point(line.substr(bytes));
      if (columns + next.columns > most_columns)
        break;
      columns += next.columns;
      bytes += next.bytes;
    }
    pieces.emplace_back(line.substr(0, bytes));
    line.remove_prefix(bytes);
  }
  pieces.emplace_back(line);
  return pieces;
}

/// Sections of blocks; a section that begins with a rule has it as the first line of its first block.
std::vector<std::vector<Block>> sections_of(std::string_view text) {
  std::vector<std::vector<Block>> sections(1);
  bool apart = true;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find('\n'), text.size());
    const std::string_view line = text.substr(0, end);
    text.remove_prefix(std::min(end + 1, text.size()));
    if (is_rule(line) && apart && !sections.back().empty())
      sections.emplace_back();
    if (line.empty()) {
      apart = true;
      continue;
    }
    if (apart)
      sections.back().emplace_back();
    apart = false;
    for (std::string& piece : broken(line))
      sections.back().back().push_back(std::move(piece));
  }
  return sections;
}

std::size_t widest(const std::vector<std::vector<Block>>& sections) {
  std::size_t columns = TextPage::width;
  for (const std::vector<Block>& section : sections)
    for (const Block& block : section)
      for (const std::string& line : block)
        columns = std::max(columns, screen_columns(line));
  return columns;
}

} // namespace

PagedFile text_paper(const TextPaper& paper, std::string_view text, PaperSize paper_size) {
  PageFrame frame{.name = paper.name, .about = paper.about, .draft = {}};
  if (!paper.draft.empty())
    frame.draft.push_back(paper.draft);
  PageFlow page(paper_size, std::move(frame));
  const std::vector<std::vector<Block>> sections = sections_of(text);
  const double size =
      std::min(largest_size, page.width() / (fixed_pitch_in_ems * static_cast<double>(widest(sections))));
  const double step = size * line_spacing;
  // An empty line on paper may be lower than on a screen.
  const double gap = step * 0.7;
  const auto height = [&](const Block& block) { return step * static_cast<double>(block.size()) + gap; };
  for (const std::vector<Block>& section : sections) {
    double all = 0.0;
    for (const Block& block : section)
      all += height(block);
    if (all <= page.height())
      page.room_for(all);
    for (std::size_t i = 0; i < section.size(); ++i) {
      const Block& block = section[i];
      // A block of one or two lines is the head of the next.
      double kept = height(block);
      if (block.size() <= 2 && i + 1 < section.size())
        kept += std::min(height(section[i + 1]), 4.0 * step);
      if (kept <= page.height())
        page.room_for(kept);
      for (std::size_t l = 0; l < block.size(); ++l)
        if (is_rule(block[l]))
          page.rule();
        else
          page.fixed(block[l], size, i == 0 && l == 1 && is_rule(block[0]));
      page.space(gap);
    }
  }
  const std::string title =
      say(PapersPhrase::of, paper.name, (paper.boat.empty() ? paper.about : paper.boat));
  return {paper.file, title, page.pages(title, say(PapersPhrase::text_file_this_name_as))};
}

PagedFile text_paper_of_lengths(TextPaper paper, std::string_view text, const BackendRequest& request) {
  std::vector<std::string> waiting;
  if (request.fleet.empty())
    waiting.push_back(waiting_words(request.checked));
  for (const FleetRig& rig : request.fleet)
    waiting.push_back(led_by(boat_title(*rig.checked) + ": ", waiting_words(*rig.checked)));
  if (std::any_of(waiting.begin(), waiting.end(), [](const std::string& words) { return !words.empty(); }))
    paper.draft = joined(waiting, "; ");
  return text_paper(paper, text, request.paper);
}

void begin_text(const std::string& name, const CheckedRig& checked, TextPage& page) {
  const std::string& boat = checked.rig().boat.title;
  page.ends(name + "   " +
                (boat.empty() ? say(PapersPhrase::boat_without_name_word) : boat_and_revision(checked)),
            checked.draft_reasons().empty() ? "" : say(PapersPhrase::draft));
  page.rule('=');
  page.blank();
}

std::string with_foot(const std::string& text, const std::string& about) {
  TextPage foot;
  foot.rule('-');
  foot.wrapped("", about);
  return text + foot.text();
}

BackendDescription PagesBackend::describe() const {
  return {.name = about_.name,
          .summary = about_.summary,
          .outputs = {about_.file + ".html"},
          .papers = {about_.file + ".pdf"}};
}

OutputBundle PagesBackend::generate(const BackendRequest& request) const {
  const std::string boat = boat_title(request.checked);
  const std::string title = say(PapersPhrase::of, about_.title, boat);
  OutputBundle bundle;
  add_pages(about_.file, title, pages(request, boat), bundle);
  return bundle;
}

void add_pages(const std::string& name, const std::string& title, std::vector<Drawing> pages,
               OutputBundle& bundle) {
  number_pages(pages);
  bundle.files.push_back({name + ".html", html_of_pages(title, pages)});
  bundle.papers.push_back({name + ".pdf", title, std::move(pages)});
}

void add_document(const std::string& name, const Document& document, const BackendRequest& request,
                  OutputBundle& bundle) {
  bundle.files.push_back({name + ".html", html_of_document(document, request.paper)});
  if (request.printed) // its pages are not those of the file
    bundle.papers.push_back({name + ".pdf", document.title, pages_of_document(document, request.paper)});
}

} // namespace sheerpole
