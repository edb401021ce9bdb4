#include "elaborate/arithmetic.hpp"

#include "elaborate/value_findings.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole {

namespace {

void add_assumptions(Provenance& to, const Provenance& from) {
  for (const std::string& assumption : from.assumptions)
    if (std::find(to.assumptions.begin(), to.assumptions.end(), assumption) == to.assumptions.end())
      to.assumptions.push_back(assumption);
}

/// The most by which a scalar can be off.
std::optional<Quantity> bound(const Evaluated& a, const Evaluated& b, const Evaluated& result,
                              Dimension dimension) {
  if (!a.tolerance && !b.tolerance)
    return std::nullopt;
  double sum = 0.0;
  for (const Influence& influence : result.influences[0])
    sum += std::fabs(influence.amount);
  return Quantity{sum, dimension};
}

bool holds_temperature(const Evaluated& value) {
  return !value.is_vector && value.scalar.dimension.temperature_point != 0;
}

} // namespace

Influences merged(const Influences& a, double follows_a, const Influences& b, double follows_b) {
  Influences result = a;
  for (Influence& influence : result)
    influence.amount *= follows_a;
  for (const Influence& more : b) {
    const auto same = std::find_if(result.begin(), result.end(),
                                   [&](const Influence& other) { return other.bound == more.bound; });
    if (same != result.end())
      same->amount += follows_b * more.amount;
    else
      result.push_back({more.bound, follows_b * more.amount});
  }
  return result;
}

Provenance combined(const Provenance& a, const Provenance& b) {
  Provenance result;
  const bool named = !a.note.empty() || !b.note.empty() || a.source_class != SourceClass::unstated ||
                     b.source_class != SourceClass::unstated;
  result.source_class = named ? SourceClass::computed : SourceClass::unstated;
  result.written_in = std::max(a.written_in, b.written_in);
  add_assumptions(result, a);
  add_assumptions(result, b);
  return result;
}

std::optional<Evaluated> add(const Expression& expression, const Evaluated& a, const Evaluated& b,
                             DiagnosticSink& sink) {
  if (a.is_vector != b.is_vector) {
    sink.report(diagnose("vector-with-number").at(expression.span));
    return std::nullopt;
  }
  const bool plus = expression.kind == ExpressionKind::add;
  Evaluated result;
  result.is_vector = a.is_vector;
  result.provenance = combined(a.provenance, b.provenance);
  const std::size_t count = a.is_vector ? 3 : 1;
  for (std::size_t i = 0; i < count; ++i) {
    const Quantity& x = a.is_vector ? a.vector[i] : a.scalar;
    const Quantity& y = b.is_vector ? b.vector[i] : b.scalar;
    // Points on a temperature scale: a step may be added or taken away; two points make a step, but no sum.
    const bool point_and_step =
        x.dimension == dimension::temperature_point && y.dimension == dimension::temperature_difference;
    const bool two_points = x.dimension == dimension::temperature_point && x.dimension == y.dimension;
    if ((x.dimension != y.dimension && !point_and_step) || (two_points && plus)) {
      report_mixed_sum(expression, x, y, plus, sink);
      return std::nullopt;
    }
    Quantity& out = a.is_vector ? result.vector[i] : result.scalar;
    out.si = plus ? x.si + y.si : x.si - y.si;
    out.dimension = two_points ? dimension::temperature_difference : x.dimension;
    result.influences[i] = merged(a.influences[i], 1.0, b.influences[i], plus ? 1.0 : -1.0);
  }
  if (!a.is_vector)
    result.tolerance =
        bound(a, b, result,
              result.scalar.dimension == dimension::temperature_point ? dimension::temperature_difference
                                                                      : result.scalar.dimension);
  return result;
}

std::optional<Evaluated> multiply(const Expression& expression, const Evaluated& a, const Evaluated& b,
                                  DiagnosticSink& sink) {
  const bool divide = expression.kind == ExpressionKind::divide;
  if (b.is_vector && (divide || a.is_vector)) {
    sink.report(diagnose("vector-with-number").at(expression.span));
    return std::nullopt;
  }
  if (holds_temperature(a) || holds_temperature(b)) {
    sink.report(diagnose("temperature-multiplied").at(expression.span));
    return std::nullopt;
  }
  if (divide && b.scalar.si == 0.0) {
    sink.report(diagnose("division-by-zero").at(expression.operands[1].span));
    return std::nullopt;
  }
  const auto combine = [&](const Quantity& x, const Quantity& y) {
    return divide ? Quantity{x.si / y.si, x.dimension - y.dimension}
                  : Quantity{x.si * y.si, x.dimension + y.dimension};
  };
  Evaluated result;
  result.provenance = combined(a.provenance, b.provenance);
  result.is_vector = a.is_vector || b.is_vector;
  if (!result.is_vector) {
    result.scalar = combine(a.scalar, b.scalar);
    const double x = a.scalar.si;
    const double y = b.scalar.si;
    result.influences[0] =
        merged(a.influences[0], divide ? 1.0 / y : y, b.influences[0], divide ? -x / (y * y) : x);
    result.tolerance = bound(a, b, result, result.scalar.dimension);
    return result;
  }
  const Evaluated& vector = a.is_vector ? a : b;
  const Evaluated& scalar = a.is_vector ? b : a;
  for (std::size_t i = 0; i < 3; ++i) {
    result.vector[i] = combine(vector.vector[i], scalar.scalar);
    const double x = vector.vector[i].si;
    const double y = scalar.scalar.si;
    result.influences[i] =
        merged(vector.influences[i], divide ? 1.0 / y : y, scalar.influences[0], divide ? -x / (y * y) : x);
  }
  return result;
}

} // namespace sheerpole
