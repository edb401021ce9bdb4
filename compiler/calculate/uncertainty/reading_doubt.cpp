#include "calculate/uncertainty/reading_doubt.hpp"

#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "units/parse_quantity.hpp"

#include <cmath>

namespace sheerpole {

double standard_of_mean(const Reading& reading) {
  if (reading.lengths().size() < 2)
    return 0.0;
  const auto count = static_cast<double>(reading.lengths().size());
  double mean = 0.0;
  for (const Sourced<Length>& run : reading.lengths())
    mean += run.value.metres() / count;
  double squares = 0.0;
  for (const Sourced<Length>& run : reading.lengths())
    squares += (run.value.metres() - mean) * (run.value.metres() - mean);
  return std::sqrt(squares / (count - 1.0) / count);
}

std::optional<Resolution> resolution_of(const Reading& reading) {
  if (reading.lengths().empty())
    return std::nullopt;
  if (const auto stated = fact_length(reading.particulars, fact_names.resolution))
    return Resolution{stated->value, false};
  std::optional<Length> smallest;
  for (const Sourced<Length>& run : reading.lengths()) {
    if (run.tolerance)
      return std::nullopt;
    const auto division = smallest_division(run.provenance.written);
    if (division && (!smallest || *division < *smallest))
      smallest = division;
  }
  if (!smallest)
    return std::nullopt;
  return Resolution{*smallest / 2.0, true};
}

} // namespace sheerpole
