#include "calculate/physics/fid_length.hpp"

#include "calculate/physics/finite_value.hpp"

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

} // namespace sheerpole
