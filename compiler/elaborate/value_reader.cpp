#include "elaborate/value_reader.hpp"

#include "elaborate/value_findings.hpp"
#include "kinds/example_unit.hpp"
#include "units/format_length.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace sheerpole {

namespace {

template <class Kind>
std::optional<Sourced<Kind>> as(const std::optional<Sourced<Quantity>>& quantity) {
  if (!quantity)
    return std::nullopt;
  Sourced<Kind> result;
  result.provenance = quantity->provenance;
  result.value = Kind::from_si(quantity->value.si);
  if (quantity->tolerance)
    result.tolerance = Kind::from_si(quantity->tolerance->si);
  result.influences = quantity->influences;
  return result;
}

bool real_date(const std::string& text) {
  const auto digit = [&](std::size_t i) { return text[i] >= '0' && text[i] <= '9'; };
  if (text.size() != 10 || text[4] != '-' || text[7] != '-')
    return false;
  for (const std::size_t i : {0, 1, 2, 3, 5, 6, 8, 9})
    if (!digit(i))
      return false;
  const auto number = [&](std::size_t from, std::size_t count) {
    int value = 0;
    for (std::size_t i = from; i < from + count; ++i)
      value = value * 10 + (text[i] - '0');
    return value;
  };
  const int year = number(0, 4);
  const int month = number(5, 2);
  const int day = number(8, 2);
  if (month < 1 || month > 12 || day < 1)
    return false;
  const bool leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
  const int days[] = {31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  return day <= days[month - 1];
}

} // namespace

std::string property_of(const PropertyRow& row, const std::string& owner) {
  return std::string(row.name) + " of " + owner;
}

bool ValueReader::single(const Value& value, const PropertyRow& row, const std::string& owner) {
  const std::string what = property_of(row, owner);
  if (value.mirrored) {
    sink_.report(diagnose("mirrored-not-here", {{"what", what}}).at(*value.mirrored));
    return false;
  }
  const bool number = row.type == ValueType::quantity || row.type == ValueType::quantity_list;
  if (value.tolerance && !number) {
    sink_.report(diagnose("tolerance-not-here", {{"what", what}}).at(value.tolerance->span));
    return false;
  }
  const bool may_be_list = row.type == ValueType::quantity_list || row.type == ValueType::choice_list ||
                           row.type == ValueType::reference_list || row.type == ValueType::text_list;
  if (may_be_list && value.shape == ValueShape::list)
    return no_passage(value, what, sink_);
  return one_value(value, what, sink_);
}

const Expression* ValueReader::one_expression(const Value& value, const PropertyRow& row,
                                              const std::string& owner) {
  if (!single(value, row, owner) || value.expression().kind == ExpressionKind::error)
    return nullptr;
  return &value.expression();
}

namespace {

/// "12.646 mm" as "12.646 m": three figures behind the point are metres, or thousands of millimetres, which
/// is the same length. Empty for anything else.
std::string in_metres_instead(const std::string& written) {
  constexpr std::string_view unit = " mm";
  constexpr std::size_t decimals = 3;
  if (!written.ends_with(unit))
    return {};
  const std::string number = written.substr(0, written.size() - unit.size());
  const std::size_t point = number.find('.');
  const bool figures = std::all_of(number.begin(), number.end(),
                                   [](char sign) { return sign == '.' || (sign >= '0' && sign <= '9'); });
  if (!figures || point == std::string::npos || point == 0 || number.size() - point - 1 != decimals)
    return {};
  return number + " m";
}

} // namespace

std::optional<Sourced<Quantity>> ValueReader::checked(const Value& value, const PropertyRow& row,
                                                      const std::string& owner) {
  const std::string what = property_of(row, owner);
  auto evaluated = evaluator_.evaluate(value, what);
  if (!evaluated)
    return std::nullopt;
  const Expression& expression = value.expression();
  if (evaluated->is_vector) {
    sink_.report(diagnose("vector-not-here", {{"what", what}}).at(expression.span));
    return std::nullopt;
  }
  const Quantity& found = evaluated->scalar;
  const bool other = !row.other_dimension.is_plain_number() && found.dimension == row.other_dimension;
  if (found.dimension != row.dimension && !other) {
    report_wrong_dimension("the " + what, row, expression, found.dimension, sink_);
    return std::nullopt;
  }
  if (found.si < row.least || found.si > row.most) {
    const bool below = found.si < row.least;
    DiagnosticBuilder finding =
        diagnose("value-out-of-range", {{"what", what},
                                        {"written", evaluated->provenance.written},
                                        {"bound", below ? "at least" : "at most"},
                                        {"limit", shown_like_example(below ? row.least : row.most, row)}})
            .at(expression.span);
    const std::string metres = in_metres_instead(evaluator_.written(expression.span));
    constexpr double in_a_metre = 1000.0;
    if (!metres.empty() && found.si * in_a_metre >= row.least && found.si * in_a_metre <= row.most)
      finding =
          std::move(finding).edit(expression.span, metres, "if metres are meant, write `" + metres + "`");
    sink_.report(std::move(finding));
    return std::nullopt;
  }
  Sourced<Quantity> result;
  result.value = found;
  result.tolerance = evaluated->tolerance;
  result.influences = std::move(evaluated->influences[0]);
  result.provenance = std::move(evaluated->provenance);
  return result;
}

std::optional<Sourced<Quantity>> ValueReader::quantity(const Value& value, const PropertyRow& row,
                                                       const std::string& owner) {
  if (!single(value, row, owner))
    return std::nullopt;
  return checked(value, row, owner);
}

std::optional<Sourced<Length>> ValueReader::length(const Value& value, const PropertyRow& row,
                                                   const std::string& owner) {
  return as<Length>(quantity(value, row, owner));
}

std::optional<Sourced<Force>> ValueReader::force(const Value& value, const PropertyRow& row,
                                                 const std::string& owner) {
  return as<Force>(quantity(value, row, owner));
}

std::optional<Sourced<double>> ValueReader::ratio(const Value& value, const PropertyRow& row,
                                                  const std::string& owner) {
  const auto read = quantity(value, row, owner);
  if (!read)
    return std::nullopt;
  Sourced<double> result;
  result.value = read->value.si;
  result.provenance = read->provenance;
  if (read->tolerance)
    result.tolerance = read->tolerance->si;
  result.influences = read->influences;
  return result;
}

std::optional<Sourced<RopeMeasure>> ValueReader::rope_measure(const Value& value, const PropertyRow& row,
                                                              const std::string& owner) {
  const auto read = quantity(value, row, owner);
  if (!read)
    return std::nullopt;
  Sourced<RopeMeasure> result;
  const bool in_diameters = read->value.dimension == dimension::rope_diameters;
  result.value = {read->value.si, in_diameters};
  result.provenance = read->provenance;
  if (read->tolerance)
    result.tolerance = RopeMeasure{read->tolerance->si, in_diameters};
  result.influences = read->influences;
  return result;
}

std::vector<Sourced<Quantity>> ValueReader::quantities(const Value& value, const PropertyRow& row,
                                                       const std::string& owner) {
  std::vector<Sourced<Quantity>> result;
  if (!single(value, row, owner))
    return result;
  for (const Stop& stop : value.stops) {
    Value one = value;
    one.shape = ValueShape::single;
    one.stops = {stop};
    if (auto read = checked(one, row, owner))
      result.push_back(std::move(*read));
  }
  return result;
}

std::vector<Sourced<Length>> ValueReader::lengths(const Value& value, const PropertyRow& row,
                                                  const std::string& owner) {
  std::vector<Sourced<Length>> result;
  for (const Sourced<Quantity>& one : quantities(value, row, owner))
    result.push_back(*as<Length>(one));
  return result;
}

std::optional<Sourced<int>> ValueReader::count(const Value& value, const PropertyRow& row,
                                               const std::string& owner) {
  if (!single(value, row, owner))
    return std::nullopt;
  const auto evaluated = evaluator_.evaluate(value, property_of(row, owner));
  if (!evaluated)
    return std::nullopt;
  const double number = evaluated->scalar.si;
  const double most = std::min(row.most, 10'000.0); // fits an int, and is more than any stack holds
  if (evaluated->is_vector || !evaluated->scalar.dimension.is_plain_number() ||
      number != std::floor(number) || number < 1.0 || number > most) {
    sink_.report(diagnose("whole-number-wanted",
                          {{"what", property_of(row, owner)}, {"most", format_fixed(most, 0)}})
                     .at(value.expression().span));
    return std::nullopt;
  }
  return Sourced<int>{static_cast<int>(number), evaluated->provenance, std::nullopt};
}

std::optional<std::string> ValueReader::text(const Value& value, const PropertyRow& row,
                                             const std::string& owner) {
  const Expression* one = one_expression(value, row, owner);
  return one == nullptr ? std::nullopt : text_of(*one, row, owner);
}

std::optional<std::string> ValueReader::text_of(const Expression& expression, const PropertyRow& row,
                                                const std::string& owner) {
  if (expression.kind == ExpressionKind::error)
    return std::nullopt;
  if (expression.kind != ExpressionKind::text) {
    auto builder =
        diagnose("text-wanted", {{"what", property_of(row, owner)}, {"example", std::string(row.example)}})
            .at(expression.span);
    const std::string quoted = "\"" + evaluator_.written(expression.span) + "\"";
    if (expression.kind == ExpressionKind::name || expression.kind == ExpressionKind::number)
      builder = std::move(builder).edit(expression.span, quoted, "write `" + quoted + "`");
    sink_.report(std::move(builder));
    return std::nullopt;
  }
  return expression.text;
}

std::optional<std::string> ValueReader::bare_word(const Value& value, const PropertyRow& row,
                                                  const std::string& owner) {
  if (!single(value, row, owner))
    return std::nullopt;
  const Expression& expression = value.expression();
  const bool bare = (expression.kind == ExpressionKind::name && expression.side.missing()) ||
                    expression.kind == ExpressionKind::date;
  return bare ? std::optional(expression.text) : text(value, row, owner);
}

std::optional<std::string> ValueReader::date(const Value& value, const PropertyRow& row,
                                             const std::string& owner) {
  const Expression* one = one_expression(value, row, owner);
  if (one == nullptr)
    return std::nullopt;
  const Expression& expression = *one;
  const bool written = expression.kind == ExpressionKind::date || expression.kind == ExpressionKind::text;
  if (!written || !real_date(expression.text)) {
    sink_.report(diagnose("date-unreadable", {{"what", property_of(row, owner)}}).at(expression.span));
    return std::nullopt;
  }
  return expression.text;
}

std::optional<NamedSize> ValueReader::size(const Value& value, const PropertyRow& row,
                                           const std::string& owner) {
  const Expression* one = one_expression(value, row, owner);
  if (one == nullptr)
    return std::nullopt;
  const Expression& expression = *one;
  if (expression.kind != ExpressionKind::text) {
    // A size without its quotes is a plain slip: the same characters in quotes are meant.
    const std::string plain = written(value);
    auto builder = diagnose("size-not-quoted",
                            {{"what", property_of(row, owner)}, {"example", std::string(row.example)}})
                       .at(expression.span);
    if (parse_named_size(plain).ok())
      builder = std::move(builder).certain_edit(expression.span, "\"" + plain + "\"",
                                                "write `\"" + plain + "\"`");
    sink_.report(std::move(builder));
    return std::nullopt;
  }
  auto size = parse_named_size(expression.text);
  if (!size.ok()) {
    auto builder =
        diagnose("size-unreadable", {{"what", property_of(row, owner)}, {"size", expression.text}})
            .at(expression.span);
    if (!size.error().empty())
      builder = std::move(builder).edit(expression.span, "\"" + size.error() + "\"",
                                        "write `\"" + size.error() + "\"`");
    sink_.report(std::move(builder));
    return std::nullopt;
  }
  return size.value();
}

std::optional<Thread> ValueReader::thread(const Value& value, const PropertyRow& row,
                                          const std::string& owner) {
  const auto designation = text(value, row, owner);
  if (!designation)
    return std::nullopt;
  auto thread = parse_thread(*designation);
  if (thread.ok())
    return thread.value();
  sink_.report(
      diagnose("thread-unknown", {{"thread", *designation},
                                  {"near", thread.error().empty() ? "" : "; near it: " + thread.error()}})
          .at(value.expression().span));
  return std::nullopt;
}

std::optional<std::string> ValueReader::word(const Value& value, const PropertyRow& row,
                                             const std::string& owner) {
  if (!single(value, row, owner))
    return std::nullopt;
  return value.expression().text;
}

std::vector<std::string> ValueReader::texts(const Value& value, const PropertyRow& row,
                                            const std::string& owner) {
  std::vector<std::string> result;
  if (!single(value, row, owner))
    return result;
  for (const Stop& stop : value.stops)
    if (const auto read = text_of(stop.expression, row, owner))
      result.push_back(*read);
  return result;
}

std::vector<std::string> ValueReader::words(const Value& value) {
  std::vector<std::string> result;
  for (const Stop& stop : value.stops)
    result.push_back(stop.expression.text);
  return result;
}

std::optional<Evaluated> ValueReader::vector(const Value& value, const PropertyRow& row,
                                             const std::string& owner) {
  if (!single(value, row, owner))
    return std::nullopt;
  auto result = evaluator_.evaluate(value, property_of(row, owner));
  if (!result)
    return result;
  if (!result->is_vector) {
    sink_.report(
        diagnose("position-wanted", {{"name", property_of(row, owner)}}).at(value.expression().span));
    return std::nullopt;
  }
  return in_lengths(value, property_of(row, owner), std::move(*result));
}

std::optional<Evaluated> ValueReader::position(const Property& property, const std::string& name) {
  const Value& value = property.value;
  const std::string what = "place of " + name;
  if (!one_value(value, what, sink_))
    return std::nullopt;
  auto result = evaluator_.evaluate_point(property, what);
  if (!result)
    return result;
  if (!result->is_vector) {
    sink_.report(diagnose("position-wanted", {{"name", name}}).at(value.expression().span));
    return std::nullopt;
  }
  return in_lengths(value, name, std::move(*result));
}

std::optional<Evaluated> ValueReader::in_lengths(const Value& value, const std::string& name,
                                                 Evaluated found) {
  const Expression& expression = value.expression();
  for (const Quantity& component : found.vector) {
    if (component.dimension == dimension::length)
      continue;
    const Span end{expression.span.source, expression.span.end, expression.span.end};
    auto builder =
        diagnose("position-not-lengths", {{"name", name}, {"found", describe(component.dimension)}})
            .at(expression.span);
    const bool all_plain = std::all_of(found.vector.begin(), found.vector.end(), [](const Quantity& each) {
      return each.dimension.is_plain_number();
    });
    if (all_plain && expression.kind == ExpressionKind::vector && expression.unit.missing())
      builder =
          std::move(builder).edit(end, " m", "if metres are meant, write ` m` behind the parentheses");
    sink_.report(std::move(builder));
    return std::nullopt;
  }
  return found;
}

bool ValueReader::is_off(const Value& value, const PropertyRow& row) {
  if (!row.or_off || value.stops.size() != 1)
    return false;
  const Expression& word = value.expression();
  return word.kind == ExpressionKind::name && word.side.missing() && word.text == "off";
}

std::optional<Particular> ValueReader::particular(const Value& value, const PropertyRow& row,
                                                  const std::string& owner) {
  Particular result;
  result.name = row.name;
  result.text = written(value);
  const auto stated = [&](const std::string& text) {
    result.text = text;
    result.value.provenance.place = value.expression().span;
    evaluator_.apply_source(value, property_of(row, owner), result.value.provenance);
  };
  switch (row.type) {
  case ValueType::text:
    if (const auto read = text(value, row, owner)) {
      stated(*read);
      return result;
    }
    return std::nullopt;
  case ValueType::date:
    if (const auto read = date(value, row, owner)) {
      stated(*read);
      return result;
    }
    return std::nullopt;
  case ValueType::size:
    if (const auto read = size(value, row, owner)) {
      stated(read->name);
      return result;
    }
    return std::nullopt;
  case ValueType::count:
    if (const auto read = count(value, row, owner)) {
      stated(std::to_string(read->value));
      return result;
    }
    return std::nullopt;
  case ValueType::choice:
  case ValueType::choice_list:
  case ValueType::reference:
  case ValueType::reference_list:
    if (!single(value, row, owner))
      return std::nullopt;
    stated(written(value));
    for (const Stop& stop : value.stops)
      result.names.push_back(stop.expression.text +
                             (stop.expression.side.missing() ? "" : "." + stop.expression.side.text));
    return result;
  case ValueType::quantity_list:
    result.values = quantities(value, row, owner);
    if (result.values.empty())
      return std::nullopt;
    result.value = result.values.front();
    return result;
  default:
    // A word that stands for an amount, and is none.
    if (const Expression& only = value.expression(); !row.or_word.empty() && value.stops.size() == 1 &&
                                                     only.kind == ExpressionKind::name &&
                                                     only.side.missing() && only.text == row.or_word) {
      stated(only.text);
      result.names = {only.text};
      return result;
    }
    if (const auto read = quantity(value, row, owner)) {
      result.value = *read;
      return result;
    }
    return std::nullopt;
  }
}

} // namespace sheerpole
