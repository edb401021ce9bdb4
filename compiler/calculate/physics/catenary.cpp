#include "calculate/physics/catenary.hpp"

#include "calculate/physics/physical_values.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole {

namespace {

/// Deeper than any line hangs; from here on the steps would become many.
constexpr double largest_sag_over_span = 1e6;

/// cosh(u) - 1, with all its digits where u is small.
double cosh_less_one(double u) {
  const double half = std::sinh(u / 2.0);
  return 2.0 * half * half;
}

} // namespace

std::optional<Length> catenary_parameter(Length span, Length sag) {
  if (span <= Length() || sag <= Length() || sag / span > largest_sag_over_span)
    return std::nullopt;
  // With u = L / 2a the sag ratio is (cosh u - 1) / (2 u), which rises with u and is convex: from a start
  // above the root Newton's steps come down to it and never pass it, until the last digit. Both starts are
  // above: the ratio at u is at least u / 4, and from u = 4 on more than e^(u/2) / 8.
  const double ratio = sag / span;
  double u = ratio < 1.0 ? 4.0 * ratio : 2.0 * std::log(8.0 * ratio);
  for (int step = 0; step < 100; ++step) {
    const double miss = cosh_less_one(u) / (2.0 * u) - ratio;
    const double slope = (std::sinh(u) - cosh_less_one(u) / u) / (2.0 * u);
    const double next = u - miss / slope;
    if (!(next < u))
      return finite_length(span.metres() / (2.0 * u));
    u = next;
  }
  return std::nullopt;
}

std::optional<Length> catenary_sag(Length span, Length parameter) {
  if (span <= Length() || parameter <= Length())
    return std::nullopt;
  return finite_length(parameter.metres() * cosh_less_one(span / parameter / 2.0));
}

std::optional<Length> catenary_length(Length span, Length parameter) {
  if (span <= Length() || parameter <= Length())
    return std::nullopt;
  return finite_length(2.0 * parameter.metres() * std::sinh(span / parameter / 2.0));
}

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

std::optional<Force> tension_from_frequency(double linear_mass_kilograms_per_metre, Length free_length,
                                            double frequency_hertz) {
  if (!(linear_mass_kilograms_per_metre > 0.0) || free_length <= Length() || !(frequency_hertz > 0.0))
    return std::nullopt;
  const double speed = 2.0 * free_length.metres() * frequency_hertz;
  return finite_force(linear_mass_kilograms_per_metre * speed * speed);
}

std::optional<double> first_mode_frequency(double linear_mass_kilograms_per_metre, Length free_length,
                                           Force tension) {
  if (!(linear_mass_kilograms_per_metre > 0.0) || free_length <= Length() || tension <= Force())
    return std::nullopt;
  return finite_value(std::sqrt(tension.newtons() / linear_mass_kilograms_per_metre) /
                      (2.0 * free_length.metres()));
}

std::optional<Force> tension_from_pulse(double linear_mass_kilograms_per_metre, Length free_length,
                                        double return_time_seconds) {
  if (!(return_time_seconds > 0.0))
    return std::nullopt;
  // A wave comes back once in every swing of the first mode.
  return tension_from_frequency(linear_mass_kilograms_per_metre, free_length, 1.0 / return_time_seconds);
}

namespace {

/// A cable in plain numbers: N, m, N/m.
struct Cable {
  double length, weight, stiffness;
};

struct Forces {
  double horizontal, vertical;
};

struct Place {
  double across, below;
};

/// How the place of the far end changes with the forces. The matrix is symmetric, as the two equations are
/// the slopes of one energy.
struct Slopes {
  double across_by_horizontal, across_by_vertical, below_by_vertical;
};

std::optional<Cable> plain(const ElasticCable& cable) {
  const Cable result{cable.unstressed_length.metres(), cable.weight_newtons_per_metre,
                     cable.axial_stiffness.newtons()};
  if (result.length > 0.0 && result.weight > 0.0 && std::isfinite(result.weight) && result.stiffness > 0.0)
    return result;
  return std::nullopt;
}

/// asinh(a) - asinh(b) from a, b and their difference; two nearly equal values are never subtracted.
double asinh_difference(double a, double b, double difference) {
  if (a + b < 0.0)
    return asinh_difference(-b, -a, difference);
  const double root_a = std::hypot(1.0, a);
  const double root_b = std::hypot(1.0, b);
  const double over_first = b < 0.0 ? root_b - b : 1.0 / (root_b + b);
  return std::log1p(difference * (1.0 + (a + b) / (root_a + root_b)) * over_first);
}

Place place_at(const Cable& cable, Forces forces, double along) {
  const double h = forces.horizontal;
  const double a = forces.vertical / h;
  const double difference = cable.weight * along / h;
  const double b = a - difference;
  const double roots = std::hypot(1.0, a) + std::hypot(1.0, b);
  return {h * along / cable.stiffness + h / cable.weight * asinh_difference(a, b, difference),
          along / cable.stiffness * (forces.vertical - cable.weight * along / 2.0) +
              along * ((a + b) / roots)};
}

Slopes slopes_at(const Cable& cable, Forces forces) {
  const double a = forces.vertical / forces.horizontal;
  const double difference = cable.weight * cable.length / forces.horizontal;
  const double b = a - difference;
  const double root_a = std::hypot(1.0, a);
  const double root_b = std::hypot(1.0, b);
  const double stretch = cable.length / cable.stiffness;
  return {stretch + (asinh_difference(a, b, difference) - a / root_a + b / root_b) / cable.weight,
          (1.0 / root_a - 1.0 / root_b) / cable.weight, stretch + (a / root_a - b / root_b) / cable.weight};
}

/// For a line that is shorter than the way, the pull that stretches it straight; else that of the slack
/// line of Jayaraman and Knudson (Computers and Structures 14, 1981).
Forces first_guess(const Cable& cable, double span, double drop) {
  const double chord = std::hypot(span, drop);
  const double weight = cable.weight * cable.length;
  const double slack_ratio = (cable.length * cable.length - drop * drop) / (span * span) - 1.0;
  const double lambda = slack_ratio > 0.0 ? std::fmax(std::sqrt(3.0 * slack_ratio), 0.01) : 0.01;
  const double slack = cable.weight * span / (2.0 * lambda);
  const double taut = cable.stiffness * (chord / cable.length - 1.0) * (span / chord);
  const double horizontal = chord > cable.length ? std::fmax(taut, 0.01 * weight) : slack;
  return {horizontal, chord > cable.length
                          ? horizontal * drop / span + weight / 2.0
                          : cable.weight / 2.0 * (drop / std::tanh(lambda) + cable.length)};
}

std::optional<Forces> solve(const Cable& cable, double span, double drop) {
  const double chord = std::hypot(span, drop);
  const auto miss_of = [&](Forces forces) {
    const Place end = place_at(cable, forces, cable.length);
    return Place{end.across - span, end.below - drop};
  };
  const auto size = [](Place miss) { return std::hypot(miss.across, miss.below); };

  Forces forces = first_guess(cable, span, drop);
  Place miss = miss_of(forces);
  for (int step = 0; step < 200 && size(miss) > 0.0; ++step) {
    const Slopes slope = slopes_at(cable, forces);
    const double determinant = slope.across_by_horizontal * slope.below_by_vertical -
                               slope.across_by_vertical * slope.across_by_vertical;
    const double horizontal =
        (slope.below_by_vertical * miss.across - slope.across_by_vertical * miss.below) / determinant;
    const double vertical =
        (slope.across_by_horizontal * miss.below - slope.across_by_vertical * miss.across) / determinant;
    // H stays above a tenth of what it was: the equations have no meaning at zero and below.
    double share = horizontal > 0.9 * forces.horizontal ? 0.9 * forces.horizontal / horizontal : 1.0;
    bool is_nearer = false;
    for (int halving = 0; halving < 60 && !is_nearer; ++halving, share /= 2.0) {
      const Forces tried{forces.horizontal - share * horizontal, forces.vertical - share * vertical};
      const Place tried_miss = miss_of(tried);
      is_nearer = size(tried_miss) < size(miss);
      if (is_nearer) {
        forces = tried;
        miss = tried_miss;
      }
    }
    if (!is_nearer) // the last digit is reached, or there is no way on
      break;
  }
  if (!(size(miss) <= 1e-9 * chord))
    return std::nullopt;
  return forces;
}

} // namespace

std::optional<CablePlace> elastic_catenary_place(const ElasticCable& cable, const EndForces& forces,
                                                 Length along) {
  const auto line = plain(cable);
  if (!line || forces.horizontal <= Force() || along < Length() || along > cable.unstressed_length)
    return std::nullopt;
  const Place place =
      place_at(*line, {forces.horizontal.newtons(), forces.vertical.newtons()}, along.metres());
  const auto across = finite_length(place.across);
  const auto below = finite_length(place.below);
  if (!across || !below)
    return std::nullopt;
  return CablePlace{*across, *below};
}

std::optional<EndForces> elastic_catenary_forces(const ElasticCable& cable, Length span, Length drop) {
  const auto line = plain(cable);
  if (!line || span <= Length())
    return std::nullopt;
  const auto forces = solve(*line, span.metres(), drop.metres());
  if (!forces)
    return std::nullopt;
  return EndForces{Force::newtons(forces->horizontal), Force::newtons(forces->vertical)};
}

std::optional<Length> elastic_catenary_sag(const ElasticCable& cable, Length span, Length drop) {
  const auto forces = elastic_catenary_forces(cable, span, drop);
  if (!forces)
    return std::nullopt;
  const double slope = drop / span;
  const double along =
      (forces->vertical.newtons() - forces->horizontal.newtons() * slope) / cable.weight_newtons_per_metre;
  // Between two ends on the chord a line that only curves one way has such a place; rounding may put it
  // past an end.
  const auto place = elastic_catenary_place(
      cable, *forces, Length::metres(std::clamp(along, 0.0, cable.unstressed_length.metres())));
  if (!place)
    return std::nullopt;
  return finite_length(place->below.metres() - slope * place->across.metres());
}

} // namespace sheerpole
