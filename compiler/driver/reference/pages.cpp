#include "driver/reference/pages.hpp"

#include "kinds/glossary.hpp"
#include "kinds/kind_row.hpp"
#include "limits/limit.hpp"
#include "rules/check_table.hpp"
#include "wording/language_words.hpp"

#include <algorithm>
#include <vector>

namespace sheerpole {

namespace {

std::string sentence(std::string_view text) {
  std::string result = markdown_text(text);
  if (!result.empty() && result.front() >= 'a' && result.front() <= 'z')
    result.front() = static_cast<char>(result.front() - 'a' + 'A');
  return result + (result.ends_with('.') ? "\n" : ".\n");
}

std::string table_of(std::span<const PropertyRow> rows) {
  std::string table = markdown_heading_row({"name", "value", "within", "for example", "what it is"});
  for (const PropertyRow& row : rows)
    table +=
        markdown_row({markdown_code(row.name), markdown_text(value_words(row)), range_words(row),
                      markdown_code(row.example),
                      markdown_text(row.help) + (row.need == Need::required ? "; **must be stated**" : "") +
                          (row.for_record ? "; *for the record*" : "")});
  return table;
}

std::string titled_table(std::string_view title, std::span<const PropertyRow> rows) {
  return rows.empty() ? std::string() : "\n" + std::string(title) + "\n\n" + table_of(rows);
}

std::string section_of(const KindRow& kind) {
  std::string section = "\n### " + std::string(kind.name) + "\n\n" + sentence(kind.help);
  if (kind.of != Category::none)
    section += "It is written `" + std::string(kind.name) + " of` the name of " +
               std::string(describe(kind.of)) + ".\n";
  if (kind.boat_fitting)
    section += "It belongs to the boat and adds no length: pin-to-pin begins or ends at its pin.\n";
  if (kind.adjuster)
    section += "A stack that uses it must state how it is set.\n";
  if (kind.free_properties)
    section += "Each entry in it is a name of your own with its value.\n";
  if (kind.holds_items)
    section += "It holds the items from aloft to deck.\n";
  if (!kind.blocks.empty()) {
    section += "Blocks that may stand inside:";
    for (const std::string_view block : kind.blocks)
      section += (block == kind.blocks.front() ? " " : ", ") + markdown_code(block);
    section += ".\n";
  }
  return section + titled_table("It states:", kind.properties) +
         titled_table("Its item in a stack states in brackets:", kind.settings);
}

/// `pin-loose`, `jaw-too-wide`
std::string slugs(std::string_view checks) {
  std::string text;
  for (std::size_t begin = 0; begin < checks.size();) {
    const std::size_t end = std::min(checks.find(' ', begin), checks.size());
    text += (text.empty() ? "" : ", ") + markdown_code(checks.substr(begin, end - begin));
    begin = end + 1;
  }
  return text;
}

std::string class_words(const LimitRow& row) {
  std::string words(name_of(row.limit_class));
  if (!row.source.empty())
    words += ": " + markdown_text(row.source);
  return words;
}

} // namespace

std::string kinds_page() {
  std::string page =
      "# Kinds of declarations\n\n"
      "All that a rig file can declare, what each declaration states, and the ends that parts have. "
      "`sheerpole explain KIND`\n"
      "prints the same. What need not be stated is worked out, or makes the cut a DRAFT that says what "
      "to measure.\n\n"
      "*For the record*: nothing is worked out from it, checked or ordered by it. It stands in "
      "`sheerpole show record` and\n"
      "`show sources` and in the survey report.\n";
  std::vector<std::string_view> groups; // in the order in which they first come
  for (const KindRow& kind : all_kinds())
    if (std::find(groups.begin(), groups.end(), kind.group) == groups.end())
      groups.push_back(kind.group);
  for (const std::string_view group : groups) {
    page += "\n## " + std::string(group) + "\n";
    for (const KindRow& kind : all_kinds())
      if (kind.group == group)
        page += section_of(kind);
  }
  page += "\n## The word `line` in a stack\n" + titled_table("It states in brackets:", line_settings());
  page += "\n## Ends of parts\n";
  for (const EndRow& end : all_ends())
    page += "\n### " + std::string(end.name) + "\n\n" + sentence(end.help) +
            titled_table("Its dimensions:", end.dimensions);
  return page;
}

std::string glossary_page() {
  std::string page =
      "# Words\n\nWords of the trade and of the papers in plain words; `sheerpole explain WORD` prints the "
      "same. Common practice, no\nsource.\n\n" +
      markdown_heading_row({"word", "what it is", "in a rig file"});
  for (const GlossaryRow& row : glossary())
    page += markdown_row(
        {markdown_text(std::string(row.word) + (row.also.empty() ? "" : ", " + std::string(row.also))),
         markdown_text(row.meaning), markdown_text(row.in_file)});
  return page;
}

std::string limits_page() {
  std::string page =
      "# Thresholds of the checks\n\n"
      "Where the checks draw the line, and what each number rests on. A rig file sets any of them, or "
      "switches it off, in a block\n"
      "`limits`, each with its source:\n\n"
      "```rig\n"
      "limits {\n"
      "  pin-play: 0.8 mm practice \"the yard's rule\"\n"
      "  wire-age: 10 years\n"
      "  bury-usual: off\n"
      "}\n"
      "```\n\n"
      "What is switched off is said in a note, `limit-switched-off`, and the checks that use it come out "
      "as *not checked*.\n"
      "`sheerpole show limits FILE` shows what holds for a rig, `sheerpole show checks FILE` what each "
      "check came to. Where no value stands\n"
      "below, the limit is the owner's own: without one nothing is compared.\n\n"
      "The class of a number: *published*, read in a publication; *common practice, no source*, of the "
      "trade; *exact*, statics, geometry\n"
      "or arithmetic; *choice of the project, no source*; *the owner's own*. Disputed are those about "
      "which "
      "sources or hands disagree.\n\n";
  page +=
      markdown_heading_row({"limit", "unless stated", "what it bounds", "used by", "class", "disputed"});
  for (const LimitRow& row : all_limits())
    page += markdown_row({markdown_code(row.name), row.value ? markdown_text(row.written()) : "none",
                          markdown_text(row.meaning), slugs(checks_of(row.limit)), class_words(row),
                          row.disputed ? "yes" : ""});
  page += "\nTwo amounts are no thresholds and cannot be set: the rounding of a sum, 0.001 mm, is no fault "
          "(choice of the project, no source),\n"
          "and port and starboard of a boat that states `pair-tolerance` are held to that in place of "
          "`pair-apart`.\n";
  return page;
}

std::string markdown_text(std::string_view text) {
  constexpr std::string_view with_meaning = "\\*<>|[]_";
  std::string result;
  bool code = false;
  for (const char c : text) {
    if (c == '`')
      code = !code;
    // In code only the sign that parts the cells of a table has a meaning.
    if (code ? c == '|' : with_meaning.find(c) != std::string_view::npos)
      result += '\\';
    result += c;
  }
  return result;
}

std::string markdown_code(std::string_view text) {
  if (text.empty())
    return {};
  std::string result = "`";
  for (const char c : text) {
    if (c == '|')
      result += '\\';
    result += c;
  }
  return result + "`";
}

std::string markdown_row(const std::vector<std::string>& cells) {
  std::string result = "|";
  for (const std::string& cell : cells)
    result += cell.empty() ? " |" : " " + cell + " |";
  return result + "\n";
}

std::string markdown_heading_row(const std::vector<std::string>& cells) {
  std::string result = markdown_row(cells) + "|";
  for (std::size_t i = 0; i < cells.size(); ++i)
    result += "---|";
  return result + "\n";
}

} // namespace sheerpole
