#include "names/resolve_value.hpp"

#include "kinds/kind_row.hpp"
#include "names/nearest_edit.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

void resolve_expression(const Expression& expression, SymbolTable& table) {
  if (expression.kind == ExpressionKind::name)
    table.find_value({expression.text, expression.span}, expression.span);
  for (const Expression& operand : expression.operands)
    resolve_expression(operand, table);
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
  Name name{expression.text, expression.span};
  if (!expression.side.missing()) {
    name.span.end = name.span.begin + static_cast<std::uint32_t>(expression.text.size());
    const bool known = expression.side.text == "port" || expression.side.text == "starboard";
    if (!known || wanted != Category::point) {
      sink.report(diagnose("unknown-side", {{"side", expression.side.text}}).at(expression.side.span));
      return;
    }
  }
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

} // namespace

void resolve_any_value(const Value& value, SymbolTable& table) {
  for (const Stop& stop : value.stops)
    resolve_expression(stop.expression, table);
  if (value.tolerance)
    resolve_expression(value.tolerance->amount, table);
}

void resolve_value(const Value& value, const PropertyRow& row, SymbolTable& table, DiagnosticSink& sink) {
  for (const Stop& stop : value.stops) {
    switch (row.type) {
    case ValueType::choice:
    case ValueType::choice_list:
      resolve_choice(stop.expression, row, sink);
      break;
    case ValueType::reference:
      resolve_name(stop.expression, row, row.refers_to, table, sink);
      break;
    case ValueType::path:
      resolve_name(stop.expression, row, Category::point, table, sink);
      break;
    case ValueType::end:
      resolve_end(stop.expression, row, table, sink);
      break;
    default:
      resolve_expression(stop.expression, table);
      break;
    }
  }
  if (value.tolerance)
    resolve_expression(value.tolerance->amount, table);
}

} // namespace sheerpole
