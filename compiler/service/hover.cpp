#include "service/hover.hpp"

#include "kinds/glossary.hpp"
#include "service/cursor.hpp"
#include "service/turns.hpp"
#include "units/unit.hpp"
#include "wording/language_words.hpp"
#include "wording/length_words.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole::service {

namespace {

/// A declaration without its block, a value without what follows it: one line of the file.
std::string line_of(const SourceText& text, std::uint32_t begin, std::uint32_t end) {
  std::string_view line = text.text({text.id(), begin, end});
  line = line.substr(0, line.find_first_of("{\r\n"));
  const std::size_t last = line.find_last_not_of(" \t");
  return std::string(line.substr(0, last == std::string_view::npos ? 0 : last + 1));
}

std::string code_of(const OpenBoat& boat, const Symbol& symbol) {
  const SourceText& text = boat.text(symbol.span.source);
  if (symbol.let != nullptr)
    return line_of(text, symbol.let->span.begin, symbol.let->span.end);
  if (symbol.kind == Symbol::Kind::point && symbol.declared != nullptr)
    return line_of(text, symbol.declared->span.begin, symbol.declared->span.end);
  if (symbol.declaration != nullptr)
    return line_of(text, symbol.declaration->span.begin, symbol.declaration->span.end);
  return symbol.name;
}

/// The lengths of a stay, side by side when there are two.
void add_lengths(const OpenBoat& boat, const std::string& stay, std::vector<std::string>& lines) {
  if (!boat.compiled.derived)
    return;
  const Rig& rig = *boat.compiled.rig;
  const std::map<StayId, std::string> pulls = pull_words(boat);
  for (const DerivedStay& derived : boat.compiled.derived->stays) {
    const Stay& each = rig[derived.stay];
    if (each.base != stay)
      continue;
    std::string line = each.name + ":";
    for (const LengthSum* sum : {&derived.pin_to_pin, &derived.body})
      line +=
          (sum == &derived.body ? ", " : " ") + std::string(name_of(sum->kind)) + " " + sum_text(rig, *sum);
    if (const auto pull = pulls.find(derived.stay); pull != pulls.end())
      line += ", " + pull->second;
    lines.push_back(std::move(line));
  }
}

Hover hover_of_symbol(const OpenBoat& boat, Span word, const Symbol& symbol) {
  Hover result{word, code_of(boat, symbol), {}};
  if (symbol.row != nullptr) {
    result.lines.emplace_back(symbol.row->help);
    if (symbol.category == Category::stay)
      add_lengths(boat, symbol.name, result.lines);
  }
  result.lines.push_back(boat.text(symbol.span.source).name());
  return result;
}

Hover hover_of_row(Span word, const PropertyRow& row) {
  return {word,
          std::string(row.name) + ": " + std::string(row.example),
          {std::string(row.help), property_detail(row)}};
}

/// A word that is a name of the language and not of the file.
std::optional<Hover> hover_of_word(Span span, const std::string& word, const Cursor& cursor) {
  const auto row_among = [&](std::span<const PropertyRow> rows) { return find_property(rows, word); };
  if (cursor.slot == Slot::setting)
    if (const PropertyRow* row = row_among(cursor.rows))
      return hover_of_row(span, *row);
  if (cursor.slot == Slot::entry && cursor.kind != nullptr)
    if (const PropertyRow* row = row_among(cursor.kind->properties))
      return hover_of_row(span, *row);
  if (cursor.slot == Slot::unit)
    if (const Unit* unit = find_unit(word))
      return Hover{span, word, {std::string(unit->meaning), describe(unit->dimension)}};
  if (cursor.slot == Slot::statement || cursor.slot == Slot::entry)
    if (const KindRow* kind = find_kind(word))
      return Hover{span, word, {std::string(kind->help)}};
  if (cursor.slot == Slot::value && cursor.row != nullptr) {
    if (cursor.row->type == ValueType::end)
      if (const EndRow* end = find_end(word))
        return Hover{span, word, {std::string(end->help)}};
    if (std::find(cursor.row->choices.begin(), cursor.row->choices.end(), word) !=
        cursor.row->choices.end())
      return hover_of_row(span, *cursor.row);
  }
  for (const Keyword& keyword : keywords())
    if (keyword.word == word)
      return Hover{span, word, {std::string(keyword.help)}};
  if (const GlossaryRow* trade = find_glossary_row(word))
    return Hover{span, word, {std::string(trade->meaning)}};
  return std::nullopt;
}

} // namespace

std::optional<Hover> hover(const OpenBoat& boat, SourceId source, std::uint32_t offset) {
  const SourceText& text = boat.text(source);
  const Span word = word_at(text, offset);
  if (word.begin == word.end)
    return std::nullopt;
  if (const ResolvedTree* names = boat.names())
    if (const Symbol& symbol = (*names)[names->symbol_at(word)]; !symbol.poison())
      return hover_of_symbol(boat, word, symbol);
  const Cursor cursor = cursor_at(text, word.begin, boat.names());
  if (cursor.slot == Slot::nothing || cursor.slot == Slot::path)
    return std::nullopt;
  return hover_of_word(word, std::string(text.text(word)), cursor);
}

std::string markdown(const Hover& hover) {
  // A fence must be longer than any row of the same signs inside.
  std::string fence = "```";
  while (hover.code.find(fence) != std::string::npos)
    fence += '`';
  std::string result = fence + "rig\n" + hover.code + "\n" + fence;
  for (const std::string& line : hover.lines) {
    result += "\n\n";
    for (const char c : line) {
      if (std::string_view("\\`*_{}[]()<>#+!|~").find(c) != std::string_view::npos)
        result += '\\';
      result += c;
    }
  }
  return result + "\n";
}

std::string plain_text_of(const Hover& hover) {
  std::string result = hover.code;
  for (const std::string& line : hover.lines)
    result += "\n" + line;
  return result + "\n";
}

} // namespace sheerpole::service
