#include "service/complete.hpp"

#include "kinds/example_unit.hpp"
#include "service/cursor.hpp"
#include "units/thread.hpp"
#include "units/unit.hpp"
#include "wording/language_words.hpp"

#include <algorithm>
#include <functional>
#include <utility>

namespace sheerpole::service {

namespace {

bool contains(const std::vector<std::string>& words, std::string_view word) {
  return std::find(words.begin(), words.end(), word) != words.end();
}

/// A text that stands in a snippet as it is.
std::string plain(std::string_view text) {
  std::string result;
  for (const char c : text) {
    if (c == '$' || c == '}' || c == '\\')
      result += '\\';
    result += c;
  }
  return result;
}

class Proposer {
public:
  Proposer(const OpenBoat& boat, SourceId source, std::uint32_t offset)
      : boat_(boat), text_(boat.text(source)), cursor_(cursor_at(text_, offset, boat.names())) {}

  Proposals run() {
    switch (cursor_.slot) {
    case Slot::nothing:
    case Slot::path:
      break;
    case Slot::statement:
      statements();
      break;
    case Slot::entry:
      entries();
      break;
    case Slot::part:
      names(Category::part);
      break;
    case Slot::base:
      bases();
      break;
    case Slot::target:
      targets();
      break;
    case Slot::spar:
      names(Category::spar);
      break;
    case Slot::side:
      words({"port", "starboard"}, ProposalSort::choice);
      break;
    case Slot::quantity:
      words(stay_quantities(), ProposalSort::choice);
      break;
    case Slot::setting:
      settings();
      break;
    case Slot::value:
      values();
      break;
    case Slot::unit:
      units();
      break;
    case Slot::after:
      behind_value();
      break;
    }
    return {cursor_.word, std::move(all_)};
  }

private:
  void add(std::string_view word, ProposalSort sort, std::string detail, std::string_view help,
           std::string insert = {}, std::string snippet = {}, bool preselect = false) {
    if (insert.empty())
      insert = word;
    all_.push_back({std::string(word), sort, std::move(detail), std::string(help), std::move(insert),
                    std::move(snippet), preselect});
  }
  void words(std::span<const std::string_view> all, ProposalSort sort) {
    for (const std::string_view word : all)
      add(word, sort, {}, {});
  }
  void words(std::initializer_list<std::string_view> all, ProposalSort sort) {
    words(std::span(all.begin(), all.size()), sort);
  }
  void keyword(std::string_view word) {
    for (const Keyword& each : keywords())
      if (each.word == word)
        add(word, ProposalSort::keyword, {}, each.help, std::string(word) + " ");
  }

  /// Names that are declared as this, in all files.
  void names(Category category) {
    symbols([&](const Symbol& symbol) {
      return (symbol.kind == Symbol::Kind::point ? Category::point : symbol.category) == category;
    });
  }
  void symbols(const std::function<bool(const Symbol&)>& fits) {
    if (boat_.names() == nullptr)
      return;
    for (const Symbol& symbol : boat_.names()->symbols) {
      if (symbol.poison() || symbol.name.empty() || !fits(symbol))
        continue;
      // What is being typed is no proposal for itself.
      if (symbol.span.source == text_.id() && symbol.span.begin == cursor_.word.begin)
        continue;
      add(symbol.name, ProposalSort::name, what(symbol), title(symbol));
    }
  }
  static std::string what(const Symbol& symbol) {
    if (symbol.kind == Symbol::Kind::let)
      return "let";
    return std::string(symbol.row != nullptr ? symbol.row->name : describe(Category::point));
  }
  static std::string title(const Symbol& symbol) {
    if (symbol.declaration != nullptr && symbol.declaration->title)
      return symbol.declaration->title->text;
    if (symbol.declared != nullptr && symbol.declared->title)
      return symbol.declared->title->text;
    return {};
  }

  void statements() {
    for (const std::string_view word : {"language", "use", "let", "expect"})
      keyword(word);
    for (const KindRow& kind : all_kinds())
      if (!kind.inside)
        this->kind(kind, ProposalSort::kind);
  }
  void kind(const KindRow& kind, ProposalSort sort) {
    std::string head(kind.name);
    std::string snippet = plain(kind.name);
    int stop = 0;
    const auto place = [&](std::string_view words) {
      snippet += " ${" + std::to_string(++stop) + ":" + std::string(words) + "}";
    };
    if (kind.naming == Naming::must)
      place("name");
    if (kind.of != Category::none && !kind.of_optional) {
      snippet += " of";
      place("name");
    }
    add(kind.name, sort, std::string(kind.group), kind.help, head + " ", snippet + " {\n  $0\n}");
  }

  /// What the innermost block states already, and the one that it is.
  std::vector<std::string> stated_in_block() const {
    std::vector<std::string> result;
    if (const SyntaxTree* tree = boat_.tree(text_.id()))
      for (const Statement& statement : tree->statements)
        if (const auto* declaration = std::get_if<Declaration>(&statement))
          collect_stated(*declaration, result);
    return result;
  }
  void collect_stated(const Declaration& declaration, std::vector<std::string>& result) const {
    const bool here = declaration.block.span.begin == cursor_.block_begin;
    for (const Entry& entry : declaration.block.entries) {
      if (const auto* inner = std::get_if<Declaration>(&entry)) {
        if (here)
          result.push_back(inner->kind.text);
        collect_stated(*inner, result);
      }
      const auto* property = std::get_if<Property>(&entry);
      if (here && property != nullptr && property->name.span.begin != cursor_.word.begin)
        result.push_back(property->name.text);
    }
  }

  void entries() {
    const KindRow* kind = cursor_.kind;
    if (kind == nullptr)
      return;
    const std::vector<std::string> stated = stated_in_block();
    if (kind->free_properties) {
      names(Category::point);
      return;
    }
    for (const PropertyRow& row : kind->properties)
      if (!contains(stated, row.name))
        property(row);
    for (const std::string_view name : kind->blocks)
      if (const KindRow* block = find_kind(name))
        this->kind(*block, ProposalSort::block);
    if (kind->holds_overlays)
      for (const KindRow& each : all_kinds())
        if (!each.inside)
          this->kind(each, ProposalSort::block);
    if (kind->holds_items) {
      add("line", ProposalSort::keyword, {}, {});
      names(Category::part);
    }
  }
  void property(const PropertyRow& row) {
    const std::string name(row.name);
    add(row.name, ProposalSort::property, property_detail(row), row.help, name + ": ",
        plain(name) + ": ${0:" + plain(row.example) + "}", row.need == Need::required);
  }
  void settings() {
    for (const PropertyRow& row : cursor_.rows)
      if (!contains(cursor_.stated, row.name))
        property(row);
  }

  /// Not the declaration that is being written itself.
  void bases() {
    const std::uint32_t at = cursor_.word.begin;
    if (const KindRow* kind = find_kind(cursor_.head))
      symbols([&](const Symbol& symbol) {
        const Declaration* declaration = symbol.declaration;
        const bool here = declaration != nullptr && symbol.span.source == text_.id() &&
                          declaration->span.begin <= at && at <= declaration->span.end + 1;
        return symbol.row == kind && !here;
      });
  }
  void targets() {
    const KindRow* kind = find_kind(cursor_.head);
    names(kind != nullptr && kind->of != Category::none ? kind->of : Category::stay);
  }

  void values() {
    const PropertyRow* row = cursor_.row;
    if (row == nullptr) {
      any_value();
      return;
    }
    words(row->choices, ProposalSort::choice);
    if (!row->or_word.empty())
      words({row->or_word}, ProposalSort::choice);
    if (row->or_off)
      words({"off"}, ProposalSort::choice);
    switch (row->type) {
    case ValueType::reference:
    case ValueType::reference_list:
      names(row->refers_to);
      break;
    case ValueType::path:
      names(Category::point);
      break;
    case ValueType::end:
      ends();
      break;
    case ValueType::thread:
      for (const ThreadRow& thread : known_threads())
        add(thread.designation, ProposalSort::choice, {}, thread.standard,
            "\"" + std::string(thread.designation) + "\"");
      break;
    case ValueType::choice:
    case ValueType::choice_list:
    case ValueType::date:
    case ValueType::text:
    case ValueType::text_list:
    case ValueType::word:
    case ValueType::size:
      break;
    default:
      numbers();
      break;
    }
    if (all_.empty() && !row->example.empty())
      add(row->example, ProposalSort::choice, property_detail(*row), row->help);
  }
  void ends() {
    for (const EndRow& end : all_ends())
      add(end.name, ProposalSort::end, {}, end.help, std::string(end.name) + " ",
          plain(end.name) + " ($0)");
  }
  /// Values that have a name.
  void numbers() {
    symbols([](const Symbol& symbol) { return symbol.kind == Symbol::Kind::let; });
  }
  void any_value() {
    symbols([](const Symbol& symbol) {
      return symbol.kind == Symbol::Kind::let || symbol.kind == Symbol::Kind::point;
    });
  }

  void units() {
    const PropertyRow* row = cursor_.row;
    const std::string usual = row != nullptr ? example_unit(*row) : std::string();
    for (const Unit& unit : all_units())
      if (row == nullptr || row->type == ValueType::any || row->type == ValueType::vector ||
          unit.dimension == row->dimension ||
          (!row->other_dimension.is_plain_number() && unit.dimension == row->other_dimension))
        add(unit.name, ProposalSort::unit, describe(unit.dimension), unit.meaning, {}, {},
            unit.name == usual);
    behind_value();
  }
  void behind_value() {
    if (cursor_.row != nullptr && cursor_.row->type == ValueType::path) {
      for (const std::string_view word : {"free", "clamped", "ends"})
        keyword(word);
      return;
    }
    if (cursor_.kind != nullptr && cursor_.kind->free_properties)
      keyword("mirrored");
    for (const std::string_view word :
         {"measured", "drawn", "maker", "standard", "practice", "assumed", "computed"})
      for (const Keyword& each : keywords())
        if (each.word == word)
          add(word, ProposalSort::source, {}, each.help);
  }

  const OpenBoat& boat_;
  const SourceText& text_;
  Cursor cursor_;
  std::vector<Proposal> all_;
};

} // namespace

std::string_view name_of(ProposalSort sort) {
  switch (sort) {
  case ProposalSort::keyword:
    return "keyword";
  case ProposalSort::kind:
    return "kind";
  case ProposalSort::property:
    return "property";
  case ProposalSort::block:
    return "block";
  case ProposalSort::name:
    return "name";
  case ProposalSort::choice:
    return "choice";
  case ProposalSort::end:
    return "end";
  case ProposalSort::unit:
    return "unit";
  case ProposalSort::source:
    return "source";
  case ProposalSort::file:
    return "file";
  }
  return "keyword";
}

Proposals complete(const OpenBoat& boat, SourceId source, std::uint32_t offset) {
  return Proposer(boat, source, offset).run();
}

} // namespace sheerpole::service
