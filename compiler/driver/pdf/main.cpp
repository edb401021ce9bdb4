// sheerpole-pdf: pages as SVG on standard input, PDFs on standard output. A program of its own, so that the
// libraries that draw (cairo, pango, fontconfig) are loaded when a PDF is asked for and at no other time.
//
// Input, in this order, each head on a line of its own:
//   sheerpole-pdf 4
//   face NAME                      once a face that must be there; texts that name none are in the first
//   document TITLE                 once a PDF
//   date 2026-11-01T00:00:00Z      of the document, or `date` alone
//   page WIDTH-MM HEIGHT-MM BYTES  followed by that many bytes of SVG and a newline; once a page
// A group of a page whose class is an element of the structure of a PDF (H1, P, Table, TR, TD, Figure ...)
// is one there; headings are bookmarks. Output, once a document: `missing CODE-POINT PAGE` for each sign
// that no font has, in hexadecimal digits and with the first page on which it stands, each on a line of its
// own; then `pdf BYTES`, a newline, that many bytes and a newline.
//
// The fonts are those of pdf/paper_fonts.cpp below /usr/share/fonts, or below the folder that is given as
// the one argument. Nothing else is read: no other file, no environment, no clock. The same input gives the
// same bytes with the same libraries and fonts.
#include "driver/pdf/finish_pdf.hpp"
#include "driver/pdf/page_painter.hpp"

#include <cairo-pdf.h>

#include <algorithm>
#include <charconv>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <iterator>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace {

constexpr double points_per_millimetre = 72.0 / 25.4;
constexpr std::size_t most_bytes = std::size_t{256} << 20U;

int fail(const std::string& what) {
  std::fputs(("sheerpole-pdf: " + what + "\n").c_str(), stderr);
  return 1;
}

/// What is left of the input.
class Input {
public:
  explicit Input(std::string_view text) : rest_(text) {}
  bool at_end() const { return rest_.empty(); }
  /// The words behind `head` on the next line; nothing when the line begins otherwise.
  std::optional<std::string_view> line(std::string_view head) {
    const std::size_t end = rest_.find('\n');
    if (end == std::string_view::npos || !rest_.starts_with(head))
      return std::nullopt;
    std::string_view words = rest_.substr(head.size(), end - head.size());
    if (!words.empty() && words.front() != ' ')
      return std::nullopt;
    if (!words.empty())
      words.remove_prefix(1);
    rest_.remove_prefix(end + 1);
    return words;
  }
  bool next_is(std::string_view head) const { return rest_.starts_with(head); }
  /// So many bytes and the newline behind them.
  std::optional<std::string_view> bytes(std::size_t count) {
    if (count >= rest_.size() || rest_[count] != '\n')
      return std::nullopt;
    const std::string_view taken = rest_.substr(0, count);
    rest_.remove_prefix(count + 1);
    return taken;
  }

private:
  std::string_view rest_;
};

struct Page {
  double width = 0.0; ///< millimetres
  double height = 0.0;
  std::size_t bytes = 0;
};

std::optional<Page> read_page(std::string_view words) {
  Page page;
  const char* at = words.data();
  const char* const end = at + words.size();
  const auto number = [&](auto& value) {
    while (at != end && *at == ' ')
      ++at;
    const auto [next, error] = std::from_chars(at, end, value);
    at = next;
    return error == std::errc{};
  };
  const bool read = number(page.width) && number(page.height) && number(page.bytes) && at == end;
  const bool sensible = page.width > 0 && page.width <= 5000 && page.height > 0 && page.height <= 5000;
  return read && sensible ? std::optional(page) : std::nullopt;
}

cairo_status_t append(void* closure, const unsigned char* data, unsigned int length) {
  static_cast<std::string*>(closure)->append(reinterpret_cast<const char*>(data), length);
  return CAIRO_STATUS_SUCCESS;
}

struct Drawn {
  std::string pdf;
  std::map<char32_t, std::size_t> missing; ///< signs without a glyph, and the first page of each
  std::optional<std::string> fault;
};

constexpr const char* whole = "Document"; ///< the element that holds all others

/// Draws one page; what went wrong, or nothing.
std::optional<std::string> draw(cairo_surface_t* surface, const Page& page, std::size_t number,
                                sheerpole::PagePainter& painter) {
  cairo_pdf_surface_set_size(surface, page.width * points_per_millimetre,
                             page.height * points_per_millimetre);
  cairo_t* context = cairo_create(surface);
  if (number == 1)
    cairo_tag_begin(context, whole, nullptr);
  cairo_scale(context, points_per_millimetre, points_per_millimetre);
  auto fault = painter.paint(context, number);
  if (number == painter.pages())
    cairo_tag_end(context, whole);
  cairo_show_page(context);
  if (const cairo_status_t status = cairo_status(context); !fault && status != CAIRO_STATUS_SUCCESS)
    fault = cairo_status_to_string(status);
  cairo_destroy(context);
  return fault;
}

/// Each below the last one that is less deep.
void add_bookmarks(cairo_surface_t* surface, const std::vector<sheerpole::Bookmark>& bookmarks) {
  std::vector<std::pair<int, int>> above; // level, and what cairo calls it
  for (const sheerpole::Bookmark& one : bookmarks) {
    while (!above.empty() && above.back().first >= one.level)
      above.pop_back();
    const double y = std::max(0.0, one.y) * points_per_millimetre;
    const std::string place =
        "page=" + std::to_string(one.page) + " pos=[0 " + std::to_string(static_cast<long>(y)) + "]";
    const int id = cairo_pdf_surface_add_outline(
        surface, above.empty() ? CAIRO_PDF_OUTLINE_ROOT : above.back().second, one.words.c_str(),
        place.c_str(),
        above.empty() ? CAIRO_PDF_OUTLINE_FLAG_OPEN : static_cast<cairo_pdf_outline_flags_t>(0));
    above.emplace_back(one.level, id);
  }
}

/// The pages up to the next document, read before any is drawn.
std::optional<std::string> take_pages(Input& input, sheerpole::PagePainter& painter,
                                      std::vector<Page>& pages) {
  while (!input.at_end() && !input.next_is("document")) {
    const auto words = input.line("page");
    const auto page = words ? read_page(*words) : std::nullopt;
    const auto svg = page ? input.bytes(page->bytes) : std::nullopt;
    if (!svg)
      return "a page is not as it should be";
    if (auto fault = painter.take(*svg))
      return fault;
    pages.push_back(*page);
  }
  return std::nullopt;
}

/// The pages up to the next document.
Drawn draw_document(const std::string& title, const std::string& date, Input& input,
                    sheerpole::TextPainter& texts) {
  Drawn result;
  sheerpole::PagePainter painter(texts);
  std::vector<Page> pages;
  result.fault = take_pages(input, painter, pages);
  if (result.fault)
    return result;
  cairo_surface_t* surface = cairo_pdf_surface_create_for_stream(append, &result.pdf, 595, 842);
  cairo_pdf_surface_restrict_to_version(surface, CAIRO_PDF_VERSION_1_5);
  cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_TITLE, title.c_str());
  cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_CREATOR, "Sheerpole");
  // Without a date cairo asks the clock.
  cairo_pdf_surface_set_metadata(surface, CAIRO_PDF_METADATA_CREATE_DATE,
                                 date.empty() ? "1970-01-01T00:00:00Z" : date.c_str());
  for (std::size_t i = 0; i < pages.size() && !result.fault; ++i) {
    result.fault = draw(surface, pages[i], i + 1, painter);
    for (const char32_t sign : texts.take_missing())
      result.missing.try_emplace(sign, i + 1);
  }
  if (!result.fault)
    add_bookmarks(surface, painter.bookmarks());
  cairo_surface_finish(surface);
  if (const cairo_status_t status = cairo_surface_status(surface);
      !result.fault && status != CAIRO_STATUS_SUCCESS)
    result.fault = cairo_status_to_string(status);
  cairo_surface_destroy(surface);
  if (!result.fault)
    result.fault = sheerpole::finish_pdf(result.pdf, "en", painter.figures());
  return result;
}

bool put(const std::string& text) {
  return std::fwrite(text.data(), 1, text.size(), stdout) == text.size();
}

/// The lines and the bytes of one document.
std::string answer(const Drawn& drawn) {
  std::string words;
  for (const auto& [sign, page] : drawn.missing) {
    char digits[8];
    const auto end =
        std::to_chars(std::begin(digits), std::end(digits), static_cast<std::uint32_t>(sign), 16);
    words += "missing " + std::string(digits, end.ptr) + " " + std::to_string(page) + "\n";
  }
  return words + "pdf " + std::to_string(drawn.pdf.size()) + "\n" + drawn.pdf + "\n";
}

int run(std::string_view text, sheerpole::PaperFonts& fonts) {
  Input input(text);
  if (const auto version = input.line("sheerpole-pdf"); !version || *version != "4")
    return fail("the input is not of version 4");
  std::vector<std::string> faces;
  while (const auto face = input.line("face")) {
    faces.emplace_back(*face);
    if (fonts.file(faces.back(), false).empty() || fonts.file(faces.back(), true).empty())
      return fail("the face " + sheerpole::face_and_package(faces.back()) + " is not installed");
  }
  if (faces.empty())
    return fail("a face is wanted");
  sheerpole::TextPainter texts(std::move(faces), fonts);
  while (!input.at_end()) {
    const auto title = input.line("document");
    const auto date = title ? input.line("date") : std::nullopt;
    if (!date)
      return fail("document and date are wanted, in this order");
    const Drawn drawn = draw_document(std::string(*title), std::string(*date), input, texts);
    if (drawn.fault)
      return fail(*drawn.fault);
    if (!put(answer(drawn)))
      return fail("cannot write the PDF");
  }
  return std::fflush(stdout) == 0 ? 0 : fail("cannot write the PDF");
}

} // namespace

#ifdef __SANITIZE_ADDRESS__
// fontconfig and pango keep what they have read until the process ends; a look for leaks would report it.
extern "C" const char* __asan_default_options();
extern "C" const char* __asan_default_options() {
  return "detect_leaks=0";
}
#endif

int main(int argument_count, char** arguments) {
  if (argument_count > 2)
    return fail("there is one argument at most: the folder of the fonts");
  // Libraries look for settings there: the language of texts, where fonts are, how they are drawn.
  clearenv();
  sheerpole::PaperFonts fonts(argument_count == 2 ? arguments[1] : "/usr/share/fonts");
  std::string text;
  char buffer[1 << 16];
  for (std::size_t got = 0; (got = std::fread(buffer, 1, sizeof buffer, stdin)) > 0;) {
    text.append(buffer, got);
    if (text.size() > most_bytes)
      return fail("the input is too large");
  }
  return run(text, fonts);
}
