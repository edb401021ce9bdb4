#include "elaborate/elaboration.hpp"

#include "kinds/kind_row.hpp"
#include "names/symbol_table.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace sheerpole {

namespace {

/// What a rule may look at, and which declarations that is.
struct LookedAt {
  std::string_view word;
  Category category;
  bool has_sorts; ///< there are several kinds of it
};
constexpr std::array all_looked_at{
    LookedAt{"stays", Category::stay, false}, LookedAt{"parts", Category::part, true},
    LookedAt{"lines", Category::material, true}, LookedAt{"splices", Category::splice, false},
    LookedAt{"spreaders", Category::spreader, false}};

const LookedAt& looked_at(const std::string& word) {
  for (const LookedAt& one : all_looked_at)
    if (one.word == word)
      return one;
  return all_looked_at.front();
}

/// Reads one rule; what does not go together in it is reported.
class RuleReader {
public:
  RuleReader(Elaboration& elaboration, const ResolvedDeclaration& declaration)
      : elaboration_(elaboration), declaration_(declaration) {}

  std::optional<UserRule> run() {
    rule_.name = elaboration_.name_of(declaration_);
    rule_.title = declaration_.syntax->title ? declaration_.syntax->title->text : "";
    rule_.place = elaboration_.place_of(declaration_);
    read_words();
    read_stays();
    if (!read_property() || !bounds_fit())
      return std::nullopt;
    read_bounds();
    if (!asks_something())
      return std::nullopt;
    return std::move(rule_);
  }

private:
  const ResolvedProperty* find(std::string_view name) const { return declaration_.find(name); }

  std::string choice(std::string_view name) {
    const ResolvedProperty* property = find(name);
    return property == nullptr
               ? ""
               : elaboration_.read.word(property->syntax->value, *property->row, rule_.name).value_or("");
  }
  std::string bare_word(std::string_view name) {
    const ResolvedProperty* property = find(name);
    return property == nullptr
               ? ""
               : elaboration_.read.bare_word(property->syntax->value, *property->row, rule_.name)
                     .value_or("");
  }

  void read_words() {
    if (find("looks-at") != nullptr)
      rule_.looks_at = choice("looks-at");
    rule_.sort = bare_word("sort");
    rule_.quantity = choice("quantity");
    rule_.property = bare_word("property");
    rule_.is = bare_word("is");
    rule_.is_not = bare_word("is-not");
    rule_.to_be_stated = find("stated") != nullptr;
    rule_.severity = choice("severity");
    rule_.message = elaboration_.text(declaration_, "message");
    rule_.why = elaboration_.text(declaration_, "why");
    rule_.mend = elaboration_.text(declaration_, "mend");
    rule_.active = choice("active") != "off";
  }

  void read_stays() {
    if (const ResolvedProperty* stays = find("stays"))
      for (const Stop& stop : stays->syntax->value.stops) {
        const Expression& stay = stop.expression;
        for (const StayId id : elaboration_.stays_named({stay.text, stay.span}, stay.side, stay.span))
          rule_.stays.push_back(id);
      }
  }

  bool does_not_fit(std::string words, Span place) {
    elaboration_.sink.report(
        diagnose("rule-does-not-fit", {{"rule", rule_.name}, {"words", std::move(words)}}).at(place));
    return false;
  }
  Span place_of(std::string_view name) const { return find(name)->syntax->span; }

  /// The kinds that are looked at; none when there is none of that sort, which is reported.
  std::vector<const KindRow*> kinds() {
    const LookedAt& target = looked_at(rule_.looks_at);
    std::vector<const KindRow*> result;
    std::vector<std::string> names;
    for (const KindRow& kind : all_kinds()) {
      if (kind.category != target.category)
        continue;
      names.emplace_back(kind.name);
      if (rule_.sort.empty() || rule_.sort == kind.name)
        result.push_back(&kind);
    }
    if (result.empty()) {
      const Span span = find("sort")->syntax->value.expression().span;
      elaboration_.sink.report(with_nearest(
          diagnose("unknown-choice",
                   {{"written", "`" + rule_.sort + "`"}, {"name", "sort"}, {"known", listed(names)}})
              .at(span),
          rule_.sort, span, names));
    }
    return result;
  }

  /// Finds the row of the property that is looked at, or that of a quantity.
  bool read_property() {
    const bool quantity = find("quantity") != nullptr;
    if (quantity == (find("property") != nullptr))
      return declaration_.incomplete ? false
             : quantity
                 ? does_not_fit("it names a quantity and a property; a rule looks at one of them",
                                place_of("property"))
                 : does_not_fit("it names neither a quantity nor a property to look at", rule_.place);
    if (find("sort") != nullptr && !looked_at(rule_.looks_at).has_sorts)
      return does_not_fit("only parts and lines are of a sort", place_of("sort"));
    if (quantity)
      return rule_.looks_at == "stays" ||
             does_not_fit(rule_.quantity + " is worked out of stays, and it looks at " + rule_.looks_at,
                          place_of("quantity"));
    if (rule_.property.empty())
      return false; // reported
    const std::vector<const KindRow*> all = kinds();
    std::vector<std::string> names;
    for (const KindRow* kind : all) {
      for (const PropertyRow& row : kind->properties)
        names.emplace_back(row.name);
      if (const PropertyRow* row = find_property(kind->properties, rule_.property)) {
        row_ = *row;
        rule_.kinds.emplace_back(kind->name);
      }
    }
    if (all.empty() || !rule_.kinds.empty())
      return !all.empty(); // else reported
    const Span span = find("property")->syntax->value.expression().span;
    const std::string owner = all.size() == 1 ? std::string(all.front()->name)
                                              : rule_.looks_at.substr(0, rule_.looks_at.size() - 1);
    elaboration_.sink.report(
        with_nearest(diagnose("unknown-property", {{"name", rule_.property}, {"owner", owner}}).at(span),
                     rule_.property, span, names));
    return false;
  }

  /// Bounds are for numbers, words for everything else.
  bool bounds_fit() {
    const bool quantity = !rule_.quantity.empty();
    const bool number = quantity || row_.type == ValueType::quantity;
    for (const std::string_view bound : {"at-least", "at-most"})
      if (!number && find(bound) != nullptr)
        return does_not_fit(rule_.property + " is no number, so that " + std::string(bound) +
                                " says nothing of it",
                            place_of(bound));
    for (const std::string_view word : {"is", "is-not"})
      if (number && find(word) != nullptr)
        return does_not_fit((quantity ? rule_.quantity : rule_.property) +
                                " is a number: it is held against at-least and at-most",
                            place_of(word));
    if (quantity && find("stated") != nullptr)
      return does_not_fit(rule_.quantity + " is worked out, not stated", place_of("stated"));
    return true;
  }

  std::optional<Sourced<Quantity>> bound(std::string_view name) {
    const ResolvedProperty* property = find(name);
    if (property == nullptr)
      return std::nullopt;
    PropertyRow row{.name = name, .type = ValueType::quantity};
    if (rule_.quantity.empty()) {
      row.dimension = row_.dimension;
      row.other_dimension = row_.other_dimension;
      row.example = row_.example;
    } else {
      row.dimension = dimension::length;
      row.example = "20 mm";
    }
    return elaboration_.read.quantity(property->syntax->value, row, rule_.name);
  }

  void read_bounds() {
    rule_.at_least = bound("at-least");
    rule_.at_most = bound("at-most");
  }

  bool asks_something() {
    if (find("at-least") != nullptr || find("at-most") != nullptr)
      return rule_.at_least || rule_.at_most; // else reported
    if (find("is") != nullptr || find("is-not") != nullptr || rule_.to_be_stated)
      return true;
    if (!declaration_.incomplete)
      elaboration_.sink.report(
          diagnose("rule-without-bound",
                   {{"rule", rule_.name},
                    {"words", rule_.quantity.empty() ? "none of at-least, at-most, is, is-not and stated"
                                                     : "neither at-least nor at-most"}})
              .at(rule_.place));
    return false;
  }

  Elaboration& elaboration_;
  const ResolvedDeclaration& declaration_;
  UserRule rule_;
  PropertyRow row_; ///< of the property that is looked at
};

} // namespace

void elaborate_rule(Elaboration& elaboration, const ResolvedDeclaration& declaration) {
  if (!elaboration.has_required(declaration))
    return;
  auto rule = RuleReader(elaboration, declaration).run();
  if (!rule)
    return;
  const Rig& rig = elaboration.rig;
  const bool fitted = elaboration.looks <= most_looks;
  elaboration.looks += rule->looks_at == "stays"   ? rig.stays.size()
                       : rule->looks_at == "parts" ? rig.parts.size()
                       : rule->looks_at == "lines" ? rig.materials.size()
                                                   : rig.splices.size() + rig.spreaders.size();
  if (fitted && elaboration.looks > most_looks)
    elaboration.sink.report(
        diagnose("rules-too-many", {{"rule", rule->name}, {"limit", std::to_string(most_looks)}})
            .at(rule->place));
  elaboration.rig.rules.push_back(std::move(*rule));
}

} // namespace sheerpole
