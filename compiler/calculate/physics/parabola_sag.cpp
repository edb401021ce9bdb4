#include "calculate/physics/parabola_sag.hpp"

#include "calculate/physics/finite_value.hpp"

namespace sheerpole {

std::optional<Length> parabola_sag(Length span, double weight_newtons_per_metre, Force tension) {
  if (span <= Length() || !(weight_newtons_per_metre >= 0.0) || tension <= Force())
    return std::nullopt;
  const double ratio = weight_newtons_per_metre * span.metres() / (8.0 * tension.newtons());
  if (!(ratio <= parabola_sag_over_span_limit))
    return std::nullopt;
  return finite_length(ratio * span.metres());
}

std::optional<Length> parabola_extra_length(Length span, Length sag) {
  if (span <= Length() || sag < Length() || sag / span > parabola_sag_over_span_limit)
    return std::nullopt;
  return finite_length(8.0 * sag.metres() * (sag / span) / 3.0);
}

} // namespace sheerpole
