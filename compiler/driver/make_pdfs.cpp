#include "driver/make_pdfs.hpp"

#include "backend/drawing/svg_writer.hpp"
#include "driver/process/run_program.hpp"
#include "units/format_length.hpp"

#include <unistd.h>

#include <array>
#include <charconv>
#include <optional>
#include <string_view>
#include <utility>

namespace sheerpole {

namespace {

/// Faces whose metrics are those by which pages are measured (backend/drawing/text_width.hpp); the first is
/// that of every text that names none.
constexpr std::array<std::string_view, 2> faces = {"Liberation Sans", "Liberation Mono"};

/// The title on one line.
std::string one_line(std::string text) {
  for (char& c : text)
    if (static_cast<unsigned char>(c) < 0x20)
      c = ' ';
  return text;
}

std::string input_of(const std::vector<PagedFile>& papers, const std::string& date) {
  std::string input = "sheerpole-pdf 2\n";
  for (const std::string_view face : faces)
    input += "face " + std::string(face) + "\n";
  for (const PagedFile& paper : papers) {
    input += "document " + one_line(paper.title) + "\ndate" +
             (date.empty() ? "" : " " + date + "T00:00:00Z") + "\n";
    for (const Drawing& page : paper.pages) {
      const std::string svg = write_svg(page);
      input += "page " + format_number(page.width) + " " + format_number(page.height) + " " +
               std::to_string(svg.size()) + "\n" + svg + "\n";
    }
  }
  return input;
}

/// The program beside this one; empty when the system does not say where this one is.
std::string program() {
  std::array<char, 4096> path{};
  const ssize_t length = readlink("/proc/self/exe", path.data(), path.size());
  if (length <= 0 || static_cast<std::size_t>(length) == path.size())
    return {};
  const std::string here(path.data(), static_cast<std::size_t>(length));
  return here.substr(0, here.rfind('/') + 1) + "sheerpole-pdf";
}

/// The next of the PDFs in what the program wrote.
std::optional<std::string> next_pdf(std::string_view& rest) {
  constexpr std::string_view head = "pdf ";
  if (!rest.starts_with(head))
    return std::nullopt;
  std::size_t size = 0;
  const char* const end = rest.data() + rest.size();
  const auto [next, error] = std::from_chars(rest.data() + head.size(), end, size);
  if (error != std::errc{} || next == end || *next != '\n')
    return std::nullopt;
  rest.remove_prefix(static_cast<std::size_t>(next - rest.data()) + 1);
  if (rest.size() <= size)
    return std::nullopt;
  std::string pdf(rest.substr(0, size));
  rest.remove_prefix(size + 1);
  return pdf;
}

} // namespace

Result<std::vector<OutputFile>, PdfFailure> make_pdfs(const std::vector<PagedFile>& papers,
                                                      const std::string& date) {
  std::vector<OutputFile> files;
  if (papers.empty())
    return files;
  const std::string path = program();
  // It is our own program and gets our environment: fontconfig looks for its cache in the home folder.
  const ProgramEnd ended = run_program({.path = path}, input_of(papers, date));
  if (ended.how == ProgramEnd::How::not_started)
    return PdfFailure{"the program sheerpole-pdf, which draws PDFs, is not beside sheerpole"};
  std::string_view rest = ended.output;
  for (const PagedFile& paper : papers) {
    auto pdf = ended.well() ? next_pdf(rest) : std::nullopt;
    if (!pdf)
      return PdfFailure{ended.errors.empty() ? "sheerpole-pdf ended without a word" : ended.errors};
    files.push_back({paper.name, std::move(*pdf)});
  }
  return files;
}

} // namespace sheerpole
