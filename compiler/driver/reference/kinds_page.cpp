#include "driver/reference/kinds_page.hpp"

#include "driver/reference/markdown.hpp"
#include "driver/reference/property_words.hpp"
#include "kinds/kind_row.hpp"

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
    table += markdown_row(
        {markdown_code(row.name), markdown_text(value_words(row)), range_words(row),
         markdown_code(row.example),
         markdown_text(row.help) + (row.need == Need::required ? "; **must be stated**" : "")});
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

} // namespace

std::string kinds_page() {
  std::string page =
      "# Kinds of declarations\n\n"
      "All that a rig file can declare, what each declaration states, and the ends that parts have. "
      "`sheerpole explain KIND`\n"
      "prints the same. What need not be stated is worked out, or makes the cut a DRAFT that says what "
      "to measure.\n";
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

} // namespace sheerpole
