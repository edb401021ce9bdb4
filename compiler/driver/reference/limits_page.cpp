#include "driver/reference/limits_page.hpp"

#include "driver/reference/markdown.hpp"
#include "limits/limit.hpp"
#include "rules/check_table.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

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

std::string limits_page() {
  std::string page =
      "# Thresholds of the checks\n\n"
      "Where the checks draw the line, and what each number rests on. A rig file sets any of them, or "
      "switches it off, in a block\n"
      "`limits`, each with its source:\n\n"
      "```\n"
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
  page +=
      "\nTwo amounts are no thresholds and can not be set: the rounding of a sum, 0.001 mm, is no fault "
      "(choice of the project, no source),\n"
      "and port and starboard of a boat that states `pair-tolerance` are held to that in place of "
      "`pair-apart`.\n";
  return page;
}

} // namespace sheerpole
