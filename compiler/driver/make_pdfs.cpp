#include "driver/make_pdfs.hpp"

#include "backend/drawing/svg_writer.hpp"
#include "base/code_point.hpp"
#include "driver/process/run_program.hpp"
#include "units/format_length.hpp"

#include <fmt/format.h>
#include <unistd.h>

#include <array>
#include <charconv>
#include <cstdint>
#include <iterator>
#include <map>
#include <optional>
#include <set>
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
  std::set<std::string> names;
  for (const PagedFile& paper : papers)
    names.insert(paper.name);
  std::string input = "sheerpole-pdf 4\n";
  for (const std::string_view face : faces)
    input += "face " + std::string(face) + "\n";
  for (const PagedFile& paper : papers) {
    input += "document " + one_line(paper.title) + "\ndate" +
             (date.empty() ? "" : " " + date + "T00:00:00Z") + "\n";
    for (const Drawing& page : paper.pages) {
      const std::string svg = write_tagged_svg(page, names);
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

/// Reads what sheerpole-pdf wrote; see pdf/main.cpp.
class PrinterAnswer {
public:
  explicit PrinterAnswer(std::string_view text) : rest_(text) {}
  /// The next PDF, and in `missing` the signs that it could not draw; nothing when the answer is broken
  /// off.
  std::optional<OutputFile> next(const std::string& name, std::vector<MissingSign>& missing) {
    while (take("missing ")) {
      MissingSign one{.file = name};
      std::uint32_t sign = 0;
      if (!number(sign, 16) || !take(" ") || !number(one.page, 10) || !take("\n"))
        return std::nullopt;
      one.sign = sign;
      missing.push_back(std::move(one));
    }
    std::size_t size = 0;
    if (!take("pdf ") || !number(size, 10) || !take("\n") || rest_.size() <= size)
      return std::nullopt;
    OutputFile file{name, std::string(rest_.substr(0, size))};
    rest_.remove_prefix(size + 1);
    return file;
  }

private:
  bool take(std::string_view words) {
    if (!rest_.starts_with(words))
      return false;
    rest_.remove_prefix(words.size());
    return true;
  }
  template <class Number>
  bool number(Number& value, int base) {
    const auto [next, error] = std::from_chars(rest_.data(), rest_.data() + rest_.size(), value, base);
    rest_.remove_prefix(static_cast<std::size_t>(next - rest_.data()));
    return error == std::errc{};
  }

  std::string_view rest_;
};

std::optional<Span> first_place(std::string_view sign, const SourceSet& sources) {
  for (std::uint32_t i = 0; i < sources.size(); ++i)
    if (const auto found = sources[SourceId{i}].bytes().find(sign); found != std::string_view::npos)
      return Span{SourceId{i}, static_cast<std::uint32_t>(found),
                  static_cast<std::uint32_t>(found + sign.size())};
  return std::nullopt;
}

/// One finding a sign, however many papers have it.
std::vector<Diagnostic> missing_sign_findings(const std::vector<MissingSign>& missing,
                                              const SourceSet& sources) {
  std::map<char32_t, std::vector<const MissingSign*>> signs;
  for (const MissingSign& one : missing)
    signs[one.sign].push_back(&one);
  std::vector<Diagnostic> findings;
  for (const auto& [sign, papers] : signs) {
    std::string where = papers.front()->file + ", page " + std::to_string(papers.front()->page);
    if (papers.size() > 1)
      where += ", and in " + std::to_string(papers.size() - 1) + " more";
    const std::string text = utf8_of(sign);
    auto finding =
        diagnose("sign-not-drawn",
                 {{"code", fmt::format("U+{:04X}", static_cast<std::uint32_t>(sign))}, {"papers", where}});
    if (const auto place = first_place(text, sources))
      finding = std::move(finding).at(*place);
    findings.push_back(std::move(finding).build());
  }
  return findings;
}

} // namespace

Result<Pdfs, PdfFailure> make_pdfs(const std::vector<PagedFile>& papers, const std::string& date) {
  Pdfs pdfs;
  if (papers.empty())
    return pdfs;
  const std::string path = program();
  const ProgramEnd ended = run_program({.path = path}, input_of(papers, date));
  if (ended.how == ProgramEnd::How::not_started)
    return PdfFailure{"the program sheerpole-pdf, which draws PDFs, is not beside sheerpole"};
  PrinterAnswer answer(ended.output);
  for (const PagedFile& paper : papers) {
    auto pdf = ended.well() ? answer.next(paper.name, pdfs.missing) : std::nullopt;
    if (!pdf)
      return PdfFailure{ended.errors.empty() ? "sheerpole-pdf ended without a word" : ended.errors};
    pdfs.files.push_back(std::move(*pdf));
  }
  return pdfs;
}

PdfReport add_pdfs(OutputBundle& bundle, const std::string& date, const SourceSet& sources) {
  auto pdfs = make_pdfs(bundle.papers, date);
  if (!pdfs.ok())
    return {.findings = {}, .fault = "sheerpole: no PDF: " + pdfs.error().what + "\n"};
  std::move(pdfs.value().files.begin(), pdfs.value().files.end(), std::back_inserter(bundle.files));
  return {.findings = missing_sign_findings(pdfs.value().missing, sources), .fault = {}};
}

} // namespace sheerpole
