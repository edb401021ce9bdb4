#include "base/code_point.hpp"
#include "base/edit_distance.hpp"
#include "diagnostics/catalogue.hpp"
#include "driver/reference/pages.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/options.hpp"
#include "kinds/glossary.hpp"
#include "kinds/kind_row.hpp"

#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace sheerpole::explain_verb {

namespace {

struct Options {
  std::string word;
};

std::string indented(std::string_view text) {
  std::string result;
  bool line_begins = true;
  for (const char c : text) {
    if (line_begins && c != '\n')
      result += "  ";
    result += c;
    line_begins = c == '\n';
  }
  if (!line_begins)
    result += '\n';
  return result;
}

std::string paragraph(std::string_view text) {
  std::string result;
  for (const std::string& line : wrap_text(text, 88))
    result += line + "\n";
  return indented(result);
}

std::string finding_page(const CatalogueEntry& entry) {
  std::string page = std::string(entry.slug) + " (" + std::string(name_of(entry.severity)) + ")\n";
  for (const FindingSection& section : finding_sections(entry))
    page += "\n" + std::string(section.heading) + "\n" +
            (section.is_verbatim ? indented(section.body) : paragraph(section.body));
  return page;
}

std::string rows_page(std::string_view heading, std::span<const PropertyRow> rows) {
  if (rows.empty())
    return {};
  std::string page = "\n" + std::string(heading) + "\n";
  for (const PropertyRow& row : rows) {
    page += "  " + std::string(row.name) + ": " + std::string(row.example) +
            (row.need == Need::required ? "  (must be stated)" : "") +
            (row.for_record ? "  (for the record)" : "") + "\n";
    page += indented(indented(row.help));
  }
  return page;
}

std::string kind_page(const KindRow& kind) {
  std::string page = std::string(kind.name) + "\n" + paragraph(kind.help);
  page += rows_page("it states", kind.properties);
  page += rows_page("in a stack it may be followed by, in brackets", kind.settings);
  if (kind.boat_fitting)
    page += "\nIt belongs to the boat and adds no length: pin-to-pin begins or ends at its pin.\n";
  if (kind.adjuster)
    page += "\nA stack that uses it must state how it is set.\n";
  return page;
}

std::string glossary_page_of(const GlossaryRow& row) {
  std::string page = std::string(row.word) + (row.also.empty() ? "" : ", " + std::string(row.also)) + "\n" +
                     paragraph(row.meaning);
  if (!row.in_file.empty())
    page += "\nin a rig file\n" + paragraph(row.in_file);
  return page;
}

/// What each kind that has this property means by it; kinds that mean the same together.
std::string property_page(std::string_view name) {
  std::vector<std::pair<const PropertyRow*, std::string>> meanings;
  const auto add = [&](std::span<const PropertyRow> rows, const std::string& owner) {
    const PropertyRow* row = find_property(rows, name);
    if (row == nullptr)
      return;
    for (auto& [known, owners] : meanings)
      if (known->help == row->help && known->example == row->example) {
        if (owners.find(owner) == std::string::npos)
          owners += ", " + owner;
        return;
      }
    meanings.emplace_back(row, owner);
  };
  for (const KindRow& kind : all_kinds()) {
    add(kind.properties, std::string(kind.name));
    add(kind.settings, std::string(kind.name) + " in a stack");
  }
  for (const EndRow& end : all_ends())
    add(end.dimensions, std::string(end.name));
  add(line_settings(), "line in a stack");
  std::string page;
  for (const auto& [row, owners] : meanings)
    page += (page.empty() ? "" : "\n") + std::string(row->name) + ": " + std::string(row->example) + "\n" +
            paragraph(row->help) + paragraph("of: " + owners);
  return page;
}

int run(const Options& options) {
  const std::string& word = options.word;
  if (const CatalogueEntry* entry = find_entry(word)) {
    print_out(finding_page(*entry));
    return exit_clean;
  }
  if (const KindRow* kind = find_kind(word)) {
    print_out(kind_page(*kind));
    return exit_clean;
  }
  if (const EndRow* end = find_end(word)) {
    print_out(std::string(end->name) + "\n" + paragraph(end->help) +
              rows_page("it states", end->dimensions));
    return exit_clean;
  }
  // A word of the trade may be a property as well: both are told.
  const GlossaryRow* trade = find_glossary_row(word);
  const std::string stated = property_page(word);
  if (trade != nullptr || !stated.empty()) {
    print_out((trade == nullptr ? "" : glossary_page_of(*trade)) +
              (trade == nullptr || stated.empty() ? "" : "\n") + stated);
    return exit_clean;
  }
  std::vector<std::string> words;
  for (const GlossaryRow& row : glossary())
    words.emplace_back(row.word);
  for (const CatalogueEntry* entry : all_entries())
    words.emplace_back(entry->slug);
  for (const KindRow& kind : all_kinds())
    words.emplace_back(kind.name);
  for (const EndRow& end : all_ends())
    words.emplace_back(end.name);
  print_error("sheerpole: nothing is known of `" + word + "`" + did_you_mean(word, words) +
              "\n`sheerpole list words`, `list findings`, `list kinds` and `list ends` show what can be "
              "explained.\n");
  return exit_usage;
}

} // namespace

void add_to(CLI::App& app, AskedFor& asked) {
  CLI::App& verb = *app.add_subcommand(
      "explain", "explain a word of the trade, a finding, a kind, an end or a property");
  Options& options = options_of(verb, asked, run);
  verb.add_option("WORD", options.word, "for example bury, missing-unit, turnbuckle, jaw")->required();
}

} // namespace sheerpole::explain_verb
