#include "base/code_point.hpp"
#include "diagnostics/excerpt.hpp"
#include "diagnostics/render.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>

namespace sheerpole {

namespace {

constexpr std::size_t page_width = 100;
constexpr std::size_t most_edited_lines = 8;

class FindingPrinter {
public:
  FindingPrinter(const Diagnostic& finding, const SourceSet& sources, bool colour)
      : finding_(finding), sources_(sources), colour_(colour), digits_(widest_line_number()) {}

  /// With `alike`, the others that say the same of other things: they are named with their places.
  std::string print(const std::vector<const Diagnostic*>& alike) {
    print_heading();
    print_wrapped("  ", finding_.message);
    if (finding_.primary)
      print_spot(*finding_.primary, '^');
    for (const Label& other : finding_.others) {
      out_ += fmt::format("  and at {}\n", place(other.span));
      print_spot(other, '-');
    }
    if (!finding_.why.empty())
      print_wrapped("  why: ", finding_.why);
    if (!finding_.waived.empty())
      print_wrapped("  waived: ", finding_.waived);
    if (finding_.edit)
      print_edit(*finding_.edit);
    if (!alike.empty())
      print_alike(alike);
    return std::move(out_);
  }

private:
  const SourceText& text_of(Span span) const { return sources_[span.source]; }

  std::string place(Span span) const {
    const Position at = text_of(span).position(span.begin);
    return fmt::format("{}:{}:{}", printable(text_of(span).name()), at.line, at.column);
  }

  std::size_t widest_line_number() const {
    std::uint32_t largest = 1;
    const auto meet = [&](Span span) {
      largest = std::max(largest, text_of(span).position(span.end).line);
    };
    if (finding_.primary)
      meet(finding_.primary->span);
    for (const Label& other : finding_.others)
      meet(other.span);
    if (finding_.edit) {
      meet(finding_.edit->span);
      largest += static_cast<std::uint32_t>(
          std::count(finding_.edit->replacement.begin(), finding_.edit->replacement.end(), '\n'));
    }
    return std::max<std::size_t>(3, fmt::formatted_size("{}", largest));
  }

  /// Terminal colour of the severity; the words alone carry the meaning.
  std::string painted(std::string_view text) const {
    if (!colour_)
      return std::string(text);
    const int code = finding_.severity == Severity::error     ? 31
                     : finding_.severity == Severity::warning ? 33
                                                              : 36;
    return fmt::format("\x1b[1;{}m{}\x1b[0m", code, text);
  }

  void print_heading() {
    out_ += (finding_.waived.empty() ? std::string() : "waived ") + painted(name_of(finding_.severity));
    if (finding_.primary)
      out_ += " at " + place(finding_.primary->span);
    out_ += fmt::format(" ({})", finding_.slug);
    // Most messages name their subject; the heading need not say it again.
    if (!finding_.subject.empty() && finding_.message.find(finding_.subject) == std::string::npos)
      out_ += ", about " + printable(finding_.subject);
    out_ += '\n';
  }

  void print_alike(const std::vector<const Diagnostic*>& alike) {
    std::string all;
    for (const Diagnostic* one : alike) {
      all += (all.empty() ? "" : ", ") + one->subject;
      if (one->primary)
        all += " at " + place(one->primary->span);
    }
    print_wrapped("  the same of: ", all);
  }

  void print_wrapped(std::string_view lead, std::string_view text) {
    bool first = true;
    for (const std::string& line : wrap_text(printable(text), page_width - lead.size())) {
      out_ += (first ? std::string(lead) : std::string(lead.size(), ' ')) + line + '\n';
      first = false;
    }
  }

  std::size_t gutter_width() const { return 2 + digits_ + 3; }

  void print_source_line(std::uint32_t number, std::string_view text) {
    out_ += fmt::format("  {:>{}} :", number, digits_);
    out_ += text.empty() ? std::string("\n") : fmt::format(" {}\n", text);
  }

  void print_spot(const Label& label, char mark) {
    const SourceText& text = text_of(label.span);
    const std::uint32_t line = text.position(label.span.begin).line;
    const std::uint32_t last_line = text.position(label.span.end).line;
    const std::uint32_t start = text.line_start(line);
    const std::string_view whole = text.line(line);
    const std::size_t begin = label.span.begin - std::min(label.span.begin, start);
    const std::size_t end =
        last_line > line ? whole.size() : label.span.end - std::min(label.span.end, start);
    const Excerpt shown = excerpt(whole, begin, end, page_width - gutter_width());
    print_source_line(line, shown.text);

    std::string words = printable(label.text);
    if (last_line > line)
      words += fmt::format("{}to line {}", words.empty() ? "" : ", ", last_line);
    const std::string gutter = fmt::format("  {:{}} : ", "", digits_);
    out_ += gutter + std::string(shown.mark_begin, ' ') + painted(std::string(shown.mark_width, mark));
    const std::size_t used = gutter_width() + shown.mark_begin + shown.mark_width;
    if (!words.empty() && used + 1 + screen_columns(words) <= page_width) {
      out_ += ' ' + words;
    } else if (!words.empty()) {
      for (const std::string& part : wrap_text(words, page_width - gutter_width()))
        out_ += '\n' + gutter + part;
    }
    out_ += '\n';
  }

  void print_edit(const Edit& edit) {
    print_wrapped(edit.certain ? "  mend: " : "  edit: ", edit.title);
    const SourceText& text = text_of(edit.span);
    const std::uint32_t first = text.position(edit.span.begin).line;
    const std::uint32_t last = text.position(edit.span.end).line;
    const std::uint32_t start = text.line_start(first);
    const std::string before(text.text({edit.span.source, start, edit.span.begin}));
    const std::uint32_t rest_end =
        text.line_start(last) + static_cast<std::uint32_t>(text.line(last).size());
    const std::string_view after =
        text.text({edit.span.source, edit.span.end, std::max(rest_end, edit.span.end)});
    const std::string edited = before + edit.replacement + std::string(after);

    // The crop follows the change in its first line; the lines after it are shown from their beginning.
    std::size_t begin = before.size();
    std::size_t end = before.size() + std::min(edit.replacement.find('\n'), edit.replacement.size());
    std::size_t from = 0;
    for (std::uint32_t shown = 0;; ++shown) {
      if (shown == most_edited_lines) {
        out_ += fmt::format("  {:>{}} :\n", "...", digits_);
        break;
      }
      const std::size_t line_end = std::min(edited.find('\n', from), edited.size());
      std::string_view line = std::string_view(edited).substr(from, line_end - from);
      if (line.ends_with('\r'))
        line.remove_suffix(1);
      print_source_line(first + shown, excerpt(line, begin, end, page_width - gutter_width()).text);
      if (line_end == edited.size())
        break;
      from = line_end + 1;
      begin = end = 0;
    }
  }

  const Diagnostic& finding_;
  const SourceSet& sources_;
  bool colour_;
  std::size_t digits_;
  std::string out_;
};

/// What a finding says with its subject left open.
std::string open_message(const Diagnostic& finding) {
  std::string message = finding.message;
  for (std::size_t at = message.find(finding.subject); at != std::string::npos;
       at = message.find(finding.subject, at + 1))
    message.replace(at, finding.subject.size(), "\n");
  return message;
}

/// Whether two findings differ in what they are about and in nothing else that is said.
bool say_the_same(const Diagnostic& a, const Diagnostic& b) {
  return a.slug == b.slug && a.severity == b.severity && a.why == b.why && a.waived == b.waived &&
         a.edit.has_value() == b.edit.has_value() && !a.subject.empty() && !b.subject.empty() &&
         a.subject != b.subject && open_message(a) == open_message(b);
}

std::string counted(std::size_t count, std::string_view what) {
  return fmt::format("{} {}{}", count, what, count == 1 ? "" : "s");
}

} // namespace

std::string render_terminal(const std::vector<Diagnostic>& findings, const SourceSet& sources, bool colour,
                            const std::optional<CheckTotals>& totals) {
  std::string result;
  std::vector<bool> told(findings.size());
  for (std::size_t i = 0; i < findings.size(); ++i) {
    if (told[i])
      continue;
    std::vector<const Diagnostic*> alike;
    // Far apart they stand for themselves: looking at all pairs of a long list would take too long.
    constexpr std::size_t most_between = 200;
    for (std::size_t k = i + 1; k < std::min(findings.size(), i + most_between); ++k)
      if (!told[k] && say_the_same(findings[i], findings[k])) {
        told[k] = true;
        alike.push_back(&findings[k]);
      }
    result += FindingPrinter(findings[i], sources, colour).print(alike) + "\n";
  }
  const SeverityCounts counts = count_severities(findings);
  result += fmt::format("{}, {}, {}\n", counted(counts.errors, "error"),
                        counted(counts.warnings, "warning"), counted(counts.notes, "note"));
  if (counts.waived > 0)
    result.insert(result.size() - 1, fmt::format(", {} waived", counts.waived));
  if (totals)
    result += fmt::format("checks: {} pass, {}, {} not checked, {} waived\n", totals->passed,
                          counted(totals->found, "finding"), totals->not_checked, totals->waived);
  return result;
}

std::string render_lines(const std::vector<Diagnostic>& findings, const SourceSet& sources) {
  std::string result;
  for (const Diagnostic& finding : findings) {
    if (finding.primary) {
      const SourceText& text = sources[finding.primary->span.source];
      const Position at = text.position(finding.primary->span.begin);
      fmt::format_to(std::back_inserter(result), "{}:{}:{}: ", printable(text.name()), at.line, at.column);
    }
    fmt::format_to(std::back_inserter(result), "{}{}: {} [{}]", finding.waived.empty() ? "" : "waived ",
                   name_of(finding.severity), printable(finding.message), finding.slug);
    if (finding.edit && finding.edit->certain)
      fmt::format_to(std::back_inserter(result), " (mend: {})", printable(finding.edit->title));
    result += '\n';
  }
  return result;
}

} // namespace sheerpole
