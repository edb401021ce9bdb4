#include "elaborate/value_findings.hpp"

#include "base/edit_distance.hpp"
#include "kinds/example_unit.hpp"
#include "units/format_length.hpp"
#include "units/parse_quantity.hpp"
#include "units/quantity_text.hpp"
#include "units/scan_number.hpp"
#include "units/unit.hpp"

#include <bit>
#include <cstdlib>
#include <tuple>
#include <utility>
#include <vector>

namespace sheerpole {

bool no_passage(const Value& value, const std::string& what, DiagnosticSink& sink) {
  for (const Stop& stop : value.stops) {
    if (stop.passage.missing())
      continue;
    sink.report(
        diagnose("passage-not-here", {{"word", stop.passage.text}, {"what", what}}).at(stop.passage.span));
    return false;
  }
  return true;
}

bool one_value(const Value& value, const std::string& what, DiagnosticSink& sink) {
  if (!no_passage(value, what, sink))
    return false;
  if (value.shape == ValueShape::single)
    return true;
  sink.report(
      diagnose("one-value-wanted", {{"what", what}}).at(value.stops[1].expression.span, "a second value"));
  return false;
}

namespace {

/// Only a literal can be mended by writing a unit behind it.
bool is_bare_literal(const Expression& expression) {
  if (expression.kind == ExpressionKind::negate)
    return is_bare_literal(expression.operands.front());
  return expression.kind == ExpressionKind::number && expression.unit.missing();
}

void report_missing_unit(const std::string& what, const Expression& expression, const std::string& unit,
                         DiagnosticSink& sink) {
  const std::string number =
      expression.kind == ExpressionKind::negate ? "-" + expression.operands.front().text : expression.text;
  auto builder = diagnose("missing-unit", {{"number", number}, {"what", what}}).at(expression.span);
  const Span end{expression.span.source, expression.span.end, expression.span.end};
  sink.report(std::move(builder).edit(end, " " + unit,
                                      "if " + unit + " is meant, write `" + number + " " + unit + "`"));
}

} // namespace

void report_unknown_unit(const Name& unit, DiagnosticSink& sink) {
  std::vector<std::string> names;
  for (const Unit& candidate : all_units())
    names.emplace_back(candidate.name);
  auto builder = diagnose("unknown-unit", {{"unit", unit.text}}).at(unit.span);
  if (const auto near = nearest_name(unit.text, names))
    builder = std::move(builder).edit(unit.span, *near, "write `" + *near + "`");
  sink.report(std::move(builder));
}

void report_unreadable(const Expression& expression, const QuantityError& error, DiagnosticSink& sink) {
  // With a unit that there is not, no reading of odd groups is a quantity: the unit is said first.
  const bool no_reading = error.kind == QuantityError::Kind::odd_groups && error.suggestions.empty();
  if ((error.kind == QuantityError::Kind::unknown_unit || no_reading) && !expression.unit.missing()) {
    report_unknown_unit(expression.unit, sink);
    return;
  }
  if (error.kind == QuantityError::Kind::odd_groups && !no_reading) {
    const std::string& first = error.suggestions.front();
    sink.report(diagnose("odd-digit-groups",
                         {{"number", expression.text}, {"readings", alternatives(error.suggestions)}})
                    .at(expression.span)
                    .edit(expression.span, first, "write `" + first + "`"));
    return;
  }
  const std::vector<Argument> number{{"number", expression.text}};
  auto builder = error.kind == QuantityError::Kind::zero_denominator ? diagnose("zero-denominator", number)
                 : error.kind == QuantityError::Kind::too_large      ? diagnose("number-too-large")
                                                                : diagnose("number-unreadable", number);
  builder = std::move(builder).at(expression.span);
  if (!error.suggestions.empty())
    builder = std::move(builder).edit(expression.span, error.suggestions.front(),
                                      "write `" + error.suggestions.front() + "`");
  sink.report(std::move(builder));
}

void report_feet_as_written(const Expression& expression, const std::string& text, const Quantity& length,
                            DiagnosticSink& sink) {
  const LengthUnit unit = length_unit_of(text);
  if (length.dimension != dimension::length || (unit != LengthUnit::feet && unit != LengthUnit::inches))
    return;
  const Length value = Length::from_si(length.si);
  if (const std::size_t slash = text.find('/'); slash != std::string::npos) {
    const unsigned long parts = std::strtoul(text.c_str() + slash + 1, nullptr, 10);
    if (parts != 0 && !std::has_single_bit(parts))
      sink.report(
          diagnose("fraction-on-no-rule",
                   {{"written", text}, {"parts", std::to_string(parts)}, {"length", length_text(value)}})
              .at(expression.span));
  } else if (unit == LengthUnit::feet && text.find('.') != std::string::npos &&
             text.find_first_of("\"in") == std::string::npos) {
    sink.report(diagnose("feet-with-decimal", {{"written", text}, {"reading", format_feet_inches(value)}})
                    .at(expression.span));
  }
}

void report_no_number(const Expression& expression, DiagnosticSink& sink) {
  auto builder = diagnose("number-wanted").at(expression.span);
  if (expression.kind == ExpressionKind::text && parse_quantity(expression.text).ok())
    builder = std::move(builder).certain_edit(expression.span, expression.text,
                                              "write `" + expression.text + "`");
  sink.report(std::move(builder));
}

void report_mixed_sum(const Expression& expression, const Quantity& left, const Quantity& right,
                      bool addition, DiagnosticSink& sink) {
  for (const auto& [number, operand, other] : {std::tuple(left, &expression.operands[0], right),
                                               std::tuple(right, &expression.operands[1], left)}) {
    if (!number.dimension.is_plain_number() || !is_bare_literal(*operand))
      continue;
    if (other.dimension == dimension::length) {
      report_missing_unit("a length", *operand, "mm", sink);
      return;
    }
  }
  sink.report(diagnose("mixed-dimensions", {{"left", describe(left.dimension)},
                                            {"right", describe(right.dimension)},
                                            {"doing", addition ? "added to" : "taken from"}})
                  .at(expression.span));
}

void report_wrong_dimension(const std::string& what, const PropertyRow& row, const Expression& expression,
                            Dimension found, DiagnosticSink& sink) {
  const std::string unit = example_unit(row);
  if (found.is_plain_number() && is_bare_literal(expression) && !unit.empty()) {
    report_missing_unit(what, expression, unit, sink);
    return;
  }
  if (found == dimension::mass && row.dimension == dimension::force) {
    const bool pounds = expression.unit.text == "lb";
    const std::string force_unit = pounds ? "lbf" : "kgf";
    auto builder = diagnose("mass-for-force", {{"what", what}, {"force", force_unit}}).at(expression.span);
    if (pounds || expression.unit.text == "kg")
      builder = std::move(builder).edit(expression.unit.span, force_unit,
                                        "write `" + expression.text + " " + force_unit + "`");
    sink.report(std::move(builder));
    return;
  }
  std::string wanted = describe(row.dimension);
  if (!row.other_dimension.is_plain_number())
    wanted += " or " + describe(row.other_dimension);
  sink.report(diagnose("wrong-dimension", {{"what", what}, {"found", describe(found)}, {"wanted", wanted}})
                  .at(expression.span, "for instance `" + std::string(row.example) + "`"));
}

void report_wrong_tolerance(const std::string& what, const Value& value, Dimension wanted, Dimension found,
                            DiagnosticSink& sink) {
  const Expression& amount = value.tolerance->amount;
  // Behind 82 mm the unit of the tolerance is mm as well.
  const std::string unit = wanted == dimension::temperature_difference ? "K" : value.expression().unit.text;
  if (found.is_plain_number() && is_bare_literal(amount) && !unit.empty()) {
    report_missing_unit(what, amount, unit, sink);
    return;
  }
  sink.report(diagnose("wrong-dimension",
                       {{"what", what}, {"found", describe(found)}, {"wanted", describe(wanted)}})
                  .at(amount.span));
}

} // namespace sheerpole
