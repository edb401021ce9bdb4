
#include "base/code_point.hpp"
#include "diagnostics/catalogue.hpp"
#include "driver/reference/pages.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace sheerpole {

namespace {

constexpr std::string_view usual_command = "sheerpole check boat.rig";

/// What is said of a file behind its name: ", a program".
std::string manner_words(const ExamplePart& part) {
  switch (part.manner) {
  case ExampleManner::older_encoding:
    return ", in an older encoding";
  case ExampleManner::folder:
    return ", a folder";
  case ExampleManner::not_readable:
    return ", not readable";
  case ExampleManner::program:
    return ", a program";
  case ExampleManner::plain:
  case ExampleManner::in_one_line:
    break;
  }
  return part.file.find("{n}") == std::string_view::npos ? "" : fmt::format(", n from 1 to {}", part.times);
}

std::vector<std::string> lines_of(std::string_view text) {
  std::vector<std::string> result;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find('\n'), text.size() - 1);
    result.emplace_back(text.substr(0, text[end] == '\n' ? end : end + 1));
    text.remove_prefix(end + 1);
  }
  return result;
}

/// The files of an example, one below the other. A single boat.rig needs no name above it, and the usual
/// command is not shown.
std::vector<std::string> example_lines(const FindingExample& example) {
  std::vector<std::string> result;
  if (example.command != usual_command)
    result.push_back(fmt::format("$ {}", example.command));
  const bool named = std::any_of(example.parts.begin(), example.parts.end(), [](const ExamplePart& part) {
    return part.file != "boat.rig" || !manner_words(part).empty();
  });
  std::string_view file;
  for (const ExamplePart& part : example.parts) {
    if (named && part.file != file)
      result.push_back(fmt::format("--- {}{}", part.file, manner_words(part)));
    file = part.file;
    const std::vector<std::string> lines = lines_of(part.text);
    result.insert(result.end(), lines.begin(), lines.end());
    if (part.manner == ExampleManner::in_one_line)
      result.back() += fmt::format(" ... {} times in this line", part.times);
    else if (part.times > 1 && part.file.find("{n}") == std::string_view::npos)
      result.push_back(fmt::format("... {} times{}", part.times,
                                   part.text.find("{n") == std::string_view::npos ? "" : ", n from 1"));
  }
  return result;
}

std::string joined(const std::vector<std::string>& lines) {
  std::string text;
  for (const std::string& line : lines)
    text += line + "\n";
  return text;
}

/// The lines that go, behind -, and those that come, behind +, in the order of the files.
std::string changed_lines(const std::vector<std::string>& before, const std::vector<std::string>& after) {
  // How many lines stay, at most, from line i of the one and line k of the other.
  std::vector<std::vector<std::size_t>> stay(before.size() + 1, std::vector<std::size_t>(after.size() + 1));
  for (std::size_t i = before.size(); i-- > 0;)
    for (std::size_t k = after.size(); k-- > 0;)
      stay[i][k] =
          before[i] == after[k] ? stay[i + 1][k + 1] + 1 : std::max(stay[i + 1][k], stay[i][k + 1]);
  std::string text;
  std::size_t i = 0;
  std::size_t k = 0;
  while (i < before.size() || k < after.size()) {
    if (i < before.size() && k < after.size() && before[i] == after[k]) {
      ++i;
      ++k;
    } else if (i < before.size() && (k == after.size() || stay[i + 1][k] >= stay[i][k + 1])) {
      text += "- " + before[i++] + "\n";
    } else {
      text += "+ " + after[k++] + "\n";
    }
  }
  return text;
}

} // namespace

std::vector<FindingSection> finding_sections(const CatalogueEntry& entry) {
  std::vector<FindingSection> result{{"how it comes about", std::string(entry.cause)}};
  if (!entry.why.empty())
    result.push_back({"what it says of the boat", std::string(entry.why)});
  const std::vector<std::string> example = example_lines(entry.example);
  result.push_back({"for example", joined(example), true});
  result.push_back({"of which it says", std::string(entry.says), true});
  result.push_back({"what to do", std::string(entry.mend)});
  result.push_back({"so mended", changed_lines(example, example_lines(entry.mended)), true});
  return result;
}

namespace {

constexpr std::size_t page_width = 100;

std::string paragraph(std::string_view text) {
  std::string result;
  for (const std::string& line : wrap_text(markdown_text(text), page_width))
    result += line + "\n";
  return result;
}

std::string page_of(const CatalogueEntry& entry) {
  std::string page =
      "# " + std::string(entry.slug) + "\n\nSeverity: " + std::string(name_of(entry.severity)) + ".\n";
  for (const FindingSection& section : finding_sections(entry)) {
    page += "\n## " + std::string(section.heading) + "\n\n";
    if (section.is_verbatim)
      page += "```\n" + std::string(section.body) + (section.body.ends_with('\n') ? "" : "\n") + "```\n";
    else
      page += paragraph(section.body);
  }
  return page;
}

std::string index_page() {
  std::string page = "# Findings\n\n"
                     "Everything that can be wrong, by subject. `sheerpole explain SLUG` prints the same "
                     "pages; [format.md](format.md)\n"
                     "says how findings are written. What stands in braces is filled in.\n";
  for (const FindingTable& table : finding_tables()) {
    page += "\n## " + std::string(table.subject) + "\n\n";
    page += markdown_heading_row({"finding", "severity", "what it says"});
    for (const CatalogueEntry& entry : table.entries) {
      const std::string slug(entry.slug);
      std::string link = "[";
      link += slug + "](" + slug + ".md)";
      page += markdown_row({link, std::string(name_of(entry.severity)), markdown_text(entry.message)});
    }
  }
  return page;
}

} // namespace

std::vector<OutputFile> finding_pages() {
  std::vector<OutputFile> result{{"README.md", index_page()}};
  for (const CatalogueEntry* entry : all_entries())
    result.push_back({std::string(entry->slug) + ".md", page_of(*entry)});
  return result;
}

} // namespace sheerpole
