#include "calculate/strength/stay_stiffness.hpp"

#include "calculate/facts.hpp"
#include "calculate/physics/axial_stiffness.hpp"

namespace sheerpole {

StayStiffness stay_stiffness(const Rig& rig, const std::vector<Piece>& pieces) {
  std::vector<StretchedPiece> lines;
  for (const Piece& piece : pieces) {
    const LineMaterial& material = rig[piece.material];
    const auto stiffness = line_stiffness(material);
    if (!stiffness)
      return {std::nullopt, "stiffness of " + material.name + " is not stated"};
    if (pieces.size() == 1)
      return {stiffness->value, ""};
    if (piece.body.unknown)
      return {std::nullopt, "the length is unknown"};
    lines.push_back({piece.body.known(), stiffness->value});
  }
  const auto together = axial_stiffness_in_series(lines);
  return {together, together ? "" : "there is no length of line"};
}

std::optional<Length> length_of_lines(const std::vector<Piece>& pieces) {
  Length sum;
  for (const Piece& piece : pieces) {
    if (piece.body.unknown)
      return std::nullopt;
    sum += piece.body.known();
  }
  return sum;
}

} // namespace sheerpole
