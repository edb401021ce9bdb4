#include "syntax/antlr/tree_builder.hpp"

#include "syntax/antlr/lex.hpp"
#include "syntax/antlr/token_list.hpp"
#include "syntax/parse.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole {

namespace {

Expression error_expression(Span span) {
  Expression result;
  result.span = span;
  return result;
}

/// False when something else stands where the block belongs: then the line is not a declaration at all.
bool has_block_or_nothing(const sheerpole_antlr::RigParser::DeclarationRestContext& rest) {
  const antlr4::ParserRuleContext* body = rest.body;
  if (body == nullptr)
    return false;
  const std::size_t first = body->start->getType();
  return !body->exception || first == sheerpole_antlr::RigParser::LBRACE || ends_line(first);
}

} // namespace

Span TreeBuilder::span(const antlr4::ParserRuleContext& context) const {
  const Span first = tokens_.span(*context.start);
  if (context.stop == nullptr || context.stop->getTokenIndex() < context.start->getTokenIndex())
    return {first.source, first.begin, first.begin}; // nothing was read
  return cover(first, tokens_.span(*context.stop));
}

Name TreeBuilder::name(const antlr4::Token* token) const {
  if (token == nullptr)
    return {};
  const Span span = tokens_.span(*token);
  return {std::string(tokens_.source().text(span)), span};
}

std::optional<Text> TreeBuilder::text(const antlr4::Token* token) {
  if (token == nullptr)
    return std::nullopt;
  return read_text(tokens_, *token, report_);
}

std::vector<Statement> TreeBuilder::file(const Rule::FileContext& context) {
  std::vector<Statement> result;
  result.reserve(context.statements.size());
  for (const Rule::StatementContext* each : context.statements)
    result.push_back(statement(*each));
  return result;
}

template <class Context>
Declaration TreeBuilder::declaration(Name kind, const Context& context) {
  Declaration result;
  result.kind = std::move(kind);
  result.name = name(context.called);
  result.side = name(context.half);
  result.title = text(context.title);
  result.span = span(context);
  const Rule::DeclarationRestContext& rest = *context.rest;
  result.from = name(rest.base);
  result.of = name(rest.target);
  result.of_side = name(rest.side);
  result.on = name(rest.frame);
  result.block = block(rest.body, {result.span.source, result.span.end, result.span.end});
  return result;
}

Statement TreeBuilder::statement(const Rule::StatementContext& context) {
  const Span whole = span(context);
  if (context.version != nullptr)
    return LanguageLine{std::string(tokens_.text(*context.version)), whole};
  if (context.path != nullptr)
    return Use{*text(context.path), whole};
  if (context.content != nullptr && context.start->getType() == Rule::EXPECT)
    return expect(context);
  if (context.content != nullptr)
    return Let{name(context.name), value(context.content, whole), whole};
  if (context.kind == nullptr || context.rest == nullptr || !has_block_or_nothing(*context.rest))
    return ErrorEntry{whole};
  return declaration(name(context.kind), context);
}

Expect TreeBuilder::expect(const Rule::StatementContext& context) {
  Expect result;
  result.stay = name(context.name);
  const auto& parts = context.parts;
  if (parts.size() > 1)
    result.side = name(parts.front());
  if (!parts.empty())
    result.quantity = name(parts.back());
  result.span = span(context);
  if (parts.size() > 2)
    report_.add(diagnose("left-over", {{"found", "the sign ."}}).at(name(parts[2]).span));
  result.value = value(context.content, result.span);
  return result;
}

Block TreeBuilder::block(const Rule::BlockContext* context, Span fallback) {
  Block result;
  result.span = span_or(context, fallback);
  if (context == nullptr)
    return result;
  result.entries.reserve(context->entries.size());
  for (const Rule::EntryContext* each : context->entries)
    result.entries.push_back(entry(*each));
  return result;
}

Entry TreeBuilder::entry(const Rule::EntryContext& context) {
  const Span whole = span(context);
  if (context.content != nullptr)
    return Property{name(context.name), name(context.side), text(context.title),
                    value(context.content, whole), whole};
  if (context.rest != nullptr && !has_block_or_nothing(*context.rest))
    return ErrorEntry{whole};
  if (context.rest != nullptr)
    return declaration(name(context.name), context);
  // Whatever goes on behind the name of an item was reported where it stands.
  if (context.name == nullptr || context.name->exception || context.side != nullptr ||
      context.title != nullptr || context.exception)
    return ErrorEntry{whole};
  Item result{std::nullopt, name(context.name), settings(context.arguments), whole};
  if (context.count != nullptr) {
    Expression& count = result.count.emplace();
    count.kind = ExpressionKind::number;
    count.span = tokens_.span(*context.count);
    count.text = tokens_.text(*context.count);
  }
  return result;
}

std::vector<Setting> TreeBuilder::settings(const Rule::SettingsContext* context) {
  std::vector<Setting> result;
  if (context == nullptr)
    return result;
  result.reserve(context->items.size());
  for (const Rule::SettingContext* each : context->items)
    result.push_back(setting(*each));
  return result;
}

Setting TreeBuilder::setting(const Rule::SettingContext& context) {
  Setting result;
  result.span = span(context);
  result.name = name(context.name);
  const Span end{result.span.source, result.span.end, result.span.end};
  result.value.stops.push_back({expression(context.content, end), {}});
  result.value.tolerance = tolerance(context.bound);
  result.value.source = source(context.origin);
  result.value.span = context.content == nullptr ? end : cover(span(*context.content), end);
  return result;
}

Value TreeBuilder::value(const Rule::ValueContext* context, Span fallback) {
  Value result;
  result.span = span_or(context, fallback);
  if (context->path != nullptr)
    result.shape = ValueShape::path;
  else if (context->list != nullptr)
    result.shape = ValueShape::list;
  result.stops.reserve(std::max<std::size_t>(context->stops.size(), 1));
  for (const Rule::StopContext* each : context->stops)
    result.stops.push_back(stop(*each));
  if (result.stops.empty())
    result.stops.push_back({error_expression(result.span), {}});
  if (context->mirrored != nullptr)
    result.mirrored = tokens_.span(*context->mirrored);
  else if (context->late != nullptr)
    result.mirrored = tokens_.span(*context->late);
  result.tolerance = tolerance(context->bound);
  result.source = source(context->origin);
  return result;
}

Stop TreeBuilder::stop(const Rule::StopContext& context) {
  return {expression(context.content, span(context)), name(context.passage)};
}

std::optional<Tolerance> TreeBuilder::tolerance(const Rule::ToleranceContext* context) {
  if (context == nullptr)
    return std::nullopt;
  const Span whole = span(*context);
  return Tolerance{operand(context->amount, whole), whole};
}

std::optional<SourceNote> TreeBuilder::source(const Rule::SourceContext* context) {
  if (context == nullptr || context->kind == nullptr)
    return std::nullopt;
  return SourceNote{std::string(tokens_.text(*context->kind)), text(context->note), span(*context)};
}

template <class Part, class Read>
Expression TreeBuilder::chain(const std::vector<Part*>& parts, const std::vector<antlr4::Token*>& signs,
                              Span span, Read read) {
  if (parts.empty())
    return error_expression(span);
  if (parts.size() > static_cast<std::size_t>(deepest_nesting)) {
    // Each further part nests the tree one level deeper.
    report_.add(diagnose("too-deep", {{"limit", std::to_string(deepest_nesting)}}).at(span));
    return error_expression(span);
  }
  Expression result = read(*parts.front());
  for (std::size_t i = 1; i < parts.size() && i <= signs.size(); ++i) {
    Expression whole;
    switch (signs[i - 1]->getType()) {
    case Rule::PLUS:
      whole.kind = ExpressionKind::add;
      break;
    case Rule::MINUS:
      whole.kind = ExpressionKind::subtract;
      break;
    case Rule::STAR:
      whole.kind = ExpressionKind::multiply;
      break;
    default:
      whole.kind = ExpressionKind::divide;
      break;
    }
    Expression right = read(*parts[i]);
    whole.span = cover(result.span, right.span);
    whole.operands.reserve(2);
    whole.operands.push_back(std::move(result));
    whole.operands.push_back(std::move(right));
    result = std::move(whole);
  }
  return result;
}

Expression TreeBuilder::expression(const Rule::ExpressionContext* context, Span fallback) {
  if (context == nullptr)
    return error_expression(fallback);
  return chain(context->terms, context->signs, span(*context),
               [this](const Rule::ProductContext& part) { return product(part); });
}

Expression TreeBuilder::product(const Rule::ProductContext& context) {
  return chain(
      context.factors, context.signs, span(context),
      [this, &context](const Rule::OperandContext& part) { return operand(&part, span(context)); });
}

Expression TreeBuilder::operand(const Rule::OperandContext* context, Span fallback) {
  if (context == nullptr)
    return error_expression(fallback);
  Expression result;
  result.span = span(*context);
  if (context->number != nullptr && context->number->getType() == Rule::MALFORMED_NUMBER)
    return result;
  if (context->number != nullptr) {
    result.kind = ExpressionKind::number;
    result.text = tokens_.text(*context->number);
    result.unit = name(context->unit);
  } else if (context->length != nullptr) {
    result.kind = ExpressionKind::length;
    result.text = tokens_.text(*context->length);
  } else if (context->date != nullptr) {
    result.kind = ExpressionKind::date;
    result.text = tokens_.text(*context->date);
  } else if (context->text != nullptr) {
    result.kind = ExpressionKind::text;
    result.text = text(context->text)->text;
  } else if (context->name != nullptr) {
    result.kind = context->arguments == nullptr ? ExpressionKind::name : ExpressionKind::construct;
    result.text = tokens_.text(*context->name->start);
    result.side = name(context->side);
    result.settings = settings(context->arguments);
  } else if (!context->parts.empty()) {
    result = parentheses(*context);
  }
  if (context->minus == nullptr || result.kind == ExpressionKind::error)
    return result;
  Expression negated;
  negated.kind = ExpressionKind::negate;
  negated.span = result.span;
  result.span.begin = tokens_.span(tokens_.at(context->minus->getTokenIndex() + 1)).begin;
  negated.operands.push_back(std::move(result));
  return negated;
}

Expression TreeBuilder::parentheses(const Rule::OperandContext& context) {
  const Span whole = span(context);
  if (context.parts.size() == 1) {
    Expression inner = expression(context.parts.front(), whole);
    if (context.unit != nullptr) {
      report_.add(diagnose("unit-behind-parenthesis", {{"unit", std::string(tokens_.text(*context.unit))}})
                      .at(tokens_.span(*context.unit)));
      return error_expression(whole);
    }
    inner.span = whole;
    return inner;
  }
  Expression result;
  result.kind = ExpressionKind::vector;
  result.span = whole;
  result.unit = name(context.unit);
  result.operands.reserve(context.parts.size());
  for (const Rule::ExpressionContext* part : context.parts)
    result.operands.push_back(expression(part, whole));
  const bool has_error =
      std::any_of(result.operands.begin(), result.operands.end(),
                  [](const Expression& part) { return part.kind == ExpressionKind::error; });
  if (context.parts.size() == 3)
    return result;
  // Reported where it stands; a comma without a blank is one in a number, which was told by itself.
  const std::string_view bytes = tokens_.source().bytes();
  const auto digit = [&](std::uint32_t at) {
    return at < bytes.size() && bytes[at] >= '0' &&
           bytes[at] <= '9'; // what is missing stands behind the file
  };
  const bool has_tight_comma = std::adjacent_find(result.operands.begin(), result.operands.end(),
                                                  [&](const Expression& a, const Expression& b) {
                                                    return b.span.begin == a.span.end + 1 &&
                                                           digit(a.span.end - 1) && digit(b.span.begin);
                                                  }) != result.operands.end();
  if (has_error || has_tight_comma || context.exception)
    return error_expression(whole);
  report_.add(
      diagnose("place-needs-three-numbers", {{"count", std::to_string(context.parts.size())}}).at(whole));
  return error_expression(whole);
}

} // namespace sheerpole
