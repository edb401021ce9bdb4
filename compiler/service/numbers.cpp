#include "service/numbers.hpp"

#include "calculate/cut/cut_phrase.hpp"
#include "kinds/kind_row.hpp"
#include "service/cursor.hpp"
#include "service/waiting.hpp"
#include "wording/say.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace sheerpole::service {

namespace {

bool is_number(const PropertyRow& row) {
  switch (row.type) {
  case ValueType::quantity:
  case ValueType::quantity_list:
  case ValueType::number:
  case ValueType::count:
  case ValueType::vector:
  case ValueType::size:
    return true;
  default:
    return false;
  }
}

bool is_number(const Expression& expression) {
  switch (expression.kind) {
  case ExpressionKind::number:
  case ExpressionKind::length:
  case ExpressionKind::vector:
  case ExpressionKind::negate:
  case ExpressionKind::add:
  case ExpressionKind::subtract:
  case ExpressionKind::multiply:
  case ExpressionKind::divide:
    return true;
  default:
    return false;
  }
}

NumberState state_of(const Value& value) {
  if (!value.source)
    return NumberState::stated;
  for (const NumberState state :
       {NumberState::assumed, NumberState::drawn, NumberState::maker, NumberState::standard,
        NumberState::practice, NumberState::computed, NumberState::measured})
    if (name_of(state) == value.source->word)
      return state;
  return NumberState::stated;
}

/// The property that a missing number is stated by; empty where it takes more than a value.
std::string_view property_of(const Remark& what) {
  if (what.is(LengthPhrase::length_missing) || what.is(LengthPhrase::setting_missing))
    return "length";
  if (what.is(CutPhrase::contraction_missing))
    return "contraction";
  if (what.is(CutPhrase::dock_tension_missing))
    return "dock-tension";
  if (what.is(CutPhrase::bench_tension_missing))
    return "bench-tension";
  if (what.is(CutPhrase::bedding_missing))
    return "bedding";
  return {};
}

class Numbers {
public:
  explicit Numbers(const OpenBoat& boat)
      : boat_(boat), waiting_(boat.compiled.checked ? pieces_waiting(*boat.compiled.checked) : Waiting()) {}

  std::vector<NumberEntry> run() {
    if (boat_.compiled.checked)
      for (const DerivedStay& stay : boat_.compiled.derived->stays)
        add_missing_of(stay);
    if (const ResolvedTree* names = boat_.names())
      for (const ResolvedDeclaration& declaration : names->declarations)
        add_required(declaration);
    for (const auto& tree : boat_.compiled.trees)
      add_stated(*tree);
    return std::move(all_);
  }

private:
  const SourceText& text(Span span) const { return boat_.text(span.source); }

  void add_missing_of(const DerivedStay& derived) {
    const Rig& rig = *boat_.compiled.rig;
    const Stay& stay = rig[derived.stay];
    const bool asked = std::any_of(derived.pieces.begin(), derived.pieces.end(), [&](const Piece& piece) {
      return boat_.compiled.checked->state(piece) == PieceState::not_measured;
    });
    if (asked)
      add_reading(stay, derived);
    for (const Piece& piece : derived.pieces)
      for (const std::vector<MissingInput>* inputs : {&piece.missing, &piece.blocked})
        for (const MissingInput& input : *inputs)
          add_missing(rig, input, piece.name);
  }

  /// A stay is measured by a reading, which stands behind all else in its file.
  void add_reading(const Stay& stay, const DerivedStay& derived) {
    const KindRow* reading = find_kind("reading");
    NumberEntry entry{NumberState::not_measured, stay.name, "runs"};
    entry.row = find_property(reading->properties, "runs");
    entry.place = stay.place;
    const SourceText& file = text(stay.place);
    const auto end = static_cast<std::uint32_t>(file.bytes().size());
    entry.write = edit_of(file, {file.id(), end, end}, "");
    entry.before = (file.bytes().ends_with('\n') ? "" : "\n");
    entry.before += "\nreading of " + stay.name + " {\n  method: tape\n  runs: ";
    entry.after = "\n}\n";
    for (const Piece& piece : derived.pieces)
      entry.pieces.push_back(piece.name);
    all_.push_back(std::move(entry));
  }

  void add_missing(const Rig& rig, const MissingInput& input, const std::string& piece) {
    const auto known = std::find_if(all_.begin(), all_.end(), [&](const NumberEntry& each) {
      return each.place == input.place && each.words == say(rig, input.what);
    });
    if (known != all_.end()) {
      if (std::find(known->pieces.begin(), known->pieces.end(), piece) == known->pieces.end())
        known->pieces.push_back(piece);
      return;
    }
    NumberEntry entry{NumberState::missing, std::string(text(input.place).text(input.place)),
                      std::string(property_of(input.what))};
    entry.words = say(rig, input.what);
    entry.mend = say(rig, input.mend);
    entry.place = input.place;
    entry.pieces = {piece};
    place_missing(input, entry);
    all_.push_back(std::move(entry));
  }

  /// What a kind must state and does not, and how each adjuster of a stack is set: without these there are
  /// no lengths at all.
  void add_required(const ResolvedDeclaration& resolved) {
    const Declaration& declaration = *resolved.syntax;
    for (const PropertyRow& row : resolved.kind->properties) {
      if (row.need != Need::required || resolved.find(row.name) != nullptr)
        continue;
      NumberEntry entry{NumberState::missing, "", std::string(row.name)};
      entry.place = declaration.name.missing() ? declaration.kind.span : declaration.name.span;
      place_in_block(declaration, entry);
      all_.push_back(std::move(entry));
    }
    for (const ResolvedItem& item : resolved.items)
      if (const Symbol& part = (*boat_.names())[item.part];
          part.row != nullptr && part.row->adjuster && item.syntax->settings.empty()) {
        NumberEntry entry{NumberState::missing, "", "length"};
        entry.place = item.syntax->span;
        place_behind(*item.syntax, entry);
        all_.push_back(std::move(entry));
      }
    for (const ResolvedDeclaration& block : resolved.blocks)
      add_required(block);
  }

  /// Where the value goes: into the block of the declaration, or behind the part in its stack.
  void place_missing(const MissingInput& input, NumberEntry& entry) const {
    const SyntaxTree* tree = boat_.tree(input.place.source);
    if (tree == nullptr || entry.property.empty())
      return;
    for (const Statement& statement : tree->statements)
      if (const auto* declaration = std::get_if<Declaration>(&statement))
        if (contains(declaration->span, input.place))
          input.what.is(LengthPhrase::setting_missing) ? place_in_stack(*declaration, entry)
                                                       : place_in_block(*declaration, entry);
  }
  static bool contains(Span outer, Span inner) {
    return outer.source == inner.source && outer.begin <= inner.begin && inner.end <= outer.end;
  }
  void place_in_block(const Declaration& declaration, NumberEntry& entry) const {
    const KindRow* kind = find_kind(declaration.kind.text);
    const Span block = declaration.block.span;
    if (kind == nullptr || block.end <= block.begin)
      return;
    entry.of = declaration.name.missing() ? declaration.kind.text : declaration.name.text;
    entry.row = find_property(kind->properties, entry.property);
    const SourceText& file = text(block);
    entry.write = edit_of(file, {file.id(), block.begin + 1, block.begin + 1}, "");
    // A block on one line becomes one over several.
    const bool one_line = file.text(block).find('\n') == std::string_view::npos;
    entry.before = "\n  " + entry.property + ": ";
    entry.after = one_line ? "\n" : "";
  }
  void place_in_stack(const Declaration& declaration, NumberEntry& entry) const {
    for (const Entry& each : declaration.block.entries) {
      if (const auto* inner = std::get_if<Declaration>(&each))
        place_in_stack(*inner, entry);
      const auto* item = std::get_if<Item>(&each);
      if (item != nullptr && contains(item->span, entry.place) && item->settings.empty())
        place_behind(*item, entry);
    }
  }
  void place_behind(const Item& item, NumberEntry& entry) const {
    const SourceText& file = text(item.span);
    entry.of = item.name.text;
    if (const Symbol* part = find_symbol(boat_.names(), item.name.text);
        part != nullptr && part->row != nullptr)
      entry.row = find_property(part->row->settings, entry.property);
    entry.write = edit_of(file, {file.id(), item.span.end, item.span.end}, "");
    entry.before = " (" + entry.property + ": ";
    entry.after = ")";
  }

  void add_stated(const SyntaxTree& tree) {
    for (const Statement& statement : tree.statements) {
      if (const auto* let = std::get_if<Let>(&statement); let != nullptr && !let->name.missing())
        add_value(let->name.text, "", nullptr, let->value, let->name.text);
      else if (const auto* declaration = std::get_if<Declaration>(&statement))
        add_declaration(*declaration, "");
    }
  }
  void add_declaration(const Declaration& declaration, const std::string& owner) {
    const KindRow* kind = find_kind(declaration.kind.text);
    if (kind == nullptr)
      return;
    std::string name = owner;
    if (name.empty() && !declaration.name.missing())
      name = declaration.name.text + (declaration.side.missing() ? "" : "." + declaration.side.text);
    if (name.empty() && !declaration.of.missing())
      name = declaration.of.text + (declaration.of_side.missing() ? "" : "." + declaration.of_side.text);
    if (name.empty())
      name = declaration.kind.text;
    for (const Entry& entry : declaration.block.entries) {
      if (const auto* inner = std::get_if<Declaration>(&entry))
        add_declaration(*inner, name);
      else if (const auto* property = std::get_if<Property>(&entry))
        add_property(*property, *kind, name, assumed_of(declaration, name));
      else if (const auto* item = std::get_if<Item>(&entry))
        add_settings(*item);
    }
  }
  /// By what name the list of assumptions has a declaration.
  static std::string assumed_of(const Declaration& declaration, const std::string& name) {
    if (declaration.kind.text == "reading")
      return "the reading of " + declaration.of.text;
    return declaration.name.missing() ? name : declaration.name.text;
  }
  void add_property(const Property& property, const KindRow& kind, const std::string& owner,
                    const std::string& assumed) {
    if (kind.free_properties) {
      add_value(property.name.text + (property.side.missing() ? "" : "." + property.side.text), "", nullptr,
                property.value, "place of " + property.name.text);
      return;
    }
    const PropertyRow* row = find_property(kind.properties, property.name.text);
    if (row != nullptr && row->type == ValueType::end)
      add_end(property, owner, assumed);
    else if (row != nullptr && is_number(*row))
      add_value(owner, property.name.text, row, property.value, property.name.text + " of " + assumed);
  }
  /// What an end is made to: `lower.gap`.
  void add_end(const Property& property, const std::string& owner, const std::string& assumed) {
    const Expression& end = property.value.expression();
    const EndRow* form = end.kind == ExpressionKind::construct ? find_end(end.text) : nullptr;
    if (form == nullptr)
      return;
    for (const Setting& setting : end.settings)
      if (const PropertyRow* row = find_property(form->dimensions, setting.name.text);
          row != nullptr && is_number(*row))
        add_value(owner, property.name.text + "." + setting.name.text, row, setting.value,
                  setting.name.text + " of " + property.name.text + " " + end.text + " of " + assumed);
  }
  void add_settings(const Item& item) {
    const Symbol* part = find_symbol(boat_.names(), item.name.text);
    const KindRow* kind = part != nullptr ? part->row : nullptr;
    for (const Setting& setting : item.settings) {
      const PropertyRow* row = kind != nullptr ? find_property(kind->settings, setting.name.text)
                                               : find_property(line_settings(), setting.name.text);
      if (row != nullptr && is_number(*row))
        add_value(item.name.text, setting.name.text, row, setting.value,
                  setting.name.text + " of " + item.name.text);
    }
  }
  /// `assumed`: what the list of assumptions calls it.
  void add_value(const std::string& of, const std::string& property, const PropertyRow* row,
                 const Value& value, const std::string& assumed) {
    if (value.stops.empty() || (row == nullptr && !is_number(value.expression())))
      return;
    NumberEntry entry{state_of(value), of, property};
    entry.row = row;
    entry.written = text(value.span).text(value.span);
    entry.place = value.span;
    entry.write = edit_of(text(value.span), value.span, "");
    if (entry.state == NumberState::assumed)
      if (const auto found = waiting_.find(assumed); found != waiting_.end())
        entry.pieces = found->second;
    all_.push_back(std::move(entry));
  }

  const OpenBoat& boat_;
  Waiting waiting_;
  std::vector<NumberEntry> all_;
};

} // namespace

std::string_view name_of(NumberState state) {
  constexpr std::array<std::string_view, 10> names{"missing",  "not-measured", "assumed",  "stated",
                                                   "drawn",    "maker",        "standard", "practice",
                                                   "computed", "measured"};
  return names[static_cast<std::size_t>(state)];
}

std::vector<NumberEntry> numbers(const OpenBoat& boat) {
  return Numbers(boat).run();
}

} // namespace sheerpole::service
