#include "calculate/uncertainty/response.hpp"

#include "calculate/uncertainty/random_numbers.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole {

namespace {

/// The furthest that an input is taken to be off, in bounds.
double reach(const UncertainInput& input) {
  return input.distribution == Distribution::student         ? student_factor_95(input.freedom)
         : input.distribution == Distribution::normal_at_two ? 2.0
                                                             : 1.0;
}

} // namespace

double UncertainInput::standard_over_bound() const {
  switch (distribution) {
  case Distribution::rectangular:
    return 1.0 / std::sqrt(3.0);
  case Distribution::triangular:
    return 1.0 / std::sqrt(6.0);
  case Distribution::normal_at_two:
    return 0.5;
  case Distribution::student:
    return 1.0;
  }
  return 1.0;
}

WorstCase worst_case(const Response& response, std::span<const UncertainInput> inputs) {
  WorstCase result;
  for (const Response::Linear& term : response.linear) {
    const double most = std::fabs(term.amount) * reach(inputs[term.input]);
    result.low -= most;
    result.high += most;
  }
  for (const Response::Product& term : response.products) {
    const double most = term.amount * reach(inputs[term.first]) * reach(inputs[term.second]);
    if (term.first == term.second) { // a square has one sign
      result.low += std::min(most, 0.0);
      result.high += std::max(most, 0.0);
    } else {
      result.low -= std::fabs(most);
      result.high += std::fabs(most);
    }
  }
  return result;
}

Propagated propagate(const Response& response, std::span<const UncertainInput> inputs) {
  double variance = 0.0;
  double fourth = 0.0; // sum of u^4 / freedom
  for (const Response::Linear& term : response.linear) {
    const UncertainInput& input = inputs[term.input];
    const double part = term.amount * input.standard_over_bound();
    variance += part * part;
    if (input.freedom > 0)
      fourth += part * part * part * part / static_cast<double>(input.freedom);
  }
  Propagated result;
  result.standard = std::sqrt(variance);
  if (fourth > 0.0)
    result.freedom = std::max(1.0, std::floor(variance * variance / fourth * (1.0 + 1e-12)));
  result.factor = student_factor_95(static_cast<std::size_t>(std::min(result.freedom, 1e6)));
  result.expanded = result.factor * result.standard;
  return result;
}

} // namespace sheerpole
