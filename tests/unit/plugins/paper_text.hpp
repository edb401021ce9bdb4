#pragma once

#include "backend/backend.hpp"
#include "driver/built_in_backends.hpp"
#include "service/compile.hpp"
#include "source/file_reader.hpp"
#include "units/quantity_text.hpp"

#include <cmath>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace sheerpole::test {

/// The words that people read in marked-up text: without marks, without what a browser does not show, one
/// blank between words.
inline std::string words_of_markup(const std::string& bytes) {
  std::string text;
  for (std::size_t at = 0; at < bytes.size(); ++at) {
    if (bytes[at] != '<') {
      text += bytes[at];
      continue;
    }
    for (const char* hidden : {"style", "script"})
      if (bytes.compare(at + 1, std::char_traits<char>::length(hidden), hidden) == 0)
        at = std::min(bytes.find(std::string("</") + hidden, at), bytes.size());
    // What is set small within a line parts no words.
    const bool within = bytes.compare(at, 6, "<tspan") == 0 || bytes.compare(at, 7, "</tspan") == 0;
    at = std::min(bytes.find('>', at), bytes.size());
    if (!within)
      text += ' ';
  }
  for (const auto& [code, sign] :
       {std::pair{"&quot;", "\""}, {"&lt;", "<"}, {"&gt;", ">"}, {"&amp;", "&"}, {"&#39;", "'"}})
    for (std::size_t at = text.find(code); at != std::string::npos; at = text.find(code, at + 1))
      text.replace(at, std::char_traits<char>::length(code), sign);
  return text;
}

/// Markup in which fractions are set as the rest and long numbers have no blanks.
inline std::string plainly_set(std::string markup) {
  for (const char* span : {"<tspan", "</tspan"})
    for (std::size_t at = markup.find(span); at != std::string::npos; at = markup.find(span, at))
      markup.erase(at, markup.find('>', at) + 1 - at);
  return without_thin_blanks(std::move(markup));
}

inline std::string one_blank_between(const std::string& text) {
  std::string words;
  for (const char c : text) {
    const char sign = c == '\n' ? ' ' : c;
    if (sign != ' ' || words.empty() || words.back() != ' ')
      words += sign;
  }
  return words;
}

/// A file that a back end makes, as it is and as it is read.
struct PaperText {
  std::string name;
  std::string bytes;
  std::string words;
  bool for_programs() const {
    return name.ends_with(".csv") || name.ends_with(".json") || name.ends_with(".sarif");
  }
};

/// A page that is drawn.
struct PaperPage {
  std::string file;
  std::string title;
  std::string words;
  std::size_t boxes = 0; ///< to tick: square and as high as a line of text
};

inline void read_group(const ShapeGroup& group, PaperPage& page) {
  for (const DrawnNode& node : group.children) {
    if (const auto* inner = std::get_if<ShapeGroup>(&node.content()))
      read_group(*inner, page);
    else if (const auto* text = std::get_if<TextShape>(&node.content()))
      page.words += text->text + " ";
    else if (const auto* box = std::get_if<RectangleShape>(&node.content()))
      page.boxes += box->box.width() < 6.0 && std::abs(box->box.width() - box->box.height()) < 0.01 ? 1 : 0;
  }
}

inline std::vector<std::pair<std::string, OutputBundle>> bundles_of(const CheckedRig& checked) {
  std::vector<std::pair<std::string, OutputBundle>> all;
  for (const auto& backend : usual_backends())
    all.emplace_back(backend->describe().name, backend->generate({checked}));
  return all;
}

/// Every page of every paper that is drawn.
inline std::vector<PaperPage> pages_of(const CheckedRig& checked) {
  std::vector<PaperPage> pages;
  for (const auto& [name, bundle] : bundles_of(checked))
    for (const PagedFile& file : bundle.papers)
      for (const Drawing& drawing : file.pages) {
        PaperPage page{.file = file.name, .title = drawing.title, .words = {}};
        read_group(drawing.content, page);
        pages.push_back(std::move(page));
      }
  return pages;
}

/// Every file, and every paper that is drawn as if it were one.
inline std::vector<PaperText> papers_of(const CheckedRig& checked) {
  std::vector<PaperText> papers;
  for (const auto& [name, bundle] : bundles_of(checked)) {
    for (const OutputFile& file : bundle.files) {
      const bool marked = file.name.ends_with(".html") || file.name.ends_with(".svg");
      papers.push_back(
          {file.name, file.bytes, one_blank_between(marked ? words_of_markup(file.bytes) : file.bytes)});
    }
    for (const PagedFile& file : bundle.papers) {
      PaperPage all;
      for (const Drawing& drawing : file.pages)
        read_group(drawing.content, all);
      papers.push_back({file.name, "", one_blank_between(all.words)});
    }
  }
  return papers;
}

/// One of the examples with another text in place of its own file.
inline Compilation example_as(const std::string& name, const std::string& text) {
  class OtherText final : public FileReader {
  public:
    OtherText(std::string path, const std::string& text) : path_(std::move(path)), text_(text) {}
    Result<std::string, Failure> read(const std::string& path, std::size_t limit) override {
      if (path == path_)
        return text_;
      return disk_.read(path, limit);
    }

  private:
    DiskFileReader disk_;
    std::string path_;
    const std::string& text_;
  };
  const std::string path = std::string(SHEERPOLE_EXAMPLES_DIR) + "/" + name + ".rig";
  OtherText reader(path, text);
  return compile(path, reader);
}

} // namespace sheerpole::test
