#include "elaborate/value_shape.hpp"

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

} // namespace sheerpole
