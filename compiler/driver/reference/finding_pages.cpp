#include "driver/reference/finding_pages.hpp"

#include "base/code_point.hpp"
#include "diagnostics/catalogue.hpp"
#include "driver/finding_sections.hpp"
#include "driver/reference/pages.hpp"

namespace sheerpole {

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
