#include "backend/json/json.hpp"
#include "diagnostics/catalogue.hpp"
#include "driver/reference/pages.hpp"
#include "fuzz/targets.hpp"
#include "kinds/kind_row.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>

namespace sheerpole::fuzz {

namespace {

void collect_words(const Json& json, std::vector<std::string>& words) {
  if (json.is_string())
    words.push_back(json.get<std::string>());
  else if (json.is_structured())
    for (auto each = json.begin(); each != json.end(); ++each)
      // Help is for people; a sentence is no word.
      if (!json.is_object() || each.key() != "help")
        collect_words(*each, words);
}

/// Every word that the language has.
std::vector<std::string> language_words() {
  std::vector<std::string> words;
  collect_words(Json::parse(completion_json()), words);
  for (const char* more :
       {"{",       "}",    "(",       ")",        ":",           ",",     ">",          "=",
        "±",       "x",    "from",    "mirrored", "\"",          "#",     "X",          "-1 mm",
        "1e308 m", "0 mm", "1_000 m", "7/0 in",   "38' 7 3/8\"", "100 %", "9999-12-31", "language 1"})
    words.emplace_back(more);
  std::sort(words.begin(), words.end());
  words.erase(std::unique(words.begin(), words.end()), words.end());
  return words;
}

/// The rig files of the examples of all findings, each the shortest way to be wrong in one thing, and what
/// they become when it is put right.
std::vector<std::string> finding_texts() {
  std::vector<std::string> texts;
  for (const CatalogueEntry* entry : all_entries())
    for (const FindingExample* example : {&entry->example, &entry->mended})
      for (const ExamplePart& part : example->parts)
        if (part.manner == ExampleManner::plain && part.file.ends_with(".rig"))
          texts.emplace_back(part.text);
  return texts;
}

template <class Range>
const auto& one_of(const Range& range, Dice& dice) {
  return range[dice.below(std::size(range))];
}

/// What a name may refer to elsewhere in the text: few, so that they meet.
std::string name_of(std::string_view kind, Dice& dice) {
  return fmt::format("{}-{}", kind, 1 + dice.below(3));
}

std::string value_of(const PropertyRow& row, Dice& dice) {
  constexpr std::string_view behind[] = {"",        "",         "", " measured", " assumed \"why\"",
                                         " ± 1 mm", " mirrored"};
  constexpr std::string_view odd[] = {"0 mm",       "-3 m",       "1e9 kN",    "7-3/8 in",
                                      "12",         "50 %",       "\"\"",      "off",
                                      "X",          "(1, 2)",     "cap > tip", "72 d",
                                      "2026-02-30", "1/2-20 UNF", "1 degC",    "(2 + 3) mm * 4 / 3 mm"};
  const bool as_shown = !row.example.empty() && dice.below(4) != 0;
  return std::string(as_shown              ? row.example
                     : row.choices.empty() ? one_of(odd, dice)
                                           : one_of(row.choices, dice)) +
         std::string(one_of(behind, dice));
}

std::string settings_of(std::span<const PropertyRow> rows, Dice& dice) {
  if (rows.empty() || dice.below(2) == 0)
    return "";
  const PropertyRow& row = one_of(rows, dice);
  return fmt::format(" ({}: {})", row.name, value_of(row, dice));
}

std::string block_of(const KindRow& kind, int depth, Dice& dice);

/// A stack from aloft to deck.
std::string items_of(Dice& dice) {
  std::string items;
  for (std::size_t i = dice.below(6); i > 0; --i) {
    const KindRow& part = one_of(all_kinds(), dice);
    items += dice.below(3) == 0 ? "line" + settings_of(line_settings(), dice)
                                : fmt::format("{}{}{}", dice.below(8) == 0 ? "2 x " : "",
                                              name_of(part.name, dice), settings_of(part.settings, dice));
    items += '\n';
  }
  return items;
}

/// What stands between the braces of a declaration.
std::string block_of(const KindRow& kind, int depth, Dice& dice) {
  std::string block;
  for (const PropertyRow& row : kind.properties)
    if (row.need == Need::required ? dice.below(8) != 0 : dice.below(4) == 0)
      block += fmt::format("{}: {}\n", row.name, value_of(row, dice));
  if (kind.holds_items)
    block += items_of(dice);
  for (const std::string_view inside : kind.blocks)
    if (const KindRow* row = find_kind(inside); row != nullptr && depth > 0 && dice.below(2) == 0)
      block += fmt::format("{} {{\n{}}}\n", inside, block_of(*row, depth - 1, dice));
  return block;
}

/// A declaration of any kind, by its row in the table of kinds.
std::string declaration(Dice& dice) {
  const KindRow& kind = one_of(all_kinds(), dice);
  std::string head(kind.name);
  if (kind.naming == Naming::choice && !kind.name_choices.empty())
    head += fmt::format(" {}", one_of(kind.name_choices, dice));
  else if (kind.naming == Naming::finding)
    head += fmt::format(" {}", one_of(all_entries(), dice)->slug);
  else if (kind.naming != Naming::none)
    head += " " + name_of(kind.name, dice);
  if (dice.below(6) == 0)
    head += " \"Title\"";
  if (kind.declares() && dice.below(6) == 0)
    head += " from " + name_of(kind.name, dice);
  if (kind.of != Category::none)
    head += " of " + name_of(dice.below(2) == 0 ? "stay" : one_of(all_kinds(), dice).name, dice);
  return fmt::format("{} {{\n{}}}\n", head, block_of(kind, 3, dice));
}

} // namespace

Material rig_material() {
  return {language_words(), finding_texts(), declaration};
}

} // namespace sheerpole::fuzz
