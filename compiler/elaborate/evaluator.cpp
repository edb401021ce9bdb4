#include "elaborate/evaluator.hpp"

#include "elaborate/dimension_findings.hpp"
#include "units/parse_quantity.hpp"
#include "units/unit.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace sheerpole {

namespace {

SourceClass class_of(const std::string& word) {
  for (const SourceClass candidate :
       {SourceClass::measured, SourceClass::drawn, SourceClass::maker, SourceClass::standard,
        SourceClass::practice, SourceClass::assumed, SourceClass::computed})
    if (name_of(candidate) == word)
      return candidate;
  return SourceClass::unstated;
}

void add_assumptions(Provenance& to, const Provenance& from) {
  for (const std::string& assumption : from.assumptions)
    if (std::find(to.assumptions.begin(), to.assumptions.end(), assumption) == to.assumptions.end())
      to.assumptions.push_back(assumption);
}

/// The provenance of something worked out from two values: a plain literal beside a named value does not
/// count as a source of its own.
Provenance combined(const Provenance& a, const Provenance& b) {
  Provenance result;
  const bool named = !a.note.empty() || !b.note.empty() || a.source_class != SourceClass::unstated ||
                     b.source_class != SourceClass::unstated;
  result.source_class = named ? SourceClass::computed : SourceClass::unstated;
  add_assumptions(result, a);
  add_assumptions(result, b);
  return result;
}

} // namespace

Evaluator::Evaluator(const ResolvedTree& tree, const SourceSet& sources, DiagnosticSink& sink)
    : tree_(tree), sources_(sources), sink_(sink), memo_(tree.symbols.size()) {}

std::string Evaluator::written(const Value& value) const {
  Span span = cover(value.stops.front().expression.span, value.stops.back().expression.span);
  if (value.tolerance)
    span = cover(span, value.tolerance->span);
  return std::string(sources_[span.source].text(span));
}

std::optional<Evaluated> Evaluator::evaluate(const Value& value, const std::string& owner) {
  std::optional<Evaluated> result = evaluate(value.expression());
  if (!result)
    return result;
  Provenance& provenance = result->provenance;
  provenance.written = written(value);
  provenance.place = value.expression().span;
  if (value.source) {
    provenance.source_class = class_of(value.source->word);
    provenance.note = value.source->note ? value.source->note->text : "";
    if (provenance.source_class == SourceClass::assumed)
      provenance.assumptions = {owner};
    else if (provenance.source_class != SourceClass::computed)
      provenance.assumptions.clear(); // the file vouches for the number itself
  } else if (provenance.source_class == SourceClass::computed) {
    provenance.note = "from " + std::string(sources_[value.span.source].text(value.expression().span));
  }
  return result;
}

std::optional<Evaluated> Evaluator::evaluate(const Expression& expression) {
  switch (expression.kind) {
  case ExpressionKind::number:
  case ExpressionKind::length:
    return literal(expression);
  case ExpressionKind::name:
    return name(expression);
  case ExpressionKind::vector:
    return vector(expression);
  case ExpressionKind::negate:
    return negated(expression);
  case ExpressionKind::add:
    return finite(sum(expression, 1.0), expression);
  case ExpressionKind::subtract:
    return finite(sum(expression, -1.0), expression);
  case ExpressionKind::multiply:
  case ExpressionKind::divide:
    return finite(product(expression), expression);
  case ExpressionKind::text:
  case ExpressionKind::construct:
  case ExpressionKind::date:
    sink_.report(diagnose("number-wanted").at(expression.span));
    return std::nullopt;
  case ExpressionKind::error:
    return std::nullopt;
  }
  return std::nullopt;
}

std::optional<Evaluated> Evaluator::finite(std::optional<Evaluated> value, const Expression& expression) {
  if (!value)
    return value;
  bool good = std::isfinite(value->scalar.si);
  for (const Quantity& component : value->vector)
    good = good && std::isfinite(component.si);
  if (good)
    return value;
  sink_.report(diagnose("number-too-large").at(expression.span));
  return std::nullopt;
}

std::optional<Evaluated> Evaluator::literal(const Expression& expression) {
  Evaluated result;
  result.provenance.place = expression.span;
  if (expression.kind == ExpressionKind::number && expression.unit.missing()) {
    const auto number = parse_number(expression.text);
    if (!number.ok()) {
      report_unreadable(expression, number.error(), sink_);
      return std::nullopt;
    }
    result.scalar.si = number.value();
    return result;
  }
  const std::string text = expression.kind == ExpressionKind::length
                               ? expression.text
                               : expression.text + " " + expression.unit.text;
  const auto quantity = parse_quantity(text);
  if (!quantity.ok()) {
    report_unreadable(expression, quantity.error(), sink_);
    return std::nullopt;
  }
  result.scalar = quantity.value();
  return result;
}

std::optional<Evaluated> Evaluator::name(const Expression& expression) {
  const SymbolId id = tree_.symbol_at(expression.span);
  if (tree_[id].poison())
    return std::nullopt;
  return symbol(id, expression);
}

std::optional<Evaluated> Evaluator::symbol(SymbolId id, const Expression& use) {
  const Symbol& target = tree_[id];
  Memo& memo = memo_[id.index()];
  if (memo.state == State::open) {
    sink_.report(diagnose("circular-value", {{"name", target.name}})
                     .at(use.span)
                     .and_at(target.span, "declared here"));
    memo.result = std::nullopt;
    return std::nullopt;
  }
  std::optional<Evaluated> result = remembered(id).result;
  if (!result)
    return result;
  // The side of a mirrored point that was not written: its mirror in the centreline.
  if (target.kind == Symbol::Kind::point && !use.side.missing() && result->is_vector) {
    const bool port = use.side.text == "port";
    double& y = result->vector[1].si;
    y = port ? -std::fabs(y) : std::fabs(y);
  }
  // A number that the file gives without a source stays without one under a name, but is told by the name.
  if (result->provenance.source_class == SourceClass::unstated)
    result->provenance.note = "from " + target.name;
  return result;
}

Evaluator::Memo& Evaluator::remembered(SymbolId id) {
  Memo& memo = memo_[id.index()];
  if (memo.state == State::fresh) {
    const Symbol& target = tree_[id];
    memo.state = State::open;
    const Value& value = target.kind == Symbol::Kind::let ? target.let->value : target.point->value;
    memo.result = evaluate(value, target.name);
    memo.state = State::done;
  }
  return memo;
}

void Evaluator::evaluate_let(const Let& let) {
  const SymbolId id = tree_.symbol_at(let.name.span);
  if (tree_[id].let == &let)
    remembered(id);
}

std::optional<Evaluated> Evaluator::vector(const Expression& expression) {
  Evaluated result;
  result.is_vector = true;
  const Unit* unit = expression.unit.missing() ? nullptr : find_unit(expression.unit.text);
  if (!expression.unit.missing() && unit == nullptr) {
    report_unknown_unit(expression.unit, sink_);
    return std::nullopt;
  }
  bool good = true;
  for (std::size_t i = 0; i < 3; ++i) {
    const Expression& operand = expression.operands[i];
    const auto component = evaluate(operand);
    if (!component || component->is_vector) {
      if (component)
        sink_.report(diagnose("number-wanted").at(operand.span));
      good = false;
      continue;
    }
    result.vector[i] = component->scalar;
    if (unit != nullptr && component->scalar.dimension.is_plain_number())
      result.vector[i] = {component->scalar.si * unit->factor, unit->dimension};
    result.provenance = i == 0 ? component->provenance : combined(result.provenance, component->provenance);
  }
  if (!good)
    return std::nullopt;
  return result;
}

std::optional<Evaluated> Evaluator::negated(const Expression& expression) {
  auto result = evaluate(expression.operands.front());
  if (!result)
    return result;
  result->scalar.si = -result->scalar.si;
  for (Quantity& component : result->vector)
    component.si = -component.si;
  return result;
}

std::optional<Evaluated> Evaluator::sum(const Expression& expression, double sign) {
  const Expression& left = expression.operands[0];
  const Expression& right = expression.operands[1];
  const auto a = evaluate(left);
  const auto b = evaluate(right);
  if (!a || !b)
    return std::nullopt;
  Evaluated result = *a;
  result.provenance = combined(a->provenance, b->provenance);
  const auto report = [&](const Quantity& x, const Quantity& y) {
    report_mixed_sum(expression, x, y, sign > 0, sink_);
  };
  if (a->is_vector != b->is_vector) {
    sink_.report(diagnose("vector-with-number").at(expression.span));
    return std::nullopt;
  }
  const std::size_t count = a->is_vector ? 3 : 1;
  for (std::size_t i = 0; i < count; ++i) {
    const Quantity& x = a->is_vector ? a->vector[i] : a->scalar;
    const Quantity& y = b->is_vector ? b->vector[i] : b->scalar;
    Quantity& out = a->is_vector ? result.vector[i] : result.scalar;
    // Points on a temperature scale: a difference may be added or taken away; two points only make a
    // difference.
    const bool point_and_step =
        x.dimension == dimension::temperature_point && y.dimension == dimension::temperature_difference;
    const bool two_points = x.dimension == dimension::temperature_point && x.dimension == y.dimension;
    if ((x.dimension != y.dimension && !point_and_step) || (two_points && sign > 0)) {
      report(x, y);
      return std::nullopt;
    }
    out.si = x.si + sign * y.si;
    out.dimension = two_points ? dimension::temperature_difference : x.dimension;
  }
  return result;
}

std::optional<Evaluated> Evaluator::product(const Expression& expression) {
  const auto a = evaluate(expression.operands[0]);
  const auto b = evaluate(expression.operands[1]);
  if (!a || !b)
    return std::nullopt;
  const bool divide = expression.kind == ExpressionKind::divide;
  if (b->is_vector && (divide || a->is_vector)) {
    sink_.report(diagnose("vector-with-number").at(expression.span));
    return std::nullopt;
  }
  if (divide && b->scalar.si == 0.0) {
    sink_.report(diagnose("division-by-zero").at(expression.operands[1].span));
    return std::nullopt;
  }
  const auto combine = [&](const Quantity& x, const Quantity& y) {
    return divide ? Quantity{x.si / y.si, x.dimension - y.dimension}
                  : Quantity{x.si * y.si, x.dimension + y.dimension};
  };
  Evaluated result;
  result.provenance = combined(a->provenance, b->provenance);
  result.is_vector = a->is_vector || b->is_vector;
  if (!result.is_vector) {
    result.scalar = combine(a->scalar, b->scalar);
    return result;
  }
  const Evaluated& vector = a->is_vector ? *a : *b;
  const Evaluated& scalar = a->is_vector ? *b : *a;
  for (std::size_t i = 0; i < 3; ++i)
    result.vector[i] = combine(vector.vector[i], scalar.scalar);
  return result;
}

} // namespace sheerpole
