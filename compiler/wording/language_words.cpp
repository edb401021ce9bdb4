#include "wording/language_words.hpp"

#include "kinds/example_unit.hpp"

#include <cmath>

namespace sheerpole {

namespace {

constexpr Keyword all_keywords[] = {
    {"language", "begins the first line of every file: language 1"},
    {"use", "reads another file: use \"parts.rig\""},
    {"let", "names a value: let drop = 12 mm"},
    {"from", "copies another declaration of the same kind: toggle toggle-16 from toggle-12"},
    {"of", "says what the declaration belongs to: reading of forestay"},
    {"x", "repeats an item of a stack: 2 x toggle-12"},
    {"expect", "begins a line that says what a calculated value should come out as"},
    {"on", "behind points: the spar that they are on"},
    {"mirrored", "behind a place: its twin is on the other side"},
    {"free", "behind a point of a path: the line runs through"},
    {"clamped", "behind a point of a path: the line is held there"},
    {"ends", "behind a point of a path: the line ends there"},
    {"measured", "source of a value: taken on the boat"},
    {"drawn", "source of a value: read off a drawing"},
    {"maker", "source of a value: stated by the maker"},
    {"standard", "source of a value: a published standard"},
    {"practice", "source of a value: common practice"},
    {"assumed", "source of a value: not known; what rests on it is a DRAFT"},
    {"computed", "source of a value: worked out elsewhere"},
};

std::string quantity_words(const PropertyRow& row) {
  std::string result = describe(row.dimension);
  if (!row.other_dimension.is_plain_number())
    result += " or " + describe(row.other_dimension);
  return result;
}

std::string choice_words(const PropertyRow& row) {
  std::string result;
  for (const std::string_view choice : row.choices)
    result += (result.empty() ? "" : ", ") + std::string(choice);
  return result;
}

} // namespace

std::span<const Keyword> keywords() {
  return all_keywords;
}

std::string_view type_word(ValueType type) {
  switch (type) {
  case ValueType::quantity:
    return "quantity";
  case ValueType::quantity_list:
    return "quantity-list";
  case ValueType::number:
    return "number";
  case ValueType::count:
    return "count";
  case ValueType::text:
    return "text";
  case ValueType::text_list:
    return "text-list";
  case ValueType::word:
    return "word";
  case ValueType::size:
    return "size";
  case ValueType::thread:
    return "thread";
  case ValueType::choice:
    return "choice";
  case ValueType::choice_list:
    return "choice-list";
  case ValueType::reference:
    return "reference";
  case ValueType::path:
    return "path";
  case ValueType::end:
    return "end";
  case ValueType::vector:
    return "place";
  case ValueType::date:
    return "date";
  case ValueType::any:
    return "any";
  case ValueType::reference_list:
    return "reference-list";
  }
  return "any";
}

std::string value_words(const PropertyRow& row) {
  switch (row.type) {
  case ValueType::quantity:
    return quantity_words(row);
  case ValueType::quantity_list:
    return quantity_words(row) + ", or several with commas";
  case ValueType::number:
    return "a plain number";
  case ValueType::count:
    return "a whole number, 1 or more";
  case ValueType::text:
    return "a text in quotes";
  case ValueType::text_list:
    return "a text in quotes, or several with commas";
  case ValueType::word:
    return "a word, or a text in quotes";
  case ValueType::size:
    return "a size in quotes";
  case ValueType::thread:
    return "a thread in quotes";
  case ValueType::choice:
    return "one of " + choice_words(row);
  case ValueType::choice_list:
    return "one or several of " + choice_words(row) + ", with commas";
  case ValueType::reference:
    return "the name of " + std::string(describe(row.refers_to));
  case ValueType::path:
    return "points joined by >";
  case ValueType::end:
    return "an end";
  case ValueType::vector:
    return "a place (x, y, z)";
  case ValueType::date:
    return "a date";
  case ValueType::any:
    return "a quantity or a text in quotes";
  case ValueType::reference_list:
    return "the name of " + std::string(describe(row.refers_to)) + ", or several with commas";
  }
  return "as in the example";
}

std::string range_words(const PropertyRow& row) {
  const bool below = std::isfinite(row.least);
  const bool above = std::isfinite(row.most);
  if (below && above)
    return shown_like_example(row.least, row) + " to " + shown_like_example(row.most, row);
  if (below)
    return "at least " + shown_like_example(row.least, row);
  return above ? "at most " + shown_like_example(row.most, row) : std::string();
}

std::string property_detail(const PropertyRow& row) {
  std::string result = value_words(row);
  if (const std::string range = range_words(row); !range.empty())
    result += ", " + range;
  if (row.need == Need::required)
    result += "; must be stated";
  if (row.for_record)
    result += "; for the record";
  return result;
}

} // namespace sheerpole
