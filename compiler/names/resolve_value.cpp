#include "names/resolve_steps.hpp"

#include "kinds/kind_row.hpp"
#include "names/symbol_table.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

/// The name alone, without the side behind it.
Name bare_name(const Expression& expression) {
  Span span = expression.span;
  if (!expression.side.missing())
    span.end = span.begin + static_cast<std::uint32_t>(expression.text.size());
  return {expression.text, span};
}

void resolve_expression(const Expression& expression, SymbolTable& table, DiagnosticSink& sink) {
  if (expression.kind == ExpressionKind::name && good_side(expression.side, sink))
    table.find_value(bare_name(expression), expression.span);
  for (const Expression& operand : expression.operands)
    resolve_expression(operand, table, sink);
}

/// What stands where a word of a list belongs, as a message quotes it.
std::string quoted(const Expression& expression) {
  const bool word = expression.kind == ExpressionKind::construct || expression.kind == ExpressionKind::name;
  return word ? "`" + expression.text + "`" : "what stands here";
}

void resolve_choice(const Expression& expression, const PropertyRow& row, DiagnosticSink& sink) {
  if (expression.kind == ExpressionKind::error)
    return;
  const bool word = expression.kind == ExpressionKind::name && expression.side.missing();
  const auto& choices = row.choices;
  if (word && std::find(choices.begin(), choices.end(), expression.text) != choices.end())
    return;
  const std::vector<std::string> known(choices.begin(), choices.end());
  auto builder =
      diagnose("unknown-choice",
               {{"written", quoted(expression)}, {"name", std::string(row.name)}, {"known", listed(known)}})
          .at(expression.span);
  sink.report(with_nearest(std::move(builder), word ? expression.text : "", expression.span, known));
}

void resolve_name(const Expression& expression, const PropertyRow& row, Category wanted, SymbolTable& table,
                  DiagnosticSink& sink) {
  if (expression.kind == ExpressionKind::error)
    return;
  if (expression.kind != ExpressionKind::name) {
    sink.report(diagnose("name-wanted",
                         {{"name", std::string(row.name)}, {"wanted", std::string(describe(wanted))}})
                    .at(expression.span));
    return;
  }
  const Name name = bare_name(expression);
  const bool has_sides = wanted == Category::point || row.type == ValueType::reference_list;
  if (!expression.side.missing() && !has_sides) {
    sink.report(diagnose("side-not-here", {{"name", name.text}, {"wanted", std::string(describe(wanted))}})
                    .at(expression.side.span)
                    .edit(expression.span, name.text, "write `" + name.text + "`"));
    return;
  }
  if (!good_side(expression.side, sink))
    return;
  table.find(name, expression.span, {wanted});
}

void resolve_end(const Expression& expression, const PropertyRow& row, SymbolTable& table,
                 DiagnosticSink& sink) {
  if (expression.kind == ExpressionKind::error)
    return;
  const bool word = expression.kind == ExpressionKind::construct || expression.kind == ExpressionKind::name;
  const EndRow* end = word ? find_end(expression.text) : nullptr;
  if (end == nullptr) {
    const std::vector<std::string> known = row_names(all_ends());
    Span span = expression.span;
    if (word)
      span.end = span.begin + static_cast<std::uint32_t>(expression.text.size());
    auto builder = diagnose("unknown-end", {{"written", quoted(expression)},
                                            {"name", std::string(row.name)},
                                            {"known", listed(known)}})
                       .at(span);
    sink.report(with_nearest(std::move(builder), word ? expression.text : "", span, known));
    return;
  }
  for (const Setting& setting : expression.settings) {
    if (setting.name.missing())
      continue;
    const PropertyRow* known = find_property(end->dimensions, setting.name.text);
    if (known != nullptr) {
      resolve_value(setting.value, *known, table, sink);
      continue;
    }
    const std::vector<std::string> names = row_names(end->dimensions);
    sink.report(with_nearest(
        diagnose("unknown-setting",
                 {{"name", setting.name.text}, {"owner", std::string(end->name)}, {"known", listed(names)}})
            .at(setting.name.span),
        setting.name.text, setting.name.span, names));
  }
}

bool is_word(const Expression& expression, std::string_view word) {
  return !word.empty() && expression.kind == ExpressionKind::name && expression.side.missing() &&
         expression.text == word;
}

bool is_off(const Expression& expression) {
  return is_word(expression, "off");
}

} // namespace

bool good_side(const Name& side, DiagnosticSink& sink) {
  if (side.missing() || side.text == "port" || side.text == "starboard")
    return true;
  auto builder = diagnose("unknown-side", {{"side", side.text}}).at(side.span);
  // Sides are cut short in many ways, but the first letter stays: stb, stbd, prt.
  const std::string meant = side.text.front() == 'p' ? "port" : side.text.front() == 's' ? "starboard" : "";
  if (!meant.empty())
    builder = std::move(builder).edit(side.span, meant, "write `" + meant + "`");
  sink.report(std::move(builder));
  return false;
}

void resolve_any_value(const Value& value, SymbolTable& table, DiagnosticSink& sink) {
  for (const Stop& stop : value.stops)
    resolve_expression(stop.expression, table, sink);
  if (value.tolerance)
    resolve_expression(value.tolerance->amount, table, sink);
}

void resolve_value(const Value& value, const PropertyRow& row, SymbolTable& table, DiagnosticSink& sink) {
  for (const Stop& stop : value.stops) {
    switch (row.type) {
    case ValueType::choice:
    case ValueType::choice_list:
      resolve_choice(stop.expression, row, sink);
      break;
    case ValueType::reference:
    case ValueType::reference_list:
      resolve_name(stop.expression, row, row.refers_to, table, sink);
      break;
    case ValueType::path:
      resolve_name(stop.expression, row, Category::point, table, sink);
      break;
    case ValueType::end:
      resolve_end(stop.expression, row, table, sink);
      break;
    case ValueType::text:
    case ValueType::word:
    case ValueType::size:
    case ValueType::thread:
    case ValueType::date:
      break; // a name has no meaning there; the value is refused as a whole when it is read
    default:
      if (row.or_off && is_off(stop.expression))
        break;
      if (is_word(stop.expression, row.or_word))
        break;
      resolve_expression(stop.expression, table, sink);
      break;
    }
  }
  if (value.tolerance)
    resolve_expression(value.tolerance->amount, table, sink);
}

} // namespace sheerpole
