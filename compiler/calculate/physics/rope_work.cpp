#include "calculate/physics/rope_work.hpp"

#include "calculate/physics/physical_values.hpp"

#include <cmath>
#include <numbers>

namespace sheerpole {

std::optional<Length> fid_length(Length rope_diameter, double diameters_per_fid) {
  if (rope_diameter <= Length() || !(diameters_per_fid > 0.0))
    return std::nullopt;
  return finite_length(rope_diameter.metres() * diameters_per_fid);
}

std::optional<double> length_in_fids(Length length, Length rope_diameter, double diameters_per_fid) {
  const auto fid = fid_length(rope_diameter, diameters_per_fid);
  if (!fid)
    return std::nullopt;
  return finite_value(length / *fid);
}

std::optional<double> short_section_share(Length rope_diameter) {
  // The bounds lie half-way between neighbours of the table: 1/2 and 9/16 in, 3/4 and 7/8 in. A step of a
  // sixteenth below 1/4 in would be 3/16 in.
  if (rope_diameter <= Length::inches(7.0 / 32.0))
    return std::nullopt;
  if (rope_diameter <= Length::inches(17.0 / 32.0))
    return 0.375;
  return rope_diameter <= Length::inches(13.0 / 16.0) ? 0.30 : 0.25;
}

std::optional<PlainSpliceMarks> plain_splice_marks(Length rope_diameter, double diameters_per_fid) {
  const auto fid = fid_length(rope_diameter, diameters_per_fid);
  if (!fid)
    return std::nullopt;
  const auto tail = finite_length(2.0 * fid->metres());
  const auto exit = finite_length(3.0 * fid->metres());
  if (!tail || !exit)
    return std::nullopt;
  return PlainSpliceMarks{*tail, *exit};
}

std::optional<EyeLoop> eye_loop(Length bearing_diameter, Length rope_diameter, Length centre_to_throat) {
  const double radius = (bearing_diameter.metres() + rope_diameter.metres()) / 2.0;
  const double h = centre_to_throat.metres();
  if (bearing_diameter < Length() || rope_diameter < Length() || !(radius > 0.0) || !(h > radius))
    return std::nullopt;
  const double tangent = std::sqrt((h - radius) * (h + radius));
  const double alpha = std::asin(radius / h);
  const auto length = finite_length(tangent);
  const auto loop = finite_length(2.0 * tangent + radius * (std::numbers::pi + 2.0 * alpha));
  const auto share = finite_value(h / (2.0 * tangent)); // cos alpha = t / h
  if (!length || !loop || !share)
    return std::nullopt;
  return EyeLoop{*length, alpha, *loop, *share};
}

std::optional<double> lashing_share(double friction, int turns, double wrap_radians) {
  if (!(friction >= 0.0) || !(wrap_radians >= 0.0) || !std::isfinite(friction) ||
      !std::isfinite(wrap_radians) || turns < 1 || turns > 1000)
    return std::nullopt;
  const double loss = friction * wrap_radians;
  if (loss == 0.0)
    return 1.0;
  // Sum of a geometric series, (1 - r^n) / (1 - r), without taking nearly equal numbers from each other.
  const double legs = 2.0 * turns;
  return finite_value(std::expm1(-loss * legs) / std::expm1(-loss) / legs);
}

} // namespace sheerpole
