#include "calculate/cut/eye_allowance.hpp"

#include "calculate/length/length_sum.hpp"
#include "units/quantity_text.hpp"

#include <cmath>
#include <numbers>
#include <utility>
#include <vector>

namespace sheerpole {

std::optional<Length> eye_perimeter(Length seat_radius, Length rope_diameter,
                                    Length seat_centre_to_throat) {
  const double r = seat_radius.metres();
  const double half = rope_diameter.metres() / 2.0;
  const double s = seat_centre_to_throat.metres();
  const double centreline_radius = r + half;
  const double to_leg = std::hypot(s, half);
  if (r < 0.0 || half < 0.0 || s <= 0.0 || to_leg < centreline_radius)
    return std::nullopt;
  const double b = std::atan2(half, s);
  const double g = std::acos(centreline_radius / to_leg);
  const double tangent = std::sqrt(to_leg * to_leg - centreline_radius * centreline_radius);
  return Length::metres(2.0 * (centreline_radius * (std::numbers::pi - b - g) + tangent));
}

std::optional<Length> eye_allowance_from_geometry(Length seat_radius, Length rope_diameter,
                                                  Length seat_centre_to_throat) {
  const auto perimeter = eye_perimeter(seat_radius, rope_diameter, seat_centre_to_throat);
  if (!perimeter)
    return std::nullopt;
  return *perimeter - (seat_radius + seat_centre_to_throat);
}

namespace {

struct EyeWay {
  std::string_view name;
  Term term;
};

std::optional<Term> from_geometry(const std::string& name, const LineMaterial& material,
                                  const LineEnd& end) {
  const End* seat = end.of_type("rope-seat");
  if (seat == nullptr)
    return std::nullopt;
  const EndDimension* diameter = seat->find("diameter");
  const EndDimension* throat = seat->find("throat");
  if (diameter == nullptr || throat == nullptr)
    return std::nullopt;
  const auto allowance = eye_allowance_from_geometry(diameter->length.value / 2.0, material.diameter.value,
                                                     throat->length.value);
  if (!allowance)
    return std::nullopt;
  Term term{
      name, *allowance,
      "round a seat of " + length_text(diameter->length.value) + ", throat " +
          length_text(throat->length.value) + " from its centre",
      combine({&diameter->length.provenance, &throat->length.provenance, &material.diameter.provenance},
              "from the geometry of the seat")};
  term.provenance.source_class = SourceClass::computed;
  return term;
}

/// "the geometry of the seat gives 84.42 mm, 74.58 mm less"
std::string compared(const EyeWay& other, Length taken) {
  const Length difference = other.term.amount - taken;
  const bool less = difference < Length{};
  return std::string(other.name) + " gives " + length_text(other.term.amount) + ", " +
         length_text(less ? -difference : difference) + (less ? " less" : " more");
}

} // namespace

EyeAllowance eye_allowance(const LineMaterial& material, const Splice& splice, const LineEnd& end) {
  const std::string name = "eye allowance " + std::string(name_of(end.where));
  std::vector<EyeWay> ways;
  if (end.part->wrap)
    ways.push_back(
        {"the test wrap", {name, end.part->wrap->value, "test wrap", end.part->wrap->provenance}});
  if (splice.eye_allowance)
    ways.push_back(
        {"the allowance of the splice", rope_measure_term(name, *splice.eye_allowance, material)});
  if (auto term = from_geometry(name, material, end))
    ways.push_back({"the geometry of the seat", std::move(*term)});

  EyeAllowance result;
  if (ways.empty())
    return result;
  for (std::size_t i = 1; i < ways.size(); ++i)
    result.note += (i == 1 ? "" : "; ") + compared(ways[i], ways.front().term.amount);
  result.term = std::move(ways.front().term);
  return result;
}

} // namespace sheerpole
